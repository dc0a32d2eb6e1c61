package soapstone.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.MonthDay;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** When something is due, as one would say it, in the school's own time zone. */
class PlainTimesTest {

    private static final Words ENGLISH = Words.of("en");

    private static Instant at(String local) {
        return LocalDateTime.parse(local).atZone(SchoolTimes.zone()).toInstant();
    }

    private static String due(String due) {
        return ENGLISH.say(PlainTimes.due(Optional.of(at(due)), at("2027-03-16T10:32:00"), "en"));
    }

    @Test
    void todayTomorrowInSomeDaysAndLater() {
        assertThat(due("2027-03-16T10:32:00")).isEqualTo("Due today at 10:32");
        assertThat(due("2027-03-16T23:59:00")).isEqualTo("Due today at 23:59");
        assertThat(due("2027-03-17T00:01:00")).isEqualTo("Due tomorrow at 00:01");
        assertThat(due("2027-03-18T08:00:00")).isEqualTo("Due in 2 days, Thu 18 Mar 2027, 08:00");
        assertThat(due("2027-03-22T08:00:00")).startsWith("Due in 6 days");
        assertThat(due("2027-03-23T08:00:00")).isEqualTo("Due Tue 23 Mar 2027, 08:00");
        assertThat(due("2027-03-16T10:31:59")).isEqualTo("Was due Tue 16 Mar 2027, 10:31");
        assertThat(ENGLISH.say(PlainTimes.due(Optional.empty(), at("2027-03-16T10:32:00"), "en"))).isEqualTo("No end: practice");
    }

    @Test
    void anotherLanguageWritesDatesItsOwnWay() {
        Instant now = at("2027-03-16T10:32:00");
        Words spanish = Words.of("es");
        assertThat(spanish.say(PlainTimes.due(Optional.of(at("2027-03-16T23:59:00")), now, "es"))).isEqualTo("Vence hoy a las 23:59");
        assertThat(spanish.say(PlainTimes.due(Optional.of(at("2027-03-23T08:00:00")), now, "es"))).isEqualTo("Vence el martes 23 de marzo de 2027, 08:00");
        assertThat(SchoolTimes.date(LocalDate.of(2027, 7, 1), "es")).isEqualTo("1 de julio de 2027");
        assertThat(SchoolTimes.date(LocalDate.of(2027, 7, 1), "en")).isEqualTo("July 1, 2027");
        assertThat(SchoolTimes.yearly(MonthDay.of(6, 30), "es")).isEqualTo("30 de junio");
        assertThat(SchoolTimes.yearly(MonthDay.of(6, 30), "en")).isEqualTo("30 June");
    }
}
