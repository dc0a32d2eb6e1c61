package soapstone.expression;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The functions of the language: name, how many arguments, and how they are told to an author. */
enum Builtin {
    IF("if", 3, 3, "if(condition, a, b): a where the condition holds, else b; a and b of one kind"),
    ROUND("round", 2, 2, "round(x, step): the nearest multiple of step, half up"),
    FLOOR("floor", 1, 1, "floor(number): the whole number not over it"),
    CEIL("ceil", 1, 1, "ceil(number): the whole number not under it"),
    FLOOR_TO("floor_to", 2, 2, "floor_to(x, step): the multiple of step not over x"),
    CEIL_TO("ceil_to", 2, 2, "ceil_to(x, step): the multiple of step not under x"),
    ABS("abs", 1, 1, "abs(x): without its sign"),
    MIN("min", 2, 8, "min(a, b, ...): the smallest"),
    MAX("max", 2, 8, "max(a, b, ...): the largest"),
    SQRT("sqrt", 1, 1, "sqrt(x): square root; length^2 gives length"),
    CBRT("cbrt", 1, 1, "cbrt(x): cube root; length^3 gives length"),
    SIN("sin", 1, 1, "sin(angle)"),
    COS("cos", 1, 1, "cos(angle)"),
    TAN("tan", 1, 1, "tan(angle)"),
    ASIN("asin", 1, 1, "asin(number): an angle"),
    ACOS("acos", 1, 1, "acos(number): an angle"),
    ATAN("atan", 1, 1, "atan(number): an angle"),
    ATAN2("atan2", 2, 2, "atan2(y, x): the angle of the point x, y"),
    EXP("exp", 1, 1, "exp(number)"),
    LN("ln", 1, 1, "ln(number)"),
    LOG10("log10", 1, 1, "log10(number)"),
    SINH("sinh", 1, 1, "sinh(number)"),
    COSH("cosh", 1, 1, "cosh(number)"),
    TANH("tanh", 1, 1, "tanh(number)"),
    ARC("arc", 2, 2, "arc(radius, angle): length of the arc"),
    TO("to", 2, 2, "to(x, unit): the same amount, worked in that unit"),
    NUMBER("number", 2, 2, "number(x, unit): the plain number of x in that unit"),
    WEIGHT("weight", 1, 1, "weight(mass): the force with which it rests (lb to lbf, kg to N)"),
    MARKS("marks", 3, 3, "marks(first, step, count): first, first + step, ..."),
    EACH("each", 4, 4, "each(i, from, to, x): x for every whole i"),
    LIST("list", 1, 40, "list(a, b, ...)"),
    SUM("sum", 1, 1, "sum(list)"),
    ITEM("item", 2, 2, "item(list, n): the n-th, from 1"),
    SIZE("size", 1, 1, "size(list): how many"),
    LARGEST("largest", 1, 1, "largest(list)"),
    SMALLEST("smallest", 1, 1, "smallest(list)"),
    SOLVE("solve", 4, 4, "solve(x, low, high, left = right): the x between low and high at which both sides agree"),
    AT_LEAST("at_least", 2, 2, "at_least(TABLE, x): the smallest key not under x"),
    AT_MOST("at_most", 2, 2, "at_most(TABLE, x): the largest key not over x"),
    NEXT_ROW("next_row", 3, 3, "next_row(TABLE, key, n): the key n rows further down"),
    BETWEEN("between", 2, 3, "between(TABLE, column, x): straight between the rows beside x");

    final String word;
    final int least;
    final int most;
    final String told;

    Builtin(String word, int least, int most, String told) {
        this.word = word;
        this.least = least;
        this.most = most;
        this.told = told;
    }

    static Optional<Builtin> named(String name) {
        return Arrays.stream(values()).filter(b -> b.word.equals(name)).findFirst();
    }

    static List<String> words() {
        return Arrays.stream(values()).map(b -> b.word).toList();
    }
}
