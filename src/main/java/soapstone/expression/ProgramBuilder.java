package soapstone.expression;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soapstone.quantity.Unit;
import soapstone.quantity.UnitSystem;
import soapstone.quantity.Units;

/**
 * Builds a program line by line and plans what stands beside it. Faults go to the given receiver, with the offset in the
 * text of the expression that has them.
 */
public final class ProgramBuilder {

    /** Where faults go: offset in the expression's text, what was found, what would fit. */
    public interface Faults {
        void fault(int at, String found, String fits);
    }

    private final UnitSystem system;
    private final Map<String, FormulaBody> formulas;
    private final Map<String, LookupTable> tables;
    private final Labels labels = new Labels();
    private final Planner.Locals locals = new Planner.Locals();
    private final Map<String, Scope.Name> names = new HashMap<>();
    private final List<Program.Slot> slots = new ArrayList<>();
    private final List<Code> codes = new ArrayList<>();
    private final List<Long> reads = new ArrayList<>();
    private final Set<String> told = new HashSet<>();

    public ProgramBuilder(UnitSystem system, Map<String, FormulaBody> formulas, Map<String, ? extends LookupTable> tables) {
        this.system = system;
        this.formulas = formulas;
        this.tables = Map.copyOf(tables);
        put("pi", new Planned(Type.NUMBER, new Code.Fixed(Math.PI), 0), Units.ONE, null);
    }

    public Labels labels() {
        return labels;
    }

    /** Whether there is no room for another name. */
    public boolean isFull() {
        return slots.size() > Program.MOST_NAMES;
    }

    public boolean has(String name) {
        return names.containsKey(name);
    }

    /** The type of a name that was declared, or empty. */
    public Optional<Type> type(String name) {
        return Optional.ofNullable(names.get(name)).map(Scope.Name::type);
    }

    /** The unit in which a name is shown, or empty. */
    public Optional<Unit> shown(String name) {
        return Optional.ofNullable(names.get(name)).map(Scope.Name::shown);
    }

    private int put(String name, Planned planned, Unit shown, Node value) {
        int slot = slots.size();
        names.put(name, new Scope.Name(slot, planned.type(), shown));
        slots.add(new Program.Slot(slot, name, planned.type(), shown, value));
        codes.add(planned.code());
        reads.add(planned.reads());
        return slot;
    }

    /** A value that is given. */
    public int given(String name, Type type, Unit shown) {
        return put(name, new Planned(type, null, 0), shown, null);
    }

    /**
     * A line. After a fault the name is still known, with an unknown type, so that the fault is told once.
     *
     * @param shown the unit in which it is worked; null for the usual one of its dimension
     * @return its slot
     */
    public int line(String name, Node value, Unit shown, Faults faults) {
        Planned planned = planner(Planner.Manner.PLAIN, slots.size(), faults, null).plan(value);
        Unit unit = unit(planned.type(), shown, value, faults);
        return put(name, planned.failed() ? Planned.UNKNOWN : planned, unit, value);
    }

    /** A line that works out what is told to the student: nobody's slip changes it. */
    public int toldLine(String name, Node value, Unit shown, Faults faults) {
        told.add(name);
        return line(name, value, shown, faults);
    }

    private Unit unit(Type type, Unit shown, Node value, Faults faults) {
        if (type.isUnknown() || type.isLabel() || type.kind() == Type.Kind.TRUTH) {
            return shown == null ? Units.ONE : shown;
        }
        if (shown == null) {
            Unit worked = value instanceof Node.Call call && call.name().equals("to") && call.with().get(1) instanceof Node.Measure m ? m.unit() : null;
            return worked != null ? worked : Units.usual(type.dimension(), system);
        }
        if (!shown.dimension().equals(type.dimension())) {
            faults.fault(value.at(), "the line gives " + type + ", but is to be shown in " + shown + " (" + shown.dimension() + ")",
                    "A unit of " + type.dimension());
        }
        return shown;
    }

    private Planner planner(Planner.Manner manner, int below, Faults faults, List<Planned> conditions) {
        Scope scope = new Scope(system, names, below, formulas, tables, labels);
        return new Planner(scope, manner, locals, faults::fault, conditions);
    }

    /** An expression over all names so far; empty after a fault. */
    public Optional<Value> value(Node node, Faults faults) {
        Planned planned = planner(Planner.Manner.PLAIN, slots.size(), faults, null).plan(node);
        return planned.failed() ? Optional.empty() : Optional.of(new Value(planned));
    }

    /** A condition over all names so far; empty after a fault. */
    public Optional<Value> condition(Node node, Faults faults) {
        Optional<Value> value = value(node, faults);
        if (value.isPresent() && value.get().type().kind() != Type.Kind.TRUTH) {
            faults.fault(node.at(), "this is " + value.get().type() + ", not a condition", "Such as a > b");
            return Optional.empty();
        }
        return value;
    }

    /** Another right side for a line, over the names above it; empty after a fault. */
    public Optional<Change> swap(String name, Node value, boolean bare, Faults faults) {
        Scope.Name line = names.get(name);
        if (line == null || line.type().isUnknown()) {
            return Optional.empty();
        }
        Planner.Manner manner = bare ? new Planner.Manner(true, false, List.of()) : Planner.Manner.PLAIN;
        Planned planned = planner(manner, line.slot(), faults, null).plan(value);
        if (planned.failed()) {
            return Optional.empty();
        }
        Type wanted = bare && line.type().isAmount() ? Type.NUMBER : line.type();
        if (!wanted.takes(planned.type())) {
            String hint = bare ? "A plain number" : "A right side of the same kind, or swap-bare for a wrong factor or dimension";
            faults.fault(value.at(), "the line '" + name + "' is " + line.type() + ", the slip gives " + planned.type(), hint);
            return Optional.empty();
        }
        Code code = bare && line.type().isAmount() ? fromBare(planned.code(), line.shown()) : planned.code();
        return Optional.of(new Change(new Change.Part(line.slot(), code, planned.reads())));
    }

    private Code fromBare(Code number, Unit shown) {
        return Arithmetic.apply(x -> shown.toBase(x, system), number);
    }

    /** A swapped formula, in all lines that call it, and whether it can show in a run. */
    public record FormulaChange(Change change, List<Value> when) {}

    public FormulaChange formulaSwap(FormulaBody.Swap swap) {
        List<Planned> conditions = new ArrayList<>();
        Change change = replanned(new Planner.Manner(false, false, List.of(swap)), Set.of(swap.formula()), conditions);
        return new FormulaChange(change, conditions.stream().map(Value::new).toList());
    }

    /** Every line that uses an angle's sine and the like, with the calculator set to radians. */
    public Change radians() {
        Set<String> trig = Set.of("sin", "cos", "tan", "asin", "acos", "atan", "atan2");
        return replanned(new Planner.Manner(false, true, List.of()), trig, null);
    }

    private Change replanned(Planner.Manner manner, Set<String> called, List<Planned> conditions) {
        List<Change.Part> parts = new ArrayList<>();
        for (Program.Slot slot : slots) {
            boolean worked = slot.value() != null && !slot.type().isUnknown() && !told.contains(slot.name());
            if (worked && Calls.reach(slot.value(), called, formulas)) {
                Planned planned = planner(manner, slot.index(), (a, b, c) -> { }, conditions).plan(slot.value());
                if (!planned.failed()) {
                    parts.add(new Change.Part(slot.index(), planned.code(), planned.reads()));
                }
            }
        }
        return new Change(parts.toArray(new Change.Part[0]));
    }

    /** The formulas that the lines call, also by way of other formulas. */
    public Set<String> formulasReached() {
        Set<String> reached = new HashSet<>();
        for (Program.Slot slot : slots) {
            if (slot.value() != null) {
                reached.addAll(Calls.formulas(slot.value(), formulas));
            }
        }
        return reached;
    }

    public Program build() {
        Map<String, Integer> byName = new HashMap<>();
        slots.forEach(s -> byName.put(s.name(), s.index()));
        return new Program(system, slots, byName, codes.toArray(new Code[0]),
                reads.stream().mapToLong(Long::longValue).toArray(), locals.used(), labels);
    }
}
