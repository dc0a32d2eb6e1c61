package soapstone.school;

import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * How long a student's record is kept: to the end of the school year of the last work, and one year more. No record is erased
 * while its student sits in a class that is open, and none is kept for ever. The keeper erases those whose time is over, or
 * lets it be done each day.
 */
public final class Retention {

    /** The act under which an erasure stands in the audit. */
    public static final String ERASED = "retention.erased";

    private Retention() {}

    /** The last day of the newest school year whose records have had their year: work up to and on this day is over. */
    public static LocalDate lastDay(LocalDate today, MonthDay yearEnds) {
        LocalDate end = yearEnds.atYear(today.getYear() - 1);
        return yearEnds.atYear(today.getYear()).isBefore(today) ? end : yearEnds.atYear(today.getYear() - 2);
    }

    /** The moment before which somebody's last work has to lie, for {@link Privacy#idleSince}. */
    public static Instant last(Instant now, ZoneId zone, MonthDay yearEnds) {
        return lastDay(LocalDate.ofInstant(now, zone), yearEnds).plusDays(1).atStartOfDay(zone).toInstant();
    }

    /** Whose time is over: nobody is erased by asking. */
    public static List<Person> over(School school, Instant now, ZoneId zone) {
        return school.privacy().idleSince(last(now, zone, school.retentions().rule().yearEnds()));
    }

    /**
     * Erases them, and writes into the audit how many they were, without names.
     *
     * @param by empty for the day's work
     */
    public static void erase(School school, List<Person> people, Optional<Long> by, Instant now) {
        people.forEach(p -> school.privacy().erase(p.id(), by, now));
        school.audit().note(new Audit.Entry(now, by, ERASED, Optional.empty(), Optional.empty(), String.valueOf(people.size()), false));
    }

    /**
     * The day's work: once a day in whichever program comes first, and only where the keeper wants it.
     *
     * @return how many were erased
     */
    public static int byItself(School school, Instant now, ZoneId zone) {
        Instant tomorrow = LocalDate.ofInstant(now, zone).plusDays(1).atStartOfDay(zone).toInstant();
        if (!school.retentions().take(now, tomorrow)) {
            return 0;
        }
        List<Person> people = over(school, now, zone);
        if (!people.isEmpty()) {
            erase(school, people, Optional.empty(), now);
        }
        return people.size();
    }
}
