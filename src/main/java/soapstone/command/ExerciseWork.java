package soapstone.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import soapstone.bank.Bank;
import soapstone.exercise.Ask;
import soapstone.exercise.Exercise;
import soapstone.exercise.Given;
import soapstone.exercise.Line;
import soapstone.exercise.Model;
import soapstone.expression.FormulaBody;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Shown;
import soapstone.variant.Worked;
import soapstone.variant.WorkedLine;

/**
 * An exercise with one's own numbers. What the working reads has to be given; a number that is hidden from students is
 * needed only where the working itself reads it, and what was derived from hidden numbers is given in their place.
 */
final class ExerciseWork {

    private final Bank bank;
    private final Model model;

    ExerciseWork(Bank bank, Exercise exercise, UnitSystem system) {
        this.bank = bank;
        this.model = exercise.model(system);
    }

    void work(List<Pair> typed, ObjectNode data) {
        List<String> names = model.givens().stream().map(Given::name).toList();
        List<String> hidden = model.givens().stream().filter(g -> g.hidden() && Double.isNaN(g.settled())).map(Given::name).toList();
        Bench bench = new Bench(model.program());
        bench.put(typed, names);
        bench.settle(model.givens());
        bench.run();
        checkAllGiven(bench, names, hidden);
        bench.checkDefined();
        LimitCheck.of(bank, bench).check(working());
        data.set("unfit", unfit(bench));
        lines(bench, data.putArray("lines"));
        ObjectNode result = data.putObject("result");
        for (Ask ask : model.asks()) {
            result.set(ask.name(), Values.answer(model, bench.frame(), ask));
        }
    }

    private List<Line> working() {
        return model.lines().stream().filter(l -> l.phase() == Line.Phase.WORKING).toList();
    }

    private void checkAllGiven(Bench bench, List<String> names, List<String> hidden) {
        Set<String> missing = new LinkedHashSet<>();
        working().forEach(l -> missing.addAll(bench.missing(l.slot(), names, hidden)));
        if (!missing.isEmpty()) {
            throw Refusal.usage("Still to be given: " + String.join(", ", missing) + ". Write --given NAME=TEXT for each.");
        }
    }

    /** What the exercise asks of its own draws and these numbers do not fulfil: worth a note, but the sum is still right. */
    private ArrayNode unfit(Bench bench) {
        List<String> unfit = new ArrayList<>();
        for (Model.Rule rule : model.where()) {
            boolean known = true;
            for (int i = 0; i < model.program().slots().size(); i++) {
                known &= (rule.condition().reads() & 1L << i) == 0 || bench.isKnown(i);
            }
            if (known && !rule.condition().holds(bench.frame())) {
                unfit.add("in the exercise " + Shown.condition(model, rule).replace('_', ' '));
            }
        }
        return Json.texts(unfit);
    }

    private void lines(Bench bench, ArrayNode lines) {
        Map<String, FormulaBody> book = new LinkedHashMap<>();
        bank.formulas().forEach((name, formula) -> book.put(name, formula.body()));
        for (WorkedLine line : new Worked(model, book).lines(bench.frame())) {
            ObjectNode value = Values.slot(model, bench.frame(), line.slot());
            ObjectNode node = lines.addObject();
            node.put("name", model.program().slot(line.slot()).name());
            node.set("value", value.get("value"));
            node.set("unit", value.get("unit"));
            node.put("text", Json.plain(line.text()));
            node.put("say", Json.plain(line.say()));
        }
    }
}
