package soapstone.web;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

/** The one place where a moment becomes a date and a time of the school's wall clock, and back. */
final class SchoolTime {

    private static final DateTimeFormatter SHOWN = DateTimeFormatter.ofPattern("EEE, MMM d, yyyy, h:mm a", Locale.ROOT);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");
    private static final int FIRST_YEAR = 2000;
    private static final int LAST_YEAR = 2200;

    private SchoolTime() {}

    private static ZoneId zone() {
        return ZoneId.systemDefault();
    }

    /** As people read it in that language: Tue, Mar 16, 2027, 7:00 AM. */
    static String shown(Instant moment, String language) {
        return SHOWN.withLocale(Locale.forLanguageTag(language)).format(moment.atZone(zone()));
    }

    /** As a date field holds it: 2027-03-16. */
    static String date(Instant moment) {
        return moment.atZone(zone()).toLocalDate().toString();
    }

    /** As a time field holds it: 07:00. */
    static String clock(Instant moment) {
        return CLOCK.format(moment.atZone(zone()));
    }

    /** What stands in a date field; empty for anything else. */
    static Optional<LocalDate> parseDate(String text) {
        try {
            LocalDate date = LocalDate.parse(text.strip());
            return date.getYear() < FIRST_YEAR || date.getYear() > LAST_YEAR ? Optional.empty() : Optional.of(date);
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** What stands in a time field; empty for anything else. */
    static Optional<LocalTime> parseClock(String text) {
        try {
            return Optional.of(LocalTime.parse(text.strip()));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** A time that the clock leaves out in spring is the one an hour later. */
    static Instant at(LocalDate date, LocalTime time) {
        return ZonedDateTime.of(date, time, zone()).toInstant();
    }

    /** So many days later, at that time of the day. */
    static Instant daysLater(Instant from, int days, LocalTime time) {
        return at(from.atZone(zone()).toLocalDate().plusDays(days), time);
    }
}
