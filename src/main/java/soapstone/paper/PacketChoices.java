package soapstone.paper;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * How a packet is printed.
 *
 * @param names     names stand on the sheets; else a line to write one on
 * @param formulas  the formulas that a problem uses stand beside it
 * @param bothSides the printer prints on both sides: every sheet begins on a fresh piece of paper
 */
public record PacketChoices(PaperSize size, Form form, boolean names, boolean formulas, boolean bothSides) {

    /** How the problems stand on the paper. */
    public enum Form {
        /** One below the other, with room for the work. */
        WHOLE,
        /** The same without room for the work, to save paper: it is done on other paper. */
        CLOSE,
        /** Each on half a page, to be cut. */
        HALF,
        /** 18 points, for those who need it. */
        LARGE;

        /** As forms and the command line write it. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** The form of that word; empty for any other. */
        public static Optional<Form> of(String word) {
            return Arrays.stream(values()).filter(f -> f.word().equals(word)).findFirst();
        }
    }

    /** Letter, whole pages, with names and without formulas. */
    public static final PacketChoices USUAL = new PacketChoices(PaperSize.LETTER, Form.WHOLE, true, false, false);

    boolean half() {
        return form == Form.HALF;
    }

    boolean large() {
        return form == Form.LARGE;
    }

    boolean close() {
        return form == Form.CLOSE;
    }
}
