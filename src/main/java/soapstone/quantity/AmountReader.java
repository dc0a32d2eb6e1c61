package soapstone.quantity;

import soapstone.quantity.Spellings.Role;
import soapstone.quantity.Token.Kind;

/**
 * Reads a number in the forms of the shop: {@code 41}, {@code 41.375}, {@code 5/8}, {@code 41 3/8}, {@code 41-3/8},
 * {@code 41⅜}. Where a gap or its lack leaves two readings, it refuses and says both.
 */
final class AmountReader {

    private static final int MOST_TOP_DIGITS = 9;
    private static final int MOST_BOTTOM_DIGITS = 6;
    private static final int GROUP_DIGITS = 3;

    private final String text;
    private final Token[] tokens;
    private final ReadAs as;
    /** Whether a slash may be the one of a unit: {@code $2.50/lb}, {@code 3/ft}. */
    private final boolean perUnit;
    private int at;
    private Reading.Again trouble;

    AmountReader(String text, Token[] tokens, ReadAs as, boolean dollarFirst) {
        this.text = text;
        this.tokens = tokens;
        this.as = as;
        this.perUnit = dollarFirst || as.unit().name().startsWith("1/");
    }

    /** Index of the token after what was read. */
    int at() {
        return at;
    }

    Reading.Again trouble() {
        return trouble;
    }

    /** Reads an amount that begins at a token; null with {@link #trouble()} when it is none. */
    Amount read(int from) {
        at = from;
        Token first = tokens[from];
        Amount amount = first.is(Kind.VULGAR) ? vulgar(null, from) : number(from);
        if (trouble == null) {
            checkWhatFollows(amount);
        }
        return trouble == null ? amount : null;
    }

    private Amount vulgar(Token whole, int index) {
        Token f = tokens[index];
        at = index + 1;
        if (f.bottom == 0) {
            trouble = Reason.ZERO_BOTTOM.at(f.from);
        } else if (whole != null && f.top >= f.bottom) {
            trouble = Reason.TOP_HEAVY.at(f.from, f.in(text));
        }
        return new Amount(whole, f.top, f.bottom, whole == null && f.top > f.bottom, (whole == null ? f : whole).from, f.to);
    }

    private Amount number(int from) {
        Token first = tokens[from];
        if (isFraction(from)) {
            return fraction(null, from);
        }
        int next = from + 1;
        boolean joined = isJoiner(next);
        int after = joined ? next + 1 : next;
        if (tokens[after].is(Kind.VULGAR)) {
            return checkWhole(first, after) ? vulgar(first, after) : null;
        }
        if (isFraction(after)) {
            return checkWhole(first, after) ? fraction(first, after) : null;
        }
        at = next;
        return new Amount(first, 0, 0, false, first.from, first.to);
    }

    /** A dash, an "and" or "y" between the whole number and its fraction. */
    private boolean isJoiner(int index) {
        Token t = tokens[index];
        return t.is(Kind.DASH) || (t.is(Kind.AND) || t.is(Role.AND)) && !as.partsValues();
    }

    /** A number and a slash that is not the one of a unit, as in {@code 3 /ft}. */
    private boolean isFraction(int index) {
        return tokens[index].is(Kind.NUMBER) && tokens[index + 1].is(Kind.SLASH) && !beginsUnit(index + 2);
    }

    private boolean beginsUnit(int index) {
        return perUnit && (tokens[index].is(Kind.WORD) || tokens[index].is(Kind.PRIME) || tokens[index].is(Kind.DOUBLE));
    }

    private boolean checkWhole(Token whole, int fraction) {
        if (!whole.isWhole()) {
            Token last = tokens[fraction].is(Kind.VULGAR) || tokens[fraction + 2].is(Kind.END)
                    ? tokens[fraction] : tokens[fraction + 2];
            trouble = Reason.DECIMAL_AND_FRACTION.at(whole.from, text.substring(whole.from, last.to));
            return false;
        }
        return true;
    }

    private Amount fraction(Token whole, int index) {
        Token top = tokens[index];
        Token slash = tokens[index + 1];
        Token bottom = tokens[index + 2];
        at = index + 3;
        if (!bottom.is(Kind.NUMBER)) {
            trouble = Reason.UNFINISHED_FRACTION.at(slash.from);
            return null;
        }
        if (slash.gap != bottom.gap) {
            String closed = top.in(text) + "/" + bottom.in(text);
            trouble = Reason.GAP_AT_SLASH.at(slash.from, closed);
            return null;
        }
        if (!top.isWhole() || !bottom.isWhole()) {
            trouble = Reason.DECIMAL_AND_FRACTION.at(top.from, text.substring(top.from, bottom.to));
            return null;
        }
        return checkedFraction(whole, top, bottom, slash.gap);
    }

    private Amount checkedFraction(Token whole, Token top, Token bottom, boolean loose) {
        if (top.word.length() > MOST_TOP_DIGITS || bottom.word.length() > MOST_BOTTOM_DIGITS) {
            trouble = Reason.TOO_BIG.at(top.from);
        } else if (bottom.value == 0) {
            trouble = Reason.ZERO_BOTTOM.at(bottom.from);
        } else if (whole != null && top.value >= bottom.value) {
            trouble = Reason.TOP_HEAVY.at(top.from, text.substring(top.from, bottom.to));
        } else if (whole == null && !loose) {
            trouble = mixedOrFraction(top, bottom);
        }
        boolean heavy = whole == null && loose && top.value > bottom.value;
        skipOrdinal();
        return new Amount(whole, (long) top.value, (long) bottom.value, heavy, (whole == null ? top : whole).from, bottom.to);
    }

    /** {@code 3/8ths}. */
    private void skipOrdinal() {
        if (!tokens[at].gap && tokens[at].is(Role.ORDINAL)) {
            at++;
        }
    }

    /** {@code 31/2} is 3 1/2 with a gap lost, or 31 halves. {@code 9/8} and {@code 22/7} can only be what they are. */
    private Reading.Again mixedOrFraction(Token top, Token bottom) {
        boolean isPi = top.value == 22 && bottom.value == 7 || top.value == 355 && bottom.value == 113;
        if (top.value <= bottom.value || isPi) {
            return null;
        }
        String digits = String.valueOf((long) top.value);
        for (int cut = digits.length() - 1; cut > 0; cut--) {
            String rest = digits.substring(cut);
            if (rest.charAt(0) != '0' && Long.parseLong(rest) < bottom.value) {
                String mixed = digits.substring(0, cut) + ShopPrinter.NO_BREAK + rest + "/" + (long) bottom.value;
                return Reason.MIXED_OR_FRACTION.at(top.from, text.substring(top.from, bottom.to), mixed, topHeavy(top, bottom));
            }
        }
        return null;
    }

    /** 15 1/2 for 31/2; where a fraction is asked, 31 / 2, which is read as it stands. */
    private String topHeavy(Token top, Token bottom) {
        if (as.kind() == ReadAs.Kind.FRACTION) {
            return top.word + ShopPrinter.NO_BREAK + "/" + ShopPrinter.NO_BREAK + bottom.word;
        }
        return ShopPrinter.number(top.value / bottom.value, Show.fraction((int) bottom.value), as.decimalMark());
    }

    // ---- what must not follow

    private void checkWhatFollows(Amount amount) {
        Token next = tokens[at];
        if (next.is(Kind.SLASH) && !beginsUnit(at + 1)) {
            trouble = amount.bottom() > 0 ? Reason.TWO_SLASHES.at(next.from) : Reason.UNFINISHED_FRACTION.at(next.from);
        } else if (next.isAmount()) {
            trouble = twoNumbers(amount, next);
        } else if (next.is(Kind.POWER)) {
            trouble = Reason.SUM.at(next.from);
        }
    }

    /** The one number that {@code 1 250}, {@code 41. 375} or {@code 41 .375} may be; null when two are more likely. */
    private String withoutGap(Amount amount, Token next) {
        char mark = as.decimalMark();
        boolean markBefore = Signs.fold(text.charAt(amount.to() - 1)) == mark;
        boolean markAfter = Signs.fold(text.charAt(next.from)) == mark;
        String digits = amount.number().word;
        if (markBefore && next.isWhole()) {
            return digits + mark + next.word;
        }
        if (markAfter && !markBefore && !next.scientific) {
            return digits + mark + next.word.substring(2);
        }
        boolean group = next.isWhole() && next.to - next.from == GROUP_DIGITS && digits.length() <= GROUP_DIGITS;
        return group && amount.value() >= 1 ? digits + next.word : null;
    }

    private Reading.Again twoNumbers(Amount amount, Token next) {
        boolean fractionNext = next.is(Kind.VULGAR) || isFraction(at);
        if (amount.bottom() > 0 && fractionNext) {
            return Reason.TWO_FRACTIONS.at(next.from);
        }
        String whole = amount.isWhole() && next.is(Kind.NUMBER) ? withoutGap(amount, next) : null;
        if (whole != null) {
            return Reason.GAP_IN_NUMBER.at(next.from, whole);
        }
        return Reason.TWO_NUMBERS.at(next.from, text.substring(amount.from(), amount.to()), next.in(text));
    }
}
