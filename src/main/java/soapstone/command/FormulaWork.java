package soapstone.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import soapstone.bank.Bank;
import soapstone.exercise.Formula;
import soapstone.expression.FormulaBody;
import soapstone.expression.Program;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Writing;

/** A formula of the book with one's own numbers. */
final class FormulaWork {

    private final Bank bank;
    private final Formula formula;
    private final Program program;
    private final UnitSystem system;

    FormulaWork(Bank bank, Formula formula, UnitSystem system) {
        this.bank = bank;
        this.formula = formula;
        this.program = formula.program(system);
        this.system = system;
    }

    void work(List<Pair> typed, ObjectNode data) {
        List<String> names = formula.body().takes().stream().map(FormulaBody.Parameter::name).toList();
        Bench bench = new Bench(program);
        bench.put(typed, names);
        List<String> missing = names.stream().filter(n -> !bench.isKnown(program.find(n))).toList();
        if (!missing.isEmpty()) {
            throw Refusal.usage("Still to be given: " + String.join(", ", missing) + ". Write --given NAME=TEXT for each.");
        }
        bench.run();
        LimitCheck.check(formula, system, bench.frame());
        List<FormulaBody.Line> lines = formula.body().lines();
        bench.checkDefined();
        data.set("unfit", Json.array());
        lines(bench, data.putArray("lines"));
        int last = program.find(lines.get(lines.size() - 1).name());
        data.putObject("result").set(formula.name(), Values.slot(program, bench.frame(), last));
    }

    private void lines(Bench bench, ArrayNode lines) {
        Map<String, FormulaBody> book = new LinkedHashMap<>();
        bank.formulas().forEach((name, f) -> book.put(name, f.body()));
        Writing writing = new Writing(n -> text(bench, n), n -> program.find(n) < 0 ? null : program.slot(program.find(n)).shown(), book, system);
        List<FormulaBody.Line> all = formula.body().lines();
        for (int i = 0; i < all.size(); i++) {
            FormulaBody.Line line = all.get(i);
            int slot = program.find(line.name());
            ObjectNode value = Values.slot(program, bench.frame(), slot);
            String name = i == all.size() - 1 ? formula.name() : line.name();
            List<String> parts = new ArrayList<>(List.of(name.replace('_', ' '), writing.write(line.value(), program.slot(slot).shown())));
            String result = Values.text(program, bench.frame(), slot);
            if (!parts.get(1).equals(result)) {
                parts.add(result);
            }
            ObjectNode node = lines.addObject();
            node.put("name", line.name());
            node.set("value", value.get("value"));
            node.set("unit", value.get("unit"));
            node.put("text", Json.plain(String.join(" = ", parts)));
            node.put("say", i < formula.steps().size() ? Json.plain(formula.steps().get(i)) : "");
        }
    }

    private String text(Bench bench, String name) {
        int slot = program.find(name);
        return slot < 0 ? name.replace('_', ' ') : Values.text(program, bench.frame(), slot);
    }
}
