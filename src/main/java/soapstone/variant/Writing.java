package soapstone.variant;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import soapstone.expression.FormulaBody;
import soapstone.expression.Node;
import soapstone.quantity.Quantity;
import soapstone.quantity.Show;
import soapstone.quantity.ShopPrinter;
import soapstone.quantity.Unit;
import soapstone.quantity.UnitSystem;
import soapstone.quantity.Units;

/**
 * Writes an expression as one would on the board: with × and ÷, roots and degrees, and with values in the place of
 * names.
 */
public final class Writing {

    private static final int SUM = 6;
    private static final int PRODUCT = 7;
    private static final int POWER = 9;
    private static final int ATOM = 10;

    private final Function<String, String> names;
    private final Function<String, Unit> units;
    private final Map<String, FormulaBody> book;
    private final UnitSystem system;
    private final boolean symbols;

    /** A written part and how strongly it holds together, to know where brackets are needed. */
    private record Part(String text, int strength) {}

    /**
     * @param names what to write for a name
     * @param units the unit in which a name's value is shown, or null
     * @param book  formulas whose lines are written in the place of their calls
     */
    public Writing(Function<String, String> names, Function<String, Unit> units, Map<String, FormulaBody> book, UnitSystem system) {
        this(names, units, book, system, false);
    }

    private Writing(Function<String, String> names, Function<String, Unit> units, Map<String, FormulaBody> book, UnitSystem system, boolean symbols) {
        this.names = names;
        this.units = units;
        this.book = book;
        this.system = system;
        this.symbols = symbols;
    }

    /** The expression in words of the working: names in place of values. */
    public static String symbolic(Node node, UnitSystem system) {
        return new Writing(n -> n.equals("pi") ? "π" : n.replace('_', ' '), n -> null, Map.of(), system, true).write(node);
    }

    public String write(Node node) {
        return part(node).text();
    }

    /** The right side of a line that is shown in a unit; a conversion then goes to that unit, whatever the file names. */
    public String write(Node node, Unit shown) {
        if (node instanceof Node.Call c && c.name().equals("to")) {
            return conversion(c.with().get(0), shown).text();
        }
        return write(node);
    }

    private Part part(Node node) {
        if (node instanceof Node.Amount a) {
            return new Part(amount(a), a.written().contains("/") && a.unit() == Units.ONE ? PRODUCT : ATOM);
        } else if (node instanceof Node.Label l) {
            return new Part(l.text(), ATOM);
        } else if (node instanceof Node.Name n) {
            String text = n.name().equals("pi") ? "π" : names.apply(n.name());
            return new Part(text.startsWith("-") || text.startsWith("−") ? "(" + text + ")" : text, ATOM);
        } else if (node instanceof Node.Measure m) {
            return new Part(m.unit().symbol(), ATOM);
        } else if (node instanceof Node.Sign s) {
            return new Part(s.sign().equals("-") ? "−" + bracket(s.of(), PRODUCT) : "not " + bracket(s.of(), SUM), PRODUCT);
        } else if (node instanceof Node.Pair p) {
            return pair(p);
        }
        return call((Node.Call) node);
    }

    private String amount(Node.Amount a) {
        if (a.unit() == Units.ONE) {
            return a.written().isEmpty() ? ShopPrinter.number(a.amount(), Show.AUTO, '.') : a.written();
        }
        Show show = a.written().contains("/") ? Show.fraction(64) : Show.AUTO;
        return ShopPrinter.text(new Quantity(a.amount(), a.unit()).base(system), a.unit(), system, show, '.');
    }

    private String bracket(Node node, int least) {
        Part part = part(node);
        return part.strength() >= least ? part.text() : "(" + part.text() + ")";
    }

    /** Behind an operator; two signs never stand side by side. */
    private String behind(Node node, int least) {
        String text = bracket(node, least);
        return text.startsWith("−") ? "(" + text + ")" : text;
    }

    private Part pair(Node.Pair p) {
        return switch (p.sign()) {
            case "+" -> new Part(bracket(p.left(), SUM) + " + " + behind(p.right(), SUM), SUM);
            case "-" -> new Part(bracket(p.left(), SUM) + " − " + behind(p.right(), PRODUCT), SUM);
            case "*" -> new Part(bracket(p.left(), PRODUCT) + " × " + behind(p.right(), PRODUCT), PRODUCT);
            case "/" -> new Part(bracket(p.left(), PRODUCT) + " ÷ " + behind(p.right(), PRODUCT + 1), PRODUCT);
            case "^" -> power(p);
            case "and", "or" -> new Part(bracket(p.left(), SUM) + " " + p.sign() + " " + bracket(p.right(), SUM), 3);
            default -> new Part(bracket(p.left(), SUM) + " " + comparison(p.sign()) + " " + bracket(p.right(), SUM), 5);
        };
    }

    private static String comparison(String sign) {
        return switch (sign) {
            case "<=" -> "≤";
            case ">=" -> "≥";
            case "==" -> "=";
            case "!=" -> "≠";
            default -> sign;
        };
    }

    private Part power(Node.Pair p) {
        Part left = part(p.left());
        boolean open = (left.text().contains(" ") || left.text().contains("\u00a0")) && !isBracket(left.text());
        String base = open ? "(" + left.text() + ")" : bracket(p.left(), ATOM);
        String exponent = part(p.right()).text();
        String raised = switch (exponent) {
            case "2" -> "²";
            case "3" -> "³";
            case "4" -> "⁴";
            default -> "^" + bracket(p.right(), ATOM);
        };
        return new Part(base + raised, POWER);
    }

    /** Whether one bracket holds the whole text. */
    private static boolean isBracket(String text) {
        return text.startsWith("(") && text.indexOf(')') == text.length() - 1;
    }

    private Part call(Node.Call c) {
        List<Node> w = c.with();
        return switch (c.name()) {
            case "sqrt" -> new Part("√(" + write(w.get(0)) + ")", ATOM);
            case "cbrt" -> new Part("∛(" + write(w.get(0)) + ")", ATOM);
            case "arc" -> new Part(bracket(w.get(0), PRODUCT) + " × " + bracket(w.get(1), PRODUCT) + " × π ÷ 180°", PRODUCT);
            case "to" -> conversion(w.get(0), ((Node.Measure) w.get(1)).unit());
            case "number" -> new Part(bracket(w.get(0), PRODUCT), PRODUCT);
            case "weight" -> part(w.get(0));
            case "floor" -> new Part("round down(" + write(w.get(0)) + ")", ATOM);
            case "ceil" -> new Part("round up(" + write(w.get(0)) + ")", ATOM);
            case "round" -> new Part("round(" + write(w.get(0)) + ", to " + write(w.get(1)) + ")", ATOM);
            case "floor_to" -> new Part("round down(" + write(w.get(0)) + ", to " + write(w.get(1)) + ")", ATOM);
            case "ceil_to" -> new Part("round up(" + write(w.get(0)) + ", to " + write(w.get(1)) + ")", ATOM);
            case "min" -> new Part("the smallest of " + String.join(", ", w.stream().map(this::write).toList()), 1);
            case "max" -> new Part("the largest of " + String.join(", ", w.stream().map(this::write).toList()), 1);
            case "if" -> branch(w);
            case "marks" -> new Part(write(w.get(0)) + ", then every " + write(w.get(1)) + ", " + write(w.get(2)) + " in all", 1);
            case "each" -> new Part(write(w.get(3)) + " for each " + words(w.get(0)) + " from " + write(w.get(1)) + " to " + write(w.get(2)), 1);
            case "list" -> new Part(String.join("; ", w.stream().map(this::write).toList()), 1);
            case "next_row" -> new Part(row(w.get(1), w.get(2)), 1);
            case "solve" -> new Part("the " + words(w.get(0)) + " for which " + equation(w), 1);
            case "at_least" -> new Part("the next size up from " + write(w.get(1)), 1);
            case "at_most" -> new Part("the next size down from " + write(w.get(1)), 1);
            default -> formulaOrTable(c);
        };
    }

    /** With the values put in, a question about a label is answered already, and only the branch that is taken is worked. */
    private Part branch(List<Node> w) {
        if (!symbols && w.get(0) instanceof Node.Pair p && p.left() instanceof Node.Name name && p.right() instanceof Node.Label label
                && (p.sign().equals("==") || p.sign().equals("!="))) {
            String value = names.apply(name.name());
            if (!value.equals(words(name))) {
                return part(w.get(value.equals(label.text()) == p.sign().equals("==") ? 1 : 2));
            }
        }
        return new Part("if " + write(w.get(0)) + ": " + write(w.get(1)) + ", else " + write(w.get(2)), 1);
    }

    private static String words(Node node) {
        return node instanceof Node.Name n ? n.name().replace('_', ' ') : "value";
    }

    /** The row after or before a key, as far as the file says it in so many words. */
    private String row(Node key, Node count) {
        String n = write(count);
        return "the row " + (n.equals("1") ? "after " : n.equals("−1") ? "before " : n + " below ") + write(key);
    }

    private String equation(List<Node> w) {
        String unknown = w.get(0) instanceof Node.Name n ? n.name() : "";
        Node.Pair pair = (Node.Pair) w.get(3);
        Writing inside = new Writing(n -> n.equals(unknown) ? words(w.get(0)) : names.apply(n), units, book, system, symbols);
        return inside.write(pair.left()) + " = " + inside.write(pair.right());
    }

    /** A conversion with its factor, where the unit it comes from is known. */
    private Part conversion(Node from, Unit to) {
        Unit shown = from instanceof Node.Name n ? units.apply(n.name()) : null;
        if (shown == null || shown.equals(to) || shown.dimension().equals(soapstone.quantity.Dimension.TEMPERATURE)) {
            return part(from);
        }
        double each = shown.fromBase(to.toBase(1, system), system);
        String factor = each >= 1 ? " ÷ " + ShopPrinter.number(each, Show.AUTO, '.') : " × " + ShopPrinter.number(1 / each, Show.AUTO, '.');
        return new Part(bracket(from, PRODUCT) + factor, PRODUCT);
    }

    private Part formulaOrTable(Node.Call c) {
        FormulaBody body = book.get(c.name());
        if (body != null && body.lines().size() == 1 && body.takes().size() == c.with().size()) {
            Writing inside = new Writing(n -> passed(body, c, n), n -> unitOf(body, c, n), book, system, symbols);
            return inside.part(body.lines().get(0).value());
        }
        StringBuilder text = new StringBuilder(c.name().replace('_', ' ')).append('(');
        for (int i = 0; i < c.with().size(); i++) {
            text.append(i == 0 ? "" : ", ").append(write(c.with().get(i)));
        }
        return new Part(text.append(')').toString(), ATOM);
    }

    private String passed(FormulaBody body, Node.Call c, String name) {
        for (int i = 0; i < body.takes().size(); i++) {
            if (body.takes().get(i).name().equals(name)) {
                return bracket(c.with().get(i), ATOM);
            }
        }
        return name.replace('_', ' ');
    }

    private Unit unitOf(FormulaBody body, Node.Call c, String name) {
        for (int i = 0; i < body.takes().size(); i++) {
            if (body.takes().get(i).name().equals(name) && c.with().get(i) instanceof Node.Name n) {
                return units.apply(n.name());
            }
        }
        return null;
    }
}
