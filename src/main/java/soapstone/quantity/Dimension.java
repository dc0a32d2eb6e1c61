package soapstone.quantity;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a quantity measures, as whole exponents over eight bases. Mass and force are bases of their own: a shop weighs a
 * plate in pounds and pulls with pounds of force, and mixing the two is a mistake that the checker has to see.
 */
public final class Dimension {

    private static final String[] BASES =
            {"length", "mass", "force", "time", "angle", "temperature", "money", "current"};
    private static final int MOST = 12;

    public static final Dimension NUMBER = new Dimension(new int[BASES.length]);
    public static final Dimension LENGTH = base(0);
    public static final Dimension MASS = base(1);
    public static final Dimension FORCE = base(2);
    public static final Dimension TIME = base(3);
    public static final Dimension ANGLE = base(4);
    public static final Dimension TEMPERATURE = base(5);
    public static final Dimension MONEY = base(6);
    public static final Dimension CURRENT = base(7);
    public static final Dimension AREA = LENGTH.power(2);
    public static final Dimension VOLUME = LENGTH.power(3);
    public static final Dimension PRESSURE = FORCE.over(AREA);

    /** Words for dimensions that the trade has a word for; the first word of a dimension is the one that is printed. */
    private static final Map<String, Dimension> WORDS = words();

    private final int[] exponents;

    private Dimension(int[] exponents) {
        this.exponents = exponents;
    }

    private static Dimension base(int index) {
        int[] e = new int[BASES.length];
        e[index] = 1;
        return new Dimension(e);
    }

    private static Map<String, Dimension> words() {
        Map<String, Dimension> w = new LinkedHashMap<>();
        w.put("number", NUMBER);
        w.put("length", LENGTH);
        w.put("area", AREA);
        w.put("volume", VOLUME);
        w.put("mass", MASS);
        w.put("force", FORCE);
        w.put("time", TIME);
        w.put("angle", ANGLE);
        w.put("temperature", TEMPERATURE);
        w.put("money", MONEY);
        w.put("current", CURRENT);
        w.put("pressure", PRESSURE);
        w.put("density", MASS.over(VOLUME));
        w.put("speed", LENGTH.over(TIME));
        w.put("moment", FORCE.times(LENGTH));
        w.put("energy", FORCE.times(LENGTH));
        w.put("power", FORCE.times(LENGTH).over(TIME));
        w.put("voltage", FORCE.times(LENGTH).over(TIME).over(CURRENT));
        w.put("frequency", NUMBER.over(TIME));
        w.put("acceleration", LENGTH.over(TIME.power(2)));
        return w;
    }

    /**
     * Reads words joined by {@code *}, {@code /} and {@code ^n}, such as {@code mass/area} or {@code length^4}.
     *
     * @return the dimension, or empty when a word is not known
     */
    public static Optional<Dimension> parse(String text) {
        Dimension sofar = NUMBER;
        int at = 0;
        char joiner = '*';
        while (at <= text.length()) {
            int end = at;
            while (end < text.length() && text.charAt(end) != '*' && text.charAt(end) != '/') {
                end++;
            }
            Optional<Dimension> factor = factor(text.substring(at, end).trim());
            if (factor.isEmpty()) {
                return Optional.empty();
            }
            sofar = joiner == '*' ? sofar.times(factor.get()) : sofar.over(factor.get());
            if (end == text.length()) {
                return Optional.of(sofar);
            }
            joiner = text.charAt(end);
            at = end + 1;
        }
        return Optional.empty();
    }

    private static Optional<Dimension> factor(String text) {
        int hat = text.indexOf('^');
        String word = hat < 0 ? text : text.substring(0, hat).trim();
        Dimension known = WORDS.get(word);
        if (known == null) {
            return Optional.empty();
        }
        if (hat < 0) {
            return Optional.of(known);
        }
        String power = text.substring(hat + 1).trim();
        if (power.isEmpty() || power.length() > 2 || !power.chars().allMatch(Character::isDigit)) {
            return Optional.empty();
        }
        return Optional.of(known.power(Integer.parseInt(power)));
    }

    /** The words that {@link #parse} knows, in the order in which they are printed. */
    public static Iterable<String> knownWords() {
        return WORDS.keySet();
    }

    public Dimension times(Dimension other) {
        int[] e = exponents.clone();
        for (int i = 0; i < e.length; i++) {
            e[i] += other.exponents[i];
        }
        return new Dimension(e);
    }

    public Dimension over(Dimension other) {
        return times(other.power(-1));
    }

    public Dimension power(int n) {
        int[] e = exponents.clone();
        for (int i = 0; i < e.length; i++) {
            e[i] *= n;
        }
        return new Dimension(e);
    }

    /** The dimension whose n-th power this is, or empty when an exponent is not a multiple of n. */
    public Optional<Dimension> root(int n) {
        int[] e = exponents.clone();
        for (int i = 0; i < e.length; i++) {
            if (e[i] % n != 0) {
                return Optional.empty();
            }
            e[i] /= n;
        }
        return Optional.of(new Dimension(e));
    }

    public boolean isNumber() {
        return equals(NUMBER);
    }

    /** False when some exponent is past anything that a shop works with: a runaway power, not a quantity. */
    public boolean isSensible() {
        return Arrays.stream(exponents).allMatch(e -> Math.abs(e) <= MOST);
    }

    /** Whether the trade has a word for it. */
    public boolean isNamed() {
        return WORDS.containsValue(this);
    }

    int exponent(int index) {
        return exponents[index];
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Dimension that && Arrays.equals(exponents, that.exponents);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(exponents);
    }

    /** The trade's word, or else the bases spelled out, such as {@code length^2/time}. */
    @Override
    public String toString() {
        for (Map.Entry<String, Dimension> word : WORDS.entrySet()) {
            if (word.getValue().equals(this)) {
                return word.getKey();
            }
        }
        return spelled();
    }

    private String spelled() {
        StringBuilder over = new StringBuilder();
        StringBuilder under = new StringBuilder();
        for (int i = 0; i < BASES.length; i++) {
            int e = exponents[i];
            if (e != 0) {
                StringBuilder side = e > 0 ? over : under;
                side.append(e > 0 ? (over.length() == 0 ? "" : "*") : "/").append(BASES[i]);
                if (Math.abs(e) > 1) {
                    side.append('^').append(Math.abs(e));
                }
            }
        }
        return (over.length() == 0 ? "number" : over.toString()) + under;
    }
}
