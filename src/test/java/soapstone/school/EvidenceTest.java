package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import soapstone.mark.Verdict;

class EvidenceTest {

    private static final ZoneId SCHOOL = ZoneId.of("America/Chicago");

    private static Evidence.HandedIn right(long attempt, String at, long seed) {
        return handedIn(attempt, at, seed, 1, false, Assignment.Shows.MISTAKE, Verdict.RIGHT, Verdict.RIGHT_BUT);
    }

    private static Evidence.HandedIn handedIn(long attempt, String at, long seed, int number, boolean formulas, Assignment.Shows shows, Verdict... verdicts) {
        return new Evidence.HandedIn(attempt, Instant.parse(at), "a/x", "equal-spacing", seed, number, List.of(verdicts), formulas, shows);
    }

    private static Evidence of(Evidence.HandedIn... works) {
        return Evidence.of("equal-spacing", List.of(works), SCHOOL);
    }

    @Test
    void twoDaysWithTwoDrawsStand() {
        Evidence evidence = of(right(2, "2031-03-05T15:00:00Z", 8), right(1, "2031-03-03T15:00:00Z", 7));
        assertThat(evidence.stands()).isTrue();
        assertThat(evidence.proofs()).extracting(p -> p.work().attempt()).containsExactly(1L, 2L);
        assertThat(evidence.proofs()).extracting(Evidence.Proof::day).containsExactly(LocalDate.of(2031, 3, 3), LocalDate.of(2031, 3, 5));
        assertThat(evidence.why().stream().map(Desks.WORDS)).containsExactly("Right without help, with other numbers each time, on different days: 2.");
    }

    @Test
    void theSameDayOrTheSameDrawIsOne() {
        Evidence sameDay = of(right(1, "2031-03-03T15:00:00Z", 7), right(2, "2031-03-03T16:00:00Z", 8));
        assertThat(sameDay.stands()).isFalse();
        assertThat(sameDay.why().stream().map(Desks.WORDS)).containsExactly(
                "Wanted are 2 different days, with other numbers each time, right and without help. There so far: 1.",
                "Right again on the same day or with the same numbers, and so not counted again: 1.");
        assertThat(of(right(1, "2031-03-03T15:00:00Z", 7), right(2, "2031-03-04T16:00:00Z", 7)).stands()).isFalse();
    }

    /** 5:30 and 6:30 in London are two days in Chicago, where midnight is at 6:00 in winter. */
    @Test
    void theSchoolsMidnightPartsTheDays() {
        Evidence.HandedIn[] works = {right(1, "2031-03-04T05:30:00Z", 7), right(2, "2031-03-04T06:30:00Z", 8)};
        assertThat(of(works).stands()).isTrue();
        assertThat(Evidence.of("equal-spacing", List.of(works), ZoneOffset.UTC).stands()).isFalse();
    }

    @Test
    void helpIsAnOpenBookOrWhatAnEarlierTryShowed() {
        Evidence.HandedIn good = right(1, "2031-03-03T15:00:00Z", 7);
        String later = "2031-03-05T15:00:00Z";
        assertThat(of(good, handedIn(2, later, 8, 1, true, Assignment.Shows.NOTHING, Verdict.RIGHT)).stands()).as("book open").isFalse();
        for (Assignment.Shows shows : List.of(Assignment.Shows.VERDICT, Assignment.Shows.MISTAKE, Assignment.Shows.LINES)) {
            assertThat(of(good, handedIn(2, later, 8, 2, false, shows, Verdict.RIGHT)).stands()).as("second try, shown " + shows).isFalse();
            assertThat(of(good, handedIn(2, later, 8, 1, false, shows, Verdict.RIGHT)).stands()).as("first try, shown afterwards " + shows).isTrue();
        }
        assertThat(of(good, handedIn(2, later, 8, 2, false, Assignment.Shows.NOTHING, Verdict.RIGHT)).stands()).as("second try, nothing shown").isTrue();
        assertThat(of(good, handedIn(2, later, 8, 1, true, Assignment.Shows.NOTHING, Verdict.RIGHT)).why().stream().map(Desks.WORDS))
                .contains("Right, but with the formula book open or after something was shown, and so not counted: 1.");
    }

    @Test
    void everyAnswerHasToBeRight() {
        Evidence.HandedIn good = right(1, "2031-03-03T15:00:00Z", 7);
        for (Verdict verdict : Verdict.values()) {
            Evidence.HandedIn work = handedIn(2, "2031-03-05T15:00:00Z", 8, 1, false, Assignment.Shows.NOTHING, Verdict.RIGHT, verdict);
            assertThat(of(good, work).stands()).as(verdict.word()).isEqualTo(verdict.isRight());
        }
        assertThat(of(good, handedIn(2, "2031-03-05T15:00:00Z", 8, 1, false, Assignment.Shows.NOTHING)).stands()).as("no answers").isFalse();
    }

    @Test
    void anotherSkillIsNoEvidence() {
        Evidence evidence = Evidence.of("tanks", List.of(right(1, "2031-03-03T15:00:00Z", 7), right(2, "2031-03-05T15:00:00Z", 8)), SCHOOL);
        assertThat(evidence.stands()).isFalse();
        assertThat(evidence.proofs()).isEmpty();
    }

    /** On Monday draws 7 and 8, on Tuesday 7 again: Monday's 8 and Tuesday's 7 are two. */
    @Test
    void noDrawIsTakenFromADayThatHasNoOther() {
        Evidence evidence = of(right(1, "2031-03-03T15:00:00Z", 7), right(2, "2031-03-03T16:00:00Z", 8), right(3, "2031-03-04T15:00:00Z", 7));
        assertThat(evidence.stands()).isTrue();
        assertThat(evidence.proofs()).extracting(p -> p.work().attempt()).containsExactly(2L, 3L);
    }

    /** Against trying every pair: it stands exactly when some two differ in day and draw. */
    @Test
    void itStandsWhenAnyTwoDifferInDayAndDraw() {
        Random random = new Random(6);
        for (int round = 0; round < 500; round++) {
            List<Evidence.HandedIn> works = new ArrayList<>();
            for (int i = 0; i < 1 + random.nextInt(6); i++) {
                works.add(right(i, "2031-03-0" + (1 + random.nextInt(3)) + "T15:00:00Z", random.nextInt(3)));
            }
            boolean pair = works.stream().anyMatch(a -> works.stream().anyMatch(b -> !a.at().equals(b.at()) && a.seed() != b.seed()));
            Collections.shuffle(works, random);
            Evidence evidence = Evidence.of("equal-spacing", works, SCHOOL);
            assertThat(evidence.stands()).as(works.toString()).isEqualTo(pair);
            assertThat(evidence.proofs().stream().map(Evidence.Proof::day)).doesNotHaveDuplicates();
            assertThat(evidence.proofs().stream().map(p -> p.work().seed())).doesNotHaveDuplicates();
        }
    }
}
