package soapstone.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import soapstone.bank.Bank;
import soapstone.exercise.Caution;
import soapstone.exercise.Formula;
import soapstone.quantity.UnitSystem;

/** Works an exercise or a formula with one's own numbers. */
@Command(name = "work", description = "Work an exercise or a formula with your own numbers.", mixinStandardHelpOptions = true)
final class Work implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private BankOptions bank;

    @Parameters(paramLabel = "EXERCISE|FORMULA", description = "An exercise such as spacing/bolt-holes, or a formula such as bend_allowance.")
    private String what;

    @Option(names = "--given", paramLabel = "NAME=TEXT", description = "A number to work with, once for each name; without a unit it takes the usual one.")
    private List<String> given = new ArrayList<>();

    @Option(names = "--units", paramLabel = "us|metric", defaultValue = "us", description = "Unit system: us (the default) or metric.")
    private String units;

    @Mixin
    private Output output;

    @Override
    public Integer call() {
        UnitSystem system = SheetOptions.units(units);
        List<Pair> typed = Pair.all("--given NAME=TEXT", given);
        ObjectNode data = data(system, typed);
        output.print(spec.commandLine().getOut(), data, () -> lines(data));
        return 0;
    }

    private ObjectNode data(UnitSystem system, List<Pair> typed) {
        Bank all = bank.usable();
        if (what.indexOf('/') >= 0) {
            var exercise = bank.exercise(what);
            ObjectNode data = Json.object().put("exercise", what).put("units", system.word());
            new ExerciseWork(all, exercise, system).work(typed, data);
            return cautions(data, all, exercise.cautions());
        }
        Formula formula = all.formulas().get(what);
        if (formula == null) {
            List<String> known = new ArrayList<>(all.formulas().keySet());
            known.addAll(all.exercises().keySet());
            throw Refusal.usage("There is no exercise or formula '" + what + "'. " + BankOptions.near(what, known));
        }
        ObjectNode data = Json.object().put("formula", what).put("units", system.word());
        new FormulaWork(all, formula, system).work(typed, data);
        return cautions(data, all, formula.caution().isEmpty() ? List.of() : List.of(formula.caution()));
    }

    private static ObjectNode cautions(ObjectNode data, Bank bank, List<String> names) {
        ArrayNode cautions = data.putArray("cautions");
        for (String name : names) {
            Caution caution = bank.cautions().get(name);
            if (caution != null) {
                cautions.addObject().put("name", name).put("title", caution.title()).put("says", Json.plain(caution.says()));
            }
        }
        return data;
    }

    private static List<String> lines(ObjectNode data) {
        List<String> lines = new ArrayList<>();
        data.get("cautions").forEach(c -> lines.add("CAUTION: " + c.get("title").asText() + ". " + c.get("says").asText()));
        data.get("unfit").forEach(u -> lines.add("Note: " + u.asText()));
        data.get("lines").forEach(l -> lines.add(l.get("text").asText()));
        data.get("result").properties().forEach(r -> lines.add("Result: " + r.getKey().replace('_', ' ') + " = " + r.getValue().get("text").asText()));
        return lines;
    }
}
