package soapstone.page;

import java.util.Locale;
import java.util.Optional;
import soapstone.mark.Verdict;

/** What stands for a mark in a table: a sign for the eye, and words that say it. */
public enum MarkSign {
    RIGHT, RIGHT_BUT, CARRIED, NEAR, SLIP, UNEXPLAINED, BLANK, EXCUSED,
    /** This student has another exercise there, which asks for less. */
    NOT_ASKED,
    /** Nothing was handed in. */
    NONE;

    public static MarkSign of(Verdict verdict) {
        return verdict == Verdict.ASK_AGAIN ? BLANK : valueOf(verdict.name());
    }

    /**
     * One in a cell.
     *
     * @param sign    which; its words stand under {@code marks.sign-<sign>}
     * @param changed a later word counts in place of the first mark
     */
    public record Cell(String sign, boolean changed) {

        public static final Cell NONE = of(Optional.empty(), false);

        public static Cell of(Optional<MarkSign> sign, boolean changed) {
            return new Cell(sign.orElse(MarkSign.NONE).word(), changed);
        }
    }

    /** As templates and words call it: {@code right-but}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
