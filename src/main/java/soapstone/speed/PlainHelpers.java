package soapstone.speed;

/** The small methods that any written-out marking would have. */
final class PlainHelpers {

    static final String TEXT = """
            static boolean at(double typed, double target, double width) {
                return Math.abs(typed - target) <= width + 1e-9 * Math.max(1, Math.abs(target));
            }
            static boolean near(double[] v, double[] w, double target) {
                return v.length == 1 && at(v[0], target, w[0]);
            }
            static boolean point(double[] v, double[] w, double x, double y) {
                return v.length == 2 && at(v[0], x, w[0]) && at(v[1], y, w[1]);
            }
            static boolean points(double[] v, double[] w, double[] x, double[] y) {
                if (x == null || y == null || v.length != 2 * x.length || x.length == 0) { return false; }
                for (int i = 0; i < x.length; i++) {
                    if (!at(v[2 * i], x[i], w[2 * i]) || !at(v[2 * i + 1], y[i], w[2 * i + 1])) { return false; }
                }
                return true;
            }
            static boolean inOrder(double[] v, double[] w, double[] x) {
                if (x == null || x.length != v.length || x.length == 0) { return false; }
                for (int i = 0; i < x.length; i++) {
                    if (!at(v[i], x[i], w[i])) { return false; }
                }
                return true;
            }
            static boolean list(double[] v, double[] w, double[] x) {
                if (inOrder(v, w, x)) { return true; }
                if (x == null || x.length != v.length || x.length == 0) { return false; }
                for (int i = 1; i < x.length; i++) {
                    if (x[i] <= x[i - 1]) { return false; }
                }
                boolean[] used = new boolean[v.length];
                for (double target : x) {
                    int found = -1;
                    for (int k = 0; k < v.length && found < 0; k++) { found = !used[k] && at(v[k], target, w[k]) ? k : -1; }
                    if (found < 0) { return false; }
                    used[found] = true;
                }
                return true;
            }
            static boolean alike(double a, double b) { return a == b; }
            static boolean alike(double[] a, double[] b) { return java.util.Arrays.equals(a, b); }
            static double sharp(double value, double place, double to, double within) {
                double count = to > 0 ? value / to : 0.5;
                double asked = Math.abs(count - Math.rint(count)) < 1e-6 ? Math.max(place, to) : place;
                return Math.min(Math.min(within, to / 2), asked > 0 ? asked / 2 : to / 2);
            }
            static boolean coarser(double value, double last, double to) {
                return last > to * (1 + 1e-9) && Math.abs(value) >= 100 * last * (1 - 1e-9);
            }
            static boolean unit(double amount, double typed, double place) {
                return Math.abs(amount) >= 40 * place && Math.abs(amount - typed) <= place / 2;
            }
            static boolean rounds(double value, double step) {
                double size = Math.abs(value);
                double off = Math.abs(size - Math.floor(size / step + 0.5) * step);
                return step <= 0.1 * size && off > 1e-9 * Math.max(1, size);
            }
            static boolean luck(int n, double window, double typed) {
                return n * (n - 1) / 2.0 * 2 * window > 0.02 * Math.abs(typed) * LOG_RANGE;
            }
            static final double LOG_RANGE = 2 * Math.log(5);
            static boolean moved(double typed, double w, double right, double to) {
                for (double factor = 0.01; factor <= 100; factor *= 10) {
                    boolean one = Math.abs(factor - 1) < 0.5;
                    if (!one && Math.abs(right * factor) > 10 * to && at(typed, right * factor, w)) { return true; }
                }
                return false;
            }
            static boolean swapped(double typed, double w, double right, double step, boolean fraction, double unit) {
                double amount = Math.abs(right);
                int places = 0;
                double scale = 1;
                while (!fraction && places < 4 && step * scale < 0.999) { scale *= 10; places++; }
                double rest = fraction ? amount - Math.floor(amount) : 0;
                long digits = fraction ? (long) Math.floor(amount) : Math.round(amount * scale);
                if (digits < 40) { return false; }
                long ten = 1;
                for (int i = 0; i < 7 && digits / ten >= 10; i++, ten *= 10) {
                    long low = digits / ten % 10;
                    long high = digits / ten / 10 % 10;
                    if (low != high && at(typed, Math.copySign((digits + (low - high) * ten * 10 + (high - low) * ten) / scale + rest, right) * unit, w)) { return true; }
                }
                return false;
            }
            static boolean behind(double typed, double w, double right, long denominator, double unit) {
                double amount = Math.abs(right);
                long bottom = denominator;
                long parts = Math.round(amount * bottom);
                long whole = parts / bottom;
                long top = parts % bottom;
                while (top != 0 && top % 2 == 0) { top /= 2; bottom /= 2; }
                if (top == 0) { return false; }
                double a = power(top);
                double b = power(bottom);
                return at(typed, (whole + top / a) * unit, w) || at(typed, (whole + (top * b + bottom) / (a * b)) * unit, w);
            }
            static double power(long digits) {
                double p = 1;
                for (long d = digits; d > 0; d /= 10) { p *= 10; }
                return p;
            }
            static boolean upsideDown(double typed, double w, double right, double to, double unit) {
                double turned = right == 0 ? 0 : 1 / right * unit;
                return Math.abs(turned) > 10 * to && at(typed, turned, w);
            }
            static double square(double a) { return a * a; }
            static double cube(double a) { return a * a * a; }
            static double slack(double a, double b) { return 1e-9 * Math.max(1, Math.max(Math.abs(a), Math.abs(b)) * 1e-3); }
            static boolean less(double a, double b) { return a < b - slack(a, b); }
            static boolean lessOrSame(double a, double b) { return a <= b + slack(a, b); }
            static boolean same(double a, double b) { return Math.abs(a - b) <= slack(a, b); }
            static boolean differs(double a, double b) { return Math.abs(a - b) > slack(a, b); }
            static double roundTo(double x, double step) { return Math.floor(x / step + 0.5 + 1e-9) * step; }
            static double round(double x, double step) { return roundTo(x, step); }
            static double floor(double x) { return Math.floor(x + 1e-9); }
            static double ceil(double x) { return Math.ceil(x - 1e-9) + 0.0; }
            static double floor_to(double x, double step) { return floor(x / step) * step; }
            static double ceil_to(double x, double step) { return ceil(x / step) * step; }
            static double[] sized(double size) {
                double whole = Math.rint(size);
                return Math.abs(size - whole) < 1e-6 && whole >= 0 && whole <= 400 ? new double[(int) whole] : null;
            }
            static double[] marks(double first, double step, double count) {
                double[] list = sized(count);
                for (int i = 0; list != null && i < list.length; i++) { list[i] = first + i * step; }
                return list;
            }
            static double[] each(double from, double to, java.util.function.DoubleUnaryOperator item) {
                double[] list = sized(to - from + 1);
                for (int i = 0; list != null && i < list.length; i++) { list[i] = item.applyAsDouble(from + i); }
                return list;
            }
            static double sum(double[] l) {
                if (l == null) { return Double.NaN; }
                double sum = 0;
                for (double d : l) { sum += d; }
                return sum;
            }
            static double item(double[] l, double n) {
                double i = Math.rint(n);
                return l == null || !(i >= 1 && i <= l.length) ? Double.NaN : l[(int) i - 1];
            }
            static double size(double[] l) { return l == null ? Double.NaN : l.length; }
            static double largest(double[] l) {
                if (l == null || l.length == 0) { return Double.NaN; }
                double most = l[0];
                for (double d : l) { most = Math.max(most, d); }
                return most;
            }
            static double smallest(double[] l) {
                if (l == null || l.length == 0) { return Double.NaN; }
                double least = l[0];
                for (double d : l) { least = Math.min(least, d); }
                return least;
            }
            static double solve(double from, double to, java.util.function.DoubleUnaryOperator f) {
                if (!(from < to) || Double.isInfinite(from) || Double.isInfinite(to)) { return Double.NaN; }
                double step = (to - from) / 24;
                double start = Double.NaN;
                int changes = 0;
                double before = f.applyAsDouble(from);
                for (int i = 1; i <= 24; i++) {
                    double x = i == 24 ? to : from + i * step;
                    double now = f.applyAsDouble(x);
                    if (Double.isNaN(now) || Double.isNaN(before)) { return Double.NaN; }
                    if (before == 0 && i == 1 || now == 0 || before * now < 0) {
                        changes += before == 0 && i > 1 ? 0 : 1;
                        start = x - step;
                    }
                    before = now;
                }
                if (changes != 1) { return Double.NaN; }
                try {
                    return new org.apache.commons.math3.analysis.solvers.BrentSolver(1e-14, 1e-12)
                            .solve(120, f::applyAsDouble, Math.max(from, start), Math.min(to, start + step * (1 + 1e-9)));
                } catch (org.apache.commons.math3.exception.MathIllegalStateException | org.apache.commons.math3.exception.MathIllegalArgumentException e) {
                    return Double.NaN;
                }
            }
            static int find(double[] keys, double key) {
                for (int i = 0; i < keys.length; i++) {
                    if (Math.abs(keys[i] - key) <= 1e-9 * Math.max(1, Math.abs(key))) { return i; }
                }
                return -1;
            }
            static int place(int[] of, double label) { return label >= 0 && label < of.length ? of[(int) label] : -1; }
            static double cell(double[][] cells, int row, int column) { return row < 0 || column < 0 ? Double.NaN : cells[row][column]; }
            static double at_least(double[] keys, double x) {
                for (double k : keys) {
                    if (k >= x - 1e-9 * Math.max(1, Math.abs(x))) { return k; }
                }
                return Double.NaN;
            }
            static double at_most(double[] keys, double x) {
                for (int i = keys.length - 1; i >= 0; i--) {
                    if (keys[i] <= x + 1e-9 * Math.max(1, Math.abs(x))) { return keys[i]; }
                }
                return Double.NaN;
            }
            static double next_row(double[] keys, double key, double n) {
                int row = find(keys, key);
                int wanted = row < 0 ? -1 : row + (int) Math.rint(n);
                return wanted < 0 || wanted >= keys.length ? Double.NaN : keys[wanted];
            }
            static double between(double[] keys, double[][] cells, int column, double x) {
                int at = find(keys, x);
                if (at >= 0) { return cells[at][column]; }
                for (int i = 0; i + 1 < keys.length; i++) {
                    double a = keys[i];
                    double b = keys[i + 1];
                    if (Math.min(a, b) < x && x < Math.max(a, b)) {
                        return cells[i][column] + (cells[i + 1][column] - cells[i][column]) * (x - a) / (b - a);
                    }
                }
                return Double.NaN;
            }
            """;

    private PlainHelpers() {}
}
