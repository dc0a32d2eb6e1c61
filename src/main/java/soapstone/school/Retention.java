package soapstone.school;

import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneId;

/**
 * How long a student's record is kept: to the end of the school year of the last work, and one year more. No record is erased
 * while its student sits in a class that is open, and none is kept for ever.
 */
public final class Retention {

    /** The last day of a school year. */
    public static final MonthDay YEAR_ENDS = MonthDay.of(7, 31);

    private Retention() {}

    /** The last day of the newest school year whose records have had their year: work up to and on this day is over. */
    public static LocalDate lastDay(LocalDate today) {
        LocalDate end = YEAR_ENDS.atYear(today.getYear() - 1);
        return end.plusYears(1).isBefore(today) ? end : end.minusYears(1);
    }

    /** The moment before which somebody's last work has to lie, for {@link Privacy#idleSince}. */
    public static Instant last(Instant now, ZoneId zone) {
        return lastDay(LocalDate.ofInstant(now, zone)).plusDays(1).atStartOfDay(zone).toInstant();
    }
}
