package soapstone.expression;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import soapstone.quantity.Unit;
import soapstone.quantity.Units;

/** Reads the text of one expression. The first fault ends the reading: what follows would be guesswork. */
public final class Parser {

    /** The longest expression, in characters. */
    public static final int LONGEST = 600;
    /** The deepest nesting of brackets, calls and signs. */
    public static final int DEEPEST = 40;

    /** How strongly an operator binds: the higher, the closer. */
    static final Map<String, Integer> STRENGTH = Map.ofEntries(Map.entry("=", 1), Map.entry("or", 2),
            Map.entry("and", 3), Map.entry("<", 5), Map.entry("<=", 5), Map.entry(">", 5), Map.entry(">=", 5),
            Map.entry("==", 5), Map.entry("!=", 5), Map.entry("+", 6), Map.entry("-", 6), Map.entry("*", 7),
            Map.entry("/", 7), Map.entry("^", 9));
    private static final int NOT = 4;
    private static final int MINUS = 8;

    private final List<Token> tokens;
    private int next;
    private int depth;

    /** A fault in the text of an expression: offset, what was found, what would fit. */
    public static final class Fault extends Exception {
        private static final long serialVersionUID = 1;
        private final int at;
        private final String fits;

        Fault(int at, String found, String fits) {
            super(found, null, false, false);
            this.at = at;
            this.fits = fits;
        }

        public int at() {
            return at;
        }

        public String fits() {
            return fits;
        }
    }

    /** {@code name = expression}, with the offset of the expression's own nodes counted in the whole text. */
    public record Assignment(String name, int at, Node value) {}

    private Parser(String text) throws Fault {
        if (text.length() > LONGEST) {
            throw new Fault(LONGEST, "the expression has " + text.length() + " characters",
                    "At most " + LONGEST + "; cut it into lines with names of their own");
        }
        this.tokens = Lexer.tokens(text);
    }

    /** Reads a whole expression. */
    public static Node expression(String text) throws Fault {
        Parser parser = new Parser(text);
        Node node = parser.pair(0);
        parser.end();
        return node;
    }

    /** Reads {@code name = expression}. */
    public static Assignment assignment(String text) throws Fault {
        Parser parser = new Parser(text);
        Token name = parser.take();
        if (name.kind() == Token.Kind.UNIT) {
            throw new Fault(name.at(), "'" + name.text() + "' is a unit, so it can't be a name", "Take a longer word");
        }
        if (name.kind() != Token.Kind.NAME || !parser.peek().is("=")) {
            throw new Fault(name.at(), "a line has to begin with a name and =", "Such as: span = length - 2*edge");
        }
        parser.take();
        Node value = parser.pair(1);
        parser.end();
        return new Assignment(name.text(), name.at(), value);
    }

    private void end() throws Fault {
        Token left = peek();
        if (left.kind() != Token.Kind.END) {
            throw new Fault(left.at(), "'" + left.text() + "' does not fit here", hint(left));
        }
    }

    private String hint(Token token) {
        if (token.kind() == Token.Kind.BAD) {
            boolean number = Character.isDigit(token.text().charAt(0)) || token.text().startsWith(".") && token.text().length() > 1;
            return token.text().startsWith("\"") ? "The label has no closing \"" : number ? "The number is too large" : "This sign is not of the language";
        }
        if (token.kind() == Token.Kind.UNIT) {
            return "A unit stands right behind a number";
        }
        return "An operator such as + - * / is missing before it, or a bracket is not closed";
    }

    private Node pair(int above) throws Fault {
        if (++depth > DEEPEST) {
            throw new Fault(peek().at(), "brackets and calls are nested over " + DEEPEST + " deep",
                    "Cut it into lines with names of their own");
        }
        Node left = prefix();
        while (true) {
            Token sign = peek();
            Integer strength = sign.kind() == Token.Kind.SIGN || sign.kind() == Token.Kind.NAME
                    ? STRENGTH.get(sign.text()) : null;
            if (strength == null || strength <= above) {
                break;
            }
            take();
            // Powers group to the right, everything else to the left.
            Node right = pair(sign.is("^") ? strength - 1 : strength);
            left = new Node.Pair(sign.text(), left, right, sign.at());
        }
        depth--;
        return left;
    }

    private Node prefix() throws Fault {
        Token token = peek();
        if (token.is("-")) {
            take();
            return new Node.Sign("-", pair(MINUS), token.at());
        }
        if (token.kind() == Token.Kind.NAME && token.text().equals("not")) {
            take();
            return new Node.Sign("not", pair(NOT), token.at());
        }
        return primary();
    }

    private Node primary() throws Fault {
        Token token = take();
        switch (token.kind()) {
            case NUMBER:
                return amount(token);
            case LABEL:
                return new Node.Label(token.text().substring(1, token.text().length() - 1), token.at());
            case NAME:
                return peek().is("(") ? call(token) : new Node.Name(token.text(), token.at());
            case UNIT:
                // "min" is a unit and a function; the bracket tells.
                if (peek().is("(") && Builtin.named(token.text()).isPresent()) {
                    return call(token);
                }
                return new Node.Measure(compound(token.unit()), token.at());
            default:
                return bracket(token);
        }
    }

    private Node bracket(Token token) throws Fault {
        if (!token.is("(")) {
            String what = token.kind() == Token.Kind.END ? "the expression ends too early" : "'" + token.text() + "' does not fit here";
            throw new Fault(token.at(), what, token.kind() == Token.Kind.BAD ? hint(token) : "A number, a name, a call or a bracket is missing");
        }
        Node inside = pair(1);
        close(token);
        return inside;
    }

    private void close(Token open) throws Fault {
        Token close = take();
        if (!close.is(")")) {
            throw new Fault(close.at(), "the bracket opened at column " + (open.at() + 1) + " is not closed", "Put a ) here");
        }
    }

    private Node call(Token name) throws Fault {
        Token open = take();
        List<Node> with = new ArrayList<>();
        if (!peek().is(")")) {
            with.add(pair(0));
            while (peek().is(",")) {
                take();
                with.add(pair(0));
            }
        }
        close(open);
        return new Node.Call(name.text(), List.copyOf(with), name.at());
    }

    /**
     * A number with what belongs to it. Two whole numbers with a stroke before a unit are a fraction of that unit
     * ({@code 3/4 in}); a whole number before them is a mixed number ({@code 1 1/2 in}).
     */
    private Node amount(Token first) throws Fault {
        Optional<Node> fraction = fraction(first, first, 0, next);
        if (fraction.isPresent()) {
            return fraction.get();
        }
        if (first.isWhole() && peek().isWhole()) {
            Optional<Node> mixed = fraction(first, peek(), first.amount(), next + 1);
            if (mixed.isPresent()) {
                return mixed.get();
            }
        }
        if (peek().kind() == Token.Kind.UNIT) {
            Unit unit = compound(take().unit());
            return new Node.Amount(first.amount(), unit, first.text(), first.at());
        }
        return new Node.Amount(first.amount(), Units.ONE, first.text(), first.at());
    }

    private Optional<Node> fraction(Token first, Token top, double whole, int stroke) throws Fault {
        if (stroke + 2 >= tokens.size() || !tokens.get(stroke).is("/") || !top.isWhole()
                || !tokens.get(stroke + 1).isWhole() || tokens.get(stroke + 2).kind() != Token.Kind.UNIT) {
            return Optional.empty();
        }
        Token bottom = tokens.get(stroke + 1);
        if (bottom.amount() == 0) {
            throw new Fault(bottom.at(), "a fraction can't have 0 below the line", "");
        }
        next = stroke + 3;
        Unit unit = compound(tokens.get(stroke + 2).unit());
        String written = (whole > 0 ? first.text() + " " : "") + top.text() + "/" + bottom.text();
        return Optional.of(new Node.Amount(whole + top.amount() / bottom.amount(), unit, written, first.at()));
    }

    private Unit compound(Unit first) {
        Unit unit = first;
        while ((peek().is("/") || peek().is("*")) && tokens.get(next + 1).kind() == Token.Kind.UNIT) {
            boolean over = take().is("/");
            Unit other = take().unit();
            unit = over ? unit.over(other) : unit.times(other);
        }
        return unit;
    }

    private Token peek() {
        return tokens.get(next);
    }

    private Token take() {
        Token token = tokens.get(next);
        if (token.kind() != Token.Kind.END) {
            next++;
        }
        return token;
    }
}
