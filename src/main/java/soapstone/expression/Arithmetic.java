package soapstone.expression;

/** Plans for operators. A slot or a fixed number on a side is taken as it is, which saves a call where most of the work is. */
final class Arithmetic {

    /** What counts as no more than rounding noise when a count is rounded: exact cases on a shop's base stay exact. */
    static final double SLACK = 1e-9;

    private Arithmetic() {}

    interface Two {
        double of(double a, double b);
    }

    interface One {
        double of(double a);
    }

    static Code two(String sign, Code left, Code right) {
        if (left instanceof Code.Fixed a && right instanceof Code.Fixed b) {
            return new Code.Fixed(of(sign.charAt(0), a.value, b.value));
        }
        if (left instanceof Code.Slot a) {
            return right instanceof Code.Slot b ? new SlotSlot(sign, a.slot, b.slot)
                    : right instanceof Code.Fixed b ? new SlotFixed(sign, a.slot, b.value) : new SlotCode(sign, a.slot, right);
        }
        if (left instanceof Code.Fixed a) {
            return right instanceof Code.Slot b ? new FixedSlot(sign, a.value, b.slot) : new CodeCode(sign, left, right);
        }
        return right instanceof Code.Slot b ? new CodeSlot(sign, left, b.slot)
                : right instanceof Code.Fixed b ? new CodeFixed(sign, left, b.value) : new CodeCode(sign, left, right);
    }

    private static double of(char sign, double a, double b) {
        return switch (sign) {
            case '+' -> a + b;
            case '-' -> a - b;
            case '*' -> a * b;
            case '/' -> a / b;
            case '^' -> power(a, b);
            default -> throw new IllegalArgumentException(String.valueOf(sign));
        };
    }

    static double power(double a, double b) {
        return b == 2 ? a * a : b == 3 ? a * a * a : StrictMath.pow(a, b);
    }

    private static final class SlotSlot extends Code {
        private final char sign;
        private final int a;
        private final int b;

        SlotSlot(String sign, int a, int b) {
            this.sign = sign.charAt(0);
            this.a = a;
            this.b = b;
        }

        @Override
        double number(Frame f) {
            return of(sign, f.numbers[a], f.numbers[b]);
        }
    }

    private static final class SlotFixed extends Code {
        private final char sign;
        private final int a;
        private final double b;

        SlotFixed(String sign, int a, double b) {
            this.sign = sign.charAt(0);
            this.a = a;
            this.b = b;
        }

        @Override
        double number(Frame f) {
            return of(sign, f.numbers[a], b);
        }
    }

    private static final class FixedSlot extends Code {
        private final char sign;
        private final double a;
        private final int b;

        FixedSlot(String sign, double a, int b) {
            this.sign = sign.charAt(0);
            this.a = a;
            this.b = b;
        }

        @Override
        double number(Frame f) {
            return of(sign, a, f.numbers[b]);
        }
    }

    private static final class SlotCode extends Code {
        private final char sign;
        private final int a;
        private final Code b;

        SlotCode(String sign, int a, Code b) {
            this.sign = sign.charAt(0);
            this.a = a;
            this.b = b;
        }

        @Override
        double number(Frame f) {
            return of(sign, f.numbers[a], b.number(f));
        }
    }

    private static final class CodeSlot extends Code {
        private final char sign;
        private final Code a;
        private final int b;

        CodeSlot(String sign, Code a, int b) {
            this.sign = sign.charAt(0);
            this.a = a;
            this.b = b;
        }

        @Override
        double number(Frame f) {
            return of(sign, a.number(f), f.numbers[b]);
        }
    }

    private static final class CodeFixed extends Code {
        private final char sign;
        private final Code a;
        private final double b;

        CodeFixed(String sign, Code a, double b) {
            this.sign = sign.charAt(0);
            this.a = a;
            this.b = b;
        }

        @Override
        double number(Frame f) {
            return of(sign, a.number(f), b);
        }
    }

    private static final class CodeCode extends Code {
        private final char sign;
        private final Code a;
        private final Code b;

        CodeCode(String sign, Code a, Code b) {
            this.sign = sign.charAt(0);
            this.a = a;
            this.b = b;
        }

        @Override
        double number(Frame f) {
            return of(sign, a.number(f), b.number(f));
        }
    }

    static Code combine(Two two, Code left, Code right) {
        return new Code() {
            @Override
            double number(Frame f) {
                return two.of(left.number(f), right.number(f));
            }
        };
    }

    static Code apply(One one, Code of) {
        if (of instanceof Code.Fixed fixed) {
            return new Code.Fixed(one.of(fixed.value));
        }
        return new Code() {
            @Override
            double number(Frame f) {
                return one.of(of.number(f));
            }
        };
    }

    /** Comparisons are exact but for the slack, so that 3 times 0.1 in is not over 0.3 in. */
    static Two comparison(String sign) {
        return switch (sign) {
            case "<" -> (a, b) -> known(a, b, a < b - slack(a, b));
            case "<=" -> (a, b) -> known(a, b, a <= b + slack(a, b));
            case ">" -> (a, b) -> known(a, b, a > b + slack(a, b));
            case ">=" -> (a, b) -> known(a, b, a >= b - slack(a, b));
            case "==" -> (a, b) -> known(a, b, Math.abs(a - b) <= slack(a, b));
            case "!=" -> (a, b) -> known(a, b, Math.abs(a - b) > slack(a, b));
            default -> throw new IllegalArgumentException(sign);
        };
    }

    /** Whether two labels are the same, or not, by their numbers. */
    static Two sameness(boolean same) {
        return (a, b) -> known(a, b, (a == b) == same);
    }

    /** Of something that is not defined, nothing is known: neither that it is so, nor that it is not. */
    private static double known(double a, double b, boolean truth) {
        return Double.isNaN(a) || Double.isNaN(b) ? Double.NaN : truth(truth);
    }

    /** One false side decides, and so does one true side of "or"; else a side that is not known leaves it open. */
    static Two logic(boolean and) {
        return and ? (a, b) -> a == 0 || b == 0 ? 0 : a * b : (a, b) -> a == 1 || b == 1 ? 1 : Math.max(a, b);
    }

    private static double slack(double a, double b) {
        return SLACK * Math.max(1, Math.max(Math.abs(a), Math.abs(b)) * 1e-3);
    }

    static double truth(boolean b) {
        return b ? 1 : 0;
    }

    static double roundTo(double x, double step) {
        return Math.floor(x / step + 0.5 + SLACK) * step;
    }

    static double floor(double x) {
        return Math.floor(x + SLACK);
    }

    static double ceil(double x) {
        // Adding zero turns the minus zero of a small negative number into a plain one.
        return Math.ceil(x - SLACK) + 0.0;
    }
}
