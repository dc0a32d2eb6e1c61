package soapstone.expression;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import soapstone.quantity.Dimension;
import soapstone.quantity.Units;
import soapstone.source.Near;

/**
 * Checks the dimensions of an expression and plans it. Every fault is told once, with what was found and what would
 * fit; a part with a fault is {@link Type#UNKNOWN}, and nothing more is said about what is built on it.
 */
final class Planner {

    /** Where faults go. */
    interface Faults {
        void fault(int at, String found, String fits);
    }

    /** How a line is to be planned; a slip changes these. */
    record Manner(boolean bare, boolean radians, List<FormulaBody.Swap> swaps) {
        static final Manner PLAIN = new Manner(false, false, List.of());
    }

    private static final int MOST_CALLS_DEEP = 12;
    /** The most parts of one expression when the lines of its formulas stand in the place of their calls. */
    static final int MOST_PARTS = 4_000;

    private final Scope scope;
    private final Manner manner;
    private final Locals locals;
    private final Deque<String> calls = new ArrayDeque<>();
    private final List<Planned> conditions;
    private Faults faults;
    private Map<String, Planned> bound = new HashMap<>();
    private int parts;
    private boolean toldLarge;
    /** The first fault inside of a formula that is being written out: its own text has no place here. */
    private String inside;
    /** Cells that the calls around the present one fill, the outermost first. */
    private final Deque<List<Store>> filled = new ArrayDeque<>();
    /** How many counters of {@code each} and unknowns of {@code solve} are around. */
    private int counters;

    /** Counts the cells for passing values inside of an expression. */
    static final class Locals {
        private int used;

        int next() {
            return used++;
        }

        int used() {
            return used;
        }
    }

    /** @param conditions receives the {@code when} of each swapped formula call, planned; may be null */
    Planner(Scope scope, Manner manner, Locals locals, Faults faults, List<Planned> conditions) {
        this.scope = scope;
        this.manner = manner;
        this.locals = locals;
        this.faults = faults;
        this.conditions = conditions;
    }

    Planned plan(Node node) {
        if (++parts > MOST_PARTS) {
            return tooLarge(node.at());
        }
        if (node instanceof Node.Amount amount) {
            return amount(amount);
        } else if (node instanceof Node.Label label) {
            return new Planned(Type.label(Set.of(label.text())), new Code.Fixed(scope.labels().number(label.text())), 0);
        } else if (node instanceof Node.Name name) {
            return name(name);
        } else if (node instanceof Node.Measure measure) {
            return fault(measure.at(), "the unit " + measure.unit() + " has no number", "Write 1 " + measure.unit());
        } else if (node instanceof Node.Sign sign) {
            return sign(sign);
        } else if (node instanceof Node.Pair pair) {
            return pair(pair);
        }
        return call((Node.Call) node);
    }

    private Planned fault(int at, String found, String fits) {
        faults.fault(at, found, fits);
        return Planned.UNKNOWN;
    }

    private Planned amount(Node.Amount amount) {
        if (manner.bare()) {
            return new Planned(Type.NUMBER, new Code.Fixed(amount.amount()), 0);
        }
        double base = amount.unit().toBase(amount.amount(), scope.system());
        return new Planned(Type.amount(amount.unit().dimension()), new Code.Fixed(base), 0);
    }

    private Planned name(Node.Name name) {
        Planned local = bound.get(name.name());
        if (local != null) {
            return local;
        }
        if (!calls.isEmpty() && !name.name().equals("pi")) {
            return unknown(name, bound.keySet());
        }
        Scope.Name found = scope.find(name.name());
        if (found == null) {
            Set<String> known = new TreeSet<>(scope.visible());
            known.addAll(bound.keySet());
            return unknown(name, known);
        }
        long reads = 1L << found.slot();
        return manner.bare() ? bareName(name, found, reads) : new Planned(found.type(), new Code.Slot(found.slot()), reads);
    }

    private Planned unknown(Node.Name name, Set<String> known) {
        if (scope.tables().containsKey(name.name())) {
            return fault(name.at(), "'" + name.name() + "' is a table", "Look a value up in it: " + name.name() + "(column, row)");
        }
        String later = scope.names().containsKey(name.name()) ? "'" + name.name() + "' stands further down"
                : "unknown name '" + name.name() + "'";
        return fault(name.at(), later, Near.suggest(name.name(), known));
    }

    private Planned bareName(Node.Name name, Scope.Name found, long reads) {
        if (found.type().isList()) {
            return fault(name.at(), "'" + name.name() + "' is a list", "A bare slip works on single numbers");
        }
        if (!found.type().isAmount()) {
            return new Planned(found.type(), new Code.Slot(found.slot()), reads);
        }
        int slot = found.slot();
        var shown = found.shown();
        var system = scope.system();
        return new Planned(Type.NUMBER, new Code() {
            @Override
            double number(Frame f) {
                return shown.fromBase(f.numbers[slot], system);
            }
        }, reads);
    }

    private Planned sign(Node.Sign sign) {
        Planned of = plan(sign.of());
        if (of.failed()) {
            return of;
        }
        if (sign.sign().equals("not")) {
            return of.type().kind() == Type.Kind.TRUTH
                    ? new Planned(Type.TRUTH, Arithmetic.apply(a -> 1 - a, of.code()), of.reads())
                    : fault(sign.at(), "'not' stands before " + of.type(), "A condition such as a > b");
        }
        return of.type().isAmount() ? new Planned(of.type(), Arithmetic.apply(a -> -a, of.code()), of.reads())
                : fault(sign.at(), "a minus stands before " + of.type(), "A quantity");
    }

    private Planned pair(Node.Pair pair) {
        if (pair.sign().equals("=")) {
            return fault(pair.at(), "a single = does not compare", "Write == ; a single = only stands in solve");
        }
        Planned left = plan(pair.left());
        Planned right = plan(pair.right());
        if (left.failed() || right.failed()) {
            return Planned.UNKNOWN;
        }
        return switch (pair.sign()) {
            case "+", "-" -> sum(pair, left, right);
            case "*", "/" -> product(pair, left, right);
            case "^" -> power(pair, left, right);
            case "and", "or" -> logic(pair, left, right);
            default -> comparison(pair, left, right);
        };
    }

    private Planned both(Type type, Code code, Planned left, Planned right) {
        return new Planned(type, code, left.reads() | right.reads());
    }

    private Planned sum(Node.Pair pair, Planned left, Planned right) {
        if (!left.type().isAmount() || !right.type().isAmount() || !left.type().takes(right.type())) {
            String verb = pair.sign().equals("+") ? "cannot add " : "cannot subtract ";
            return fault(pair.at(), verb + told(pair.sign().equals("+") ? left : right) + (pair.sign().equals("+") ? " and " : " from ")
                    + told(pair.sign().equals("+") ? right : left), sameHint(left, right));
        }
        return both(left.type(), Arithmetic.two(pair.sign(), left.code(), right.code()), left, right);
    }

    private static String told(Planned p) {
        return p.type().toString();
    }

    private static String sameHint(Planned left, Planned right) {
        if (left.type().isAmount() && right.type().isAmount()) {
            if (right.code() instanceof Code.Fixed && right.type().dimension().isNumber()) {
                return "The number needs a unit of " + left.type().dimension();
            }
            if (left.code() instanceof Code.Fixed && left.type().dimension().isNumber()) {
                return "The number needs a unit of " + right.type().dimension();
            }
        }
        return "Both sides have to be quantities of one kind";
    }

    private Planned product(Node.Pair pair, Planned left, Planned right) {
        if (!left.type().isAmount() || !right.type().isAmount()) {
            Planned odd = left.type().isAmount() ? right : left;
            return fault(pair.at(), "'" + pair.sign() + "' cannot work on " + told(odd),
                    odd.type().isList() ? "Use each(i, 1, n, item(list, i) * ...)" : "Quantities");
        }
        Dimension d = pair.sign().equals("*") ? left.type().dimension().times(right.type().dimension())
                : left.type().dimension().over(right.type().dimension());
        if (!d.isSensible()) {
            return fault(pair.at(), "the result would be " + d, "No shop quantity has such a power");
        }
        return both(Type.amount(d), Arithmetic.two(pair.sign(), left.code(), right.code()), left, right);
    }

    private Planned power(Node.Pair pair, Planned left, Planned right) {
        if (!left.type().isAmount() || !right.type().isAmount() || !right.type().dimension().isNumber()) {
            return fault(pair.at(), "cannot raise " + told(left) + " to " + told(right), "A plain number as the power");
        }
        Code code = Arithmetic.two("^", left.code(), right.code());
        if (left.type().dimension().isNumber()) {
            return both(Type.NUMBER, code, left, right);
        }
        if (!(right.code() instanceof Code.Fixed fixed) || fixed.value != Math.rint(fixed.value) || Math.abs(fixed.value) > 6) {
            return fault(pair.right().at(), "the power of a quantity (" + left.type().dimension() + ") is not a whole number from -6 to 6",
                    "Write it out, or use sqrt or cbrt");
        }
        Dimension d = left.type().dimension().power((int) fixed.value);
        return d.isSensible() ? both(Type.amount(d), code, left, right)
                : fault(pair.at(), "the result would be " + d, "No shop quantity has such a power");
    }

    private Planned logic(Node.Pair pair, Planned left, Planned right) {
        if (left.type().kind() != Type.Kind.TRUTH || right.type().kind() != Type.Kind.TRUTH) {
            Planned odd = left.type().kind() == Type.Kind.TRUTH ? right : left;
            return fault(pair.at(), "'" + pair.sign() + "' joins " + told(odd), "Conditions on both sides, such as a > b");
        }
        boolean and = pair.sign().equals("and");
        return both(Type.TRUTH, Arithmetic.combine(Arithmetic.logic(and), left.code(), right.code()), left, right);
    }

    private Planned comparison(Node.Pair pair, Planned left, Planned right) {
        boolean equality = pair.sign().equals("==") || pair.sign().equals("!=");
        if (left.type().isLabel() && right.type().isLabel() && equality) {
            return labels(pair, left, right);
        }
        if (!left.type().isAmount() || !right.type().isAmount() || !left.type().takes(right.type())) {
            return fault(pair.at(), "cannot compare " + told(left) + " with " + told(right), sameHint(left, right));
        }
        return both(Type.TRUTH, Arithmetic.combine(Arithmetic.comparison(pair.sign()), left.code(), right.code()), left, right);
    }

    private Planned labels(Node.Pair pair, Planned left, Planned right) {
        Set<String> a = left.type().labels();
        Set<String> b = right.type().labels();
        if (a != null && b != null && a.stream().noneMatch(b::contains)) {
            return fault(pair.right().at(), "these labels are never the same: " + new TreeSet<>(a) + " and " + new TreeSet<>(b),
                    "One of " + new TreeSet<>(a));
        }
        return both(Type.TRUTH, Arithmetic.combine(Arithmetic.sameness(pair.sign().equals("==")), left.code(), right.code()), left, right);
    }

    private Planned call(Node.Call call) {
        var builtin = Builtin.named(call.name());
        if (builtin.isPresent()) {
            Builtin b = builtin.get();
            if (call.with().size() < b.least || call.with().size() > b.most) {
                return fault(call.at(), "'" + b.word + "' takes " + count(b) + ", here " + call.with().size(), b.told);
            }
            return switch (b) {
                case AT_LEAST, AT_MOST, NEXT_ROW, BETWEEN -> new TablePlanner(this, scope).plan(b, call);
                default -> new FunctionPlanner(this, scope, manner, locals).plan(b, call);
            };
        }
        if (scope.tables().containsKey(call.name())) {
            return new TablePlanner(this, scope).lookUp(call);
        }
        FormulaBody formula = scope.formulas().get(call.name());
        if (formula != null) {
            return formula(call, formula);
        }
        Set<String> known = new TreeSet<>(Builtin.words());
        known.addAll(scope.formulas().keySet());
        known.addAll(scope.tables().keySet());
        return fault(call.at(), "unknown function, formula or table '" + call.name() + "'", Near.suggest(call.name(), known));
    }

    private static String count(Builtin b) {
        return b.least == b.most ? values(b.least) : b.least + " to " + b.most + " values";
    }

    private static String values(int count) {
        return count + (count == 1 ? " value" : " values");
    }

    private Planned formula(Node.Call call, FormulaBody formula) {
        if (formula.gives().isUnknown()) {
            return Planned.UNKNOWN;
        }
        String told = formula.name() + "(" + String.join(", ", formula.takes().stream().map(FormulaBody.Parameter::name).toList()) + ")";
        if (manner.bare()) {
            return fault(call.at(), "a bare slip cannot call the formula '" + formula.name() + "'", "Write its line out");
        }
        if (call.with().size() != formula.takes().size()) {
            return fault(call.at(), "the formula takes " + values(formula.takes().size()) + ", here " + call.with().size(), told);
        }
        if (calls.contains(formula.name())) {
            return fault(call.at(), "the formula '" + formula.name() + "' comes back to itself", "Formulas cannot call themselves");
        }
        if (calls.size() >= MOST_CALLS_DEEP) {
            return fault(call.at(), "formulas call each other over " + MOST_CALLS_DEEP + " deep", "Write one of them out");
        }
        Map<String, Planned> inner = new HashMap<>();
        List<Store> stores = new ArrayList<>();
        long reads = 0;
        boolean failed = false;
        for (int i = 0; i < call.with().size(); i++) {
            Planned value = plan(call.with().get(i));
            FormulaBody.Parameter takes = formula.takes().get(i);
            if (!value.failed() && !takes.type().takes(value.type())) {
                value = fault(call.with().get(i).at(), "'" + takes.name() + "' of " + formula.name() + " is " + takes.type()
                        + ", here it gets " + value.type(), told);
            }
            failed |= value.failed();
            reads |= value.reads();
            inner.put(takes.name(), passed(value, stores));
        }
        if (failed) {
            return Planned.UNKNOWN;
        }
        Planned result = body(formula, inner, stores, reads);
        if (parts > MOST_PARTS) {
            return tooLarge(call.at());
        }
        // The formula is sound by itself, so it does not go together with what this call gives it.
        return result.failed() && calls.isEmpty() && inside != null
                ? fault(call.at(), "the formula '" + formula.name() + "' cannot work with this: " + inside, told) : result;
    }

    /** Formulas that call each other many times grow past all bounds: told once, where the expression itself is. */
    private Planned tooLarge(int at) {
        if (calls.isEmpty() && !toldLarge) {
            toldLarge = true;
            fault(at, "with its formulas written out the expression has more than " + MOST_PARTS + " parts", "Cut it into lines with names of their own");
        }
        return Planned.UNKNOWN;
    }

    /** A value that is used inside: as it is when cheap, else stored once in a local. */
    private Planned passed(Planned value, List<Store> stores) {
        if (value.failed() || value.code() instanceof Code.Fixed || value.code() instanceof Code.Slot
                || value.code() instanceof Code.Local || value.type().isList()) {
            return value;
        }
        int local = locals.next();
        stores.add(new Store(local, value.code()));
        return new Planned(value.type(), new Code.Local(local), value.reads());
    }

    private Planned body(FormulaBody formula, Map<String, Planned> inner, List<Store> stores, long reads) {
        Map<String, Planned> outer = bound;
        Faults told = faults;
        calls.push(formula.name());
        filled.addLast(stores);
        inside = calls.size() == 1 ? null : inside;
        // The formula was checked where it stands; here its text has no place to point to.
        faults = (at, found, fits) -> inside = inside == null ? found : inside;
        try {
            Planned result = swapped(formula, inner);
            if (result.failed() || stores.isEmpty()) {
                return new Planned(result.type(), result.code(), result.reads() | reads);
            }
            return new Planned(result.type(), new Passing(stores.toArray(new Store[0]), result.code()), result.reads() | reads);
        } finally {
            calls.pop();
            filled.removeLast();
            faults = told;
            bound = outer;
        }
    }

    private Planned swapped(FormulaBody formula, Map<String, Planned> inner) {
        for (FormulaBody.Swap swap : manner.swaps()) {
            if (swap.formula().equals(formula.name())) {
                Planned theirs = lines(swap.lines(), inner);
                if (swap.when() == null) {
                    condition(new Planned(Type.TRUTH, new Code.Fixed(1), 0));
                    return theirs;
                }
                bound = new HashMap<>(inner);
                Planned when = plan(swap.when());
                condition(when);
                return choose(settled(when), theirs, lines(formula.lines(), inner));
            }
        }
        return lines(formula.lines(), inner);
    }

    /** Where it is not known whether a slip makes sense, the formula stands as it is. */
    private static Planned settled(Planned when) {
        return when.failed() ? when : new Planned(when.type(), Arithmetic.apply(t -> Arithmetic.truth(t == 1), when.code()), when.reads());
    }

    /**
     * Keeps the condition of a slip, to be asked beside the run: so it has to fill the cells that it reads. Inside of
     * {@code each} and {@code solve} it can hold for one value and not for the next; there the slip makes sense.
     */
    private void condition(Planned when) {
        if (conditions == null || when.failed()) {
            return;
        }
        Store[] stores = filled.stream().flatMap(List::stream).toArray(Store[]::new);
        Code code = counters > 0 ? new Code.Fixed(1) : stores.length == 0 ? when.code() : new Passing(stores, when.code());
        conditions.add(new Planned(when.type(), code, when.reads()));
    }

    private Planned lines(List<FormulaBody.Line> lines, Map<String, Planned> inner) {
        bound = new HashMap<>(inner);
        List<Store> stores = new ArrayList<>();
        Planned last = Planned.UNKNOWN;
        long reads = 0;
        filled.addLast(stores);
        try {
            for (FormulaBody.Line line : lines) {
                last = plan(line.value());
                reads |= last.reads();
                if (last.failed()) {
                    return last;
                }
                bound.put(line.name(), passed(last, stores));
            }
        } finally {
            filled.removeLast();
        }
        Planned result = bound.get(lines.get(lines.size() - 1).name());
        return stores.isEmpty() ? new Planned(last.type(), last.code(), reads)
                : new Planned(result.type(), new Passing(stores.toArray(new Store[0]), result.code()), reads);
    }

    static Planned choose(Planned when, Planned yes, Planned no) {
        if (when.failed() || yes.failed() || no.failed()) {
            return Planned.UNKNOWN;
        }
        Code condition = when.code();
        Code a = yes.code();
        Code b = no.code();
        Type type = yes.type();
        if (type.isLabel()) {
            Set<String> all = yes.type().labels() == null || no.type().labels() == null ? null : new HashSet<>(yes.type().labels());
            if (all != null) {
                all.addAll(no.type().labels());
            }
            type = Type.label(all);
        }
        return new Planned(type, new Code() {
            @Override
            double number(Frame f) {
                double c = condition.number(f);
                return c == 1 ? a.number(f) : c == 0 ? b.number(f) : f.undefined("a condition is not defined");
            }

            @Override
            double[] list(Frame f) {
                double c = condition.number(f);
                return c == 1 ? a.list(f) : c == 0 ? b.list(f) : undefined(f);
            }

            private double[] undefined(Frame f) {
                f.undefined("a condition is not defined");
                return null;
            }
        }, when.reads() | yes.reads() | no.reads());
    }

    /** Plans with one more local name, such as the counter of {@code each}. */
    Planned within(String name, Planned value, Node node) {
        Map<String, Planned> outer = bound;
        bound = new HashMap<>(outer);
        bound.put(name, value);
        counters++;
        Planned result = plan(node);
        counters--;
        bound = outer;
        return result;
    }

    Planned complain(int at, String found, String fits) {
        return fault(at, found, fits);
    }

    /** True when the name already means something, so that it can't be a new local name. */
    boolean isTaken(String name) {
        return bound.containsKey(name) || calls.isEmpty() && scope.find(name) != null || Units.named(name).isPresent();
    }

    /** A value to be kept in a local before the body runs. */
    private record Store(int local, Code value) {}

    private static final class Passing extends Code {
        private final Store[] stores;
        private final Code body;

        Passing(Store[] stores, Code body) {
            this.stores = stores;
            this.body = body;
        }

        private void pass(Frame f) {
            for (Store store : stores) {
                f.locals[store.local()] = store.value().number(f);
            }
        }

        @Override
        double number(Frame f) {
            pass(f);
            return body.number(f);
        }

        @Override
        double[] list(Frame f) {
            pass(f);
            return body.list(f);
        }
    }
}
