package soapstone.school;

import java.text.Normalizer;

/** Which signs may stand in the texts of a roster. */
final class RosterSigns {

    private static final int NON_JOINER = 0x200C;
    private static final int JOINER = 0x200D;
    private static final int REPLACEMENT = 0xFFFD;

    private RosterSigns() {}

    /** A cell without space round it, with single spaces in it, in one form of Unicode. */
    static String tidy(String cell) {
        return Normalizer.normalize(cell, Normalizer.Form.NFC).replaceAll("[ \\u00A0\\u2007\\u202F]+", " ").strip();
    }

    static boolean hasUnfit(String text) {
        return text.codePoints().anyMatch(RosterSigns::isUnfit);
    }

    /**
     * Signs that cannot be seen, that turn the direction of writing round, or that no database keeps. The two joiners are
     * letters' business in some scripts. The replacement sign tells of a text that was read in the wrong encoding.
     */
    static boolean isUnfit(int sign) {
        return switch (Character.getType(sign)) {
            case Character.CONTROL, Character.SURROGATE, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> true;
            case Character.FORMAT -> sign != NON_JOINER && sign != JOINER;
            case Character.UNASSIGNED -> (sign & 0xFFFE) == 0xFFFE || sign >= 0xFDD0 && sign <= 0xFDEF;
            default -> sign == REPLACEMENT;
        };
    }
}
