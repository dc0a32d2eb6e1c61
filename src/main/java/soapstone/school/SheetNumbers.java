package soapstone.school;

import java.util.Locale;
import java.util.random.RandomGenerator;

/**
 * Makes the numbers that sheets have on screen and on paper, and reads them as they are typed. The last sign checks the others: one wrong
 * sign, or two neighbors in each other's place, is never the number of another sheet.
 */
public final class SheetNumbers {

    /** Without letters and digits that are taken for others, and without vowels, so that no word comes out. */
    private static final String SIGNS = "23456789BCDFGHJKMNPQRTVWX";
    /** Each and each difference of neighbors has no factor in common with 25, the count of the signs; that of the check sign is 1. */
    private static final int[] WEIGHTS = {2, 3, 4, 6, 7, 8};
    private static final int HALF = 3;
    /** Numbers of before there was a check sign. */
    private static final int UNCHECKED = 6;

    private SheetNumbers() {}

    /**
     * A number as it was typed.
     *
     * @param number in the form in which it is kept
     * @param sound  false where the check sign says that something was misread
     */
    public record Typed(String number, boolean sound) {}

    /** Such as {@code K7M-42PX}: one of 244 million. */
    public static String fresh(RandomGenerator chance) {
        StringBuilder signs = new StringBuilder();
        for (int i = 0; i < WEIGHTS.length; i++) {
            signs.append(SIGNS.charAt(chance.nextInt(SIGNS.length())));
        }
        return shown(signs.append(check(signs)).toString());
    }

    private static char check(CharSequence signs) {
        int sum = 0;
        for (int i = 0; i < WEIGHTS.length; i++) {
            sum += WEIGHTS[i] * SIGNS.indexOf(signs.charAt(i));
        }
        return SIGNS.charAt(Math.floorMod(-sum, SIGNS.length()));
    }

    private static String shown(String signs) {
        return signs.substring(0, HALF) + "-" + signs.substring(HALF);
    }

    /** Reads a number in capitals or not, with its dash, with gaps or in one piece. What has another form is left as it is. */
    public static Typed read(String text) {
        String signs = text.strip().toUpperCase(Locale.ROOT).replaceAll("[\\s\u2010-\u2015-]", "");
        boolean ours = signs.chars().allMatch(c -> SIGNS.indexOf(c) >= 0);
        if (signs.length() == WEIGHTS.length + 1) {
            return new Typed(shown(signs), ours && check(signs) == signs.charAt(WEIGHTS.length));
        }
        return signs.length() == UNCHECKED && ours ? new Typed(shown(signs), true) : new Typed(text.strip().toUpperCase(Locale.ROOT), true);
    }
}
