package soapstone.quantity;

import java.util.List;
import java.util.Objects;
import soapstone.source.Message;

/**
 * What was understood of a typed answer. A reading never judges: what cannot be read, or can be read in two ways, is
 * {@link Again}, which costs the student nothing.
 */
public sealed interface Reading {

    /** How it was understood, printed; reading it as the same kind gives the same again. Empty when there is no value. */
    String text();

    /** Nothing was typed. */
    record Blank() implements Reading {
        @Override
        public String text() {
            return "";
        }
    }

    /**
     * One amount.
     *
     * @param base     the amount in base units of the system it was read for
     * @param amount   the amount in {@code unit}
     * @param unit     the unit that was typed; the asked one when none was, or when several were ({@code 3 ft 5 in})
     * @param bare     whether no unit was typed
     * @param notation the form it was typed in
     * @param place    the size of the last place typed, in base units: 1/16 in for {@code 7-5/16}, 1 mm for {@code 1051 mm}
     * @param text     how it was understood, printed; reading it again gives the same base
     */
    record One(double base, double amount, Unit unit, boolean bare, Notation notation, double place, String text)
            implements Reading {

        /** Whether it was typed as a fraction that can be reduced, such as {@code 10/16}. */
        public boolean reducible() {
            if (notation != Notation.FRACTION && notation != Notation.MIXED) {
                return false;
            }
            double one = Math.abs(base / amount);
            long bottom = Math.round(one / place);
            long top = Math.round(Math.abs(base) / place);
            return base != 0 && gcd(top, bottom) > 1;
        }

        private static long gcd(long a, long b) {
            return b == 0 ? a : gcd(b, a % b);
        }
    }

    /** Several amounts, in the order typed; never empty. */
    record Many(List<One> items) implements Reading {
        public Many {
            items = List.copyOf(items);
        }

        @Override
        public String text() {
            return String.join("; ", items.stream().map(One::text).toList());
        }
    }

    /** One or more points: the n-th x belongs to the n-th y. */
    record Points(List<One> x, List<One> y) implements Reading {
        public Points {
            x = List.copyOf(x);
            y = List.copyOf(y);
            if (x.size() != y.size()) {
                throw new IllegalArgumentException(x.size() + " x for " + y.size() + " y");
            }
        }

        @Override
        public String text() {
            StringBuilder out = new StringBuilder();
            for (int i = 0; i < x.size(); i++) {
                out.append(i == 0 ? "(" : " (").append(x.get(i).text()).append("; ").append(y.get(i).text()).append(')');
            }
            return out.toString();
        }
    }

    /**
     * To be asked again.
     *
     * @param why the reason, and what would fit
     * @param at  index into the typed text where the trouble is, from 0 to its length
     */
    record Again(Message why, int at) implements Reading {
        public Again {
            Objects.requireNonNull(why);
        }

        @Override
        public String text() {
            return "";
        }
    }
}
