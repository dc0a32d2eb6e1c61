package soapstone.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import soapstone.exercise.Model;
import soapstone.expression.Frame;
import soapstone.expression.Program;
import soapstone.expression.Value;
import soapstone.figure.DrawnSvg;
import soapstone.figure.Figure;
import soapstone.quantity.Dimension;
import soapstone.quantity.ReadAs;
import soapstone.quantity.Reading;
import soapstone.quantity.ShopReader;
import soapstone.quantity.Show;
import soapstone.quantity.Unit;
import soapstone.quantity.Units;

/**
 * Reads the numbers of a drawing as a student's answer is read, and looks for each among the values of the working: of the right
 * run where the right part is lettered, of the other one where the answer's part is. What a drawing works out itself has to be
 * one of {@link DerivedSizes}.
 */
final class DrawnNumbers {

    /** Numbers say which hole, mark, cut or flag, and how often something is there: no quantities. */
    private static final Pattern PLACES = Pattern.compile(", flag \\d+|\\b(?:[Hh]ole|mark|flag) \\d+");
    private static final Pattern APART = Pattern.compile("[ \\u00A0]*(?: |=|≈|·|\u00A0×\u00A0|;)[ \\u00A0]*");
    private static final Pattern ROUND = Pattern.compile("^[(ØR×≤]+\\u00A0?|[.,:)×]+$");
    /** Five digits, as values without a step of their own are printed. */
    private static final double DIGITS = 5.0001e-5;
    private static final double NOISE = 1e-9;

    private final Model model;
    private final Map<Dimension, Map<String, Optional<Reading.One>>> read = new HashMap<>();
    private final List<Held> right;
    private final List<Held> theirs;
    private final List<Held> both;
    private final List<Held> derived;

    /** A value that may be printed, in base units, and how far off it may be printed. */
    private record Held(double base, Dimension dimension, double slack) {}

    /** @param theirs the other run; null where only the right part is drawn */
    DrawnNumbers(Model model, Frame right, Frame theirs, List<DerivedSizes.Size> derived) {
        this.model = model;
        this.right = held(model, right);
        this.theirs = theirs == null ? List.of() : held(model, theirs);
        this.both = Stream.concat(this.right.stream(), this.theirs.stream()).toList();
        this.derived = derived.stream().map(s -> new Held(Math.abs(s.base()), s.dimension(), s.slack())).toList();
    }

    private static List<Held> held(Model model, Frame run) {
        List<Held> all = new ArrayList<>();
        for (Program.Slot slot : model.program().slots()) {
            Show show = model.shows()[slot.index()];
            if (slot.type().isAmount()) {
                all.add(held(model, slot, show, run.number(slot.index())));
            } else if (slot.type().isList() && run.list(slot.index()) != null) {
                for (double one : run.list(slot.index())) {
                    all.add(held(model, slot, show, one));
                }
            }
        }
        model.figure().ifPresent(plan -> plan.with().values().stream().filter(v -> v.reads() == 0).forEach(v -> plain(v, run, all)));
        return all;
    }

    /** An amount that stands in the bank's file as the figure's own: a square bend, a surface at the edge. */
    private static void plain(Value value, Frame run, List<Held> all) {
        double[] amounts = value.type().isList() ? value.list(run) : new double[] {value.number(run)};
        for (double one : amounts) {
            all.add(new Held(one, value.type().dimension(), DIGITS * Math.abs(one)));
        }
    }

    private static Held held(Model model, Program.Slot slot, Show show, double base) {
        Unit unit = show.unit() == null ? slot.shown() : show.unit();
        double step = switch (show.form()) {
            case FRACTION, DECIMAL, WHOLE -> unit.toBase(show.step(), model.system()) - unit.toBase(0, model.system());
            case FEET_INCHES -> Units.INCH.toBase(0.001, model.system());
            case DEGREES_MINUTES -> Units.ARCMIN.toBase(1, model.system());
            case HOURS_MINUTES -> Units.MINUTE.toBase(1, model.system());
            case AUTO -> 0;
        };
        return new Held(base, slot.type().dimension(), Math.max(step / 2, DIGITS * Math.abs(base)));
    }

    /** @return the numbers of both layouts and of the description that are nothing of the working, with where they stand */
    Set<String> strange(Figure figure, List<DrawnSvg> layouts) {
        Set<String> strange = new LinkedHashSet<>();
        for (DrawnSvg drawn : layouts) {
            for (DrawnSvg.Lettered l : drawn.lettering()) {
                if (!l.group().endsWith("number")) {
                    look(l.text(), of(l), l.group(), strange);
                }
            }
        }
        look(figure.title() + " " + figure.desc(), both, "description", strange);
        return strange;
    }

    /** Notes speak of both parts: where they list what long values are, and of the answer's where they say so. */
    private List<Held> of(DrawnSvg.Lettered l) {
        return l.group().startsWith("yours") ? theirs : l.group().equals("note") ? both : right;
    }

    private void look(String text, List<Held> held, String where, Set<String> strange) {
        for (String number : tokens(PLACES.matcher(text).replaceAll(""))) {
            if (!isOf(number, held) && !isDerived(number)) {
                strange.add("'" + number + "' of " + where + " '" + text + "'");
            }
        }
    }

    /** Whether title or description says the amount at a slot of the right run. */
    boolean says(Figure figure, int slot, Frame run) {
        Program.Slot named = model.program().slot(slot);
        List<Held> one = List.of(held(model, named, model.shows()[slot], run.number(slot)));
        return tokens(figure.title() + " " + figure.desc()).stream().anyMatch(text -> isOf(text, one));
    }

    private static List<String> tokens(String text) {
        List<String> all = new ArrayList<>();
        for (String piece : APART.split(text)) {
            Matcher m = ROUND.matcher(piece);
            String bare = m.replaceAll("");
            if (bare.chars().anyMatch(c -> c >= '0' && c <= '9')) {
                all.add(bare);
            }
        }
        return all;
    }

    private boolean isOf(String text, List<Held> some) {
        return some.stream().anyMatch(h -> read(text, h.dimension()).filter(one -> isNear(one, h, Math.min(one.place() / 2, h.slack()))).isPresent());
    }

    /** What a drawing works out itself is printed in halves of a millimeter too, which its last place does not say. */
    private boolean isDerived(String text) {
        return derived.stream().anyMatch(h -> read(text, h.dimension()).filter(one -> isNear(one, h, h.slack())).isPresent());
    }

    private static boolean isNear(Reading.One one, Held held, double slack) {
        return Math.abs(one.base() - held.base()) <= slack + NOISE * Math.max(1, Math.abs(held.base()));
    }

    /** A bare number is one of things, and a length only where the drawing prints lengths without their unit. */
    private Optional<Reading.One> read(String text, Dimension dimension) {
        return read.computeIfAbsent(dimension, d -> new HashMap<>()).computeIfAbsent(text, t -> {
            Reading reading = ShopReader.read(t, new ReadAs(ReadAs.Kind.QUANTITY, Units.usual(dimension, model.system()), model.system(), '.'));
            return reading instanceof Reading.One one && (!one.bare() || one.unit().symbol().isEmpty()) ? Optional.of(one) : Optional.empty();
        });
    }
}
