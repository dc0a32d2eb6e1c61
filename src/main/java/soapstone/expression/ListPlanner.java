package soapstone.expression;

import soapstone.quantity.Dimension;

/** Plans what makes and uses lists. */
final class ListPlanner {

    private final Planner planner;

    ListPlanner(Planner planner) {
        this.planner = planner;
    }

    Planned make(Builtin b, Node.Call call, Planned[] with) {
        Dimension d = with[0].type().dimension();
        int alike = b == Builtin.MARKS ? 2 : with.length;
        long reads = 0;
        for (int i = 0; i < with.length; i++) {
            Type wanted = i < alike ? Type.amount(d) : Type.NUMBER;
            if (!with[i].type().isAmount() || !wanted.takes(with[i].type())) {
                return planner.complain(call.with().get(i).at(), "'" + b.word + "' gets " + with[i].type() + " beside " + wanted, b.told);
            }
            reads |= with[i].reads();
        }
        Code[] codes = new Code[with.length];
        for (int i = 0; i < codes.length; i++) {
            codes[i] = with[i].code();
        }
        return new Planned(Type.list(d), b == Builtin.MARKS ? marks(codes) : items(codes), reads);
    }

    private static Code marks(Code[] with) {
        return new Code() {
            @Override
            double[] list(Frame f) {
                double first = with[0].number(f);
                double step = with[1].number(f);
                double[] list = sized(f, with[2].number(f));
                for (int i = 0; list != null && i < list.length; i++) {
                    list[i] = first + i * step;
                }
                return list;
            }
        };
    }

    private static Code items(Code[] with) {
        return new Code() {
            @Override
            double[] list(Frame f) {
                double[] list = sized(f, with.length);
                for (int i = 0; list != null && i < list.length; i++) {
                    list[i] = with[i].number(f);
                }
                return list;
            }
        };
    }

    static Planned each(int local, Planned from, Planned to, Planned item) {
        Code start = from.code();
        Code end = to.code();
        Code body = item.code();
        return new Planned(Type.list(item.type().dimension()), new Code() {
            @Override
            double[] list(Frame f) {
                double first = start.number(f);
                double[] list = sized(f, end.number(f) - first + 1);
                for (int i = 0; list != null && i < list.length; i++) {
                    f.locals[local] = first + i;
                    list[i] = body.number(f);
                }
                return list;
            }
        }, from.reads() | to.reads() | item.reads());
    }

    /** A new list, or null when the size is no whole number from 0 to the bound. */
    private static double[] sized(Frame f, double size) {
        double whole = Math.rint(size);
        if (!(Math.abs(size - whole) < 1e-6) || whole < 0) {
            f.undefined("a list cannot have " + size + " items");
            return null;
        }
        if (whole > Program.MOST_ITEMS) {
            f.undefined("a list has at most " + Program.MOST_ITEMS + " items");
            return null;
        }
        return f.spend((int) whole) ? new double[(int) whole] : null;
    }

    Planned use(Builtin b, Node.Call call, Planned[] with) {
        if (!with[0].type().isList()) {
            return planner.complain(call.with().get(0).at(), "'" + b.word + "' gets " + with[0].type(), b.told);
        }
        Code list = with[0].code();
        Type item = Type.amount(with[0].type().dimension());
        if (b == Builtin.ITEM) {
            return item(call, with, list, item);
        }
        if (b == Builtin.SIZE) {
            return new Planned(Type.NUMBER, over(list, l -> l.length), with[0].reads());
        }
        OfList of = b == Builtin.SUM ? ListPlanner::sum : b == Builtin.LARGEST ? ListPlanner::largest : l -> -largest(negative(l));
        return new Planned(item, over(list, of), with[0].reads());
    }

    private Planned item(Node.Call call, Planned[] with, Code list, Type item) {
        if (!with[1].type().takes(Type.NUMBER)) {
            return planner.complain(call.with().get(1).at(), "'item' counts with " + with[1].type(), Builtin.ITEM.told);
        }
        Code index = with[1].code();
        return new Planned(item, new Code() {
            @Override
            double number(Frame f) {
                double[] l = list.list(f);
                double n = Math.rint(index.number(f));
                return l == null || !(n >= 1 && n <= l.length) ? f.undefined("the list has no item " + n) : l[(int) n - 1];
            }
        }, with[0].reads() | with[1].reads());
    }

    private interface OfList {
        double of(double[] list);
    }

    private static Code over(Code list, OfList of) {
        return new Code() {
            @Override
            double number(Frame f) {
                double[] l = list.list(f);
                return l == null ? f.undefined("the list is not defined") : of.of(l);
            }
        };
    }

    private static double sum(double[] list) {
        double sum = 0;
        for (double d : list) {
            sum += d;
        }
        return sum;
    }

    private static double largest(double[] list) {
        double most = list.length == 0 ? Double.NaN : list[0];
        for (double d : list) {
            most = Math.max(most, d);
        }
        return most;
    }

    private static double[] negative(double[] list) {
        double[] turned = new double[list.length];
        for (int i = 0; i < list.length; i++) {
            turned[i] = -list[i];
        }
        return turned;
    }
}
