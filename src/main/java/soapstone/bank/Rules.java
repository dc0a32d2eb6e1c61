package soapstone.bank;

import java.util.List;
import soapstone.source.Issues;

/** The rules, one class each. */
final class Rules {

    static final List<Rule> ALL = List.of(new GivensAreTold(), new NamesAreUsed(), new StepsSayWhy(), new SlipsReachAnAsk(),
            new EnoughSlips(), new WithinFitsTo(), new TextIsWhole(), new TiesAreSlips(), new ChecksFitNames(), new StoryIsShort(), new ConventionsFit());

    private Rules() {}

    static void look(Draft draft, Issues issues) {
        ALL.forEach(rule -> rule.look(draft, issues));
    }
}
