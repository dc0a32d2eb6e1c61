package soapstone.quantity;

import java.util.List;
import soapstone.quantity.Spellings.Role;
import soapstone.quantity.Spellings.Spelling;
import soapstone.quantity.Token.Kind;
import soapstone.source.Near;

/**
 * Reads the unit after an amount: a word or sign, with a power ({@code sq ft}, {@code ft²}, {@code pies cuadrados}), or
 * several of them as a quotient or product ({@code lb per cubic foot}, {@code ft-lb}). Where a word can mean two units,
 * such as lb for mass and force, the asked dimension decides.
 */
final class UnitReader {

    private static final int MOST_FACTORS = 4;
    private static final int LONGEST_WORD = 24;
    private static final int SHORT_WORD = 2;
    private static final Dimension MOMENT = Dimension.FORCE.times(Dimension.LENGTH);

    private final String text;
    private final Token[] tokens;
    private final ReadAs as;
    private final Spelling[] factors = new Spelling[MOST_FACTORS];
    private final int[] powers = new int[MOST_FACTORS];
    private final boolean[] under = new boolean[MOST_FACTORS];
    private int count;
    private boolean sideBySide;
    private int at;

    private Unit unit;
    private double scale = 1;
    private Reading.Again trouble;

    UnitReader(String text, Token[] tokens, ReadAs as) {
        this.text = text;
        this.tokens = tokens;
        this.as = as;
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
        if (trouble == null && count > 0) {
            settle(from);
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

    // ---- the factors

    private void factors(boolean dollarFirst) {
        boolean more = dollarFirst || factor(false) || tokens[at].is(Kind.SLASH) || isWord(at, Role.PER);
        while (more && trouble == null) {
            if (tokens[at].is(Kind.SLASH) || isWord(at, Role.PER)) {
                int from = at++;
                skipArticle();
                if (!factor(true) && trouble == null) {
                    trouble = tokens[at].isAmount() ? Reason.SUM.at(tokens[from].from)
                            : Reason.LONE_SIGN.at(tokens[from].from, tokenText(from));
                }
            } else {
                more = product();
            }
        }
    }

    /** {@code per a foot} is nobody's way of writing; {@code per each} is. */
    private void skipArticle() {
        if (tokens[at].isWord("each")) {
            at++;
        }
    }

    private void skipEach() {
        if (tokens[at].isWord("each") || tokens[at].isWord("ea") || tokens[at].isWord("usd")
                || tokens[at].isWord("dollars") || tokens[at].isWord("dolares")) {
            at++;
        }
    }

    /** {@code ft-lb}, {@code lb·in}, {@code N m}; side by side only where a moment can be meant. */
    private boolean product() {
        int sign = tokens[at].is(Kind.TIMES) || tokens[at].is(Kind.DASH) ? 1 : 0;
        if (count == 0 || !isUnitWord(at + sign)) {
            return false;
        }
        sideBySide |= sign == 0;
        at += sign;
        return factor(false);
    }

    private boolean isUnitWord(int index) {
        return isWord(index, Role.UNIT) || isWord(index, Role.SQUARE) || isWord(index, Role.CUBIC);
    }

    private boolean isWord(int index, Role role) {
        if (!tokens[index].is(Kind.WORD)) {
            return false;
        }
        Spelling s = Spellings.find(tokens[index].word);
        return s != null && s.role() == role;
    }

    /** One unit with its power; false when none stands here. */
    private boolean factor(boolean over) {
        int power = isWord(at, Role.SQUARE) ? 2 : isWord(at, Role.CUBIC) ? 3 : 1;
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
                trouble = unknown(at - 1);
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
        if (count == MOST_FACTORS) {
            trouble = Reason.TWO_UNITS.at(tokens[at - 1].from, tokenText(at - 2), tokenText(at - 1));
            return;
        }
        boolean pure = spelling.units().get(0).dimension().isNumber();
        if (pure && (power != 1 || over) || count > 0 && factors[0].units().get(0).dimension().isNumber()) {
            trouble = Reason.LONE_SIGN.at(tokens[at - 1].from, tokenText(at - 1));
            return;
        }
        factors[count] = spelling;
        powers[count] = power;
        under[count++] = over;
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
            trouble = Reason.LETTER_O.at(token.from, text.substring(before.from, before.to) + "0");
        } else if (s == null || s.role() == Role.NUMBER_WORD || s.role() == Role.NOT_A_NUMBER) {
            trouble = unknown(at);
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
            if (token.value < 1 || token.value > 4) {
                trouble = Reason.STRANGE_SIGN.at(token.from, text.substring(token.from, token.to));
            }
            return (int) token.value;
        }
        if (isWord(at, Role.SQUARED) || isWord(at, Role.CUBED)) {
            int power = isWord(at, Role.SQUARED) ? 2 : 3;
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
        if (count == 0 && s.units().get(0).equals(Units.FOOT) && as.unit().dimension().equals(Dimension.LENGTH)) {
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

    // ---- what they mean together

    private void settle(int from) {
        if (count == 1 && !under[0]) {
            unit = raised(choose(factors[0]), powers[0]);
            scale = Math.pow(factors[0].scale(), powers[0]);
            checkTon(from);
            return;
        }
        int[] choice = new int[count];
        boolean fits = search(choice, 0, Dimension.NUMBER);
        if (sideBySide && !(fits && as.unit().dimension().equals(MOMENT))) {
            trouble = Reason.TWO_UNITS.at(tokens[from].from, symbol(0), symbol(1));
            return;
        }
        build(fits ? choice : new int[count]);
    }

    /** Finds meanings that together measure what is asked. */
    private boolean search(int[] choice, int i, Dimension sofar) {
        if (i == count) {
            return sofar.equals(as.unit().dimension());
        }
        List<Unit> units = factors[i].units();
        for (int n = 0; n < units.size(); n++) {
            Dimension d = units.get(n).dimension().power(powers[i]);
            choice[i] = n;
            if (search(choice, i + 1, under[i] ? sofar.over(d) : sofar.times(d))) {
                return true;
            }
        }
        return false;
    }

    private void build(int[] choice) {
        Unit sofar = null;
        scale = 1;
        for (int i = 0; i < count; i++) {
            Unit next = raised(factors[i].units().get(choice[i]), powers[i]);
            double size = Math.pow(factors[i].scale(), powers[i]);
            scale = under[i] ? scale / size : scale * size;
            if (sofar == null) {
                sofar = under[i] ? Units.ONE.over(next) : next;
            } else {
                sofar = under[i] ? sofar.over(next) : sofar.times(next);
            }
        }
        unit = sofar.dimension().equals(as.unit().dimension()) && sofar.symbol().equals(as.unit().symbol()) ? as.unit() : sofar;
    }

    private Unit choose(Spelling s) {
        List<Unit> units = s.units();
        if (units.contains(as.unit())) {
            return as.unit();
        }
        for (int i = 0; i < units.size(); i++) {
            if (units.get(i).dimension().equals(as.unit().dimension())) {
                return units.get(i);
            }
        }
        return units.get(0);
    }

    private static Unit raised(Unit unit, int power) {
        if (power == 1) {
            return unit;
        }
        return Units.named(unit.name() + power).orElseGet(() -> {
            Unit product = unit;
            for (int i = 1; i < power; i++) {
                product = product.times(unit);
            }
            return product;
        });
    }

    /** A ton is 2000 lb here and 1000 kg there; a class of one system may well have learned the other. */
    private void checkTon(int from) {
        String word = tokens[from].is(Kind.WORD) ? tokens[from].word : "";
        boolean metricWord = word.equals("t") || word.startsWith("tonelada");
        boolean usWord = word.equals("ton") || word.equals("tons");
        boolean strange = as.system() == UnitSystem.US ? metricWord : usWord;
        if (strange && !unit.equals(as.unit())) {
            trouble = Reason.WHICH_TON.at(tokens[from].from, tokenText(from));
        }
    }

    private String symbol(int factor) {
        return raised(choose(factors[factor]), powers[factor]).symbol();
    }

    private String tokenText(int index) {
        return text.substring(tokens[index].from, tokens[index].to);
    }

    /** What to say about a word that is not a unit. */
    private Reading.Again unknown(int index) {
        return unknown(tokens[index], text, as);
    }

    static Reading.Again unknown(Token token, String text, ReadAs as) {
        String typed = text.substring(token.from, token.to);
        if (!token.is(Kind.WORD)) {
            return Reason.LONE_SIGN.at(token.from, typed);
        }
        Spelling s = Spellings.find(token.word);
        if (s != null && s.role() == Role.NUMBER_WORD) {
            return Reason.DIGITS_PLEASE.at(token.from, typed);
        }
        if (s != null && s.role() == Role.NOT_A_NUMBER) {
            return Reason.NOT_A_NUMBER.at(token.from, typed);
        }
        if (Spellings.isThing(token.word) && !as.unit().equals(Units.ONE)) {
            return Reason.UNKNOWN_WORD.at(token.from, typed, as.unit().symbol());
        }
        List<String> near = token.word.length() > LONGEST_WORD ? List.of() : near(token.word, as);
        if (!near.isEmpty()) {
            return Reason.NEARLY_A_WORD.at(token.from, typed, String.join(", ", near));
        }
        return as.unit().equals(Units.ONE) ? Reason.ONLY_A_NUMBER.at(token.from, typed)
                : Reason.UNKNOWN_WORD.at(token.from, typed, as.unit().symbol());
    }

    /** Near words that would fit what is asked go first; short words are near to too many others. */
    private static List<String> near(String word, ReadAs as) {
        List<String> fitting = word.length() < SHORT_WORD ? List.of()
                : Near.near(word, Spellings.words(Role.UNIT, as.unit().dimension()));
        return fitting.isEmpty() && word.length() > SHORT_WORD ? Near.near(word, Spellings.words(Role.UNIT, null)) : fitting;
    }
}
