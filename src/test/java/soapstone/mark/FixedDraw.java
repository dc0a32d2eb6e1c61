package soapstone.mark;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import soapstone.Baseline;
import soapstone.bank.SmallBank;
import soapstone.exercise.Exercise;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;
import soapstone.variant.Variant;

/** Variants with numbers that are known, so that answers to them can be written down. */
final class FixedDraw {

    private FixedDraw() {}

    /** An exercise below {@code soapstone/mark}, which picks from one value for each given. */
    static Variant own(String name, UnitSystem system) {
        return draw("marking/" + name, SmallBank.with("marking/" + name + ".yaml", Baseline.read("soapstone/mark/" + name + ".yaml")), system);
    }

    /** An exercise of the small bank with these values: name, value, name, value … */
    static Variant of(String id, UnitSystem system, String... values) {
        String text = SmallBank.files().get(id + ".yaml");
        for (int i = 0; i < values.length; i += 2) {
            text = fixed(text, system, values[i], values[i + 1]);
        }
        return draw(id, SmallBank.with(id + ".yaml", text), system);
    }

    /** The metric part's own line for a given stands deeper than the usual one. */
    private static String fixed(String text, UnitSystem system, String name, String value) {
        for (String indent : system == UnitSystem.METRIC ? new String[] {"    ", "  "} : new String[] {"  "}) {
            Matcher line = Pattern.compile("(?m)^" + indent + name + ": \\{.*}$").matcher(text);
            if (line.find()) {
                return text.substring(0, line.start()) + indent + name + ": {pick: [" + value + "]}" + text.substring(line.end());
            }
        }
        throw new AssertionError("there is no given " + name);
    }

    private static Variant draw(String id, Map<String, String> files, UnitSystem system) {
        Exercise exercise = SmallBank.read(files).exercise(id).orElseThrow();
        return Drawer.draw(exercise, system, 1).orElseThrow(() -> new AssertionError(id + " has no fair draw with these numbers: "
                + new Drawer(exercise, system).attempt(1, 0)));
    }
}
