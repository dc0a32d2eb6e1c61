package soapstone.command;

import java.util.List;
import soapstone.bank.Bank;
import soapstone.exercise.Formula;
import soapstone.exercise.Line;
import soapstone.expression.Frame;
import soapstone.expression.Node;
import soapstone.expression.Program;
import soapstone.expression.Value;
import soapstone.quantity.UnitSystem;

/** Refuses numbers for which a formula does not hold. */
final class LimitCheck {

    private final Bank bank;
    private final Bench bench;

    private LimitCheck(Bank bank, Bench bench) {
        this.bank = bank;
        this.bench = bench;
    }

    static LimitCheck of(Bank bank, Bench bench) {
        return new LimitCheck(bank, bench);
    }

    /** Looks at each limit of a formula after a run of its own program. */
    static void check(Formula formula, UnitSystem system, Frame f) {
        List<Value> limits = formula.limits(system);
        for (int i = 0; i < limits.size(); i++) {
            if (!limits.get(i).holds(f)) {
                throw Refusal.failed("The formula '" + formula.name() + "' holds only where " + formula.limits().get(i).text() + ".");
            }
        }
    }

    /** Looks at the formulas that lines of an exercise call with names or numbers. */
    void check(List<Line> lines) {
        for (Line line : lines) {
            look(bench.program().slot(line.slot()).value());
        }
    }

    private void look(Node node) {
        if (node instanceof Node.Sign sign) {
            look(sign.of());
        } else if (node instanceof Node.Pair pair) {
            look(pair.left());
            look(pair.right());
        } else if (node instanceof Node.Call call) {
            call.with().forEach(this::look);
            Formula formula = bank.formulas().get(call.name());
            if (formula != null) {
                called(formula, call);
            }
        }
    }

    private boolean isAmount(String name) {
        int slot = bench.program().find(name);
        return slot >= 0 && bench.program().slot(slot).type().isAmount();
    }

    private void called(Formula formula, Node.Call call) {
        UnitSystem system = bench.program().system();
        Program program = formula.program(system);
        Frame f = program.frame();
        for (int i = 0; i < call.with().size(); i++) {
            int slot = program.find(formula.body().takes().get(i).name());
            Node with = call.with().get(i);
            if (with instanceof Node.Amount amount) {
                f.set(slot, amount.unit().toBase(amount.amount(), system));
            } else if (with instanceof Node.Name name && isAmount(name.name())) {
                f.set(slot, bench.frame().number(bench.program().find(name.name())));
            } else {
                return;
            }
        }
        program.run(f);
        check(formula, system, f);
    }
}
