package soapstone.quantity;

/** Folds the many signs that keyboards and phones put for one thing into the one that the reader works with. */
final class Signs {

    private static final String VULGAR = "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞↉";
    private static final int[] TOPS = {1, 1, 3, 1, 1, 1, 1, 2, 1, 2, 3, 4, 1, 5, 1, 3, 5, 7, 0};
    private static final int[] BOTTOMS = {4, 2, 4, 7, 9, 10, 3, 3, 5, 5, 5, 5, 6, 6, 8, 8, 8, 8, 3};
    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private static final char ONE_OVER = '⅟';

    private Signs() {}

    /** The plain sign for a sign: {@code '} for every kind of prime, {@code -} for every dash, a space for every gap. */
    static char fold(char c) {
        if (c < 0x7f) {
            return c == '`' ? '\'' : c == '\t' ? ' ' : c == '\r' ? '\n' : c;
        }
        if (c >= '\uFF01' && c <= '\uFF5E') {
            return fold((char) (c - 0xFEE0));
        }
        if (Character.isDigit(c)) {
            return (char) ('0' + Character.digit(c, 10));
        }
        return isGap(c) ? ' ' : other(c);
    }

    /** Spaces of every width, and signs without width that come along when something is copied. */
    private static boolean isGap(char c) {
        return c == '\u00A0' || c == '\u00AD' || c == '\u1680' || c >= '\u2000' && c <= '\u200F' && !isDash(c)
                || c == '\u202F' || c == '\u205F' || c == '\u2060' || c == '\u3000' || c == '\uFEFF';
    }

    private static boolean isDash(char c) {
        return c >= '\u2010' && c <= '\u2015' || c == '\u2212' || c == '\uFE58' || c == '\uFE63';
    }

    private static char other(char c) {
        if (isDash(c)) {
            return '-';
        }
        return switch (c) {
            case '\u0085', '\u2028', '\u2029' -> '\n';
            case '´', '‘', '’', '‛', '′', 'ʹ', 'ʼ', 'ˈ', '‵' -> '\'';
            case '“', '”', '„', '‟', '″', 'ʺ', '˝', '‶' -> '"';
            case 'º', '˚' -> '°';
            case '⁄', '∕' -> '/';
            case '∶' -> ':';
            case '\u037E' -> ';';
            case '‚', '、' -> ',';
            case '․' -> '.';
            case '×', '∗', '⋅', '·', '•', '∙', '✕' -> '*';
            case '≈', '≅', '∼', '≃' -> '~';
            case '٪' -> '%';
            default -> c;
        };
    }

    /** The digit that a raised sign stands for ({@code ²} is 2), or −1. */
    static int raised(char c) {
        return RAISED.indexOf(c);
    }

    /** The digit that a lowered sign stands for, or −1. */
    static int lowered(char c) {
        return c >= '₀' && c <= '₉' ? c - '₀' : -1;
    }

    /** The index of a fraction in one sign, such as {@code ⅝}, or −1. */
    static int vulgar(char c) {
        return c < '¼' ? -1 : VULGAR.indexOf(c);
    }

    static int top(int vulgar) {
        return TOPS[vulgar];
    }

    static int bottom(int vulgar) {
        return BOTTOMS[vulgar];
    }

    static boolean isOneOver(char c) {
        return c == ONE_OVER;
    }

    /** A letter without its accent, small; 0 for a mark that only sits on the letter before it. */
    static char letter(char c) {
        if (c < 0x80) {
            return c >= 'A' && c <= 'Z' ? (char) (c + 32) : c;
        }
        return switch (Character.toLowerCase(c)) {
            case 'á', 'à', 'â', 'ä', 'ã' -> 'a';
            case 'é', 'è', 'ê', 'ë' -> 'e';
            case 'í', 'ì', 'î', 'ï' -> 'i';
            case 'ó', 'ò', 'ô', 'ö', 'õ' -> 'o';
            case 'ú', 'ù', 'û', 'ü' -> 'u';
            case 'ñ' -> 'n';
            case 'ç' -> 'c';
            case 'µ', 'μ' -> 'u';
            default -> isAccent(c) ? 0 : Character.toLowerCase(c);
        };
    }

    static boolean isAccent(char c) {
        return c >= '\u0300' && c <= '\u036F';
    }
}
