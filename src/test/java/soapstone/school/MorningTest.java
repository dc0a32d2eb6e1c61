package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import soapstone.mark.Verdict;

class MorningTest {

    private static Morning.Progress progress(long person, String name, int handedIn, boolean typed, boolean excused) {
        return new Morning.Progress(person, name, 2, handedIn, typed, excused);
    }

    private static final List<Morning.Progress> CLASS = List.of(progress(1, "Ash", 2, false, false), progress(2, "Birch", 1, false, false),
            progress(3, "Cedar", 0, true, false), progress(4, "Elm", 0, false, false), new Morning.Progress(5, "Fir", 0, 0, false, false),
            progress(6, "Oak", 0, false, true));

    private static RoomAnswer answer(long person, long assignment, int minute, String exercise, long seed, AnswerMark mark) {
        return new RoomAnswer(person, assignment, assignment * 1000 + seed, Desks.MONDAY.plusSeconds(60L * minute), exercise, "equal-spacing", seed, mark);
    }

    private static RoomAnswer made(long person, long assignment, int minute, long seed, String family) {
        return answer(person, assignment, minute, "a/x", seed, Desks.mark(0, Verdict.SLIP, family + "-here", 0, 1, 0.01, family));
    }

    private static RoomAnswer right(long person, long assignment, int minute, long seed) {
        return answer(person, assignment, minute, "a/x", seed, Desks.mark(0, Verdict.RIGHT, "", 1, 1, 0.01));
    }

    private static List<String> names(List<Morning.Name> some) {
        return some.stream().map(Morning.Name::shown).toList();
    }

    @Test
    void saysWhoHandedInWhoIsAtItAndWhoHasNotBegun() {
        Morning morning = Morning.of(CLASS, List.of(), 1);
        assertThat(names(morning.handedIn())).containsExactly("Ash");
        assertThat(names(morning.stillOpen())).containsExactly("Birch", "Cedar");
        assertThat(names(morning.notBegun())).as("Oak is excused").containsExactly("Elm", "Fir");
        assertThat(morning.commonest()).isEmpty();
    }

    @Test
    void namesTheTwoCommonestMistakesOfThisAssignment() {
        Morning morning = Morning.of(CLASS, List.of(made(1, 1, 1, 11, "post"), made(2, 1, 1, 12, "post"), made(3, 1, 1, 13, "post"), made(4, 1, 1, 14, "half"),
                made(5, 1, 1, 15, "half"), made(6, 1, 1, 16, "once"), made(4, 2, 1, 24, "old"), made(5, 2, 1, 25, "old"), made(1, 2, 1, 21, "old"), made(2, 2, 1, 22, "old")), 1);
        assertThat(morning.commonest()).extracting(m -> m.row().name()).containsExactly("post", "half");
        assertThat(morning.commonest().get(0).row().students()).extracting(SlipMap.Student::name).containsExactly("Ash", "Birch", "Cedar");
    }

    @Test
    void saysHowItWentWithOtherNumbers() {
        List<RoomAnswer> answers = List.of(made(1, 1, 1, 11, "post"), made(2, 1, 1, 12, "post"), made(3, 1, 1, 13, "post"), made(4, 1, 1, 14, "post"),
                // Ash did it again in the drill; Birch did it right; Cedar was wrong in another way; Elm had only the same numbers.
                made(1, 2, 9, 31, "post"), right(2, 2, 9, 32), made(3, 2, 9, 33, "half"), right(4, 1, 9, 14));
        Morning.Mistake mistake = Morning.of(CLASS, answers, 1).commonest().get(0);
        assertThat(names(mistake.who(Morning.Afterwards.AGAIN))).containsExactly("Ash");
        assertThat(names(mistake.who(Morning.Afterwards.RIGHT))).containsExactly("Birch");
        assertThat(names(mistake.who(Morning.Afterwards.OTHERWISE))).containsExactly("Cedar");
        assertThat(names(mistake.who(Morning.Afterwards.NOT_TRIED))).containsExactly("Elm");
    }

    @Test
    void theNewestTryWithOtherNumbersDecidesAndWhatCameBeforeDoesNot() {
        List<RoomAnswer> answers = List.of(right(1, 2, 0, 30), made(1, 1, 1, 11, "post"), made(1, 2, 5, 31, "post"), right(1, 2, 9, 32), right(2, 2, 0, 41), made(2, 1, 1, 12, "post"));
        Morning.Mistake mistake = Morning.of(CLASS, answers, 1).commonest().get(0);
        assertThat(names(mistake.who(Morning.Afterwards.RIGHT))).containsExactly("Ash");
        assertThat(names(mistake.who(Morning.Afterwards.NOT_TRIED))).containsExactly("Birch");
    }

    @Test
    void ofTheSameExerciseOnlyTheAsksCountWhereItWasMade() {
        AnswerMark wrongElsewhere = Desks.mark(1, Verdict.UNEXPLAINED, "", 0, 1, 0);
        List<RoomAnswer> answers = List.of(made(1, 1, 1, 11, "post"), right(1, 2, 9, 32), answer(1, 2, 9, "a/x", 32, wrongElsewhere));
        assertThat(names(Morning.of(CLASS, answers, 1).commonest().get(0).who(Morning.Afterwards.RIGHT))).containsExactly("Ash");
        List<RoomAnswer> ofTheSkill = List.of(made(1, 1, 1, 11, "post"), answer(1, 2, 9, "b/y", 32, wrongElsewhere));
        assertThat(names(Morning.of(CLASS, ofTheSkill, 1).commonest().get(0).who(Morning.Afterwards.OTHERWISE))).containsExactly("Ash");
    }

    @Test
    void everyWayItWentHasItsWords() {
        for (Morning.Afterwards how : Morning.Afterwards.values()) {
            assertThat(Desks.WORDS.apply(how.word())).contains("with other numbers");
        }
    }
}
