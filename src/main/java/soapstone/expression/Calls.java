package soapstone.expression;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** What an expression calls. */
public final class Calls {

    private Calls() {}

    /** All names that the expression calls itself: functions, formulas, tables (also those given to a function). */
    public static Set<String> direct(Node node) {
        Set<String> found = new HashSet<>();
        collect(node, found);
        return found;
    }

    private static void collect(Node node, Set<String> found) {
        if (node instanceof Node.Sign sign) {
            collect(sign.of(), found);
        } else if (node instanceof Node.Pair pair) {
            collect(pair.left(), found);
            collect(pair.right(), found);
        } else if (node instanceof Node.Call call) {
            found.add(call.name());
            call.with().forEach(w -> collect(w, found));
        } else if (node instanceof Node.Name name) {
            found.add(name.name());
        }
    }

    /** Whether the language itself has a function of that name. */
    public static boolean isFunction(String name) {
        return Builtin.named(name).isPresent();
    }

    /** The formulas that the expression calls, also by way of other formulas. */
    public static Set<String> formulas(Node node, Map<String, FormulaBody> book) {
        Set<String> reached = new HashSet<>();
        follow(node, book, reached);
        return reached;
    }

    private static void follow(Node node, Map<String, FormulaBody> book, Set<String> reached) {
        for (String name : direct(node)) {
            FormulaBody body = book.get(name);
            if (body != null && reached.add(name)) {
                body.lines().forEach(line -> follow(line.value(), book, reached));
            }
        }
    }

    /** Whether the expression calls one of the names, itself or by way of formulas. */
    static boolean reach(Node node, Set<String> wanted, Map<String, FormulaBody> book) {
        if (direct(node).stream().anyMatch(wanted::contains)) {
            return true;
        }
        return formulas(node, book).stream().anyMatch(f -> wanted.contains(f)
                || book.get(f).lines().stream().anyMatch(l -> direct(l.value()).stream().anyMatch(wanted::contains)));
    }
}
