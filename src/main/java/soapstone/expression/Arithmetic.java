package soapstone.expression;

/** Plans for operators. The forms with a slot or a fixed number on a side save a call where most of the work is. */
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
            return new Code.Fixed(plain(sign).of(a.value, b.value));
        }
        if (left instanceof Code.Slot a && right instanceof Code.Slot b) {
            return slotSlot(sign, a.slot, b.slot);
        }
        if (left instanceof Code.Slot a && right instanceof Code.Fixed b) {
            return slotFixed(sign, a.slot, b.value);
        }
        return general(sign, left, right);
    }

    static Two plain(String sign) {
        return switch (sign) {
            case "+" -> (a, b) -> a + b;
            case "-" -> (a, b) -> a - b;
            case "*" -> (a, b) -> a * b;
            case "/" -> (a, b) -> a / b;
            case "^" -> Arithmetic::power;
            default -> throw new IllegalArgumentException(sign);
        };
    }

    static double power(double a, double b) {
        return b == 2 ? a * a : b == 3 ? a * a * a : StrictMath.pow(a, b);
    }

    private static Code slotSlot(String sign, int a, int b) {
        return switch (sign) {
            case "+" -> new Code() {
                @Override
                double number(Frame f) {
                    return f.numbers[a] + f.numbers[b];
                }
            };
            case "-" -> new Code() {
                @Override
                double number(Frame f) {
                    return f.numbers[a] - f.numbers[b];
                }
            };
            case "*" -> new Code() {
                @Override
                double number(Frame f) {
                    return f.numbers[a] * f.numbers[b];
                }
            };
            case "/" -> new Code() {
                @Override
                double number(Frame f) {
                    return f.numbers[a] / f.numbers[b];
                }
            };
            default -> general(sign, new Code.Slot(a), new Code.Slot(b));
        };
    }

    private static Code slotFixed(String sign, int a, double b) {
        return switch (sign) {
            case "+" -> new Code() {
                @Override
                double number(Frame f) {
                    return f.numbers[a] + b;
                }
            };
            case "-" -> new Code() {
                @Override
                double number(Frame f) {
                    return f.numbers[a] - b;
                }
            };
            case "*" -> new Code() {
                @Override
                double number(Frame f) {
                    return f.numbers[a] * b;
                }
            };
            case "/" -> new Code() {
                @Override
                double number(Frame f) {
                    return f.numbers[a] / b;
                }
            };
            default -> general(sign, new Code.Slot(a), new Code.Fixed(b));
        };
    }

    private static Code general(String sign, Code left, Code right) {
        return switch (sign) {
            case "+" -> new Code() {
                @Override
                double number(Frame f) {
                    return left.number(f) + right.number(f);
                }
            };
            case "-" -> new Code() {
                @Override
                double number(Frame f) {
                    return left.number(f) - right.number(f);
                }
            };
            case "*" -> new Code() {
                @Override
                double number(Frame f) {
                    return left.number(f) * right.number(f);
                }
            };
            case "/" -> new Code() {
                @Override
                double number(Frame f) {
                    return left.number(f) / right.number(f);
                }
            };
            default -> combine(Arithmetic::power, left, right);
        };
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
