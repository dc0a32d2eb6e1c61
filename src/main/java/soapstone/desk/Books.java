package soapstone.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import soapstone.exercise.Check;
import soapstone.exercise.Exercise;
import soapstone.exercise.Formula;
import soapstone.exercise.Table;
import soapstone.page.CheckRow;
import soapstone.page.FormulaTopic;
import soapstone.page.FormulaView;
import soapstone.page.Reference;
import soapstone.page.TableView;
import soapstone.proof.CheckRun;
import soapstone.quantity.Quantity;
import soapstone.quantity.Show;
import soapstone.quantity.ShopPrinter;
import soapstone.quantity.Units;
import soapstone.variant.Writing;
import soapstone.quantity.UnitSystem;

/** The formula book and the tables. */
final class Books {

    private final Library library;
    private final Links links;

    Books(Library library, Links links) {
        this.library = library;
        this.links = links;
    }

    List<FormulaTopic> topics() {
        Map<String, List<FormulaTopic.FormulaLink>> topics = new LinkedHashMap<>();
        library.bank().formulas().values().forEach(f -> topics.computeIfAbsent(f.topic(), t -> new ArrayList<>())
                .add(new FormulaTopic.FormulaLink(f.name(), f.symbol(), f.says())));
        return topics.entrySet().stream().map(e -> new FormulaTopic(title(e.getKey()), e.getValue())).toList();
    }

    private static String title(String topic) {
        String words = topic.replace('-', ' ');
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    FormulaView formula(Formula f) {
        List<FormulaView.Takes> takes = new ArrayList<>();
        for (int i = 0; i < f.body().takes().size(); i++) {
            takes.add(new FormulaView.Takes(f.body().takes().get(i).name().replace('_', ' '), f.dims().get(i)));
        }
        List<FormulaView.Line> lines = new ArrayList<>();
        for (int i = 0; i < f.body().lines().size(); i++) {
            var line = f.body().lines().get(i);
            String name = line.name().equals(Check.RESULT) ? "" : line.name().replace('_', ' ');
            lines.add(new FormulaView.Line(name, Writing.symbolic(line.value(), UnitSystem.US), f.steps().get(i)));
        }
        return new FormulaView(f.name(), f.says(), f.symbol(), takes, f.dims().get(f.dims().size() - 1), lines,
                f.limits().stream().map(l -> written(l.text())).toList(), f.source(), links.cautions(f.caution().isEmpty() ? List.of() : List.of(f.caution())),
                f.slips().stream().map(this::slip).toList(), f.checks().stream().map(c -> check(CheckRun.of(f, c))).toList(), usedIn(f),
                library.tablesOf(f).stream().map(links::table).toList());
    }

    private static String written(String text) {
        try {
            return Writing.symbolic(soapstone.expression.Parser.expression(text), UnitSystem.US);
        } catch (soapstone.expression.Parser.Fault e) {
            return text;
        }
    }

    private FormulaView.Slip slip(Formula.FormulaSlip slip) {
        return new FormulaView.Slip(links.family(slip.family()), written(slip.written()), says(slip.say()),
                links.remedy(slip.family()).map(List::of).orElse(List.of()));
    }

    /** A slip's text without a draw: places become plain words. */
    private static String says(String text) {
        return text.replace("{theirs.", "{").replace("{result}", "the result").replaceAll("\\{([a-z_0-9]+)}", "the $1").replace('_', ' ');
    }

    private List<soapstone.page.ExerciseLink> usedIn(Formula formula) {
        return library.bank().exercises().values().stream().filter(e -> library.formulasOf(e).contains(formula)).map(links::exercise).toList();
    }

    private static CheckRow check(CheckRun run) {
        Check check = run.check();
        List<String> given = new ArrayList<>();
        check.given().forEach((name, item) -> given.add(name.replace('_', ' ') + " " + item.text()));
        String printed = String.join("; ", check.expect().values().stream().map(Check.Item::text).toList());
        CheckRow.Outcome outcome = check.misprint() && !run.matches() ? CheckRow.Outcome.MISPRINT
                : run.matches() ? CheckRow.Outcome.AGREES : CheckRow.Outcome.DIFFERS;
        String computed = run.told().contains("worked out ") ? run.told().substring(run.told().lastIndexOf("worked out ") + "worked out ".length()) : run.told();
        return new CheckRow(String.join(", ", given), printed, within(check.within()), computed, outcome,
                Links.source(check), check.note());
    }

    private static String within(Quantity q) {
        return q == null ? "" : q.unit().equals(Units.ONE) ? ShopPrinter.number(q.amount(), Show.decimal(0), '.')
                : ShopPrinter.number(q.amount(), Show.decimal(0), '.') + " " + q.unit().symbol();
    }

    TableView table(Table t) {
        List<String> heads = new ArrayList<>();
        heads.add(head(t.keyName(), t.keyUnit() == null ? "" : t.keyUnit().symbol()));
        boolean keysOnly = t.columns().size() == 1 && t.columns().get(0).equals(t.keyName());
        for (int c = 0; !keysOnly && c < t.columns().size(); c++) {
            heads.add(head(t.columns().get(c), t.unit(c).symbol()));
        }
        List<List<String>> columns = new ArrayList<>();
        for (int c = 0; !keysOnly && c < t.columns().size(); c++) {
            columns.add(column(t, c));
        }
        List<List<String>> rows = new ArrayList<>();
        for (int r = 0; r < t.rows(); r++) {
            List<String> row = new ArrayList<>(List.of(t.keyLabel(r)));
            for (List<String> column : columns) {
                row.add(column.get(r));
            }
            rows.add(row);
        }
        return new TableView(t.name(), t.title(), t.source(), List.of(), heads, rows, users(t));
    }

    /** The cells of a column, all to the same place. */
    private static List<String> column(Table t, int c) {
        List<String> cells = new ArrayList<>();
        int places = 0;
        for (int r = 0; r < t.rows(); r++) {
            String cell = Double.isNaN(t.cell(r, c)) ? "" : ShopPrinter.number(t.cell(r, c), Show.decimal(0), '.');
            places = Math.max(places, places(cell));
            cells.add(cell);
        }
        int most = places;
        return cells.stream().map(cell -> cell.isEmpty() || places(cell) == most ? cell
                : cell + (places(cell) == 0 ? "." : "") + "0".repeat(most - places(cell))).toList();
    }

    private static int places(String number) {
        return number.indexOf('.') < 0 ? 0 : number.length() - number.indexOf('.') - 1;
    }

    private static String head(String name, String unit) {
        String words = name.replace('_', ' ');
        return unit.isEmpty() ? words : words + ", " + unit;
    }

    private List<Reference> users(Table t) {
        List<Reference> users = new ArrayList<>();
        for (Exercise e : library.bank().exercises().values()) {
            if (library.tablesOf(e).contains(t.name())) {
                users.add(links.reference(e));
            }
        }
        library.bank().formulas().values().stream().filter(f -> library.tablesOf(f).contains(t.name())).forEach(f -> users.add(links.formula(f.name())));
        return users;
    }

    Optional<Formula> find(String name) {
        return Optional.ofNullable(library.bank().formulas().get(name));
    }
}
