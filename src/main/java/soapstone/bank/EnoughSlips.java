package soapstone.bank;

import soapstone.source.Issues;

/** Three slips or more, so that a wrong answer has something to be named by. */
final class EnoughSlips implements Rule {

    private static final int LEAST = 3;

    @Override
    public void look(Draft draft, Issues issues) {
        int slips = draft.exercise().us().slips().size();
        if (slips < LEAST) {
            issues.add("slip", draft.root().place("slips"), "the exercise has fewer than " + LEAST + " slips: " + slips, "At least " + LEAST);
        }
    }
}
