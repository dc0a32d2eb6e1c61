package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;
import static soapstone.school.Desks.attempt;
import static soapstone.school.Desks.mark;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import soapstone.mark.Verdict;
import soapstone.quantity.UnitSystem;

class ScoresTest {

    private static final Problem SIX = new Problem(1, 1, 11, 1, 1, "spacing/bolt-holes", 1, UnitSystem.US, "f", 6);
    private static final Instant NOW = Desks.MONDAY;

    private static Work work(List<Remark> remarks, Attempt... attempts) {
        return new Work(101, SIX, List.of(attempts), remarks);
    }

    private static Attempt earned(long id, boolean late, double a, double b) {
        return attempt(id, (int) id, late, mark(0, Verdict.NEAR, "", a, 2, 0), mark(1, Verdict.NEAR, "", b, 4, 0));
    }

    private static Remark remark(long id, long attempt, int place, int minute, Remark.Cause cause, double points) {
        return new Remark(id, attempt, place, NOW.plusSeconds(60L * minute), Optional.of(7L), cause, Verdict.RIGHT, points, "Seen on paper.");
    }

    @Test
    void theBestTryCounts() {
        assertThat(Scores.of(work(List.of(), earned(1, false, 2, 0), earned(2, false, 1, 4), earned(3, false, 0, 0)), Assignment.Late.TAKEN))
                .isEqualTo(new Scores.Score(5, 6));
    }

    @Test
    void nothingHandedInIsNothingEarned() {
        assertThat(Scores.of(work(List.of()), Assignment.Late.TAKEN)).isEqualTo(new Scores.Score(0, 6));
    }

    @Test
    void aLateTryEarnsWhatTheRuleSays() {
        Work work = work(List.of(), earned(1, false, 2, 0), earned(2, true, 2, 4));
        assertThat(Scores.of(work, Assignment.Late.TAKEN)).isEqualTo(new Scores.Score(6, 6));
        assertThat(Scores.of(work, Assignment.Late.HALF)).isEqualTo(new Scores.Score(3, 6));
        assertThat(Scores.of(work, Assignment.Late.REFUSED)).isEqualTo(new Scores.Score(2, 6));
        Work betterInTime = work(List.of(), earned(1, false, 0, 4), earned(2, true, 2, 4));
        assertThat(Scores.of(betterInTime, Assignment.Late.HALF)).isEqualTo(new Scores.Score(4, 6));
    }

    @Test
    void theNewestRemarkCounts() {
        Remark first = remark(1, 1, 1, 5, Remark.Cause.OVERRULED, 4);
        Remark second = remark(2, 1, 1, 9, Remark.Cause.OVERRULED, 3);
        Attempt attempt = earned(1, false, 2, 0);
        assertThat(Scores.of(work(List.of(second, first), attempt), Assignment.Late.TAKEN)).isEqualTo(new Scores.Score(5, 6));
        Remark sameMoment = remark(3, 1, 1, 9, Remark.Cause.OVERRULED, 1);
        assertThat(Scores.of(work(List.of(sameMoment, second, first), attempt), Assignment.Late.TAKEN)).isEqualTo(new Scores.Score(3, 6));
        Remark elsewhere = remark(4, 99, 1, 20, Remark.Cause.OVERRULED, 4);
        assertThat(Scores.of(work(List.of(elsewhere), attempt), Assignment.Late.TAKEN)).isEqualTo(new Scores.Score(2, 6));
    }

    @Test
    void anExcusedAskIsLeftOutOfBothSides() {
        Remark excused = remark(1, 1, 1, 5, Remark.Cause.EXCUSED, 0);
        assertThat(Scores.of(work(List.of(excused), earned(1, false, 1, 0), earned(2, false, 2, 4)), Assignment.Late.TAKEN)).isEqualTo(new Scores.Score(2, 2));
        Remark all = remark(2, 2, 0, 6, Remark.Cause.EXCUSED, 0);
        Scores.Score none = Scores.of(work(List.of(excused, all), earned(1, false, 1, 0), earned(2, false, 2, 4)), Assignment.Late.TAKEN);
        assertThat(none).isEqualTo(Scores.Score.NONE);
        assertThat(none.share()).isEmpty();
        Remark takenBack = remark(3, 1, 1, 8, Remark.Cause.OVERRULED, 1);
        assertThat(Scores.of(work(List.of(excused, takenBack), earned(1, false, 1, 0)), Assignment.Late.TAKEN)).isEqualTo(new Scores.Score(2, 6));
    }

    @Test
    void aSheetIsTheSumOfItsProblems() {
        List<Work> works = List.of(work(List.of(), earned(1, false, 2, 4)), work(List.of()), work(List.of(), earned(2, false, 1, 0)));
        assertThat(Scores.sheet(works, Assignment.Late.TAKEN)).isEqualTo(new Scores.Score(7, 18));
        assertThat(Scores.sheet(List.of(), Assignment.Late.TAKEN)).isEqualTo(Scores.Score.NONE);
    }

    private static Scores.Entry entry(double points, double possible, Optional<Instant> due, boolean excused, Assignment.Late late, boolean handedIn) {
        return new Scores.Entry(new Scores.Score(points, possible), due, excused, late, handedIn);
    }

    @Test
    void anAverageIsPointsOverPossibleOfWhatWasDueAndSaysSo() {
        Optional<Instant> yesterday = Optional.of(NOW.minusSeconds(86_400));
        List<Scores.Entry> entries = List.of(
                entry(9, 10, yesterday, false, Assignment.Late.HALF, true),
                entry(1.5, 5, Optional.of(NOW), false, Assignment.Late.TAKEN, true),
                entry(0, 5, yesterday, false, Assignment.Late.TAKEN, false),
                entry(10, 10, Optional.of(NOW.plusSeconds(1)), false, Assignment.Late.TAKEN, true),
                entry(3, 10, Optional.empty(), false, Assignment.Late.TAKEN, true),
                entry(0, 10, yesterday, true, Assignment.Late.TAKEN, false));
        Scores.Average average = Scores.average(entries, NOW);
        assertThat(average.score()).isEqualTo(new Scores.Score(10.5, 20));
        assertThat(average.counted()).isEqualTo(3);
        assertThat(average.how().stream().map(Desks.WORDS)).containsExactly(
                "52.5 %: 10.5 points earned of 20 possible, on the sheets that were due (counted: 3). The best try of each problem counts.",
                "Not due yet, or without a due time, and so not counted: 2.",
                "Excused, and so not counted: 1.",
                "Due and not handed in, counted as 0 points: 1.",
                "Sheets on which a late answer earns half of its points: 1.");
    }

    @Test
    void whereNothingWasDueThereIsNoAverage() {
        Scores.Average average = Scores.average(List.of(entry(3, 10, Optional.empty(), false, Assignment.Late.TAKEN, true)), NOW);
        assertThat(average.score().share()).isEmpty();
        assertThat(average.how().stream().map(Desks.WORDS)).startsWith("Nothing that counts was due yet, so there is no average.");
    }

    /** What the room and a signer look at comes out of the same marks as the score. */
    @Test
    void answersAndEvidenceAreTakenAsTheyCount() {
        Remark overruled = remark(1, 1, 1, 5, Remark.Cause.OVERRULED, 4);
        Remark excused = remark(2, 2, 0, 6, Remark.Cause.EXCUSED, 0);
        Work work = work(List.of(overruled, excused), earned(1, false, 1, 0), earned(2, false, 1, 0));
        assertThat(RoomAnswer.of(work, 9, "equal-spacing")).extracting(a -> a.mark().verdict()).containsExactly(Verdict.NEAR, Verdict.RIGHT, Verdict.NEAR);
        assertThat(RoomAnswer.of(work, 9, "equal-spacing")).allMatch(a -> a.person() == 101 && a.assignment() == 9 && a.seed() == 1);
        List<Evidence.HandedIn> handedIn = Evidence.HandedIn.of(work, Desks.assignment(Desks.task(1, 1, Desks.HOLES)), "equal-spacing");
        assertThat(handedIn).extracting(Evidence.HandedIn::number).containsExactly(1, 2);
        assertThat(handedIn.get(0).verdicts()).containsExactly(Verdict.NEAR, Verdict.RIGHT);
        assertThat(handedIn.get(0).isWithoutHelp()).as("the assignment lets the formula book be open").isFalse();
    }
}
