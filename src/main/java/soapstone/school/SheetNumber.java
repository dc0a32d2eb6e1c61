package soapstone.school;

import java.util.random.RandomGenerator;

/** The short number of a sheet, to be read aloud and typed in from paper: without letters and digits that look alike. */
public final class SheetNumber {

    private static final String SIGNS = "ABCDEFGHJKLMNPQRTUVWXY346789";
    private static final int LENGTH = 8;
    private static final int HALF = 4;

    private SheetNumber() {}

    /** {@code K7QM-3TAX}: one of some 378 thousand million. */
    public static String fresh(RandomGenerator random) {
        StringBuilder number = new StringBuilder();
        for (int i = 0; i < LENGTH; i++) {
            number.append(i == HALF ? "-" : "").append(SIGNS.charAt(random.nextInt(SIGNS.length())));
        }
        return number.toString();
    }
}
