package soapstone.bank;

import soapstone.exercise.Line;
import soapstone.source.Issues;

/** Every line of the working says what it does. */
final class StepsSayWhy implements Rule {

    @Override
    public void look(Draft draft, Issues issues) {
        for (Line line : draft.exercise().us().lines()) {
            if (line.phase() == Line.Phase.WORKING && line.say().isEmpty()) {
                String name = draft.exercise().us().program().slot(line.slot()).name();
                issues.add("say", draft.line(name), "the line '" + name + "' does not say what it does", "say: one short sentence");
            }
        }
    }
}
