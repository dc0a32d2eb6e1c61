package soapstone.speed;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.Set;
import soapstone.expression.Calls;
import soapstone.expression.FormulaBody;
import soapstone.expression.Labels;
import soapstone.expression.LookupTable;
import soapstone.expression.Node;
import soapstone.expression.Program;
import soapstone.quantity.Unit;
import soapstone.quantity.UnitSystem;

/**
 * Writes expressions of the bank as Java, as somebody would who wrote the sum out by hand for this exercise alone:
 * formulas become methods, tables become arrays, units become factors.
 */
final class JavaText {

    private static final Set<String> TRIG = Set.of("sin", "cos", "tan", "asin", "acos", "atan", "atan2");
    private static final double STANDARD_GRAVITY = 9.80665;

    private final Program program;
    private final Map<String, FormulaBody> formulas;
    private final Map<String, ? extends LookupTable> tables;
    /** Written methods and arrays, by name. */
    private final Map<String, String> members = new LinkedHashMap<>();
    private int counters;

    /**
     * How a line is written.
     *
     * @param mark    ends the names of formulas that are written in this manner
     * @param bare    every name stands for its plain number
     * @param radians the calculator is set to radians
     * @param swap    what stands in the place of a formula; null for nothing
     */
    record Manner(String mark, boolean bare, boolean radians, FormulaBody.Swap swap) {
        static final Manner PLAIN = new Manner("", false, false, null);
        static final Manner BARE = new Manner("", true, false, null);
        static final Manner RADIANS = new Manner("_radians", false, true, null);
    }

    /** Java for an expression, and the slots that it reads. */
    record Written(String java, long reads) {}

    JavaText(Program program, Map<String, FormulaBody> formulas, Map<String, ? extends LookupTable> tables) {
        this.program = program;
        this.formulas = formulas;
        this.tables = tables;
    }

    /** The methods and arrays that what was written needs. */
    Map<String, String> members() {
        return members;
    }

    /** @param slot how the value of a slot is called where the text will stand */
    Written write(Node node, Manner manner, IntFunction<String> slot) {
        Writer writer = new Writer(manner, slot, Map.of());
        String java = writer.of(node);
        return new Written(java, writer.reads);
    }

    static String number(double d) {
        return d < 0 ? "(" + d + ")" : Double.isNaN(d) ? "Double.NaN" : String.valueOf(d);
    }

    private UnitSystem system() {
        return program.system();
    }

    /** An amount in base units as one in the unit. */
    private String fromBase(String x, Unit unit) {
        double shift = unit.fromBase(0, system());
        double factor = unit.fromBase(1, system()) - shift;
        return factor == 1 && shift == 0 ? x : shift == 0 ? "(" + x + " * " + number(factor) + ")" : "(" + x + " * " + number(factor) + " + " + number(shift) + ")";
    }

    String toBase(String x, Unit unit) {
        double shift = unit.toBase(0, system());
        double factor = unit.toBase(1, system()) - shift;
        return factor == 1 && shift == 0 ? x : shift == 0 ? "(" + x + ") * " + number(factor) : "(" + x + ") * " + number(factor) + " + " + number(shift);
    }

    private final class Writer {
        private final Manner manner;
        private final IntFunction<String> slot;
        private final Map<String, String> bound;
        private long reads;

        Writer(Manner manner, IntFunction<String> slot, Map<String, String> bound) {
            this.manner = manner;
            this.slot = slot;
            this.bound = bound;
        }

        String of(Node node) {
            if (node instanceof Node.Amount a) {
                return number(manner.bare() ? a.amount() : a.unit().toBase(a.amount(), system()));
            } else if (node instanceof Node.Label l) {
                return String.valueOf(program.labels().find(l.text()));
            } else if (node instanceof Node.Name n) {
                return name(n.name());
            } else if (node instanceof Node.Sign s) {
                return s.sign().equals("not") ? "!(" + of(s.of()) + ")" : "(-" + of(s.of()) + ")";
            } else if (node instanceof Node.Pair p) {
                return pair(p);
            }
            return call((Node.Call) node);
        }

        private String name(String name) {
            if (bound.containsKey(name)) {
                return bound.get(name);
            }
            int index = program.find(name);
            reads |= 1L << index;
            Program.Slot s = program.slot(index);
            return manner.bare() && s.type().isAmount() ? fromBase(slot.apply(index), s.shown()) : slot.apply(index);
        }

        private String pair(Node.Pair p) {
            String a = of(p.left());
            String b = of(p.right());
            return switch (p.sign()) {
                case "+", "-", "*", "/" -> "(" + a + " " + p.sign() + " " + b + ")";
                case "^" -> b.equals("2.0") ? "square(" + a + ")" : b.equals("3.0") ? "cube(" + a + ")" : "StrictMath.pow(" + a + ", " + b + ")";
                case "and" -> "(" + a + " & " + b + ")";
                case "or" -> "(" + a + " | " + b + ")";
                case "<" -> "less(" + a + ", " + b + ")";
                case "<=" -> "lessOrSame(" + a + ", " + b + ")";
                case ">" -> "less(" + b + ", " + a + ")";
                case ">=" -> "lessOrSame(" + b + ", " + a + ")";
                case "==" -> "same(" + a + ", " + b + ")";
                default -> "differs(" + a + ", " + b + ")";
            };
        }

        private String call(Node.Call c) {
            if (tables.containsKey(c.name())) {
                return lookUp(c);
            }
            if (formulas.containsKey(c.name())) {
                return formula(c);
            }
            List<Node> w = c.with();
            return switch (c.name()) {
                case "if" -> "(" + of(w.get(0)) + " ? " + of(w.get(1)) + " : " + of(w.get(2)) + ")";
                case "sin", "cos", "tan" -> "StrictMath." + c.name() + (isRadians() ? "(" + of(w.get(0)) + ")" : "(StrictMath.toRadians(" + of(w.get(0)) + "))");
                case "asin", "acos", "atan" -> angle("StrictMath." + c.name() + "(" + of(w.get(0)) + ")", isRadians());
                case "atan2" -> angle("StrictMath.atan2(" + of(w.get(0)) + ", " + of(w.get(1)) + ")", manner.radians());
                case "sqrt" -> "Math.sqrt(" + of(w.get(0)) + ")";
                case "abs" -> "Math.abs(" + of(w.get(0)) + ")";
                case "cbrt", "exp", "log10", "sinh", "cosh", "tanh" -> "StrictMath." + c.name() + "(" + of(w.get(0)) + ")";
                case "ln" -> "StrictMath.log(" + of(w.get(0)) + ")";
                case "min", "max" -> fold("Math." + c.name(), w);
                case "arc" -> "(" + of(w.get(0)) + " * " + of(w.get(1)) + " * " + name("pi") + " / 180)";
                case "to" -> of(w.get(0));
                case "number" -> fromBase(of(w.get(0)), ((Node.Measure) w.get(1)).unit());
                case "weight" -> system() == UnitSystem.US ? of(w.get(0)) : "(" + of(w.get(0)) + " * " + STANDARD_GRAVITY + ")";
                case "list" -> "new double[] {" + String.join(", ", w.stream().map(this::of).toList()) + "}";
                case "each" -> "each(" + of(w.get(1)) + ", " + of(w.get(2)) + ", " + within(w.get(0), w.get(3)) + ")";
                case "solve" -> solve(w);
                case "at_least", "at_most" -> c.name() + "(" + sortedKeys(w.get(0)) + ", " + of(w.get(1)) + ")";
                case "next_row" -> "next_row(" + keys(table(w.get(0))) + ", " + of(w.get(1)) + ", " + of(w.get(2)) + ")";
                case "between" -> between(w);
                default -> c.name() + "(" + String.join(", ", w.stream().map(this::of).toList()) + ")";
            };
        }

        private boolean isRadians() {
            return manner.radians() || manner.bare();
        }

        private String angle(String radians, boolean keep) {
            return keep ? radians : "StrictMath.toDegrees(" + radians + ")";
        }

        private String fold(String function, List<Node> with) {
            String all = of(with.get(0));
            for (Node next : with.subList(1, with.size())) {
                all = function + "(" + all + ", " + of(next) + ")";
            }
            return all;
        }

        /** The expression as a function of one more name. */
        private String within(Node name, Node body) {
            String counter = "x" + counters++;
            Map<String, String> inner = new LinkedHashMap<>(bound);
            inner.put(((Node.Name) name).name(), counter);
            Writer writer = new Writer(manner, slot, inner);
            String text = counter + " -> " + writer.of(body);
            reads |= writer.reads;
            return text;
        }

        private String solve(List<Node> w) {
            Node.Pair sides = (Node.Pair) w.get(3);
            Node difference = new Node.Pair("-", sides.left(), sides.right(), 0);
            return "solve(" + of(w.get(1)) + ", " + of(w.get(2)) + ", " + within(w.get(0), difference) + ")";
        }

        private String formula(Node.Call c) {
            String method = method(c.name(), manner);
            StringBuilder text = new StringBuilder(method).append('(').append(name("pi"));
            c.with().forEach(w -> text.append(", ").append(of(w)));
            return text.append(')').toString();
        }

        private LookupTable table(Node name) {
            return tables.get(((Node.Name) name).name());
        }

        private String lookUp(Node.Call c) {
            LookupTable table = tables.get(c.name());
            boolean single = table.columns().size() == 1 && c.with().size() == 1;
            String column = single ? "0" : column(table, c.with().get(0));
            Node key = c.with().get(c.with().size() - 1);
            String row = table.keyUnit() == null ? "place(" + numbering(table.name() + "_rows", rows(table)) + ", " + of(key) + ")"
                    : "find(" + keys(table) + ", " + of(key) + ")";
            return "cell(" + cells(table) + ", " + row + ", " + column + ")";
        }

        private String column(LookupTable table, Node node) {
            return node instanceof Node.Label label ? String.valueOf(table.columns().indexOf(label.text()))
                    : "place(" + numbering(table.name() + "_columns", table.columns()) + ", " + of(node) + ")";
        }

        private String between(List<Node> w) {
            LookupTable table = table(w.get(0));
            boolean named = w.size() == 3;
            return "between(" + keys(table) + ", " + cells(table) + ", " + (named ? column(table, w.get(1)) : "0") + ", " + of(w.get(named ? 2 : 1)) + ")";
        }

        private String sortedKeys(Node name) {
            LookupTable table = table(name);
            double[] sorted = baseKeys(table);
            java.util.Arrays.sort(sorted);
            return array("SORTED_" + table.name(), sorted);
        }
    }

    private static List<String> rows(LookupTable table) {
        return java.util.stream.IntStream.range(0, table.rows()).mapToObj(table::keyLabel).toList();
    }

    private double[] baseKeys(LookupTable table) {
        double[] keys = new double[table.rows()];
        for (int i = 0; i < keys.length; i++) {
            keys[i] = table.keyUnit().toBase(table.key(i), system());
        }
        return keys;
    }

    private String keys(LookupTable table) {
        return array("KEYS_" + table.name(), baseKeys(table));
    }

    private String array(String name, double[] values) {
        members.computeIfAbsent(name, n -> "static final double[] " + n + " = " + braces(values) + ";");
        return name;
    }

    private static String braces(double[] values) {
        return "{" + String.join(", ", java.util.Arrays.stream(values).mapToObj(JavaText::number).toList()) + "}";
    }

    private String cells(LookupTable table) {
        String name = "CELLS_" + table.name();
        members.computeIfAbsent(name, n -> {
            StringBuilder text = new StringBuilder("static final double[][] ").append(n).append(" = {");
            for (int r = 0; r < table.rows(); r++) {
                double[] row = new double[table.columns().size()];
                for (int c = 0; c < row.length; c++) {
                    row[c] = table.unit(c).toBase(table.cell(r, c), system());
                }
                text.append(r == 0 ? "" : ", ").append(braces(row));
            }
            return text.append("};").toString();
        });
        return name;
    }

    /** For each label of the program its place in a list, or -1. */
    private String numbering(String name, List<String> names) {
        Labels labels = program.labels();
        members.computeIfAbsent(name, n -> "static final int[] " + n + " = {"
                + String.join(", ", labels.all().stream().map(l -> String.valueOf(names.indexOf(l))).toList()) + "};");
        return name;
    }

    /** The method of a formula in a manner; in one that does not reach it, the plain one. */
    private String method(String formula, Manner manner) {
        boolean touched = manner.swap() != null && reaches(formula, Set.of(manner.swap().formula())) || manner.radians() && reaches(formula, TRIG);
        Manner own = touched ? manner : Manner.PLAIN;
        String name = "f_" + formula + own.mark();
        if (!members.containsKey(name)) {
            members.put(name, "");
            members.put(name, body(name, formulas.get(formula), own));
        }
        return name;
    }

    private boolean reaches(String formula, Set<String> wanted) {
        FormulaBody body = formulas.get(formula);
        Set<String> reached = new TreeSet<>(Set.of(formula));
        body.lines().forEach(l -> {
            reached.addAll(Calls.direct(l.value()));
            Calls.formulas(l.value(), formulas).forEach(f -> {
                reached.add(f);
                formulas.get(f).lines().forEach(x -> reached.addAll(Calls.direct(x.value())));
            });
        });
        return reached.stream().anyMatch(wanted::contains);
    }

    private String body(String name, FormulaBody formula, Manner manner) {
        StringBuilder text = new StringBuilder("static ").append(type(formula.gives())).append(' ').append(name).append("(double pi");
        Map<String, String> parameters = new LinkedHashMap<>(Map.of("pi", "pi"));
        formula.takes().forEach(t -> {
            parameters.put(t.name(), "a_" + t.name());
            text.append(", ").append(type(t.type())).append(" a_").append(t.name());
        });
        text.append(") {\n");
        FormulaBody.Swap swap = manner.swap();
        if (swap != null && swap.formula().equals(formula.name())) {
            String open = swap.when() == null ? "" : "    if (" + new Writer(manner, i -> "", parameters).of(swap.when()) + ") {\n";
            text.append(open).append(lines(swap.lines(), manner, parameters));
            if (open.isEmpty()) {
                return text.append("}").toString();
            }
            text.append("    }\n");
        }
        return text.append(lines(formula.lines(), manner, parameters)).append("}").toString();
    }

    private static String type(soapstone.expression.Type type) {
        return type.isList() ? "double[]" : type.kind() == soapstone.expression.Type.Kind.TRUTH ? "boolean" : "double";
    }

    private String lines(List<FormulaBody.Line> lines, Manner manner, Map<String, String> parameters) {
        StringBuilder text = new StringBuilder();
        Map<String, String> bound = new LinkedHashMap<>(parameters);
        for (int i = 0; i < lines.size(); i++) {
            FormulaBody.Line line = lines.get(i);
            String java = new Writer(manner, s -> "", bound).of(line.value());
            if (i == lines.size() - 1) {
                text.append("    return ").append(java).append(";\n");
            } else {
                text.append("    var l_").append(line.name()).append(" = ").append(java).append(";\n");
                bound.put(line.name(), "l_" + line.name());
            }
        }
        return text.toString();
    }
}
