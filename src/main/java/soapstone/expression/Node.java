package soapstone.expression;

import java.util.List;
import soapstone.quantity.Unit;

/** An expression as it was written. {@code at} is the offset in the written text, for messages. */
public sealed interface Node {

    int at();

    /** A number, with its unit or {@link soapstone.quantity.Units#ONE}; {@code written} as in the text. */
    record Amount(double amount, Unit unit, String written, int at) implements Node {}

    record Label(String text, int at) implements Node {}

    record Name(String name, int at) implements Node {}

    /** A unit on its own: only as the second argument of {@code to} and {@code number}. */
    record Measure(Unit unit, int at) implements Node {}

    /** {@code -x} or {@code not x}. */
    record Sign(String sign, Node of, int at) implements Node {}

    /** Two sides and what stands between: arithmetic, comparison, {@code and}, {@code or}; {@code =} in solve only. */
    record Pair(String sign, Node left, Node right, int at) implements Node {}

    record Call(String name, List<Node> with, int at) implements Node {}
}
