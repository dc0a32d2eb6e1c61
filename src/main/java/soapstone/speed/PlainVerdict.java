package soapstone.speed;

import java.util.List;
import soapstone.exercise.Ask;
import soapstone.exercise.Slip;
import soapstone.mark.AskMark;
import soapstone.mark.Fit;
import soapstone.mark.Verdict;
import soapstone.variant.Variant;

/** A verdict as one number, so that two ways of marking can be compared. */
final class PlainVerdict {

    static final long TIER = 1L << 40;
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

    static long of(Variant variant, Ask ask, AskMark mark) {
        if (mark.verdict().isRight()) {
            return (mark.families().contains("coarse-constant") ? COARSE : RIGHT) * TIER;
        }
        if (mark.verdict() == Verdict.NEAR || mark.verdict() == Verdict.UNEXPLAINED) {
            return (mark.verdict() == Verdict.NEAR ? NEAR : UNEXPLAINED) * TIER;
        }
        Fit first = mark.fits().get(0);
        if (first.slips().size() == 1) {
            return SINGLE * TIER + slips(variant, mark.fits());
        }
        if (first.slips().size() == 2) {
            return PAIR * TIER + pairs(variant, mark.fits());
        }
        return switch (first.family()) {
            case "other-unit" -> OTHER_UNIT * TIER;
            case "stopped-early" -> STOPPED * TIER;
            case "rounded-early" -> ROUNDED * TIER;
            default -> PEN * TIER + mark.fits().size();
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
