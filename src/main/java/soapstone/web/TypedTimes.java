package soapstone.web;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import soapstone.page.SchoolTimes;

/** Moments as date and time fields hold them, by the school's wall clock, and back. */
final class TypedTimes {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");
    private static final int FIRST_YEAR = 2000;
    private static final int LAST_YEAR = 2200;

    private TypedTimes() {}

    /** As a date field holds it: 2027-03-16. */
    static String date(Instant moment) {
        return moment.atZone(SchoolTimes.zone()).toLocalDate().toString();
    }

    /** As a time field holds it: 07:00. */
    static String clock(Instant moment) {
        return CLOCK.format(moment.atZone(SchoolTimes.zone()));
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
        return ZonedDateTime.of(date, time, SchoolTimes.zone()).toInstant();
    }

    /** So many days later, at that time of the day. */
    static Instant daysLater(Instant from, int days, LocalTime time) {
        return at(from.atZone(SchoolTimes.zone()).toLocalDate().plusDays(days), time);
    }
}
