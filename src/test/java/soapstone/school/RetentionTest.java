package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneId;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Records are kept to the end of the school year of the last work, and one year more. */
class RetentionTest {

    private static final MonthDay JULY = MonthDay.of(7, 31);

    @DisplayName("Rule 8: end of the school year and one year more")
    @ParameterizedTest(name = "on {0}, work up to {1} is over")
    @CsvSource({"2027-07-31, 2025-07-31", "2027-08-01, 2026-07-31", "2027-12-31, 2026-07-31", "2028-01-01, 2026-07-31", "2028-02-29, 2026-07-31", "2028-08-01, 2027-07-31"})
    void theYearTurnsAtTheEndOfTheSchoolYear(LocalDate today, LocalDate last) {
        assertThat(Retention.lastDay(today, Retentions.Rule.USUAL.yearEnds())).isEqualTo(last);
    }

    @ParameterizedTest(name = "with years that end on {0}, on {1} work up to {2} is over")
    @CsvSource({"--06-15, 2027-06-15, 2025-06-15", "--06-15, 2027-06-16, 2026-06-15", "--12-31, 2027-12-31, 2025-12-31", "--12-31, 2028-01-01, 2026-12-31",
            "--02-29, 2027-02-28, 2025-02-28", "--02-29, 2027-03-01, 2026-02-28", "--02-29, 2028-03-01, 2027-02-28", "--02-29, 2029-03-01, 2028-02-29"})
    void theSchoolSaysWhenItsYearEnds(MonthDay ends, LocalDate today, LocalDate last) {
        assertThat(Retention.lastDay(today, ends)).isEqualTo(last);
    }

    @Test
    void theDayIsTheSchools() {
        ZoneId detroit = ZoneId.of("America/Detroit");
        assertThat(Retention.last(Instant.parse("2027-08-01T03:00:00Z"), detroit, JULY)).as("still 31 July there").isEqualTo(Instant.parse("2025-08-01T04:00:00Z"));
        assertThat(Retention.last(Instant.parse("2027-08-01T05:00:00Z"), detroit, JULY)).isEqualTo(Instant.parse("2026-08-01T04:00:00Z"));
    }
}
