package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import soapstone.mark.Verdict;
import soapstone.school.Evidence.HandedIn;

/** Evidence and signatures stand beside each other; neither takes the other's place. */
class CompetencyStandingTest {

    private static final Instant MONDAY = Instant.parse("2027-03-15T14:00:00Z");
    private static final TradeCode LAYOUT = new TradeCode("Sheet work", "2027", "B-1", "Lays out");
    private static final Competency LISTED = new Competency(1, 7, LAYOUT, List.of("spacing", "bends"));

    private static HandedIn right(String skill, long seed, int day) {
        return new HandedIn(seed, MONDAY.plus(Duration.ofDays(day)), skill + "/one", skill, seed, 1, List.of(Verdict.RIGHT), false, Assignment.Shows.NOTHING);
    }

    private static Signoff entry(long id, Signoff.Act act, TradeCode code) {
        return new Signoff(id, 5, 7, code, act, "alone, book closed", "", 2, "Wren K.", MONDAY);
    }

    private static CompetencyStanding of(List<Signoff> entries, HandedIn... works) {
        return CompetencyStanding.of(List.of(LISTED), entries, List.of(works), ZoneOffset.UTC).get(0);
    }

    @Test
    void itIsReadyWhenEverySkillWasRightOnTwoDays() {
        CompetencyStanding half = of(List.of(), right("spacing", 1, 0), right("spacing", 2, 1), right("bends", 3, 0));
        assertThat(half.standing()).isEqualTo(1);
        assertThat(half.isReady()).isFalse();
        CompetencyStanding whole = of(List.of(), right("spacing", 1, 0), right("spacing", 2, 1), right("bends", 3, 0), right("bends", 4, 1));
        assertThat(whole.isReady()).isTrue();
        assertThat(whole.signature()).as("evidence signs nothing").isEmpty();
    }

    @Test
    void aSignatureStandsUntilItIsWithdrawnAndCanBeGivenAnew() {
        Signoff signed = entry(1, Signoff.Act.SIGNED, LAYOUT);
        assertThat(of(List.of(signed)).signature()).contains(signed);
        CompetencyStanding withdrawn = of(List.of(signed, entry(2, Signoff.Act.WITHDRAWN, LAYOUT)));
        assertThat(withdrawn.signature()).isEmpty();
        assertThat(withdrawn.isWithdrawn()).isTrue();
        assertThat(withdrawn.entries()).hasSize(2);
        Signoff again = entry(3, Signoff.Act.SIGNED, LAYOUT);
        assertThat(of(List.of(signed, entry(2, Signoff.Act.WITHDRAWN, LAYOUT), again)).signature()).contains(again);
    }

    @Test
    void whatWasSignedStaysOnTheRecordWhenTheListHasChanged() {
        TradeCode old = new TradeCode("Sheet work", "2017", "B-1", "Lays out");
        List<CompetencyStanding> all = CompetencyStanding.of(List.of(LISTED), List.of(entry(1, Signoff.Act.SIGNED, old)), List.of(), ZoneOffset.UTC);
        assertThat(all).extracting(s -> s.code().edition()).containsExactly("2027", "2017");
        assertThat(all.get(0).entries()).as("another edition's signature").isEmpty();
        assertThat(all.get(1).signature()).isPresent();
    }

    @Test
    void withoutSkillsNothingIsGatheredAndNothingIsReady() {
        Competency own = new Competency(2, 7, TradeCode.own("S1", "Sweeps the floor"), List.of());
        CompetencyStanding s = CompetencyStanding.of(List.of(own), List.of(), List.of(right("spacing", 1, 0)), ZoneOffset.UTC).get(0);
        assertThat(s.evidence()).isEmpty();
        assertThat(s.isReady()).isFalse();
    }
}
