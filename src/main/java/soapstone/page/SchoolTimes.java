package soapstone.page;

import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;

/** Times as pages show them: in the time zone of the machine that keeps the school, on the clock of 24 hours. */
public final class SchoolTimes {

    private SchoolTimes() {}

    public static ZoneId zone() {
        return ZoneId.systemDefault();
    }

    /** {@code Tue 16 Mar 2027, 07:30}, or {@code martes 16 de marzo de 2027, 07:30}: cut short, Tuesday and March are one word there. */
    public static String moment(Instant time, String language) {
        return print(time, isSpanish(language) ? "EEEE d 'de' MMMM 'de' uuuu, HH:mm" : "EEE d MMM uuuu, HH:mm", language);
    }

    /** {@code 16 Mar}. */
    public static String day(Instant time, String language) {
        return print(time, "d MMM", language);
    }

    /** {@code 07:30:05}. */
    public static String clock(Instant time, String language) {
        return print(time, "HH:mm:ss", language);
    }

    /** {@code March 16, 2027}, or {@code 16 de marzo de 2027}. */
    public static String date(LocalDate day, String language) {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG).withLocale(Locale.forLanguageTag(language)).format(day);
    }

    /** {@code 30 June}, or {@code 30 de junio}. */
    public static String yearly(MonthDay day, String language) {
        return pattern(isSpanish(language) ? "d 'de' MMMM" : "d MMMM", language).format(day);
    }

    private static boolean isSpanish(String language) {
        return language.equals("es");
    }

    private static DateTimeFormatter pattern(String pattern, String language) {
        return DateTimeFormatter.ofPattern(pattern, Locale.forLanguageTag(language));
    }

    private static String print(Instant time, String pattern, String language) {
        return pattern(pattern, language).withZone(zone()).format(time);
    }
}
