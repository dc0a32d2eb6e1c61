package soapstone.school;

import java.util.random.RandomGenerator;

/** Makes the numbers that sheets have on screen and on paper. */
public final class SheetNumbers {

    /** Without letters and digits that are taken for others, and without vowels, so that no word comes out. */
    private static final String SIGNS = "23456789BCDFGHJKMNPQRTVWX";
    private static final int HALF = 3;

    private SheetNumbers() {}

    /** Such as {@code K7M-42P}: one of 244 million. */
    public static String fresh(RandomGenerator chance) {
        return half(chance) + "-" + half(chance);
    }

    private static String half(RandomGenerator chance) {
        StringBuilder half = new StringBuilder();
        for (int i = 0; i < HALF; i++) {
            half.append(SIGNS.charAt(chance.nextInt(SIGNS.length())));
        }
        return half.toString();
    }
}
