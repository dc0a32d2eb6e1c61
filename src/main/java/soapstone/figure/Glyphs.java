package soapstone.figure;

/**
 * Widths of lettering in the font B612, in thousandths of the size. Regular and bold are equally wide. Read from the
 * font's own table of advances (B612 1.008, Debian fonts-b612); a test compares when the font is there.
 */
final class Glyphs {

    /** What a sign takes that is not in the table: as wide as the widest usual one, so that text is never measured short. */
    private static final int UNKNOWN = 1000;

    private static final String[] BY_WIDTH = {
        "200'|¦",
        "250,;·′",
        "300.:Iij°²³¹ÌÍÎÏìíîï",
        "350 !l\u00A0¡‘’",
        "400\"frtªº″",
        "450()-J[s",
        "500=]cz¢§“”↑↓≈",
        "525aç",
        "550$*/?FLS\\_`ekvxy£¨©®¯´¸¿àáâãäåèéêë÷ýÿ–−",
        "600+CEKPTYZbdghnopqu}¤¥±ÈÉÊËÝñòóôõöøùúûüþ",
        "650{0123456789<>ABDGRVXµÀÁÂÃÄÅÇÐÞßð≤≥▽π",
        "700&HU«¶»ÙÚÛÜ",
        "750N^w~¼½¾Ñ…→←⅓⅔⅛⅜⅝⅞",
        "800OQÒÓÔÕÖ×Ø√Ω",
        "850#¬Ææ",
        "900%Mm",
        "950W",
    };
    private static final int DIGITS_OF_WIDTH = 3;
    private static final int KNOWN = 0x2600;
    private static final short[] WIDTHS = widths();

    private Glyphs() {}

    private static short[] widths() {
        short[] w = new short[KNOWN];
        for (String row : BY_WIDTH) {
            short width = Short.parseShort(row.substring(0, DIGITS_OF_WIDTH));
            row.chars().skip(DIGITS_OF_WIDTH).forEach(c -> w[c] = width);
        }
        return w;
    }

    /** Width of one sign in thousandths of the size. */
    static int width(int codePoint) {
        int known = codePoint < KNOWN ? WIDTHS[codePoint] : 0;
        return known > 0 ? known : UNKNOWN;
    }

    /** Width of a text of that size in SVG units. */
    static double width(String text, double size) {
        int sum = 0;
        int at = 0;
        while (at < text.length()) {
            int sign = text.codePointAt(at);
            sum += width(sign);
            at += Character.charCount(sign);
        }
        return sum * size / 1000;
    }
}
