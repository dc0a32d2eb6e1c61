package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The due time on the pages about marks is the one that the student works by. */
class StandingTest {

    private static final Instant OPENS = Instant.parse("2027-03-16T07:00:00Z");
    private static final Instant DUE = OPENS.plus(Duration.ofHours(10));

    private static Member member(long id, int extraTime) {
        return new Member(2, new Person(id, Person.Kind.STUDENT, "Seat " + id, "seat" + id, "en", false, false, false, OPENS), "1", Member.State.IN, extraTime, OPENS);
    }

    private static List<Optional<Instant>> dues(Optional<Instant> due, Assignments.GivenTo... given) {
        Assignment a = new Assignment(1, 2, "Week 9", Assignment.State.GIVEN, OPENS, due, Assignment.Late.TAKEN, 2, Assignment.Shows.MISTAKE, true, 3, OPENS, Optional.empty(),
                List.of(new Assignment.Task(1, 1, List.of("spacing/bolt-holes"), 1, 1)));
        return Standing.of(a, List.of(member(7, 50), member(8, 0)), List.of(given), List.of(), Set.of()).stream().map(Standing::due).toList();
    }

    @Test
    void extraTimeMovesIt() {
        assertThat(dues(Optional.of(DUE))).containsExactly(Optional.of(DUE.plus(Duration.ofHours(5))), Optional.of(DUE));
    }

    @Test
    void anOwnDueTimeGoesBefore() {
        Instant own = DUE.plusSeconds(60);
        assertThat(dues(Optional.of(DUE), new Assignments.GivenTo(7, Optional.of(own), false, false), new Assignments.GivenTo(8, Optional.of(own), false, false)))
                .containsExactly(Optional.of(own), Optional.of(own));
    }

    @Test
    void practiceHasNone() {
        assertThat(dues(Optional.empty())).containsExactly(Optional.empty(), Optional.empty());
    }

    @Test
    void onlyWhatIsDueForThisStudentCountsInTheAverage() {
        List<Scores.Entry> entries = dues(Optional.of(DUE)).stream().map(d -> new Scores.Entry(new Scores.Score(0, 1), d, false, Assignment.Late.TAKEN, false)).toList();
        assertThat(Scores.average(entries, DUE.plus(Duration.ofHours(1))).counted()).isEqualTo(1);
        assertThat(Scores.average(entries, DUE.plus(Duration.ofHours(5))).counted()).isEqualTo(2);
    }
}
