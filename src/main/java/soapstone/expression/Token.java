package soapstone.expression;

import soapstone.quantity.Unit;

/** A word of the working language. {@code unit} is set for unit names, {@code amount} for numbers. */
record Token(Kind kind, String text, double amount, Unit unit, int at) {

    enum Kind { NUMBER, NAME, UNIT, LABEL, SIGN, END, BAD }

    boolean is(String sign) {
        return kind == Kind.SIGN && text.equals(sign);
    }

    boolean isWhole() {
        return kind == Kind.NUMBER && text.chars().allMatch(Character::isDigit);
    }

    int end() {
        return at + text.length();
    }
}
