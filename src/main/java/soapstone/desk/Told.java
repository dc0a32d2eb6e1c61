package soapstone.desk;

import soapstone.exercise.Given;
import soapstone.exercise.Line;
import soapstone.exercise.Model;
import soapstone.expression.Frame;
import soapstone.expression.Node;
import soapstone.expression.Program;
import soapstone.expression.Value;
import soapstone.variant.Answers;

/**
 * What a task tells: its givens, its constants, and lines that do no more than put such in a row. A drawing that asks
 * prints nothing else, since a number of the working would give a step of it away.
 */
final class Told {

    private final Program program;
    private final Frame run;
    private long slots;
    private long working;

    Told(Model model, Frame run) {
        this.program = model.program();
        this.run = run;
        for (Given given : model.givens()) {
            slots |= given.hidden() ? 0 : 1L << given.slot();
        }
        for (Line line : model.lines()) {
            working |= line.phase() == Line.Phase.WORKING ? 1L << line.slot() : 0;
            boolean row = line.phase() == Line.Phase.AFTER && isRow(program.slot(line.slot()).value());
            slots |= row || line.phase() == Line.Phase.CONSTANT ? 1L << line.slot() : 0;
        }
    }

    private boolean isRow(Node node) {
        if (node instanceof Node.Name name) {
            return program.find(name.name()) >= 0 && has(program.find(name.name()));
        }
        return node instanceof Node.Amount
                || node instanceof Node.Call call && call.name().equals("list") && call.with().stream().allMatch(this::isRow);
    }

    private boolean has(int slot) {
        return (slots & 1L << slot) != 0;
    }

    /**
     * Whether an amount of a drawing's argument may be printed. What the drawing works out itself from told values may,
     * unless it is what a line of the working gives: that is the student's own work.
     *
     * @param slot   where the argument's value stands, or -1 when the drawing works it out itself
     * @param amount one of its amounts, in base units
     */
    boolean tells(Value value, int slot, double amount) {
        if (slot >= 0) {
            return has(slot);
        }
        boolean plain = (value.reads() & ~slots) == 0;
        return plain && (value.reads() == 0 || isOneOf(slots, value, amount) || !isOneOf(working, value, amount));
    }

    /** Whether one of some slots holds the amount. */
    private boolean isOneOf(long some, Value value, double amount) {
        return program.slots().stream().filter(s -> (some & 1L << s.index()) != 0 && s.type().isAmount())
                .filter(s -> s.type().dimension().equals(value.type().dimension()))
                .anyMatch(s -> Math.abs(run.number(s.index()) - amount) <= Answers.NOISE * Math.max(1, Math.abs(amount)));
    }
}
