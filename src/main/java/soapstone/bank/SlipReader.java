package soapstone.bank;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soapstone.exercise.Formula;
import soapstone.exercise.Slip;
import soapstone.exercise.Template;
import soapstone.expression.Change;
import soapstone.expression.FormulaBody;
import soapstone.expression.Node;
import soapstone.expression.Parser;
import soapstone.expression.ProgramBuilder;
import soapstone.expression.Value;
import soapstone.source.Issues;
import soapstone.source.Near;
import soapstone.source.Place;
import soapstone.source.Yaml;
import soapstone.source.Text;

/** Reads the slips of an exercise, and fetches those that its formulas bring along. */
final class SlipReader {

    private static final String RULE = "slip";
    private static final Set<String> KEYS = Set.of("name", "family", "swap", "swap-bare", "let", "when", "say", "formula", "is");
    private static final int MOST = 12;

    private final Yaml.Entries root;
    private final Book book;
    private final ProgramBuilder builder;
    private final Map<String, Integer> slots;
    private final Templates templates;
    private final Issues issues;
    private final Literals literals;
    private final Set<String> names = new HashSet<>();

    SlipReader(Yaml.Entries root, Book book, ProgramBuilder builder, Map<String, Integer> slots, Templates templates, Issues issues) {
        this.root = root;
        this.book = book;
        this.builder = builder;
        this.slots = slots;
        this.templates = templates;
        this.issues = issues;
        this.literals = new Literals(issues);
    }

    List<Slip> read() {
        List<Slip> slips = new ArrayList<>();
        for (Yaml.Value item : root.items("slips")) {
            item.map().ifPresent(m -> own(m.only(KEYS)).ifPresent(slips::add));
        }
        fromFormulas(slips);
        if (slips.size() > MOST) {
            issues.add(RULE, root.place("slips"), "the exercise has " + slips.size() + " slips with those of its formulas: "
                    + String.join(", ", slips.stream().map(Slip::name).toList()), "At most " + MOST + "; leave some out with without: […]");
        }
        return slips;
    }

    private Optional<Slip> own(Yaml.Entries m) {
        String name = m.need("name").map(Text::value).orElse("");
        String family = m.need("family").map(Text::value).orElse("");
        if (!family.isEmpty() && !book.families().containsKey(family)) {
            issues.add("family", m.place("family"), "unknown slip family '" + family + "'", Near.suggest(family, book.families().keySet()));
        }
        unique(name, m.place("name"));
        Template say = m.need("say").map(templates::read).orElse(Template.EMPTY);
        List<Value> when = new ArrayList<>();
        m.text("when").ifPresent(t -> literals.expression(t)
                .flatMap(n -> builder.condition(n, (at, found, fits) -> issues.add("expression", t.at(at), found, fits))).ifPresent(when::add));
        if (m.has("formula")) {
            return ownFormula(m, name, family, when, say);
        }
        Map<String, Node> helpers = helpers(m);
        Change change = Change.NONE;
        List<Slip.Swapped> lines = new ArrayList<>();
        if (!m.has("swap") && !m.has("swap-bare")) {
            issues.add(RULE, m.place(), "the slip '" + name + "' swaps nothing", "swap: line = what the person would have written");
            return Optional.empty();
        }
        for (String key : List.of("swap", "swap-bare")) {
            for (Yaml.Value v : m.items(key)) {
                change = v.text().flatMap(t -> swap(t, key.equals("swap-bare"), helpers, lines)).orElse(Change.NONE).over(change);
            }
        }
        return change.isEmpty() ? Optional.empty() : Optional.of(new Slip(name, family, change, when, say, "", null, lines));
    }

    private void unique(String name, Place place) {
        if (!names.add(name)) {
            issues.add(RULE, place, "the slip name '" + name + "' stands twice", "Give each its own");
        }
    }

    private Map<String, Node> helpers(Yaml.Entries m) {
        Map<String, Node> helpers = new LinkedHashMap<>();
        for (Yaml.Value v : m.items("let")) {
            v.text().ifPresent(t -> literals.assignment(t).ifPresent(a -> helpers.put(a.name(), Inline.names(a.value(), Map.copyOf(helpers)))));
        }
        return helpers;
    }

    private Optional<Change> swap(Text text, boolean bare, Map<String, Node> helpers, List<Slip.Swapped> lines) {
        Optional<Parser.Assignment> line = literals.assignment(text);
        if (line.isEmpty()) {
            return Optional.empty();
        }
        String name = line.get().name();
        if (slots.getOrDefault(name, -1) < 0) {
            issues.add(RULE, text.place(), "there is no line '" + name + "' to swap", Near.suggest(name, slots.keySet()));
            return Optional.empty();
        }
        Node value = Inline.names(line.get().value(), helpers);
        lines.add(new Slip.Swapped(slots.get(name), value, bare));
        return builder.swap(name, value, bare, (at, found, fits) -> issues.add("expression", text.at(at), found, fits));
    }

    private Optional<Slip> ownFormula(Yaml.Entries m, String name, String family, List<Value> when, Template say) {
        Text formula = m.text("formula").orElseThrow();
        FormulaBody body = book.bodies().get(formula.value());
        Optional<Node> is = m.need("is").flatMap(literals::expression);
        if (body == null || is.isEmpty()) {
            if (body == null) {
                issues.add(RULE, formula.place(), "there is no formula '" + formula.value() + "'", Near.suggest(formula.value(), book.bodies().keySet()));
            }
            return Optional.empty();
        }
        var swap = new FormulaBody.Swap(body.name(), List.of(new FormulaBody.Line("result", is.get())), null);
        Change change = builder.formulaSwap(swap).change();
        if (change.isEmpty()) {
            issues.add(RULE, formula.place(), "no line of the working calls '" + formula.value() + "' in a way that fits", "Swap a line");
            return Optional.empty();
        }
        return Optional.of(new Slip(name, family, change, when, say, body.name(), swap, List.of()));
    }

    private void fromFormulas(List<Slip> slips) {
        Set<String> without = new LinkedHashSet<>();
        Map<String, Place> places = new HashMap<>();
        for (Yaml.Value v : root.items("without")) {
            v.text().ifPresent(t -> {
                without.add(t.value());
                places.put(t.value(), t.place());
            });
        }
        Set<String> left = new HashSet<>(without);
        for (String name : new java.util.TreeSet<>(builder.formulasReached())) {
            Formula formula = book.formulas().get(name);
            // One with a fault of its own is not in the book; that is told there.
            for (Formula.FormulaSlip slip : formula == null ? List.<Formula.FormulaSlip>of() : formula.slips()) {
                left.remove(slip.name());
                if (!without.contains(slip.name())) {
                    fromFormula(formula, slip).ifPresent(slips::add);
                }
            }
        }
        left.forEach(name -> issues.add(RULE, places.get(name), "no formula here brings a slip '" + name + "'", "Leave it out of without"));
    }

    private Optional<Slip> fromFormula(Formula formula, Formula.FormulaSlip slip) {
        ProgramBuilder.FormulaChange changed = builder.formulaSwap(slip.swap());
        if (changed.change().isEmpty()) {
            return Optional.empty();
        }
        unique(slip.name(), root.place("slips"));
        Template say = templates.read(new Text(told(formula, slip.say()), root.place(), false, true));
        List<Value> when = slip.swap().when() == null ? List.of() : changed.when();
        return Optional.of(new Slip(slip.name(), slip.family(), changed.change(), when, say, formula.name(), slip.swap(), List.of()));
    }

    /**
     * The words of a formula's slip in an exercise: a thing that the formula takes becomes the name that the exercise
     * passes for it, or plain words where it passes an expression.
     */
    private String told(Formula formula, String say) {
        Optional<Call> call = call(formula.name());
        String told = say;
        for (int i = 0; i < formula.body().takes().size(); i++) {
            String takes = formula.body().takes().get(i).name();
            String passed = call.isPresent() && call.get().node().with().get(i) instanceof Node.Name n && slots.containsKey(n.name()) ? n.name() : null;
            told = place(told, takes, passed);
        }
        for (FormulaBody.Line line : formula.body().lines()) {
            boolean last = line == formula.body().lines().get(formula.body().lines().size() - 1);
            told = place(told, line.name(), last ? call.map(Call::line).orElse(null) : null);
        }
        return place(told, "result", call.map(Call::line).orElse(null));
    }

    private static String place(String text, String name, String passed) {
        String words = name.replace('_', ' ');
        return text.replace("{" + name + "}", passed == null ? "the " + words : "{" + passed + "}")
                .replace("{theirs." + name + "}", passed == null ? "that " + words : "{theirs." + passed + "}");
    }

    /** A line whose whole right side is the call, and the call. */
    private record Call(String line, Node.Call node) {}

    private Optional<Call> call(String formula) {
        for (Yaml.Value item : root.items("working")) {
            Optional<Call> found = item.isMap() ? item.map().flatMap(m -> m.text("let")).flatMap(t -> {
                try {
                    Parser.Assignment a = Parser.assignment(t.value());
                    return a.value() instanceof Node.Call c && c.name().equals(formula) ? Optional.of(new Call(a.name(), c)) : Optional.empty();
                } catch (Parser.Fault e) {
                    return Optional.empty();
                }
            }) : Optional.empty();
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }
}
