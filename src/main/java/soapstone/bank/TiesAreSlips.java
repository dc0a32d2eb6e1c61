package soapstone.bank;

import java.util.List;
import soapstone.exercise.Exercise;
import soapstone.exercise.Slip;
import soapstone.source.Issues;
import soapstone.source.Near;

/** Ties name slips of the exercise, two or more. */
final class TiesAreSlips implements Rule {

    @Override
    public void look(Draft draft, Issues issues) {
        List<String> known = draft.exercise().us().slips().stream().map(Slip::name).toList();
        for (Exercise.Tie tie : draft.exercise().ties()) {
            if (tie.slips().size() < 2) {
                issues.add("tie", draft.root().place("ties"), "a tie names fewer than two slips", "Two or more");
            }
            tie.slips().stream().filter(s -> !known.contains(s))
                    .forEach(s -> issues.add("tie", draft.root().place("ties"), "there is no slip '" + s + "'", Near.suggest(s, known)));
        }
    }
}
