package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import soapstone.school.Assignment.Late;
import soapstone.school.Assignment.Shows;
import soapstone.school.Assignment.State;
import soapstone.school.Assignments.GivenTo;
import soapstone.school.Terms.Door;

/** On what terms a student hands in. */
class TermsTest {

    private static final Instant OPENS = Instant.parse("2027-03-16T07:00:00Z");
    private static final Instant DUE = OPENS.plus(Duration.ofHours(10));
    private static final long ADA = 7;

    private State state = State.GIVEN;
    private Late late = Late.REFUSED;
    private Optional<Instant> due = Optional.of(DUE);
    private Optional<Instant> archived = Optional.empty();
    private Member.State member = Member.State.IN;
    private int extraTime;

    private Terms terms(GivenTo... given) {
        Assignment assignment = new Assignment(1, 2, "Week 9", state, OPENS, due, late, 2, Shows.MISTAKE, true, 3, OPENS, Optional.empty(),
                List.of(new Assignment.Task(1, 1, List.of("spacing/bolt-holes"), 1, 1)));
        SchoolClass in = new SchoolClass(2, "Sheet metal 1", "Spring", "CODE", ClassSettings.USUAL, OPENS, archived);
        Person ada = new Person(ADA, Person.Kind.STUDENT, "Ada", "ada", "en", false, false, false, OPENS);
        return Terms.of(assignment, in, new Member(2, ada, "1", member, extraTime, OPENS), List.of(given));
    }

    @Test
    void openFromItsTimeToTheDueTimeInclusive() {
        assertThat(terms().door(OPENS.minusMillis(1))).isEqualTo(Door.NOT_YET);
        assertThat(terms().door(OPENS)).isEqualTo(Door.OPEN);
        assertThat(terms().door(DUE)).isEqualTo(Door.OPEN);
        assertThat(terms().door(DUE.plusMillis(1))).isEqualTo(Door.OVER);
        late = Late.HALF;
        assertThat(terms().door(DUE.plusMillis(1))).isEqualTo(Door.LATE);
        late = Late.TAKEN;
        assertThat(terms().door(DUE.plusMillis(1)).takes()).isTrue();
        due = Optional.empty();
        assertThat(terms().door(DUE.plus(Duration.ofDays(1000)))).isEqualTo(Door.OPEN);
    }

    @Test
    void extraTimeIsAShareOfTheWholeTimeAndAnOwnDueTimeGoesBefore() {
        extraTime = 50;
        assertThat(terms().due()).contains(DUE.plus(Duration.ofHours(5)));
        assertThat(terms(new GivenTo(ADA, Optional.of(DUE.plusSeconds(1)), false, false)).due()).contains(DUE.plusSeconds(1));
        assertThat(terms(new GivenTo(8, Optional.of(DUE.plusSeconds(1)), false, false)).due()).contains(DUE.plus(Duration.ofHours(5)));
    }

    @Test
    void closedDoorsAreToldApart() {
        state = State.TAKEN;
        assertThat(terms().door(OPENS)).isEqualTo(Door.TAKEN_BACK);
        member = Member.State.LEFT;
        assertThat(terms().door(OPENS)).isEqualTo(Door.LEFT);
        archived = Optional.of(OPENS);
        assertThat(terms().door(OPENS)).isEqualTo(Door.ARCHIVED);
    }

    @Test
    void forTheWholeClassOrForSome() {
        assertThat(terms().isFor()).isTrue();
        assertThat(terms(new GivenTo(8, Optional.empty(), false, true)).isFor()).isFalse();
        assertThat(terms(new GivenTo(8, Optional.empty(), false, true), new GivenTo(ADA, Optional.empty(), false, true)).isFor()).isTrue();
        assertThat(terms(new GivenTo(8, Optional.empty(), true, false)).isFor()).isTrue();
        member = Member.State.ASKED;
        assertThat(terms().isFor()).isFalse();
        member = Member.State.IN;
        state = State.DRAFT;
        assertThat(terms().isFor()).isFalse();
    }

    @Test
    void everythingIsShownWhenNoFurtherTryIsTaken() {
        assertThat(terms().shows(DUE, 0)).isEqualTo(Shows.MISTAKE);
        assertThat(terms().shows(DUE.plusMillis(1), 2)).isEqualTo(Shows.LINES);
        late = Late.TAKEN;
        assertThat(terms().shows(DUE.plusMillis(1), 1)).isEqualTo(Shows.MISTAKE);
        assertThat(terms().shows(DUE.plusMillis(1), 0)).isEqualTo(Shows.LINES);
        due = Optional.empty();
        assertThat(terms().shows(DUE, 0)).isEqualTo(Shows.MISTAKE);
    }

    @Test
    void roundsShareTheTriesUnlessItIsPractice() {
        assertThat(terms().triesLeft(0, 1)).isEqualTo(1);
        assertThat(terms().triesLeft(1, 3)).isZero();
        due = Optional.empty();
        assertThat(terms().triesLeft(0, 12)).isEqualTo(2);
    }
}
