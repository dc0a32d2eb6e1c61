package soapstone.expression;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soapstone.quantity.Unit;
import soapstone.quantity.Units;

/** Cuts a text into words. Never fails: what it does not know becomes a {@link Token.Kind#BAD} token. */
final class Lexer {

    private static final String[] SIGNS = {"<=", ">=", "==", "!=", "+", "-", "*", "/", "^", "(", ")", ",", "<", ">", "="};

    private final String text;
    private int at;

    private Lexer(String text) {
        this.text = text;
    }

    static List<Token> tokens(String text) {
        Lexer lexer = new Lexer(text);
        List<Token> tokens = new ArrayList<>();
        Token next;
        do {
            next = lexer.next();
            tokens.add(next);
        } while (next.kind() != Token.Kind.END);
        return tokens;
    }

    private Token next() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
        if (at >= text.length()) {
            return token(Token.Kind.END, at, at);
        }
        char c = text.charAt(at);
        if (isDigit(c) || c == '.' && at + 1 < text.length() && isDigit(text.charAt(at + 1))) {
            return number();
        }
        if (isLetter(c)) {
            return name();
        }
        if (c == '"') {
            return label();
        }
        if (c == '%') {
            return new Token(Token.Kind.UNIT, "%", 0, Units.PERCENT, at++);
        }
        return sign();
    }

    private Token number() {
        int start = at;
        digits();
        if (at < text.length() && text.charAt(at) == '.') {
            at++;
            digits();
        }
        int mark = at;
        if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
            at++;
            if (at < text.length() && (text.charAt(at) == '-' || text.charAt(at) == '+')) {
                at++;
            }
            int power = at;
            digits();
            if (at == power) {
                at = mark;
            }
        }
        String word = text.substring(start, at);
        double amount = Double.parseDouble(word);
        return Double.isFinite(amount) ? new Token(Token.Kind.NUMBER, word, amount, null, start)
                : new Token(Token.Kind.BAD, word, 0, null, start);
    }

    private void digits() {
        while (at < text.length() && isDigit(text.charAt(at))) {
            at++;
        }
    }

    private Token name() {
        int start = at;
        while (at < text.length() && (isLetter(text.charAt(at)) || isDigit(text.charAt(at)))) {
            at++;
        }
        String word = text.substring(start, at);
        Optional<Unit> unit = Units.named(word);
        return unit.isPresent() ? new Token(Token.Kind.UNIT, word, 0, unit.get(), start)
                : new Token(Token.Kind.NAME, word, 0, null, start);
    }

    private Token label() {
        int start = at++;
        while (at < text.length() && text.charAt(at) != '"') {
            at++;
        }
        if (at >= text.length()) {
            return token(Token.Kind.BAD, start, at);
        }
        at++;
        return token(Token.Kind.LABEL, start, at);
    }

    private Token sign() {
        for (String sign : SIGNS) {
            if (text.startsWith(sign, at)) {
                int start = at;
                at += sign.length();
                return token(Token.Kind.SIGN, start, at);
            }
        }
        int start = at;
        at += Character.charCount(text.codePointAt(at));
        return token(Token.Kind.BAD, start, at);
    }

    private Token token(Token.Kind kind, int start, int end) {
        return new Token(kind, text.substring(start, end), 0, null, start);
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static boolean isLetter(char c) {
        return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c == '_';
    }
}
