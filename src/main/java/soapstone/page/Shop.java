package soapstone.page;

import java.util.regex.Pattern;

/**
 * Keeps what belongs together on one line: a whole number and its fraction, a number and its unit. The characters that
 * do it are passed over by whoever reads answers, so that an example can be copied into a box.
 */
final class Shop {

    private static final String NO_BREAK = "\u00A0";
    /** After the dash of 5-3/8: no line may end there. */
    private static final String JOINED = "-\u2060";
    private static final Pattern DASH = Pattern.compile("(?<=\\d)-(?=\\d+/\\d)");
    private static final Pattern FEET = Pattern.compile("(?<=\\d['′]) (?=\\d)");
    private static final Pattern FRACTION = Pattern.compile("(?<=\\d) (?=\\d+/\\d)");
    private static final Pattern UNIT = Pattern.compile(
            "(?<=[\\d½¼¾⅛⅜⅝⅞]) (?=(?:in|ft|yd|mm|cm|m|gal|qt|L|mL|lb|oz|ton|tons|kg|g|t|kip|N|kN|psi|ksi|Pa|kPa|MPa|bar|s|min|h"
                    + "|rpm|Hz|ga|deg)(?![\\p{L}]))");

    private Shop() {}

    static String keepTogether(String text) {
        String dashes = DASH.matcher(text).replaceAll(JOINED);
        String fractions = FRACTION.matcher(FEET.matcher(dashes).replaceAll(NO_BREAK)).replaceAll(NO_BREAK);
        return UNIT.matcher(fractions).replaceAll(NO_BREAK);
    }
}
