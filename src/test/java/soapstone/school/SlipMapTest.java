package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import soapstone.bank.SmallBank;
import soapstone.mark.Verdict;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Variant;

class SlipMapTest {

    private static final Map<Long, String> NAMES = names("Ash", "Birch", "Cedar", "Elm", "Fir", "Oak");

    private static Map<Long, String> names(String... shown) {
        Map<Long, String> names = new LinkedHashMap<>();
        for (String name : shown) {
            names.put(names.size() + 1L, name);
        }
        return names;
    }

    private static RoomAnswer answer(long person, String exercise, AnswerMark mark) {
        return answer(person, 1, exercise, "equal-spacing", mark);
    }

    private static RoomAnswer answer(long person, long assignment, String exercise, String skill, AnswerMark mark) {
        return new RoomAnswer(person, assignment, person * 10 + exercise.length(), Desks.MONDAY.plusSeconds(person), exercise, skill, person, mark);
    }

    private static AnswerMark slip(String name, double odds, String... families) {
        return Desks.mark(0, Verdict.SLIP, name, 0, 1, odds, families);
    }

    private static AnswerMark other(Verdict verdict, double odds) {
        return Desks.mark(0, verdict, "", 0, 1, odds);
    }

    @Test
    void rowsAreByStudentsWithNamesAnswersAndTheShareOfTheRoom() {
        List<RoomAnswer> answers = List.of(answer(4, "a/x", slip("one-more", 0.02, "fence-post")), answer(2, "a/x", slip("one-more", 0.03, "fence-post")),
                answer(3, "a/x", slip("half", 0.01, "radius")), answer(1, "a/x", other(Verdict.RIGHT, 0.02)), answer(5, "a/x", other(Verdict.UNEXPLAINED, 0.05)));
        SlipMap map = SlipMap.of(answers, NAMES, SlipMap.term());
        assertThat(map.room()).isEqualTo(5);
        assertThat(map.slips()).extracting(SlipMap.Row::name).containsExactly("one-more", "half");
        assertThat(map.families()).extracting(SlipMap.Row::name).containsExactly("fence-post", "radius");
        SlipMap.Row first = map.slips().get(0);
        assertThat(first.students()).extracting(SlipMap.Student::name).containsExactly("Birch", "Elm");
        assertThat(first.students().get(0).answers()).containsExactly(answers.get(1));
        assertThat(first.exercise()).isEqualTo("a/x");
        assertThat(first.share()).isEqualTo(0.4);
        assertThat(Desks.WORDS.apply(map.slips().get(1).says())).isEqualTo("The answers of 1 of 5 students could be this.");
    }

    /** Four wrong answers with odds 0.03, 0.01, 0.02, 0.05; two of them named. Counted out by hand over all sixteen outcomes. */
    @Test
    void theOddsAreThoseOfEveryWrongAnswerToTheExercise() {
        List<RoomAnswer> answers = List.of(answer(4, "a/x", slip("one-more", 0.02, "fence-post")), answer(2, "a/x", slip("one-more", 0.03, "fence-post")),
                answer(3, "a/x", slip("half", 0.01, "radius")), answer(1, "a/x", other(Verdict.RIGHT, 0.5)), answer(5, "a/x", other(Verdict.UNEXPLAINED, 0.05)),
                answer(6, "b/y", other(Verdict.UNEXPLAINED, 0.9)));
        double expected = Chance.atLeast(2, new double[] {0.03, 0.01, 0.02, 0.05});
        SlipMap.Row row = SlipMap.of(answers, NAMES, SlipMap.term()).slips().get(0);
        assertThat(row.odds().orElseThrow()).isCloseTo(expected, within(1e-15));
        assertThat(expected).isCloseTo(0.0040, within(0.0001));
        assertThat(row.sure()).isEqualTo(SlipMap.Sure.FITS);
        assertThat(Desks.WORDS.apply(row.sure().word())).isEqualTo("fits");
        assertThat(Desks.WORDS.apply(row.against())).isEqualTo("If all wrong answers were random, so many would be named in about 4 of 1,000 rooms.");
    }

    @Test
    void aStudentCountsOnceAndHasOneChanceOutOfAllWrongAnswers() {
        RoomAnswer once = answer(1, "a/x", slip("one-more", 0.1, "fence-post"));
        RoomAnswer more = new RoomAnswer(1, 1, 99, Desks.MONDAY.plusSeconds(50), "a/x", "equal-spacing", 7, slip("one-more", 0.2, "fence-post"));
        SlipMap.Row row = SlipMap.of(List.of(more, once), NAMES, SlipMap.term()).slips().get(0);
        assertThat(row.students()).hasSize(1);
        assertThat(row.students().get(0).answers()).as("in time").containsExactly(once, more);
        assertThat(row.odds().orElseThrow()).isCloseTo(1 - 0.9 * 0.8, within(1e-15));
        RoomAnswer sentAgain = new RoomAnswer(1, 1, once.problem(), Desks.MONDAY.plusSeconds(60), "a/x", "equal-spacing", 1, once.mark());
        assertThat(SlipMap.of(List.of(once, sentAgain), NAMES, SlipMap.term()).slips().get(0).odds().orElseThrow()).isCloseTo(0.1, within(1e-15));
    }

    @Test
    void carriedAnswersAndPairsAndRightOnesAreNotCounted() {
        List<RoomAnswer> answers = List.of(answer(1, "a/x", Desks.mark(1, Verdict.CARRIED, "one-more", 1, 1, 0.1, "fence-post")),
                answer(2, "a/x", slip("one-more+half", 0.1, "fence-post", "radius")), answer(3, "a/x", Desks.mark(0, Verdict.RIGHT, "one-more", 1, 1, 0.1, "fence-post")),
                answer(4, "a/x", other(Verdict.BLANK, 0.1)), answer(99, "a/x", slip("one-more", 0.1, "fence-post")));
        SlipMap map = SlipMap.of(answers, NAMES, SlipMap.term());
        assertThat(map.slips()).isEmpty();
        assertThat(map.families()).isEmpty();
        assertThat(map.room()).as("those who answered; blank is no answer, and 99 is not of the room").isEqualTo(3);
    }

    @Test
    void oneStudentOrOddsThatAreHighCouldBeAnything() {
        SlipMap one = SlipMap.of(List.of(answer(1, "a/x", slip("one-more", 0.0001, "fence-post"))), NAMES, SlipMap.term());
        assertThat(one.slips().get(0).sure()).isEqualTo(SlipMap.Sure.COULD_BE);
        SlipMap two = SlipMap.of(List.of(answer(1, "a/x", slip("one-more", 0.2, "fence-post")), answer(2, "a/x", slip("one-more", 0.2, "fence-post"))), NAMES, SlipMap.term());
        assertThat(two.slips().get(0).odds().orElseThrow()).isCloseTo(0.04, within(1e-15));
        assertThat(two.slips().get(0).sure()).isEqualTo(SlipMap.Sure.COULD_BE);
    }

    @Test
    void answersThatSeveralFamiliesGiveCouldBeEither() {
        List<RoomAnswer> answers = List.of(answer(1, "a/x", slip("one-more", 0.001, "fence-post", "radius")), answer(2, "a/x", slip("one-more", 0.001, "fence-post", "radius")));
        SlipMap map = SlipMap.of(answers, NAMES, SlipMap.term());
        assertThat(map.families()).extracting(SlipMap.Row::name).containsExactly("fence-post", "radius");
        assertThat(map.families()).extracting(SlipMap.Row::sure).containsOnly(SlipMap.Sure.COULD_BE);
        assertThat(map.slips().get(0).families()).containsExactly("fence-post", "radius");
    }

    @Test
    void aSlipOfThePenHasNoKnownOdds() {
        List<RoomAnswer> answers = List.of(answer(1, "a/x", slip("other-unit", 0.001, "other-unit")), answer(2, "a/x", slip("other-unit", 0.001, "other-unit")));
        SlipMap.Row row = SlipMap.of(answers, NAMES, SlipMap.term()).families().get(0);
        assertThat(row.odds()).isEqualTo(OptionalDouble.empty());
        assertThat(row.sure()).isEqualTo(SlipMap.Sure.COULD_BE);
        assertThat(Desks.WORDS.apply(row.against())).contains("not known");
    }

    @Test
    void aMapIsOfAnAssignmentASkillOrTheTerm() {
        List<RoomAnswer> answers = List.of(answer(1, 1, "a/x", "spacing", slip("one-more", 0.01, "fence-post")),
                answer(2, 2, "b/y", "spacing", slip("too-long", 0.01, "fence-post")), answer(3, 2, "c/z", "tanks", slip("half", 0.01, "radius")));
        assertThat(SlipMap.of(answers, NAMES, SlipMap.assignment(2)).slips()).extracting(SlipMap.Row::name).containsExactly("half", "too-long");
        assertThat(SlipMap.of(answers, NAMES, SlipMap.skill("spacing")).families()).extracting(r -> r.students().size()).containsExactly(2);
        assertThat(SlipMap.of(answers, NAMES, SlipMap.term()).families()).extracting(SlipMap.Row::name).containsExactly("fence-post", "radius");
    }

    @Test
    void slipsOfOneNameInTwoExercisesAreTwoRowsOfOneFamily() {
        List<RoomAnswer> answers = List.of(answer(1, "a/x", slip("one-more", 0.01, "fence-post")), answer(2, "b/yy", slip("one-more", 0.01, "fence-post")));
        SlipMap map = SlipMap.of(answers, NAMES, SlipMap.term());
        assertThat(map.slips()).extracting(SlipMap.Row::exercise).containsExactly("a/x", "b/yy");
        assertThat(map.families()).hasSize(1);
    }

    @Test
    void moreStudentsComeFirstThenRarerOnes() {
        List<RoomAnswer> answers = new ArrayList<>(List.of(answer(1, "a/x", slip("s1", 0.3, "f1")), answer(2, "b/yy", slip("s2", 0.1, "f2")),
                answer(3, "c/zzz", slip("s3", 0.2, "f3")), answer(4, "d/wwww", slip("pen", 0.2, "pen")), answer(5, "a/x", slip("s1", 0.3, "f1"))));
        for (int turn = 0; turn < 10; turn++) {
            Collections.shuffle(answers, new Random(turn));
            assertThat(SlipMap.of(answers, NAMES, SlipMap.term()).families()).extracting(SlipMap.Row::name).containsExactly("f1", "f2", "f3", "pen");
        }
    }

    /** A real room: everybody has own numbers; five of ten share out over the holes, the others are right. */
    @Test
    void aRoomThatWasDealtAndMarkedIsSeen() {
        Dealing dealing = new Dealing(SmallBank.bank(), ClassSettings.USUAL, Desks.chance(8));
        Marking marking = new Marking(SmallBank.bank(), Desks.NOTHING_KEPT, Desks.WORDS);
        Map<Long, String> names = new LinkedHashMap<>();
        List<RoomAnswer> answers = new ArrayList<>();
        for (Sheet sheet : Desks.kept(dealing.deal(Desks.assignment(Desks.task(1, 1, Desks.HOLES)), Desks.students(10), List.of()))) {
            names.put(sheet.person(), "Seat " + sheet.person());
            Problem problem = sheet.problems().get(0);
            Variant variant = SmallBank.draw(Desks.HOLES, UnitSystem.US, problem.seed());
            Map<String, String> texts = new HashMap<>(sheet.person() % 2 == 0 ? Desks.slip(variant, "shared-over-holes") : Desks.right(variant));
            Marking.Outcome.Done done = (Marking.Outcome.Done) marking.mark(problem, texts, ClassSettings.USUAL);
            done.marks().forEach(m -> answers.add(new RoomAnswer(sheet.person(), 1, problem.id(), Desks.MONDAY, Desks.HOLES, "equal-spacing", problem.seed(), m)));
        }
        SlipMap.Row row = SlipMap.of(answers, names, SlipMap.assignment(1)).families().get(0);
        assertThat(row.name()).isEqualTo("fence-post");
        assertThat(row.students()).extracting(SlipMap.Student::person).containsExactly(102L, 104L, 106L, 108L, 110L);
        assertThat(row.sure()).isEqualTo(SlipMap.Sure.FITS);
        assertThat(Desks.WORDS.apply(row.says())).isEqualTo("The answers of 5 of 10 students fit this.");
        assertThat(Desks.WORDS.apply(row.against())).contains("fewer than 1 of 1,000");
    }
}
