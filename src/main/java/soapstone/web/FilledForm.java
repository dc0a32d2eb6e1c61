package soapstone.web;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import soapstone.page.FormView;
import soapstone.source.Message;

/**
 * A form on its way in. Each field is asked for what it should hold; what does not fit is put down beside it with what
 * would, and something harmless stands in for it, so that all faults are found at once.
 */
final class FilledForm {

    private static final Pattern DECIMAL = Pattern.compile("[0-9]{0,6}([.][0-9]{1,4})?");
    private static final Pattern WHOLE = Pattern.compile("[0-9]{1,6}");

    private final Fields fields;
    private final Map<String, Message> faults = new LinkedHashMap<>();

    FilledForm(Fields fields) {
        this.fields = fields;
    }

    boolean isGood() {
        return faults.isEmpty();
    }

    /** The form as it comes back. */
    FormView view() {
        return new FormView(fields.all(), faults);
    }

    void fault(String name, Message says) {
        faults.putIfAbsent(name, says);
    }

    boolean ticked(String name) {
        return fields.get(name).isPresent();
    }

    /** One line of text; may be empty. */
    String line(String name, int most) {
        String text = fields.text(name).strip();
        if (text.chars().anyMatch(c -> c == '\n' || c == '\r' || c == '\t')) {
            fault(name, Message.of("filled.one-line"));
        }
        return fitting(name, text, most);
    }

    /** One line of text that says something. */
    String wanted(String name, int most) {
        String text = line(name, most);
        if (text.isEmpty()) {
            fault(name, Message.of("filled.empty"));
        }
        return text;
    }

    /** Text of several lines. */
    String text(String name, int most) {
        return fitting(name, fields.text(name).replace("\r\n", "\n").strip(), most);
    }

    private String fitting(String name, String text, int most) {
        if (text.length() > most) {
            fault(name, Message.of("filled.long", String.valueOf(most), String.valueOf(text.length())));
            return "";
        }
        return text;
    }

    /** One of a closed list, spelled as its names are. */
    <E extends Enum<E>> E choice(String name, Class<E> all) {
        for (E one : all.getEnumConstants()) {
            if (one.name().equals(fields.text(name))) {
                return one;
            }
        }
        fault(name, Message.of("filled.choice"));
        return all.getEnumConstants()[0];
    }

    int whole(String name, int least, int most) {
        String text = fields.text(name).strip();
        int number = WHOLE.matcher(text).matches() ? Integer.parseInt(text) : -1;
        if (number < least || number > most) {
            fault(name, Message.of("filled.whole", String.valueOf(least), String.valueOf(most)));
            return least;
        }
        return number;
    }

    /** A number with a decimal point, or a comma in its place. */
    double number(String name, double least, int most) {
        String text = fields.text(name).strip().replace(',', '.');
        double number = !text.isEmpty() && DECIMAL.matcher(text).matches() ? Double.parseDouble(text) : -1;
        if (number < least || number > most) {
            fault(name, Message.of("filled.number", least == (int) least ? String.valueOf((int) least) : String.valueOf(least), String.valueOf(most)));
            return least;
        }
        return number;
    }

    /** A date and a time that stand in two fields; empty when both are. */
    Optional<Instant> moment(String dateName, String timeName) {
        String date = fields.text(dateName).strip();
        String time = fields.text(timeName).strip();
        if (date.isEmpty() && time.isEmpty()) {
            return Optional.empty();
        }
        Optional<LocalDate> day = TypedTimes.parseDate(date);
        Optional<LocalTime> clock = TypedTimes.parseClock(time);
        if (day.isEmpty()) {
            fault(dateName, Message.of(date.isEmpty() ? "filled.date-missing" : "filled.date"));
        }
        if (clock.isEmpty()) {
            fault(timeName, Message.of(time.isEmpty() ? "filled.time-missing" : "filled.time"));
        }
        return day.isPresent() && clock.isPresent() ? Optional.of(TypedTimes.at(day.get(), clock.get())) : Optional.empty();
    }
}
