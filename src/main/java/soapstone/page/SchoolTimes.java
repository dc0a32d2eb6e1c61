package soapstone.page;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Times as pages show them: in the time zone of the machine that keeps the school, on the clock of 24 hours. */
public final class SchoolTimes {

    private SchoolTimes() {}

    public static ZoneId zone() {
        return ZoneId.systemDefault();
    }

    /** {@code Tue 16 Mar 2027, 07:30}. */
    public static String moment(Instant time, String language) {
        return print(time, "EEE d MMM uuuu, HH:mm", language);
    }

    /** {@code 16 Mar}. */
    public static String day(Instant time, String language) {
        return print(time, "d MMM", language);
    }

    /** {@code 07:30:05}. */
    public static String clock(Instant time, String language) {
        return print(time, "HH:mm:ss", language);
    }

    private static String print(Instant time, String pattern, String language) {
        return DateTimeFormatter.ofPattern(pattern, Locale.forLanguageTag(language)).withZone(zone()).format(time);
    }
}
