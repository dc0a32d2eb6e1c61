package soapstone.quantity;

import java.util.ArrayList;
import java.util.List;
import soapstone.quantity.Spellings.Role;
import soapstone.quantity.Spellings.Spelling;
import soapstone.quantity.Token.Kind;

/**
 * Reads one value: an amount with its unit, or several of them that make one value together ({@code 3' 5-3/8"},
 * {@code 22° 30'}, {@code 1 h 20 min}). What the parts mean is {@link Value}'s to say.
 */
final class ValueReader {

    private static final int MOST_PARTS = 4;

    private final String text;
    private final int from;
    private final int end;
    private final ReadAs as;
    private final List<Part> parts = new ArrayList<>(2);
    private Token[] tokens;
    private int at;
    private boolean negative;
    private boolean dollarFirst;
    private Reading.Again trouble;

    private ValueReader(String text, int from, int end, ReadAs as) {
        this.text = text;
        this.from = from;
        this.end = end;
        this.as = as;
    }

    /** Reads one stretch of a text: Blank, One or Again. */
    static Reading read(String text, int from, int end, ReadAs as) {
        return new ValueReader(text, from, end, as).value();
    }

    private Reading value() {
        Lexer lexer = new Lexer(text, from, end, as);
        tokens = lexer.tokens();
        if (tokens == null) {
            return lexer.trouble();
        }
        if (tokens[0].is(Kind.END)) {
            return new Reading.Blank();
        }
        skipLead();
        sign();
        if (trouble == null) {
            if (isClock()) {
                clock();
            } else {
                parts();
            }
        }
        return trouble == null ? new Value(parts, negative, as).reading() : trouble;
    }

    // ---- what stands before the amount

    /** {@code =}, {@code ≈}, {@code about}. */
    private void skipLead() {
        while (tokens[at].is(Kind.EQUALS) || tokens[at].is(Kind.ABOUT) || tokens[at].is(Role.ABOUT)) {
            at++;
            if (tokens[at].is(Kind.DOT)) {
                at++;
            }
        }
    }

    private void sign() {
        takeSign();
        if (tokens[at].isWord("us") && tokens[at + 1].is(Kind.DOLLAR)) {
            at++;
        }
        if (tokens[at].is(Kind.DOLLAR)) {
            dollarFirst = true;
            at++;
            takeSign();
        } else if (tokens[at].is(Kind.HASH) && as.countsThings()) {
            at++;
        }
        if (!tokens[at].isAmount() && trouble == null) {
            trouble = noAmount();
        }
    }

    private void takeSign() {
        Token t = tokens[at];
        boolean minus = t.is(Kind.DASH) || tokens[at].is(Role.MINUS);
        if (minus && negative) {
            trouble = lone(t);
        } else if (minus || t.is(Kind.PLUS)) {
            negative = minus;
            at++;
        }
    }

    /** Why there is no amount where one should begin. */
    private Reading.Again noAmount() {
        Token t = tokens[at];
        return switch (t.kind) {
            case END -> lone(tokens[at - 1]);
            case SLASH -> Reason.UNFINISHED_FRACTION.at(t.from);
            case OPEN, CLOSE -> Reason.BRACKET.at(t.from);
            case WORD -> wordFirst(t);
            case PRIME, DOUBLE, DEGREE, PERCENT, HASH, CENT, DOLLAR ->
                amountFollows() ? Reason.UNIT_FIRST.at(t.from, t.in(text)) : lone(t);
            case SIGN, TIMES, POWER -> Reason.SUM.at(t.from);
            default -> lone(t);
        };
    }

    private Reading.Again wordFirst(Token t) {
        Spelling s = Spellings.find(t.word);
        if (s == null) {
            return UnknownWord.why(t, text, as);
        }
        return switch (s.role()) {
            case UNIT, SQUARE, CUBIC -> amountFollows() ? Reason.UNIT_FIRST.at(t.from, t.in(text)) : Reason.NO_NUMBER.at(t.from);
            case TIMES -> Reason.SUM.at(t.from);
            default -> UnknownWord.why(t, text, as);
        };
    }

    private boolean amountFollows() {
        for (int i = at; !tokens[i].is(Kind.END); i++) {
            if (tokens[i].isAmount()) {
                return true;
            }
        }
        return false;
    }

    // ---- the parts

    private void parts() {
        do {
            part();
        } while (trouble == null && nextPart());
        if (trouble == null && !tokens[at].is(Kind.END)) {
            trouble = leftOver();
        }
    }

    private void part() {
        boolean dollar = dollarFirst && parts.isEmpty();
        AmountReader reader = new AmountReader(text, tokens, as, dollar);
        Amount amount = reader.read(at);
        if (amount == null) {
            trouble = reader.trouble();
            return;
        }
        at = reader.at();
        if (as.countsThings() && things()) {
            parts.add(new Part(amount, null, 1));
        } else {
            unit(amount, dollar);
        }
    }

    private void unit(Amount amount, boolean dollar) {
        UnitReader reader = new UnitReader(text, tokens, as);
        at = reader.read(at, dollar);
        trouble = reader.trouble();
        if (trouble == null && reader.scale() != 1 && amount.bottom() > 0) {
            trouble = Reason.METRIC_FRACTION.at(amount.from(), amount.said(as.decimalMark()), tokens[at - 1].in(text));
        }
        parts.add(new Part(amount, reader.unit(), reader.scale()));
    }

    /** {@code 9 holes}, {@code 9 bolt holes}. */
    private boolean things() {
        int to = at;
        while (tokens[to].is(Kind.WORD) && Spellings.isThing(tokens[to].word)) {
            to++;
            to += tokens[to].is(Kind.DOT) ? 1 : 0;
        }
        boolean some = to > at;
        at = to;
        return some;
    }

    /** Whether another amount follows the unit, with or without a dash, a comma or an "and" between. */
    private boolean nextPart() {
        int next = at;
        if (parts.get(parts.size() - 1).unit() == null) {
            return false;
        }
        boolean between = tokens[next].is(Kind.COMMA) || tokens[next].is(Kind.AND) || tokens[next].is(Role.AND);
        if (tokens[next].is(Kind.DASH) || between && !as.partsValues()) {
            next++;
        }
        if (!tokens[next].isAmount()) {
            return false;
        }
        if (parts.size() == MOST_PARTS) {
            trouble = Reason.ONE_ANSWER.at(tokens[next].from);
            return false;
        }
        at = next;
        return true;
    }

    // ---- 2:30

    private boolean isClock() {
        return tokens[at].isWhole() && tokens[at + 1].is(Kind.COLON) && tokens[at + 2].isWhole();
    }

    /** Hours and minutes where hours are asked, minutes and seconds where seconds are; where minutes are, nobody knows. */
    private void clock() {
        boolean three = tokens[at + 3].is(Kind.COLON) && tokens[at + 4].isWhole();
        int last = three ? at + 4 : at + 2;
        boolean hours = three || as.unit().equals(Units.HOUR);
        boolean known = as.unit().dimension().equals(Dimension.TIME) && (hours || as.unit().equals(Units.SECOND));
        if (!known || !tokens[last + 1].is(Kind.END)) {
            trouble = Reason.COLON.at(tokens[at + 1].from, text.substring(tokens[at].from, tokens[last].to));
            return;
        }
        Unit unit = hours ? Units.HOUR : Units.MINUTE;
        for (int i = at; i <= last; i += 2) {
            Token t = tokens[i];
            parts.add(new Part(new Amount(t, 0, 0, false, t.from, t.to), unit, 1));
            unit = unit.equals(Units.HOUR) ? Units.MINUTE : Units.SECOND;
        }
    }

    // ---- what stands after the value

    /** Why something is left over after the value; null when it does no harm. */
    private Reading.Again leftOver() {
        Token t = tokens[at];
        return switch (t.kind) {
            case DOT -> tokens[at + 1].is(Kind.END) ? null : lone(t);
            case PLUS, TIMES, SIGN, EQUALS, ABOUT -> Reason.SUM.at(t.from);
            case DASH -> amountFollows() ? Reason.RANGE.at(t.from) : lone(t);
            case COMMA, SEMI, AND -> amountFollows() ? Reason.ONE_ANSWER.at(t.from) : lone(t);
            case COLON -> Reason.COLON.at(t.from, text.substring(from, end).trim());
            case OPEN, CLOSE -> Reason.BRACKET.at(t.from);
            case WORD -> wordAfter(t);
            default -> notWithUnit(t);
        };
    }

    private Reading.Again wordAfter(Token t) {
        Spelling s = Spellings.find(t.word);
        if (s == null) {
            return UnknownWord.why(t, text, as);
        }
        return switch (s.role()) {
            case TIMES, PER, MINUS -> Reason.SUM.at(t.from);
            case AND -> andWhat(t);
            case UNIT -> notWithUnit(t);
            default -> UnknownWord.why(t, text, as);
        };
    }

    private Reading.Again notWithUnit(Token t) {
        Unit unit = parts.get(parts.size() - 1).unit();
        return unit == null || unit.symbol().isEmpty() ? lone(t) : Reason.TWO_UNITS.at(t.from, unit.symbol(), t.in(text));
    }

    /** {@code 4 and a half}, {@code 4 and 5}. */
    private Reading.Again andWhat(Token and) {
        for (int i = at; !tokens[i].is(Kind.END); i++) {
            if (tokens[i].is(Role.NUMBER_WORD)) {
                return UnknownWord.why(tokens[i], text, as);
            }
        }
        return amountFollows() ? Reason.ONE_ANSWER.at(and.from) : lone(and);
    }

    private Reading.Again lone(Token t) {
        return Reason.LONE_SIGN.at(t.from, t.in(text));
    }
}
