package soapstone.quantity;

import soapstone.quantity.Spellings.Role;
import soapstone.quantity.Spellings.Spelling;
import soapstone.quantity.Token.Kind;

/**
 * Reads the unit after an amount: a word or sign, with a power ({@code sq ft}, {@code ft²}, {@code pies cuadrados}), or
 * several of them as a quotient or product ({@code lb per cubic foot}, {@code ft-lb}). Where a word can mean two units,
 * such as lb for mass and force, the asked dimension decides.
 */
final class UnitReader {

    private static final int MOST_FACTORS = 4;

    private final String text;
    private final Token[] tokens;
    private final ReadAs as;
    private final Factors factors;
    private int at;

    private Unit unit;
    private double scale = 1;
    private Reading.Again trouble;

    UnitReader(String text, Token[] tokens, ReadAs as) {
        this.text = text;
        this.tokens = tokens;
        this.as = as;
        this.factors = new Factors(as);
    }

    /** The unit that was read, or null when none stands there. */
    Unit unit() {
        return unit;
    }

    /** How many of the unit the word stands for: 0.001 for a thou. */
    double scale() {
        return scale;
    }

    Reading.Again trouble() {
        return trouble;
    }

    /** Reads from a token on; the index of the token after the unit. */
    int read(int from, boolean dollarFirst) {
        at = from;
        if (dollarFirst) {
            put(Spellings.DOLLAR, 1, false);
            skipEach();
        } else if (isAskedUnit(from)) {
            unit = as.unit();
            while (!tokens[at].is(Kind.END)) {
                at++;
            }
            return at;
        }
        factors(dollarFirst);
        if (trouble == null && factors.count() > 0) {
            settle(tokens[from]);
        }
        return at;
    }

    /** Whether the rest is just what the page prints beside the box, so that what is printed always reads back. */
    private boolean isAskedUnit(int from) {
        Token token = tokens[from];
        return !token.is(Kind.END) && !as.unit().equals(Units.ONE)
                && (matches(token.from, as.unit().symbol()) || matches(token.from, as.unit().name()));
    }

    private boolean matches(int from, String spelled) {
        int end = endOfText();
        int j = 0;
        for (int i = from; i < end; i++) {
            char c = Signs.fold(text.charAt(i));
            if (c == ' ') {
                continue;
            }
            if (j == spelled.length() || c != Signs.fold(spelled.charAt(j++))) {
                return false;
            }
        }
        return j == spelled.length();
    }

    private int endOfText() {
        int i = at;
        while (!tokens[i].is(Kind.END)) {
            i++;
        }
        return tokens[i].from;
    }

    private void settle(Token first) {
        unit = factors.unit();
        scale = factors.scale();
        if (unit == null) {
            trouble = Reason.TWO_UNITS.at(first.from, factors.symbol(0), factors.symbol(1));
        } else if (factors.count() == 1 && isStrangeTon(first)) {
            trouble = Reason.WHICH_TON.at(first.from, first.in(text));
        }
    }

    /** A ton is 2000 lb here and 1000 kg there; a class of one system may well have learned the other. */
    private boolean isStrangeTon(Token first) {
        boolean metricWord = first.isWord("t") || first.isWord("tonelada") || first.isWord("toneladas");
        boolean usWord = first.isWord("ton") || first.isWord("tons");
        return (as.system() == UnitSystem.US ? metricWord : usWord) && !unit.equals(as.unit());
    }

    // ---- the factors

    private void factors(boolean dollarFirst) {
        boolean more = dollarFirst || factor(false) || tokens[at].is(Kind.SLASH) || tokens[at].is(Role.PER);
        while (more && trouble == null) {
            if (tokens[at].is(Kind.SLASH) || tokens[at].is(Role.PER)) {
                int from = at++;
                if (!factor(true) && trouble == null) {
                    trouble = tokens[at].isAmount() ? Reason.SUM.at(tokens[from].from)
                            : Reason.LONE_SIGN.at(tokens[from].from, tokens[from].in(text));
                }
            } else {
                more = product();
            }
        }
    }

    /** {@code $12 each}, {@code $12 USD}. */
    private void skipEach() {
        if (tokens[at].isWord("each") || tokens[at].isWord("ea") || tokens[at].isWord("usd")
                || tokens[at].isWord("dollars") || tokens[at].isWord("dolares")) {
            at++;
        }
    }

    /** {@code ft-lb}, {@code lb·in}, {@code N m}; side by side only where a moment can be meant. */
    private boolean product() {
        int sign = tokens[at].is(Kind.TIMES) || tokens[at].is(Kind.DASH) ? 1 : 0;
        if (factors.count() == 0 || !isUnitWord(at + sign)) {
            return false;
        }
        factors.sideBySide(sign == 0);
        at += sign;
        return factor(false);
    }

    private boolean isUnitWord(int index) {
        return tokens[index].is(Role.UNIT) || tokens[index].is(Role.SQUARE) || tokens[index].is(Role.CUBIC);
    }

    /** One unit with its power; false when none stands here. */
    private boolean factor(boolean over) {
        int power = tokens[at].is(Role.SQUARE) ? 2 : tokens[at].is(Role.CUBIC) ? 3 : 1;
        if (power > 1) {
            at++;
            skipDot();
        }
        if (isPercentInWords()) {
            at += 2;
            put(Spellings.PERCENT, 1, over);
            return true;
        }
        Spelling s = spelling();
        if (s == null) {
            if (power > 1 && trouble == null) {
                trouble = UnknownWord.why(tokens[at - 1], text, as);
            }
            return false;
        }
        at++;
        s = temperature(s);
        skipDot();
        put(s, power > 1 ? power : power(s), over);
        return trouble == null;
    }

    private boolean isPercentInWords() {
        return tokens[at].isWord("per") && tokens[at + 1].isWord("cent")
                || tokens[at].isWord("por") && tokens[at + 1].isWord("ciento");
    }

    private void put(Spelling spelling, int power, boolean over) {
        if (factors.count() == MOST_FACTORS) {
            trouble = Reason.TWO_UNITS.at(tokens[at - 1].from, tokens[at - 2].in(text), tokens[at - 1].in(text));
            return;
        }
        if (!factors.takes(spelling, power, over)) {
            trouble = Reason.LONE_SIGN.at(tokens[at - 1].from, tokens[at - 1].in(text));
            return;
        }
        factors.put(spelling, power, over);
    }

    private void skipDot() {
        if (tokens[at].is(Kind.DOT) && !tokens[at].gap) {
            at++;
        }
    }

    private Spelling spelling() {
        Token token = tokens[at];
        return switch (token.kind) {
            case PRIME -> Spellings.PRIME;
            case DOUBLE -> Spellings.DOUBLE;
            case DEGREE -> Spellings.DEGREE;
            case PERCENT -> Spellings.PERCENT;
            case DOLLAR -> Spellings.DOLLAR;
            case CENT -> Spellings.CENT;
            case HASH -> Spellings.HASH;
            case WORD -> word(token);
            default -> null;
        };
    }

    private Spelling word(Token token) {
        Spelling s = Spellings.find(token.word);
        if (s != null && s.role() == Role.UNIT) {
            return s;
        }
        Token before = tokens[at - 1];
        if (token.word.equals("o") && !token.gap && before.is(Kind.NUMBER)) {
            trouble = Reason.LETTER_O.at(token.from, before.in(text) + "0");
        } else if (s == null || s.role() == Role.NUMBER_WORD || s.role() == Role.NOT_A_NUMBER) {
            trouble = UnknownWord.why(token, text, as);
        }
        return null;
    }

    /** {@code °F}, {@code deg C}. */
    private Spelling temperature(Spelling s) {
        if (s != Spellings.DEGREE || !tokens[at].is(Kind.WORD)) {
            return s;
        }
        Spelling scaleWord = Spellings.find(tokens[at].word);
        if (scaleWord == null || scaleWord.role() != Role.UNIT
                || !scaleWord.units().get(0).dimension().equals(Dimension.TEMPERATURE)) {
            return s;
        }
        at++;
        return scaleWord;
    }

    private int power(Spelling s) {
        Token token = tokens[at];
        if (token.is(Kind.POWER)) {
            at++;
            if (token.top < 1 || token.top > 4) {
                trouble = Reason.STRANGE_SIGN.at(token.from, token.in(text));
            }
            return token.top;
        }
        if (tokens[at].is(Role.SQUARED) || tokens[at].is(Role.CUBED)) {
            int power = tokens[at].is(Role.SQUARED) ? 2 : 3;
            at++;
            skipDot();
            return power;
        }
        return gluedPower(s);
    }

    /** The 2 of {@code ft2}, unless it begins the next part, as in {@code 3ft2in}. */
    private int gluedPower(Spelling s) {
        Token token = tokens[at];
        boolean digit = token.isWhole() && !token.gap && token.to - token.from == 1 && tokens[at - 1].is(Kind.WORD)
                && Units.named(s.units().get(0).name() + token.word).isPresent();
        if (!digit || goesOnAsPart(at + 1)) {
            return 1;
        }
        if (factors.count() == 0 && s.units().get(0).equals(Units.FOOT) && as.unit().dimension().equals(Dimension.LENGTH)) {
            trouble = Reason.TWO_WAYS.at(token.from, "ft " + token.word + " in", "ft" + (token.value == 2 ? "²" : "³"));
            return 1;
        }
        at++;
        return (int) token.value;
    }

    private boolean goesOnAsPart(int index) {
        Token next = tokens[index];
        return next.is(Kind.PRIME) || next.is(Kind.DOUBLE) || next.isAmount() || isUnitWord(index)
                || next.is(Kind.SLASH) && tokens[index + 1].is(Kind.NUMBER) || next.is(Kind.DASH);
    }
}
