package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Records are kept to the end of the school year of the last work, and one year more. */
class RetentionTest {

    @DisplayName("Rule 8: end of the school year and one year more")
    @ParameterizedTest(name = "on {0}, work up to {1} is over")
    @CsvSource({"2027-07-31, 2025-07-31", "2027-08-01, 2026-07-31", "2027-12-31, 2026-07-31", "2028-01-01, 2026-07-31", "2028-02-29, 2026-07-31", "2028-08-01, 2027-07-31"})
    void theYearTurnsAtTheEndOfTheSchoolYear(LocalDate today, LocalDate last) {
        assertThat(Retention.lastDay(today)).isEqualTo(last);
    }

    @Test
    void theDayIsTheSchools() {
        ZoneId detroit = ZoneId.of("America/Detroit");
        assertThat(Retention.last(Instant.parse("2027-08-01T03:00:00Z"), detroit)).as("still 31 July there").isEqualTo(Instant.parse("2025-08-01T04:00:00Z"));
        assertThat(Retention.last(Instant.parse("2027-08-01T05:00:00Z"), detroit)).isEqualTo(Instant.parse("2026-08-01T04:00:00Z"));
    }
}
