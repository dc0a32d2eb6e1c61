package soapstone.lesson;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Node;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import soapstone.bank.Bank;
import soapstone.quantity.UnitSystem;
import soapstone.source.Issues;
import soapstone.source.Near;
import soapstone.source.Place;
import soapstone.source.Source;
import soapstone.source.Text;
import soapstone.source.Yaml;
import soapstone.variant.Drawer;

/**
 * Reads a lesson: front matter, then Markdown with live blocks (example, practice, formula, caution). Markup that an
 * author writes as HTML is shown as text, never run.
 */
final class LessonReader {

    private static final String RULE = "lesson";
    private static final String FENCE = "---";
    private static final long MOST_SEED = 4_294_967_295L;
    private static final List<Extension> EXTENSIONS = List.of(TablesExtension.create());

    private final Source source;
    private final Bank bank;
    private final Issues issues;
    private int firstLine;

    LessonReader(Source source, Bank bank, Issues issues) {
        this.source = source;
        this.bank = bank;
        this.issues = issues;
    }

    Optional<Lesson> read(String id) {
        String text = source.text().replace("\r\n", "\n");
        int end = text.startsWith(FENCE + "\n") ? text.indexOf("\n" + FENCE + "\n", FENCE.length()) : -1;
        if (end < 0) {
            issues.add(RULE, source.at(1, 1), "the lesson does not begin with its title", "A block between two lines of ---: title, skill, minutes");
            return Optional.empty();
        }
        String head = text.substring(FENCE.length() + 1, end + 1);
        String body = text.substring(end + FENCE.length() + 2);
        firstLine = (int) head.chars().filter(c -> c == '\n').count() + 2;
        // An empty first line keeps the line numbers of the file.
        Optional<Yaml.Entries> map = Yaml.read(new Source(source.name(), "\n" + head), issues);
        return map.map(m -> lesson(id, m.only(Set.of("title", "skill", "minutes", "after")), parts(body)));
    }

    private Lesson lesson(String id, Yaml.Entries m, List<Lesson.Part> parts) {
        List<String> after = m.items("after").stream().flatMap(v -> v.text().stream()).map(Text::value).toList();
        String minutes = m.string("minutes", "10");
        boolean number = !minutes.isEmpty() && minutes.length() < 4 && minutes.chars().allMatch(Character::isDigit);
        if (!number) {
            issues.add(RULE, m.place("minutes"), "'" + minutes + "' is not a number of minutes", "Such as 10");
        }
        return new Lesson(id, m.need("title").map(Text::value).orElse(id), m.need("skill").map(Text::value).orElse(""),
                number ? Integer.parseInt(minutes) : 10, after, parts);
    }

    private List<Lesson.Part> parts(String body) {
        Node document = Parser.builder().extensions(EXTENSIONS).includeSourceSpans(IncludeSourceSpans.BLOCKS).build().parse(body);
        HtmlRenderer renderer = HtmlRenderer.builder().extensions(EXTENSIONS).escapeHtml(true).sanitizeUrls(true).build();
        List<Lesson.Part> parts = new ArrayList<>();
        StringBuilder prose = new StringBuilder();
        for (Node node = document.getFirstChild(); node != null; node = node.getNext()) {
            Optional<Lesson.Part> live = node instanceof FencedCodeBlock block && block.getInfo() != null && !block.getInfo().isBlank()
                    ? live(block.getInfo().strip(), place(block)) : Optional.empty();
            if (live.isPresent()) {
                add(prose, parts);
                parts.add(live.get());
            } else {
                prose.append(renderer.render(node));
            }
        }
        add(prose, parts);
        return List.copyOf(parts);
    }

    private static void add(StringBuilder prose, List<Lesson.Part> parts) {
        if (prose.length() > 0) {
            parts.add(new Lesson.Prose(prose.toString()));
            prose.setLength(0);
        }
    }

    private Place place(Node node) {
        int line = node.getSourceSpans().isEmpty() ? 0 : node.getSourceSpans().get(0).getLineIndex();
        return source.at(firstLine + line + 1, 1);
    }

    private Optional<Lesson.Part> live(String info, Place place) {
        List<String> words = Arrays.asList(info.split("\\s+"));
        String name = words.size() > 1 ? words.get(1) : "";
        switch (words.get(0)) {
            case "example":
                return example(words, name, place);
            case "practice":
                return known("exercise", name, bank.exercises().keySet(), place) ? Optional.of(new Lesson.Practice(name)) : Optional.empty();
            case "formula":
                return known("formula", name, bank.formulas().keySet(), place) ? Optional.of(new Lesson.FormulaCard(name)) : Optional.empty();
            case "caution":
                return known("caution", name, bank.cautions().keySet(), place) ? Optional.of(new Lesson.CautionCard(name)) : Optional.empty();
            default:
                issues.add(RULE, place, "unknown live block '" + words.get(0) + "'", "example, practice, formula or caution");
                return Optional.empty();
        }
    }

    private boolean known(String what, String name, Set<String> names, Place place) {
        if (!names.contains(name)) {
            issues.add(RULE, place, "there is no " + what + " '" + name + "'", Near.suggest(name, names));
        }
        return names.contains(name);
    }

    private Optional<Lesson.Part> example(List<String> words, String name, Place place) {
        UnitSystem system = UnitSystem.US;
        long seed = -1;
        for (int i = 2; i + 1 < words.size(); i += 2) {
            String value = words.get(i + 1);
            if (words.get(i).equals("seed") && value.length() < 11 && value.chars().allMatch(Character::isDigit)) {
                seed = Long.parseLong(value);
            } else if (words.get(i).equals("units") && UnitSystem.parse(value).isPresent()) {
                system = UnitSystem.parse(value).get();
            } else {
                issues.add(RULE, place, "'" + words.get(i) + " " + value + "' does not fit an example", "example EXERCISE seed NUMBER, then units metric if so");
            }
        }
        if (seed < 0 || seed > MOST_SEED) {
            issues.add(RULE, place, "the example names no seed", "example EXERCISE seed NUMBER");
            return Optional.empty();
        }
        if (!known("exercise", name, bank.exercises().keySet(), place)) {
            return Optional.empty();
        }
        if (Drawer.draw(bank.exercises().get(name), system, seed).isEmpty()) {
            issues.add(RULE, place, "no fair draw comes from seed " + seed, "Another seed");
            return Optional.empty();
        }
        return Optional.of(new Lesson.Example(name, seed, system));
    }
}
