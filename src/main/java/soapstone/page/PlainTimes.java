package soapstone.page;

import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;
import soapstone.source.Message;

/** When something is due, as one would say it. */
public final class PlainTimes {

    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    /** Farther away, the date says more than a count of days. */
    private static final int MOST_DAYS = 6;

    private PlainTimes() {}

    /** {@code 10:32}. */
    public static String hour(Instant time) {
        return HOUR.withZone(SchoolTimes.zone()).format(time);
    }

    /** @param due empty for practice without an end */
    public static Message due(Optional<Instant> due, Instant now, String language) {
        if (due.isEmpty()) {
            return Message.of("work.due-never");
        }
        String moment = SchoolTimes.moment(due.get(), language);
        if (now.isAfter(due.get())) {
            return Message.of("work.due-over", moment);
        }
        long days = ChronoUnit.DAYS.between(day(now), day(due.get()));
        if (days == 0) {
            return Message.of("work.due-today", hour(due.get()));
        } else if (days == 1) {
            return Message.of("work.due-tomorrow", hour(due.get()));
        }
        return days <= MOST_DAYS ? Message.of("work.due-days", String.valueOf(days), moment) : Message.of("work.due-on", moment);
    }

    private static LocalDate day(Instant time) {
        return time.atZone(SchoolTimes.zone()).toLocalDate();
    }
}
