package soapstone.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import soapstone.page.Words;

/** Makes keys: one for whoever marks, with a row a sheet, and one to be folded for each sheet. */
public final class Key {

    /** So many mistakes stand beside an answer. */
    public static final int SLIPS = 3;
    /** So many answers with their mistakes fit beside each other. */
    private static final int ASKS = 2;
    private static final int FOLDED_AT_ONCE = 24;

    private final Printing printing;
    private final PaperSize size;

    public Key(Words words, PaperSize size) {
        this.printing = new Printing(words);
        this.size = size;
    }

    /**
     * The key of a class.
     *
     * @param after the assignment that this one makes up for, where there is one: its spread is told beside
     * @param made  how many students of the class have made a mistake before; those that nobody made need not be there
     */
    public record Of(String title, String className, String day, List<KeySheet> sheets, Optional<Before> after, Map<KeySheet.Made, Integer> made) {

        public Of {
            sheets = List.copyOf(sheets);
            made = Map.copyOf(made);
        }
    }

    /** An earlier assignment. */
    public record Before(String title, List<KeySheet> sheets) {

        public Before {
            sheets = List.copyOf(sheets);
        }
    }

    // What the templates see

    record Laid(Leaf leaf, Of key, List<Glance> glance, List<Table> tables, List<Spread> spread) {}

    /** A row of the first table: all right answers of a sheet. */
    record Glance(String number, String seat, String name, List<String> answers) {}

    /** The answers of one exercise at one place of the sheets, some at a time. */
    record Table(int place, String title, List<Column> columns, List<Row> rows) {}

    /** An answer, and the mistakes that stand beside it. */
    record Column(String letter, List<String> slips) {}

    record Row(String number, String seat, String name, List<Cell> cells) {}

    /** @param slips beside an answer: empty where the mistake does not show in these numbers */
    record Cell(String right, List<String> slips) {}

    /** How equally hard the problems of a place are. */
    record Spread(String of, int place, String title, int sheets, int level, int lines, String letter, String least, String most) {}

    record Folded(Leaf leaf, String title, List<KeySheet> sheets) {}

    /** The markup of the key of a class. */
    public String markup(Of key) {
        List<Table> tables = new ArrayList<>();
        groups(key.sheets()).values().forEach(group -> tables.addAll(tables(group, key.made())));
        List<Spread> spread = new ArrayList<>(spread("", key.sheets()));
        key.after().ifPresent(b -> spread.addAll(spread(b.title(), b.sheets())));
        boolean several = key.sheets().stream().mapToInt(s -> s.problems().size()).max().orElse(0) > 1;
        Leaf leaf = Leaf.of(size, true, "10mm 10mm 12mm 10mm", printing.words().say("paper.key-of", List.of(key.title())), "key");
        return printing.markup("paper-key", new Laid(leaf, key, several ? glance(key.sheets()) : List.of(), tables, spread));
    }

    /** The markup of the keys to be folded: of some sheets at a time, so that a long file is made piece by piece. */
    public List<String> folded(String title, List<KeySheet> sheets) {
        List<String> all = new ArrayList<>();
        for (int from = 0; from < sheets.size(); from += FOLDED_AT_ONCE) {
            Leaf leaf = Leaf.of(size, false, "10mm 12mm 10mm 12mm", printing.words().say("paper.key-of", List.of(title)), "folded");
            all.add(printing.markup("paper-folded", new Folded(leaf, title, sheets.subList(from, Math.min(sheets.size(), from + FOLDED_AT_ONCE)))));
        }
        return all;
    }

    private static List<Glance> glance(List<KeySheet> sheets) {
        return sheets.stream().map(s -> new Glance(s.number(), s.seat(), s.name(), s.problems().stream().map(Key::answers).toList())).toList();
    }

    private static String answers(KeySheet.Problem problem) {
        List<KeySheet.Answer> all = problem.answers();
        return all.size() == 1 ? all.get(0).right() : String.join(" · ", all.stream().map(a -> a.letter() + "\u00A0" + a.right()).toList());
    }

    /** A problem on a sheet. */
    private record On(KeySheet sheet, KeySheet.Problem problem) {}

    /** The same exercise at the same place, in the order of places. */
    private static Map<String, List<On>> groups(List<KeySheet> sheets) {
        Map<String, List<On>> groups = new LinkedHashMap<>();
        sheets.stream().flatMap(s -> s.problems().stream().map(p -> new On(s, p))).sorted(Comparator.comparingInt(o -> o.problem().place()))
                .forEach(o -> groups.computeIfAbsent(o.problem().place() + " " + o.problem().exercise(), k -> new ArrayList<>()).add(o));
        return groups;
    }

    private static List<Table> tables(List<On> group, Map<KeySheet.Made, Integer> made) {
        KeySheet.Problem first = group.get(0).problem();
        List<Table> tables = new ArrayList<>();
        for (int from = 0; from < first.answers().size(); from += ASKS) {
            List<String> letters = first.answers().subList(from, Math.min(first.answers().size(), from + ASKS)).stream().map(KeySheet.Answer::letter).toList();
            List<List<KeySheet.Slip>> slips = letters.stream().map(l -> likeliest(group, l, made)).toList();
            List<Column> columns = new ArrayList<>();
            for (int i = 0; i < letters.size(); i++) {
                columns.add(new Column(letters.get(i), slips.get(i).stream().map(KeySheet.Slip::title).toList()));
            }
            tables.add(new Table(first.place(), first.title(), columns, group.stream().map(o -> row(o, letters, slips)).toList()));
        }
        return tables;
    }

    /**
     * The mistakes that most of the class have made before in this exercise; of equals, those that show on the most sheets, and then
     * those that the bank names first.
     */
    private static List<KeySheet.Slip> likeliest(List<On> group, String letter, Map<KeySheet.Made, Integer> made) {
        String exercise = group.get(0).problem().exercise();
        Map<String, Integer> shown = new LinkedHashMap<>();
        Map<String, KeySheet.Slip> slips = new LinkedHashMap<>();
        group.stream().flatMap(o -> answer(o, letter).stream()).flatMap(a -> a.slips().stream()).forEach(s -> {
            shown.merge(s.name(), 1, Integer::sum);
            slips.putIfAbsent(s.name(), s);
        });
        Comparator<String> likelier = Comparator.<String>comparingInt(s -> -made.getOrDefault(new KeySheet.Made(exercise, s), 0)).thenComparingInt(s -> -shown.get(s));
        return shown.keySet().stream().sorted(likelier).limit(SLIPS).map(slips::get).toList();
    }

    private static Stream<KeySheet.Answer> answers(On on, String letter) {
        return on.problem().answers().stream().filter(a -> a.letter().equals(letter));
    }

    private static Optional<KeySheet.Answer> answer(On on, String letter) {
        return answers(on, letter).findFirst();
    }

    private static Row row(On on, List<String> letters, List<List<KeySheet.Slip>> slips) {
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i < letters.size(); i++) {
            Optional<KeySheet.Answer> answer = answer(on, letters.get(i));
            cells.add(new Cell(answer.map(KeySheet.Answer::right).orElse(""),
                    slips.get(i).stream().map(s -> answer.flatMap(a -> a.slip(s.name())).map(KeySheet.Slip::gives).orElse("")).toList()));
        }
        return new Row(on.sheet().number(), on.sheet().seat(), on.sheet().name(), cells);
    }

    private static List<Spread> spread(String of, List<KeySheet> sheets) {
        List<Spread> all = new ArrayList<>();
        for (List<On> group : groups(sheets).values()) {
            KeySheet.Problem p = group.get(0).problem();
            Set<String> letters = new LinkedHashSet<>(p.answers().stream().filter(a -> a.amount().isPresent()).map(KeySheet.Answer::letter).toList());
            for (String letter : letters) {
                List<KeySheet.Answer> answers = group.stream().flatMap(o -> answers(o, letter)).filter(a -> a.amount().isPresent())
                        .sorted(Comparator.comparing(a -> a.amount().orElseThrow())).toList();
                all.add(new Spread(of, p.place(), p.title(), group.size(), p.level(), p.lines(), letter, answers.get(0).right(), answers.get(answers.size() - 1).right()));
            }
            if (letters.isEmpty()) {
                all.add(new Spread(of, p.place(), p.title(), group.size(), p.level(), p.lines(), "", "", ""));
            }
        }
        return all;
    }
}
