package soapstone.bank;

import soapstone.exercise.Ask;
import soapstone.exercise.Model;
import soapstone.source.Issues;

/** What is marked right reaches at least as far as the rounding that is asked for. */
final class WithinFitsTo implements Rule {

    private static final double SLACK = 1e-9;

    @Override
    public void look(Draft draft, Issues issues) {
        look(draft, draft.exercise().us(), issues);
        look(draft, draft.exercise().metric(), issues);
    }

    private void look(Draft draft, Model model, Issues issues) {
        for (Ask ask : model.asks()) {
            // A fraction that is read off a grid is exact: a neighboring line must not count.
            boolean exact = ask.kind() == Ask.Kind.FRACTION;
            if (!exact && ask.within() < ask.to() / 2 - SLACK) {
                issues.add("within", draft.ask(ask.name()), "'" + ask.name() + "' in a " + model.system().word()
                        + " draw marks an answer wrong that is rounded as asked", "within: at least half of to");
            }
        }
    }
}
