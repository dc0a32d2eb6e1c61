package soapstone.bank;

import soapstone.exercise.Ask;
import soapstone.exercise.Model;
import soapstone.exercise.Slip;
import soapstone.source.Issues;

/** A slip has to change something that is asked. */
final class SlipsReachAnAsk implements Rule {

    @Override
    public void look(Draft draft, Issues issues) {
        Model model = draft.exercise().us();
        for (Slip slip : model.slips()) {
            long reached = slip.change().mask();
            for (int i = 0; i < model.program().slots().size(); i++) {
                reached |= (model.program().reads(i) & reached) != 0 ? 1L << i : 0;
            }
            boolean asked = false;
            for (Ask ask : model.asks()) {
                asked |= (reached & 1L << ask.slot()) != 0 || ask.second() >= 0 && (reached & 1L << ask.second()) != 0;
            }
            if (!asked) {
                issues.add("slip", draft.slip(slip.name()), "no line that the slip '" + slip.name() + "' swaps reaches an ask", "Swap a line above the asked one");
            }
        }
    }
}
