package soapstone.school;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import soapstone.mark.Verdict;

/** Numbers and words as they go into the school's sentences. */
public final class Printed {

    private static final int PLACES = 2;

    private Printed() {}

    /** Points, to a hundredth at most: {@code 3}, {@code 2.5}. */
    public static String points(double points) {
        return plain(BigDecimal.valueOf(points).setScale(PLACES, RoundingMode.HALF_UP));
    }

    /** A share in per cent, to a tenth at most. */
    public static String percent(double share) {
        return plain(BigDecimal.valueOf(share * 100).setScale(1, RoundingMode.HALF_UP));
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    /** The sentence that names a verdict. */
    static String verdict(Verdict verdict) {
        return "@" + verdictKey(verdict);
    }

    static String verdictKey(Verdict verdict) {
        return "school.verdict-" + verdict.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
