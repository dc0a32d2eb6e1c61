package soapstone.expression;

import soapstone.quantity.Dimension;
import soapstone.quantity.UnitSystem;

/** Plans the calls of built-in functions. */
final class FunctionPlanner {

    /** Newtons with which a kilogram rests: standard gravity, 9.80665 m/s2 (NIST SP 811, appendix B.8). */
    private static final double STANDARD_GRAVITY = 9.80665;

    private final Planner planner;
    private final Scope scope;
    private final Planner.Manner manner;
    private final Planner.Locals locals;

    FunctionPlanner(Planner planner, Scope scope, Planner.Manner manner, Planner.Locals locals) {
        this.planner = planner;
        this.scope = scope;
        this.manner = manner;
        this.locals = locals;
    }

    Planned plan(Builtin b, Node.Call call) {
        return switch (b) {
            case TO, NUMBER -> inUnit(b, call);
            case EACH -> each(call);
            case SOLVE -> solve(call);
            default -> plain(b, call);
        };
    }

    private Planned plain(Builtin b, Node.Call call) {
        Planned[] with = new Planned[call.with().size()];
        boolean failed = false;
        for (int i = 0; i < with.length; i++) {
            with[i] = planner.plan(call.with().get(i));
            failed |= with[i].failed();
        }
        if (failed) {
            return Planned.UNKNOWN;
        }
        return switch (b) {
            case IF -> choice(call, with);
            case ROUND, FLOOR_TO, CEIL_TO, MIN, MAX, ATAN2 -> alike(b, call, with);
            case ABS, SQRT, CBRT, WEIGHT -> oneAmount(b, call, with[0]);
            case ARC -> arc(call, with);
            case MARKS, LIST -> new ListPlanner(planner).make(b, call, with);
            case SUM, ITEM, SIZE, LARGEST, SMALLEST -> new ListPlanner(planner).use(b, call, with);
            default -> ofNumber(b, call, with[0]);
        };
    }

    private Planned wrong(Builtin b, Node at, Planned found) {
        return planner.complain(at.at(), "'" + b.word + "' gets " + found.type(), b.told);
    }

    private Planned choice(Node.Call call, Planned[] with) {
        if (with[0].type().kind() != Type.Kind.TRUTH) {
            return wrong(Builtin.IF, call.with().get(0), with[0]);
        }
        if (!with[1].type().takes(with[2].type())) {
            return planner.complain(call.with().get(2).at(), "'if' would give " + with[1].type() + " or " + with[2].type(), Builtin.IF.told);
        }
        return Planner.choose(with[0], with[1], with[2]);
    }

    private Planned alike(Builtin b, Node.Call call, Planned[] with) {
        for (int i = 0; i < with.length; i++) {
            if (!with[i].type().isAmount()) {
                return wrong(b, call.with().get(i), with[i]);
            }
            if (!with[0].type().takes(with[i].type())) {
                return planner.complain(call.with().get(i).at(), "'" + b.word + "' gets " + with[0].type() + " and " + with[i].type(), b.told);
            }
        }
        Arithmetic.Two two = switch (b) {
            case ROUND -> Arithmetic::roundTo;
            case FLOOR_TO -> (x, step) -> Arithmetic.floor(x / step) * step;
            case CEIL_TO -> (x, step) -> Arithmetic.ceil(x / step) * step;
            case MIN -> Math::min;
            case MAX -> Math::max;
            default -> manner.radians() ? StrictMath::atan2 : (y, x) -> StrictMath.toDegrees(StrictMath.atan2(y, x));
        };
        Type type = b == Builtin.ATAN2 ? Type.amount(Dimension.ANGLE) : with[0].type();
        Planned all = new Planned(type, with[0].code(), with[0].reads());
        for (int i = 1; i < with.length; i++) {
            all = new Planned(type, Arithmetic.combine(two, all.code(), with[i].code()), all.reads() | with[i].reads());
        }
        return all;
    }

    private Planned oneAmount(Builtin b, Node.Call call, Planned x) {
        Node at = call.with().get(0);
        if (!x.type().isAmount()) {
            return wrong(b, at, x);
        }
        Dimension d = x.type().dimension();
        switch (b) {
            case ABS:
                return new Planned(x.type(), Arithmetic.apply(Math::abs, x.code()), x.reads());
            case SQRT:
            case CBRT:
                var root = d.root(b == Builtin.SQRT ? 2 : 3);
                if (root.isEmpty()) {
                    return planner.complain(at.at(), "the root of " + x.type() + " is no quantity", b.told);
                }
                return new Planned(Type.amount(root.get()),
                        Arithmetic.apply(b == Builtin.SQRT ? Math::sqrt : StrictMath::cbrt, x.code()), x.reads());
            default:
                if (!d.equals(Dimension.MASS) && !manner.bare()) {
                    return wrong(b, at, x);
                }
                double g = scope.system() == UnitSystem.US ? 1 : STANDARD_GRAVITY;
                return new Planned(manner.bare() ? Type.NUMBER : Type.amount(Dimension.FORCE),
                        Arithmetic.apply(m -> m * g, x.code()), x.reads());
        }
    }

    private Planned arc(Node.Call call, Planned[] with) {
        if (!with[0].type().isAmount()) {
            return wrong(Builtin.ARC, call.with().get(0), with[0]);
        }
        if (!with[1].type().isAmount() || !manner.bare() && !with[1].type().dimension().equals(Dimension.ANGLE)) {
            return wrong(Builtin.ARC, call.with().get(1), with[1]);
        }
        Code radius = with[0].code();
        Code angle = with[1].code();
        Code pi = planner.plan(new Node.Name("pi", call.at())).code();
        return new Planned(with[0].type(), new Code() {
            @Override
            double number(Frame f) {
                return radius.number(f) * angle.number(f) * pi.number(f) / 180;
            }
        }, with[0].reads() | with[1].reads() | 1L << Program.PI);
    }

    private Planned ofNumber(Builtin b, Node.Call call, Planned x) {
        boolean takesAngle = b == Builtin.SIN || b == Builtin.COS || b == Builtin.TAN;
        boolean givesAngle = b == Builtin.ASIN || b == Builtin.ACOS || b == Builtin.ATAN;
        Dimension wanted = takesAngle && !manner.bare() ? Dimension.ANGLE : Dimension.NUMBER;
        if (!x.type().isAmount() || !x.type().dimension().equals(wanted)) {
            String fits = takesAngle && x.type().dimension().isNumber() ? "An angle, such as 30 deg" : b.told;
            return planner.complain(call.with().get(0).at(), "'" + b.word + "' gets " + x.type(), fits);
        }
        // In a bare line numbers are typed into a calculator set to radians.
        boolean radians = manner.radians() || manner.bare();
        Arithmetic.One one = function(b);
        if (takesAngle && !radians) {
            Arithmetic.One inRadians = one;
            one = a -> inRadians.of(StrictMath.toRadians(a));
        }
        if (givesAngle && !radians) {
            Arithmetic.One inRadians = one;
            one = a -> StrictMath.toDegrees(inRadians.of(a));
        }
        Type type = givesAngle && !manner.bare() ? Type.amount(Dimension.ANGLE) : Type.NUMBER;
        return new Planned(type, Arithmetic.apply(one, x.code()), x.reads());
    }

    private static Arithmetic.One function(Builtin b) {
        return switch (b) {
            case SIN -> StrictMath::sin;
            case COS -> StrictMath::cos;
            case TAN -> StrictMath::tan;
            case ASIN -> StrictMath::asin;
            case ACOS -> StrictMath::acos;
            case ATAN -> StrictMath::atan;
            case EXP -> StrictMath::exp;
            case LN -> StrictMath::log;
            case LOG10 -> StrictMath::log10;
            case SINH -> StrictMath::sinh;
            case COSH -> StrictMath::cosh;
            case TANH -> StrictMath::tanh;
            case FLOOR -> Arithmetic::floor;
            case CEIL -> Arithmetic::ceil;
            default -> throw new IllegalArgumentException(b.word);
        };
    }

    private Planned inUnit(Builtin b, Node.Call call) {
        Planned x = planner.plan(call.with().get(0));
        if (!(call.with().get(1) instanceof Node.Measure measure)) {
            return planner.complain(call.with().get(1).at(), "'" + b.word + "' needs a unit here", b.told);
        }
        if (x.failed()) {
            return x;
        }
        if (manner.bare()) {
            return planner.complain(call.at(), "a bare slip works on plain numbers", "Write the factor itself, such as x / 12");
        }
        if (x.type().isLabel() || x.type().kind() == Type.Kind.TRUTH || !x.type().dimension().equals(measure.unit().dimension())) {
            return planner.complain(measure.at(), measure.unit() + " is " + measure.unit().dimension() + ", but the value is " + x.type(),
                    x.type().isAmount() ? "A unit of " + x.type().dimension() : b.told);
        }
        if (b == Builtin.TO) {
            return x;
        }
        if (!x.type().isAmount()) {
            return wrong(b, call.with().get(0), x);
        }
        UnitSystem system = scope.system();
        return new Planned(Type.NUMBER, Arithmetic.apply(v -> measure.unit().fromBase(v, system), x.code()), x.reads());
    }

    private Planned each(Node.Call call) {
        String name = newName(call, Builtin.EACH);
        Planned from = planner.plan(call.with().get(1));
        Planned to = planner.plan(call.with().get(2));
        if (name == null || from.failed() || to.failed()) {
            return Planned.UNKNOWN;
        }
        for (int i = 1; i <= 2; i++) {
            Planned bound = i == 1 ? from : to;
            if (!bound.type().takes(Type.NUMBER)) {
                return wrong(Builtin.EACH, call.with().get(i), bound);
            }
        }
        int local = locals.next();
        Planned item = planner.within(name, new Planned(Type.NUMBER, new Code.Local(local), 0), call.with().get(3));
        if (item.failed()) {
            return item;
        }
        return item.type().isAmount() ? ListPlanner.each(local, from, to, item) : wrong(Builtin.EACH, call.with().get(3), item);
    }

    private String newName(Node.Call call, Builtin b) {
        if (!(call.with().get(0) instanceof Node.Name name)) {
            planner.complain(call.with().get(0).at(), "'" + b.word + "' needs a new name first", b.told);
            return null;
        }
        if (planner.isTaken(name.name())) {
            planner.complain(name.at(), "'" + name.name() + "' is already a name here", "Take a new one");
            return null;
        }
        return name.name();
    }

    private Planned solve(Node.Call call) {
        String name = newName(call, Builtin.SOLVE);
        Planned low = planner.plan(call.with().get(1));
        Planned high = planner.plan(call.with().get(2));
        if (name == null || low.failed() || high.failed()) {
            return Planned.UNKNOWN;
        }
        if (!low.type().isAmount() || !low.type().takes(high.type())) {
            return planner.complain(call.with().get(2).at(), "'solve' looks from " + low.type() + " to " + high.type(), Builtin.SOLVE.told);
        }
        if (!(call.with().get(3) instanceof Node.Pair pair) || !pair.sign().equals("=")) {
            return planner.complain(call.with().get(3).at(), "'solve' needs two sides with =", Builtin.SOLVE.told);
        }
        int local = locals.next();
        Planned x = new Planned(low.type(), new Code.Local(local), 0);
        Planned left = planner.within(name, x, pair.left());
        Planned right = planner.within(name, x, pair.right());
        if (left.failed() || right.failed()) {
            return Planned.UNKNOWN;
        }
        if (!left.type().isAmount() || !left.type().takes(right.type())) {
            return planner.complain(pair.at(), "'solve' sets " + left.type() + " equal to " + right.type(), "Both sides of one kind");
        }
        Code solver = new Solver(local, low.code(), high.code(), left.code(), right.code());
        return new Planned(low.type(), solver, low.reads() | high.reads() | left.reads() | right.reads());
    }
}
