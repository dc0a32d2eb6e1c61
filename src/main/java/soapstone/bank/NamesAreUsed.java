package soapstone.bank;

import soapstone.exercise.Ask;
import soapstone.exercise.Line;
import soapstone.exercise.Model;
import soapstone.exercise.Slip;
import soapstone.source.Issues;

/** Every line of the working leads to an ask: a line that nothing reads is a step that nobody needs. */
final class NamesAreUsed implements Rule {

    @Override
    public void look(Draft draft, Issues issues) {
        Model model = draft.exercise().us();
        long used = 0;
        for (Ask ask : model.asks()) {
            used |= 1L << ask.slot() | (ask.second() >= 0 ? 1L << ask.second() : 0);
        }
        for (int slot = model.program().slots().size() - 1; slot >= 0; slot--) {
            used |= (used & 1L << slot) != 0 ? model.program().reads(slot) : 0;
        }
        for (Slip slip : model.slips()) {
            used |= slip.change().mask();
        }
        for (Line line : model.lines()) {
            if (line.phase() == Line.Phase.WORKING && (used & 1L << line.slot()) == 0) {
                String name = model.program().slot(line.slot()).name();
                issues.add("unused", draft.line(name), "the line '" + name + "' leads to no ask",
                        "Take it out, or move it to after:");
            }
        }
    }
}
