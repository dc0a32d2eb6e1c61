package soapstone.quantity;

import soapstone.quantity.Spellings.Role;
import soapstone.quantity.Spellings.Spelling;
import soapstone.quantity.Token.Kind;

/**
 * Reads one value: an amount with its unit, or several of them that make one value together ({@code 3' 5-3/8"},
 * {@code 22° 30'}, {@code 1 h 20 min}).
 */
final class ValueReader {

    /** The largest amount that is read, in its own unit and in base units: far past what a shop can hold. */
    static final double LARGEST_AMOUNT = 1e12;
    static final double LARGEST_BASE = 1e15;
    private static final int MOST_PARTS = 4;
    private static final double EDGE = 1e-9;

    private final String text;
    private final int from;
    private final int end;
    private final ReadAs as;
    private Token[] tokens;
    private int at;
    private boolean negative;
    private boolean dollarFirst;
    private Reading.Again trouble;

    private final Amount[] amounts = new Amount[MOST_PARTS];
    private final Unit[] units = new Unit[MOST_PARTS];
    private final double[] scales = new double[MOST_PARTS];
    private int parts;

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

    static Reading.Again tooBig(int at) {
        return Reason.TOO_BIG.at(at, ShopPrinter.number(LARGEST_AMOUNT, Show.AUTO, '.'));
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
        Reading.One clock = trouble == null && isClock() ? clock() : null;
        if (clock != null) {
            return clock;
        }
        if (trouble == null) {
            parts();
        }
        return trouble == null ? settle() : trouble;
    }

    // ---- what stands before the amount

    /** {@code =}, {@code ≈}, {@code about}. */
    private void skipLead() {
        while (tokens[at].is(Kind.EQUALS) || tokens[at].is(Kind.ABOUT) || isWord(at, Role.ABOUT)) {
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
        boolean minus = t.is(Kind.DASH) || isWord(at, Role.MINUS);
        if (minus && negative) {
            trouble = Reason.LONE_SIGN.at(t.from, typed(t));
        } else if (minus || t.is(Kind.PLUS)) {
            negative = minus;
            at++;
        }
    }

    /** Why there is no amount where one should begin. */
    private Reading.Again noAmount() {
        Token t = tokens[at];
        return switch (t.kind) {
            case END -> at == 0 ? Reason.NO_NUMBER.at(t.from) : Reason.LONE_SIGN.at(tokens[at - 1].from, typed(tokens[at - 1]));
            case SLASH -> Reason.UNFINISHED_FRACTION.at(t.from);
            case OPEN, CLOSE -> Reason.BRACKET.at(t.from);
            case WORD -> wordFirst(t);
            case PRIME, DOUBLE, DEGREE, PERCENT, HASH, CENT, DOLLAR -> amountFollows(at + 1)
                    ? Reason.UNIT_FIRST.at(t.from, typed(t)) : Reason.LONE_SIGN.at(t.from, typed(t));
            case SIGN, TIMES, POWER -> Reason.SUM.at(t.from);
            default -> Reason.LONE_SIGN.at(t.from, typed(t));
        };
    }

    private Reading.Again wordFirst(Token t) {
        Spelling s = Spellings.find(t.word);
        boolean unit = s != null && (s.role() == Role.UNIT || s.role() == Role.SQUARE || s.role() == Role.CUBIC);
        if (unit) {
            return amountFollows(at + 1) ? Reason.UNIT_FIRST.at(t.from, typed(t)) : Reason.NO_NUMBER.at(t.from);
        }
        return s != null && s.role() == Role.TIMES ? Reason.SUM.at(t.from) : UnitReader.unknown(t, text, as);
    }

    private boolean amountFollows(int index) {
        for (int i = index; !tokens[i].is(Kind.END); i++) {
            if (tokens[i].isAmount()) {
                return true;
            }
        }
        return false;
    }

    // ---- the parts

    private void parts() {
        do {
            if (parts == MOST_PARTS) {
                trouble = Reason.ONE_ANSWER.at(tokens[at].from);
                return;
            }
            part();
        } while (trouble == null && nextPart());
        if (trouble == null && !tokens[at].is(Kind.END)) {
            trouble = leftOver();
        }
    }

    private void part() {
        AmountReader reader = new AmountReader(text, tokens, as, dollarFirst);
        Amount amount = reader.read(at);
        if (amount == null) {
            trouble = reader.trouble();
            return;
        }
        at = reader.at();
        amounts[parts] = amount;
        unit();
        if (trouble == null) {
            trouble = bounds(amount);
        }
        parts++;
    }

    private void unit() {
        if (as.countsThings() && things()) {
            return;
        }
        UnitReader reader = new UnitReader(text, tokens, as);
        at = reader.read(at, dollarFirst && parts == 0);
        trouble = reader.trouble();
        units[parts] = reader.unit();
        scales[parts] = reader.scale();
        if (trouble == null && reader.scale() != 1 && amounts[parts].bottom() > 0) {
            trouble = Reason.METRIC_FRACTION.at(amounts[parts].from(), typed(amounts[parts]), typed(tokens[at - 1]));
        }
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
        scales[parts] = 1;
        return some;
    }

    private Reading.Again bounds(Amount amount) {
        if (amount.value() > LARGEST_AMOUNT) {
            return tooBig(amount.from());
        }
        return null;
    }

    /** Whether another amount follows the unit, with or without a dash, a comma or an "and" between. */
    private boolean nextPart() {
        int next = at;
        if (units[parts - 1] == null) {
            return false;
        }
        boolean between = tokens[next].is(Kind.COMMA) || tokens[next].is(Kind.AND) || isWord(next, Role.AND);
        if (tokens[next].is(Kind.DASH) || between && !as.partsValues()) {
            next++;
        }
        if (!tokens[next].isAmount()) {
            return false;
        }
        at = next;
        return true;
    }

    /** Why something is left over after the value. */
    private Reading.Again leftOver() {
        Token t = tokens[at];
        if (t.is(Kind.DOT) && tokens[at + 1].is(Kind.END)) {
            return null;
        }
        return switch (t.kind) {
            case PLUS, TIMES, SIGN, EQUALS, ABOUT -> Reason.SUM.at(t.from);
            case DASH -> amountFollows(at) ? Reason.RANGE.at(t.from) : Reason.LONE_SIGN.at(t.from, typed(t));
            case COMMA, SEMI, AND -> amountFollows(at) ? Reason.ONE_ANSWER.at(t.from) : Reason.LONE_SIGN.at(t.from, typed(t));
            case COLON -> Reason.COLON.at(t.from, text.substring(from, end).trim());
            case OPEN, CLOSE -> Reason.BRACKET.at(t.from);
            case WORD -> wordAfter(t);
            default -> units[parts - 1] == null ? Reason.LONE_SIGN.at(t.from, typed(t))
                    : Reason.TWO_UNITS.at(t.from, units[parts - 1].symbol(), typed(t));
        };
    }

    private Reading.Again wordAfter(Token t) {
        Spelling s = Spellings.find(t.word);
        if (s == null || s.role() == Role.NUMBER_WORD || s.role() == Role.NOT_A_NUMBER) {
            return UnitReader.unknown(t, text, as);
        }
        return switch (s.role()) {
            case TIMES, PER, MINUS -> Reason.SUM.at(t.from);
            case AND -> andWhat(t);
            case UNIT -> units[parts - 1] == null ? Reason.LONE_SIGN.at(t.from, typed(t))
                    : Reason.TWO_UNITS.at(t.from, units[parts - 1].symbol(), typed(t));
            default -> Reason.UNKNOWN_WORD.at(t.from, typed(t), as.unit().symbol());
        };
    }

    /** {@code 4 and a half}, {@code 4 and 5}. */
    private Reading.Again andWhat(Token and) {
        for (int i = at; !tokens[i].is(Kind.END); i++) {
            if (isWord(i, Role.NUMBER_WORD)) {
                return UnitReader.unknown(tokens[i], text, as);
            }
        }
        return amountFollows(at) ? Reason.ONE_ANSWER.at(and.from) : Reason.LONE_SIGN.at(and.from, typed(and));
    }

    // ---- 2:30

    private boolean isClock() {
        return tokens[at].isWhole() && tokens[at + 1].is(Kind.COLON) && tokens[at + 2].isWhole();
    }

    private Reading.One clock() {
        int first = at;
        boolean three = tokens[at + 3].is(Kind.COLON) && tokens[at + 4].isWhole();
        int last = three ? at + 4 : at + 2;
        boolean hours = three || as.unit().equals(Units.HOUR);
        boolean known = as.unit().dimension().equals(Dimension.TIME) && (hours || as.unit().equals(Units.SECOND));
        if (!known || !tokens[last + 1].is(Kind.END)) {
            trouble = Reason.COLON.at(tokens[at + 1].from, text.substring(tokens[first].from, tokens[last].to));
            return null;
        }
        Unit[] clock = {Units.HOUR, Units.MINUTE, Units.SECOND};
        for (int i = first, u = hours ? 0 : 1; i <= last; i += 2, u++) {
            Token t = tokens[i];
            amounts[parts] = new Amount(t, 0, 0, false, t.from, t.to);
            scales[parts] = 1;
            trouble = trouble == null ? bounds(amounts[parts]) : trouble;
            units[parts++] = clock[u];
        }
        Reading reading = trouble == null ? settle() : trouble;
        trouble = reading instanceof Reading.Again again ? again : null;
        return reading instanceof Reading.One one ? one : null;
    }

    // ---- what it means

    private Reading settle() {
        if (parts == 1) {
            return as.countsThings() && units[0] == null ? counted() : single();
        }
        if (!units[0].dimension().equals(as.unit().dimension())) {
            return wrongDimension(units[0], amounts[0]);
        }
        for (int i = 1; i < parts && trouble == null; i++) {
            trouble = pair(i);
        }
        return trouble == null ? composed() : trouble;
    }

    private Reading counted() {
        Amount a = amounts[0];
        if (as.kind() == ReadAs.Kind.COUNT && a.value() != Math.rint(a.value())) {
            return Reason.WHOLE_COUNT.at(a.from());
        }
        return single();
    }

    private Reading single() {
        Amount a = amounts[0];
        boolean bare = units[0] == null;
        Unit unit = bare ? as.kind() == ReadAs.Kind.COUNT ? Units.ONE : as.unit() : units[0];
        Reading.Again why = fits(unit, a);
        if (why != null) {
            return why;
        }
        double amount = signed(a.value(scales[0]));
        double base = unit.toBase(amount, as.system());
        double place = Math.abs(unit.toBase(a.place() * scales[0], as.system()) - unit.toBase(0, as.system()));
        if (Math.abs(base) > LARGEST_BASE) {
            return tooBig(a.from());
        }
        return new Reading.One(Rounding.plusZero(base), amount, unit, bare, a.notation(), place, printed(unit, amount));
    }

    private double signed(double amount) {
        return negative && amount != 0 ? -amount : amount;
    }

    private String printed(Unit unit, double amount) {
        StringBuilder out = new StringBuilder(24);
        if (amount < 0) {
            out.append(ShopPrinter.MINUS);
        }
        amounts[0].print(out, scales[0], as.decimalMark());
        ShopPrinter.attach(out, 0, unit.symbol());
        return out.toString();
    }

    /** Whether unit and form can answer what is asked; the reason when they cannot. */
    private Reading.Again fits(Unit unit, Amount a) {
        if (as.kind() == ReadAs.Kind.COUNT && !unit.equals(Units.ONE)) {
            return Reason.COUNT_ASKED.at(a.from(), said(a, unit));
        }
        if (as.kind() != ReadAs.Kind.COUNT && !unit.dimension().equals(as.unit().dimension())) {
            return wrongDimension(unit, a);
        }
        if (as.kind() == ReadAs.Kind.FRACTION && a.bottom() == 0 && !a.isWhole()) {
            return Reason.FRACTION_ASKED.at(a.from());
        }
        return a.bottom() > 0 ? bottomFits(unit, a) : null;
    }

    private Reading.Again wrongDimension(Unit unit, Amount a) {
        return Reason.WRONG_DIMENSION.at(a.from(), said(a, unit), dimensionWord(unit.dimension()),
                dimensionWord(as.unit().dimension()), as.unit().equals(Units.ONE) ? "9" : as.unit().symbol());
    }

    /** A place of the sentence that is itself a key of the words files, marked by an at-sign. */
    private static String dimensionWord(Dimension d) {
        return "@dimension." + (d.isNamed() ? d.toString() : "other");
    }

    private static Reading.Again bottomFits(Unit unit, Amount a) {
        if (Fractions.areRead(unit, a.bottom())) {
            return null;
        }
        return Fractions.areUsed(unit) ? Reason.NO_SUCH_RULE.at(a.from(), String.valueOf(a.bottom()), unit.symbol())
                : Reason.METRIC_FRACTION.at(a.from(), a.top() + "/" + a.bottom(), unit.symbol());
    }

    // ---- several parts

    /** Checks that a part goes with the one before it, and gives a bare one its unit. */
    private Reading.Again pair(int i) {
        Unit big = units[i - 1];
        Amount part = amounts[i];
        if (units[i] == null) {
            Unit small = smaller(big);
            if (part.bottom() > 0 && part.number() == null || small == null) {
                return followsUnit(i);
            }
            units[i] = small;
            scales[i] = 1;
        }
        if (!big.dimension().equals(units[i].dimension())) {
            return Reason.TWO_UNITS.at(part.from(), big.symbol(), units[i].symbol());
        }
        if (!amounts[i - 1].isWhole() || scales[i - 1] != 1) {
            return Reason.PART_NOT_WHOLE.at(amounts[i - 1].from(), typed(amounts[i - 1]), big.symbol());
        }
        return sizes(i);
    }

    /** Several parts in order: 5 in after 3 ft, and never a whole foot of inches. */
    private Reading.Again sizes(int i) {
        double bigSize = units[i - 1].toBase(1, as.system());
        double size = units[i].toBase(scales[i], as.system());
        boolean temperature = units[i].dimension().equals(Dimension.TEMPERATURE);
        if (size >= bigSize * (1 - EDGE) || temperature) {
            return Reason.PARTS_ORDER.at(amounts[i].from(), units[i - 1].symbol(), units[i].symbol());
        }
        if (units[i].toBase(amounts[i].value(scales[i]), as.system()) >= bigSize * (1 - EDGE)) {
            return Reason.PART_TOO_BIG.at(amounts[i].from(), said(amounts[i], units[i]), units[i - 1].symbol());
        }
        return null;
    }

    /** What a bare number means after a unit: 5 after {@code 3'} is inches. */
    private static Unit smaller(Unit big) {
        if (big.equals(Units.FOOT)) {
            return Units.INCH;
        }
        if (big.equals(Units.DEGREE)) {
            return Units.ARCMIN;
        }
        if (big.equals(Units.ARCMIN)) {
            return Units.ARCSEC;
        }
        return big.equals(Units.HOUR) ? Units.MINUTE : null;
    }

    /** {@code 41" 3/8}: most likely the unit stands too early. */
    private Reading.Again followsUnit(int i) {
        Amount before = amounts[i - 1];
        Amount part = amounts[i];
        Unit unit = units[i - 1];
        if (part.number() != null || !before.isWhole()) {
            return Reason.TWO_NUMBERS.at(part.from(), said(before, unit), typed(part));
        }
        String both = said(new Amount(before.number(), part.top(), part.bottom(), false, 0, 0), unit);
        Unit small = smaller(unit);
        return small == null ? Reason.UNIT_INSIDE.at(part.from(), said(before, unit), typed(part), both)
                : Reason.TWO_WAYS.at(part.from(), said(before, unit) + ShopPrinter.NO_BREAK + said(part, small), both);
    }

    private Reading composed() {
        Amount last = amounts[parts - 1];
        Unit smallest = units[parts - 1];
        Reading.Again why = fits(smallest, last);
        if (why != null) {
            return why;
        }
        double base = 0;
        for (int i = 0; i < parts; i++) {
            base += units[i].toBase(amounts[i].value(scales[i]), as.system());
        }
        if (base > LARGEST_BASE) {
            return tooBig(amounts[0].from());
        }
        base = signed(base);
        double place = last.place() * scales[parts - 1];
        String said = scales[parts - 1] == 1 ? printedParts()
                : ShopPrinter.text(base, smallest, as.system(), Show.decimal(place), as.decimalMark());
        return new Reading.One(base, as.unit().fromBase(base, as.system()), as.unit(), false, notation(),
                smallest.toBase(place, as.system()), said);
    }

    private Notation notation() {
        Unit first = units[0];
        if (first.equals(Units.FOOT)) {
            return Notation.FEET_INCHES;
        }
        if (first.equals(Units.DEGREE)) {
            return Notation.DEGREES_MINUTES;
        }
        if (first.equals(Units.HOUR)) {
            return Notation.HOURS_MINUTES;
        }
        return first.equals(Units.POUND) ? Notation.POUNDS_OUNCES : Notation.PARTS;
    }

    private String printedParts() {
        StringBuilder out = new StringBuilder(32);
        if (negative) {
            out.append(ShopPrinter.MINUS);
        }
        for (int i = 0; i < parts; i++) {
            int start = out.length();
            amounts[i].print(out, 1, as.decimalMark());
            ShopPrinter.attach(out, start, units[i].symbol());
            if (i < parts - 1) {
                out.append(ShopPrinter.NO_BREAK);
            }
        }
        return out.toString();
    }

    /** An amount and a unit as a page shows them. */
    private String said(Amount a, Unit unit) {
        StringBuilder out = new StringBuilder(24);
        a.print(out, 1, as.decimalMark());
        ShopPrinter.attach(out, 0, unit.symbol());
        return out.toString();
    }

    private boolean isWord(int index, Role role) {
        Spelling s = tokens[index].is(Kind.WORD) ? Spellings.find(tokens[index].word) : null;
        return s != null && s.role() == role;
    }

    private String typed(Token t) {
        return text.substring(t.from, t.to);
    }

    private String typed(Amount a) {
        return text.substring(a.from(), a.to());
    }
}
