package soapstone.exercise;

import java.util.List;
import soapstone.quantity.Dimension;
import soapstone.quantity.Quantity;
import soapstone.quantity.ShopPrinter;
import soapstone.quantity.Show;
import soapstone.quantity.UnitSystem;

/**
 * Something that a shop settles once for all its work, and another shop otherwise.
 *
 * @param says   what it is
 * @param told   how a sheet says it, with {@code {value}} where the amount goes
 * @param source a document, or {@code common practice, no source}
 */
public record Convention(String name, String title, String says, String told, Dimension dimension, Allowed us, Allowed metric, String source) {

    /** Where the amount goes. */
    public static final String VALUE = "{value}";

    /**
     * What it may be set to in one unit system: one of some amounts, or any amount of a range.
     *
     * @param usual what most shops take
     * @param picks empty for a range
     * @param least the range's ends, inclusive; of picks, the smallest and the largest
     */
    public record Allowed(Quantity usual, List<Quantity> picks, Quantity least, Quantity most) {

        /** So far apart two amounts count as one: what is between them is rounding noise. */
        private static final double SLACK = 1e-9;

        /** @param base in base units of the system that this is for */
        public boolean takes(double base, UnitSystem system) {
            return picks.isEmpty() ? base >= least.base(system) - SLACK && base <= most.base(system) + SLACK
                    : picks.stream().anyMatch(p -> Math.abs(p.base(system) - base) <= SLACK);
        }
    }

    /** How a sheet says that it is set. */
    public String told(Quantity set) {
        return told.replace(VALUE, printed(set));
    }

    /** In shop notation, in the unit in which it was set. */
    public static String printed(Quantity q) {
        return ShopPrinter.text(q.base(UnitSystem.US), q.unit(), UnitSystem.US, Show.AUTO, '.');
    }

    public Allowed allowed(UnitSystem system) {
        return system == UnitSystem.US ? us : metric;
    }
}
