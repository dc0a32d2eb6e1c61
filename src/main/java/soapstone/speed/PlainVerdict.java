package soapstone.speed;

import java.util.List;
import soapstone.exercise.Slip;
import soapstone.mark.AskMark;
import soapstone.mark.Fit;
import soapstone.mark.Verdict;
import soapstone.variant.Variant;

/** The marker's verdict in the numbers of written-out Java, so that both can be compared. */
final class PlainVerdict {

    static final int RIGHT = 0;
    static final int COARSE = 1;
    static final int SINGLE = 2;
    static final int OTHER_UNIT = 3;
    static final int STOPPED = 4;
    static final int ROUNDED = 5;
    static final int PAIR = 6;
    static final int PEN = 7;
    static final int NEAR = 8;
    static final int UNEXPLAINED = 9;

    private PlainVerdict() {}

    static PlainMark of(Variant variant, AskMark mark) {
        if (mark.verdict().isRight()) {
            return new PlainMark(mark.families().contains("coarse-constant") ? COARSE : RIGHT, 0);
        }
        if (mark.verdict() == Verdict.NEAR || mark.verdict() == Verdict.UNEXPLAINED) {
            return new PlainMark(mark.verdict() == Verdict.NEAR ? NEAR : UNEXPLAINED, 0);
        }
        Fit first = mark.fits().get(0);
        if (first.slips().size() == 1) {
            return new PlainMark(SINGLE, slips(variant, mark.fits()));
        }
        if (first.slips().size() == 2) {
            return new PlainMark(PAIR, pairs(variant, mark.fits()));
        }
        return switch (first.family()) {
            case "other-unit" -> new PlainMark(OTHER_UNIT, 0);
            case "stopped-early" -> new PlainMark(STOPPED, 0);
            case "rounded-early" -> new PlainMark(ROUNDED, 0);
            default -> new PlainMark(PEN, mark.fits().size());
        };
    }

    private static long slips(Variant variant, List<Fit> fits) {
        long mask = 0;
        for (Fit fit : fits) {
            mask |= 1L << index(variant, fit.slips().get(0));
        }
        return mask;
    }

    /** How many pairs, and the first of them. */
    private static long pairs(Variant variant, List<Fit> fits) {
        Fit first = fits.get(0);
        return fits.size() * 10_000L + index(variant, first.slips().get(0)) * 100L + index(variant, first.slips().get(1));
    }

    private static int index(Variant variant, Slip slip) {
        return variant.model().slips().indexOf(slip);
    }
}
