package soapstone.speed;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import soapstone.exercise.Ask;
import soapstone.exercise.Line;
import soapstone.exercise.Model;
import soapstone.exercise.Slip;
import soapstone.expression.FormulaBody;
import soapstone.expression.LookupTable;
import soapstone.expression.Node;
import soapstone.expression.Program;
import soapstone.expression.Type;
import soapstone.quantity.Dimension;
import soapstone.quantity.Show;
import soapstone.quantity.Unit;
import soapstone.quantity.UnitSystem;
import soapstone.quantity.Units;

/**
 * Writes a Java class that marks one ask of one exercise: every candidate that the marker tries, as straight code for these
 * lines alone. The bank stays the only place where the sums stand; this is what somebody would have to write by hand without it.
 */
final class PlainJava {

    private static final double[] DECIMAL_STEPS = {1, 0.1, 0.01};

    private final String className;
    private final Model model;
    private final Program program;
    private final Ask ask;
    private final JavaText text;
    private final int last;
    private final StringBuilder methods = new StringBuilder();
    /** For each slip, what it puts into the lines that it changes. */
    private final List<Map<Integer, JavaText.Written>> swaps = new ArrayList<>();

    private PlainJava(String className, Model model, Ask ask, Map<String, FormulaBody> formulas, Map<String, ? extends LookupTable> tables) {
        this.className = className;
        this.model = model;
        this.program = model.program();
        this.ask = ask;
        this.text = new JavaText(program, formulas, tables);
        this.last = Math.max(ask.slot(), ask.second());
    }

    /** The source of a class of this name, in no package, that implements {@link PlainMarking}. */
    static String source(String className, Model model, Ask ask, Map<String, FormulaBody> formulas, Map<String, ? extends LookupTable> tables) {
        return new PlainJava(className, model, ask, formulas, tables).source();
    }

    private String source() {
        for (int i = 0; i < model.slips().size(); i++) {
            swaps.add(swap(i));
        }
        String mark = mark();
        String take = take();
        StringBuilder source = new StringBuilder("public final class ").append(className).append(" implements soapstone.speed.PlainMarking {\n");
        source.append(fields()).append("boolean[] sense;\n").append(take).append(mark).append(methods);
        text.members().values().forEach(m -> source.append(m).append('\n'));
        return source.append(PlainHelpers.TEXT).append("}\n").toString();
    }

    // ---- the right lines

    private String fields() {
        StringBuilder fields = new StringBuilder();
        for (Program.Slot slot : program.slots()) {
            if (slot.index() <= last) {
                fields.append(type(slot.type())).append(' ').append(field(slot.index())).append(";\n");
            }
        }
        return fields.toString();
    }

    private static String type(Type type) {
        return type.isList() ? "double[]" : type.kind() == Type.Kind.TRUTH ? "boolean" : "double";
    }

    private static String field(int slot) {
        return "v" + slot;
    }

    private static String local(int slot) {
        return "t" + slot;
    }

    private String take() {
        StringBuilder take = new StringBuilder("public void take(double[] n, double[][] l, boolean[] s) {\n    sense = s;\n");
        for (Program.Slot slot : program.slots()) {
            if (slot.index() <= last) {
                String value = slot.type().isList() ? "l[" + slot.index() + "]" : "n[" + slot.index() + "]" + (slot.type().kind() == Type.Kind.TRUTH ? " == 1" : "");
                take.append("    ").append(field(slot.index())).append(" = ").append(value).append(";\n");
            }
        }
        return take.append("}\n").toString();
    }

    // ---- candidates

    private Map<Integer, JavaText.Written> swap(int index) {
        Slip slip = model.slips().get(index);
        Map<Integer, JavaText.Written> swap = new TreeMap<>();
        for (int slot = 0; slot < program.slots().size(); slot++) {
            if ((slip.change().mask() & 1L << slot) != 0) {
                swap.put(slot, swapped(slip, index, slot));
            }
        }
        return swap;
    }

    /** Names are filled in later, for a name is a local or a field by what else is changed. */
    private JavaText.Written swapped(Slip slip, int index, int slot) {
        if (slip.swap() != null) {
            return written(program.slot(slot).value(), new JavaText.Manner("_slip" + index, false, false, slip.swap()));
        }
        for (Slip.Swapped line : slip.lines()) {
            if (line.slot() == slot) {
                JavaText.Written java = written(line.value(), line.bare() ? JavaText.Manner.BARE : JavaText.Manner.PLAIN);
                Program.Slot s = program.slot(slot);
                return line.bare() && s.type().isAmount() ? new JavaText.Written(text.toBase(java.java(), s.shown()), java.reads()) : java;
            }
        }
        throw new IllegalStateException(slip.name() + " changes a line that it does not name");
    }

    private JavaText.Written written(Node node, JavaText.Manner manner) {
        return text.write(node, manner, slot -> "@" + slot + "@");
    }

    /** A method that works out what a change gives at the ask; its name. */
    private String candidate(String name, String parameters, Map<Integer, JavaText.Written> swap) {
        List<Integer> order = new ArrayList<>();
        Map<Integer, JavaText.Written> lines = new HashMap<>();
        long affected = 0;
        for (int slot = 0; slot <= last; slot++) {
            JavaText.Written line = swap.get(slot);
            if (line == null && (program.reads(slot) & affected) != 0 && program.slot(slot).value() != null) {
                line = written(program.slot(slot).value(), JavaText.Manner.PLAIN);
            }
            if (line != null) {
                affected |= 1L << slot;
                lines.put(slot, line);
                order.add(slot);
            }
        }
        long needed = 1L << ask.slot() | (ask.second() < 0 ? 0 : 1L << ask.second());
        for (int i = order.size() - 1; i >= 0; i--) {
            needed |= (needed & 1L << order.get(i)) != 0 ? lines.get(order.get(i)).reads() : 0;
        }
        StringBuilder method = new StringBuilder("boolean ").append(name).append("(").append(parameters).append("double[] v, double[] w) {\n");
        long there = 0;
        for (int slot : order) {
            if ((needed & 1L << slot) != 0) {
                method.append("    ").append(type(program.slot(slot).type())).append(' ').append(local(slot)).append(" = ")
                        .append(named(lines.get(slot), there)).append(";\n");
                there |= 1L << slot;
            }
        }
        methods.append(method).append("    return ").append(comparison(there)).append(";\n}\n");
        return name;
    }

    private String named(JavaText.Written line, long locals) {
        String java = line.java();
        for (int slot = 0; slot < program.slots().size(); slot++) {
            if ((line.reads() & 1L << slot) != 0) {
                java = java.replace("@" + slot + "@", value(slot, locals));
            }
        }
        return java;
    }

    private String value(int slot, long locals) {
        if ((locals & 1L << slot) != 0) {
            return local(slot);
        }
        return field(slot);
    }

    /** Whether the answer is what the candidate gives, which has to be another value than the right one. */
    private String comparison(long locals) {
        String x = value(ask.slot(), locals);
        String right = value(ask.slot(), 0);
        if (ask.second() >= 0) {
            String y = value(ask.second(), locals);
            String changed = "!alike(" + x + ", " + right + ") | !alike(" + y + ", " + value(ask.second(), 0) + ")";
            return "(" + changed + ") && " + (ask.isMany() ? "points" : "point") + "(v, w, " + x + ", " + y + ")";
        }
        String fits = ask.isMany() ? (ask.kind() == Ask.Kind.LIST ? "list" : "inOrder") + "(v, w, " + x + ")" : "near(v, w, " + x + ")";
        return "!alike(" + x + ", " + right + ") && " + fits;
    }

    private String atRight(String window) {
        String x = value(ask.slot(), 0);
        if (ask.second() >= 0) {
            return (ask.isMany() ? "points" : "point") + "(v, " + window + ", " + x + ", " + value(ask.second(), 0) + ")";
        }
        return ask.isMany() ? (ask.kind() == Ask.Kind.LIST ? "list" : "inOrder") + "(v, " + window + ", " + x + ")" : "near(v, " + window + ", " + x + ")";
    }

    // ---- the tiers, in the marker's order

    private String mark() {
        boolean measured = ask.to() > 0;
        StringBuilder mark = new StringBuilder("public soapstone.speed.PlainMark mark(soapstone.speed.PlainAnswer answer) {\n    double[] v = answer.values();\n");
        mark.append("    int n = v.length;\n    double[] w = new double[n];\n    java.util.Arrays.fill(w, ").append(ask.within()).append(");\n");
        mark.append("    if (").append(atRight("w")).append(") { return ").append(tier(PlainVerdict.RIGHT)).append("; }\n");
        coarse(mark);
        mark.append("    double[] p = answer.places();\n    double[] sharp = new double[n];\n");
        mark.append("    for (int i = 0; i < n; i++) { sharp[i] = sharp(v[i], p[i], TO, WITHIN); }\n    long fits = 0;\n");
        singles(mark, measured);
        if (measured) {
            otherUnit(mark);
            stoppedEarly(mark);
            roundedEarly(mark);
            pairs(mark);
            ofThePen(mark);
            mark.append("    for (int i = 0; i < n; i++) { w[i] = 4 * WITHIN; }\n    if (").append(atRight("w")).append(") { return ").append(tier(PlainVerdict.NEAR)).append("; }\n");
        }
        mark.append("    return ").append(tier(PlainVerdict.UNEXPLAINED)).append(";\n}\n");
        return mark.append("static final double TO = ").append(ask.to()).append(";\nstatic final double WITHIN = ").append(ask.within()).append(";\n").toString();
    }

    private static String tier(int tier) {
        return tier(tier, "0");
    }

    private static String tier(int tier, String fits) {
        return "new soapstone.speed.PlainMark(" + tier + ", " + fits + ")";
    }

    private void coarse(StringBuilder mark) {
        List<Model.Constant> constants = model.constants();
        for (int i = 0; i < constants.size(); i++) {
            for (int a = 0; a < constants.get(i).also().length; a++) {
                Map<Integer, JavaText.Written> one = new TreeMap<>(Map.of(constants.get(i).slot(), fixed(constants.get(i).also()[a])));
                coarse(mark, "coarse" + i + "_" + a, one);
                for (int k = 0; k < i; k++) {
                    for (int b = 0; b < constants.get(k).also().length; b++) {
                        Map<Integer, JavaText.Written> two = new TreeMap<>(one);
                        two.put(constants.get(k).slot(), fixed(constants.get(k).also()[b]));
                        coarse(mark, "coarse" + i + "_" + a + "_" + k + "_" + b, two);
                    }
                }
            }
        }
    }

    private void coarse(StringBuilder mark, String name, Map<Integer, JavaText.Written> swap) {
        if (reaches(swap)) {
            mark.append("    if (").append(candidate(name, "", swap)).append("(v, w)) { return ").append(tier(PlainVerdict.COARSE)).append("; }\n");
        }
    }

    private static JavaText.Written fixed(double value) {
        return new JavaText.Written(JavaText.number(value), 0);
    }

    private boolean reaches(Map<Integer, JavaText.Written> swap) {
        long affected = 0;
        for (int slot = 0; slot <= last; slot++) {
            affected |= swap.containsKey(slot) || (program.reads(slot) & affected) != 0 ? 1L << slot : 0;
        }
        return (affected & 1L << ask.slot()) != 0 || ask.second() >= 0 && (affected & 1L << ask.second()) != 0;
    }

    private void singles(StringBuilder mark, boolean measured) {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < swaps.size(); i++) {
            if (reaches(swaps.get(i))) {
                all.append("    if (sense[").append(i).append("] && ").append(candidate("slip" + i, "", swaps.get(i)))
                        .append("(v, WINDOW)) { fits |= 1L << ").append(i).append("; }\n");
            }
        }
        String result = "return Long.bitCount(fits) > most ? " + tier(PlainVerdict.UNEXPLAINED) + " : " + tier(PlainVerdict.SINGLE, "fits") + ";";
        if (ask.kind() == Ask.Kind.CHOICE) {
            result = ask.options().size() >= 3 ? "if (Long.bitCount(fits) == 1) { return " + tier(PlainVerdict.SINGLE, "fits") + "; }" : "";
        }
        if (measured) {
            mark.append("    double[] last = answer.last();\n    double[] figures = new double[n];\n    boolean coarser = false;\n")
                    .append("    for (int i = 0; i < n; i++) { boolean c = coarser(v[i], last[i], TO); coarser |= c; figures[i] = c ? last[i] / 2 : sharp[i]; }\n    int most = coarser ? 5 : 3;\n")
                    .append("    if (coarser && !").append(atRight("figures")).append(") {\n").append(all.toString().replace("WINDOW", "figures"))
                    .append("    if (fits != 0) { ").append(result).append(" } }\n");
        } else {
            mark.append("    int most = 3;\n");
        }
        mark.append(all.toString().replace("WINDOW", "sharp")).append("    if (fits != 0) { ").append(result).append(" }\n");
    }

    private void otherUnit(StringBuilder mark) {
        if (!ask.isNumber() || ask.unit() == Units.ONE) {
            return;
        }
        UnitSystem system = model.system();
        String right = value(ask.slot(), 0);
        mark.append("    if (answer.bare()) {\n    double place = p[0] * Math.abs(answer.amount() / v[0]);\n");
        for (Unit unit : Units.all()) {
            if (unit.dimension().equals(ask.unit().dimension()) && !unit.equals(ask.unit())) {
                double shift = unit.fromBase(0, system);
                mark.append("    if (unit(").append(right).append(" * ").append(JavaText.number(unit.fromBase(1, system) - shift)).append(" + ").append(JavaText.number(shift))
                        .append(", answer.amount(), place)) { return ").append(tier(PlainVerdict.OTHER_UNIT)).append("; }\n");
            }
        }
        mark.append("    }\n");
    }

    private void stoppedEarly(StringBuilder mark) {
        if (!ask.isNumber()) {
            return;
        }
        Dimension d = program.slot(ask.slot()).type().dimension();
        for (Line line : model.lines()) {
            Type type = program.slot(line.slot()).type();
            boolean before = line.phase() == Line.Phase.WORKING && line.slot() < ask.slot() && reaches(Map.of(line.slot(), fixed(0)));
            boolean asked = model.asks().stream().anyMatch(a -> a.slot() == line.slot());
            if (before && type.isAmount() && type.dimension().equals(d) && !asked) {
                mark.append("    if (near(v, sharp, ").append(value(line.slot(), 0)).append(")) { return ").append(tier(PlainVerdict.STOPPED)).append("; }\n");
            }
        }
    }

    private void roundedEarly(StringBuilder mark) {
        for (Line line : model.lines()) {
            Program.Slot slot = program.slot(line.slot());
            boolean used = line.phase() == Line.Phase.WORKING && line.slot() < last && slot.type().isAmount() && reaches(Map.of(slot.index(), fixed(0)));
            if (used) {
                String value = value(slot.index(), 0);
                String name = candidate("rounded" + slot.index(), "double step, ",
                        Map.of(slot.index(), new JavaText.Written("roundTo(" + value + ", step)", 0)));
                for (double step : steps(slot)) {
                    mark.append("    if (rounds(").append(value).append(", ").append(step).append(") && ").append(name).append("(").append(step)
                            .append(", v, sharp)) { return ").append(tier(PlainVerdict.ROUNDED)).append("; }\n");
                }
            }
        }
    }

    private Set<Double> steps(Program.Slot slot) {
        boolean length = slot.type().dimension().equals(Dimension.LENGTH);
        double one = Math.abs(slot.shown().toBase(1, model.system()) - slot.shown().toBase(0, model.system()));
        Set<Double> steps = new LinkedHashSet<>();
        if (length && model.system() == UnitSystem.US) {
            steps.add(1 / 16.0);
            steps.add(1 / 8.0);
        }
        for (double decimal : DECIMAL_STEPS) {
            steps.add(one * decimal);
        }
        if (length && model.system() == UnitSystem.US && ask.unit().dimension().equals(Dimension.LENGTH)) {
            steps.add(ask.to());
        }
        return steps;
    }

    private void pairs(StringBuilder mark) {
        if (ask.isNumber()) {
            mark.append("    int slips = 0;\n    for (boolean s : sense) { slips += s ? 1 : 0; }\n");
        }
        mark.append(ask.isNumber() ? "    if (!luck(slips, sharp[0], v[0])) {\n" : "    {\n");
        for (int i = 0; i < swaps.size(); i++) {
            for (int k = i + 1; k < swaps.size(); k++) {
                Map<Integer, JavaText.Written> both = new TreeMap<>(swaps.get(i));
                both.putAll(swaps.get(k));
                boolean apart = (model.slips().get(i).change().mask() & model.slips().get(k).change().mask()) == 0;
                if (apart && reaches(both)) {
                    mark.append("    if (sense[").append(i).append("] && sense[").append(k).append("] && ").append(candidate("pair" + i + "_" + k, "", both))
                            .append("(v, sharp)) { fits = fits == 0 ? ").append(10_000 + i * 100 + k).append(" : fits + 10000; }\n");
                }
            }
        }
        mark.append("    }\n    if (fits != 0) { return fits >= (most + 1) * 10000 ? ").append(tier(PlainVerdict.UNEXPLAINED)).append(" : ").append(tier(PlainVerdict.PAIR, "fits")).append("; }\n");
    }

    private void ofThePen(StringBuilder mark) {
        if (ask.isNumber()) {
            String right = value(ask.slot(), 0);
            boolean fraction = ask.show().form() == Show.Form.FRACTION;
            String unit = "(" + right + ") / UNIT";
            mark.append("    if (moved(v[0], sharp[0], ").append(right).append(", TO)) { fits++; }\n");
            mark.append("    if (swapped(v[0], sharp[0], ").append(unit).append(", TO / UNIT, ").append(fraction).append(", UNIT)) { fits++; }\n");
            if (fraction) {
                mark.append("    if (answer.decimal() && behind(v[0], sharp[0], ").append(unit).append(", ").append(ask.show().denominator()).append(", UNIT)) { fits++; }\n");
            }
            mark.append("    if (upsideDown(v[0], sharp[0], ").append(unit).append(", TO, UNIT)) { fits++; }\n");
            methods.append("static final double UNIT = ").append(ask.unit().toBase(1, model.system()) - ask.unit().toBase(0, model.system())).append(";\n");
        }
        if (!model.radians().isEmpty()) {
            Map<Integer, JavaText.Written> swap = new TreeMap<>();
            for (Program.Slot slot : program.slots()) {
                if ((model.radians().mask() & 1L << slot.index()) != 0) {
                    swap.put(slot.index(), written(slot.value(), JavaText.Manner.RADIANS));
                }
            }
            if (reaches(swap)) {
                mark.append("    if (").append(candidate("radians", "", swap)).append("(v, sharp)) { fits++; }\n");
            }
        }
        mark.append("    if (fits != 0) { return fits > most ? ").append(tier(PlainVerdict.UNEXPLAINED)).append(" : ").append(tier(PlainVerdict.PEN, "fits")).append("; }\n");
    }
}
