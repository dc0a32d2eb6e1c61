package soapstone.expression;

import java.util.Set;
import soapstone.quantity.Dimension;

/**
 * What an expression gives: an amount of a dimension, a list of such amounts, a label, or a truth. {@code UNKNOWN} is
 * given after a fault, and nothing further is said about it.
 *
 * @param kind      which of these
 * @param dimension of an amount or of each item; a number otherwise
 * @param labels    the labels that a label can be; null when any
 */
public record Type(Kind kind, Dimension dimension, Set<String> labels) {

    public enum Kind { AMOUNT, LIST, LABEL, TRUTH, UNKNOWN }

    public static final Type NUMBER = amount(Dimension.NUMBER);
    public static final Type TRUTH = new Type(Kind.TRUTH, Dimension.NUMBER, null);
    public static final Type UNKNOWN = new Type(Kind.UNKNOWN, Dimension.NUMBER, null);

    public static Type amount(Dimension dimension) {
        return new Type(Kind.AMOUNT, dimension, null);
    }

    public static Type list(Dimension dimension) {
        return new Type(Kind.LIST, dimension, null);
    }

    public static Type label(Set<String> labels) {
        return new Type(Kind.LABEL, Dimension.NUMBER, labels);
    }

    public boolean isAmount() {
        return kind == Kind.AMOUNT;
    }

    public boolean isList() {
        return kind == Kind.LIST;
    }

    public boolean isLabel() {
        return kind == Kind.LABEL;
    }

    boolean isUnknown() {
        return kind == Kind.UNKNOWN;
    }

    /** True when a value of the other type can stand in the place of one of this. */
    public boolean takes(Type other) {
        return isUnknown() || other.isUnknown() || kind == other.kind && dimension.equals(other.dimension);
    }

    @Override
    public String toString() {
        return switch (kind) {
            case AMOUNT -> dimension.isNumber() ? "a plain number" : "a quantity (" + dimension + ")";
            case LIST -> dimension.isNumber() ? "a list of plain numbers" : "a list (" + dimension + ")";
            case LABEL -> "a label";
            case TRUTH -> "a condition";
            case UNKNOWN -> "unknown";
        };
    }
}
