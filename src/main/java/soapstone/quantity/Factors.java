package soapstone.quantity;

import java.util.ArrayList;
import java.util.List;
import soapstone.quantity.Spellings.Spelling;

/**
 * The factors of a typed unit, such as lb and ft³ of {@code lb/ft³}, and what they mean together: where a word can mean
 * two units, such as lb for mass and force, the meaning is taken that makes up the asked dimension.
 */
final class Factors {

    private static final Dimension MOMENT = Dimension.FORCE.times(Dimension.LENGTH);

    /**
     * One factor.
     *
     * @param spelling its word
     * @param power    how often it counts
     * @param over     whether it stands under the line
     */
    private record Factor(Spelling spelling, int power, boolean over) {

        Unit unit(int meaning) {
            return raised(spelling.units().get(meaning), power);
        }

        Dimension dimension(int meaning) {
            return spelling.units().get(meaning).dimension().power(over ? -power : power);
        }
    }

    private final ReadAs as;
    private final List<Factor> factors = new ArrayList<>(1);
    private boolean sideBySide;

    Factors(ReadAs as) {
        this.as = as;
    }

    int count() {
        return factors.size();
    }

    /** Whether a factor can be one here: a share or a percent stands alone. */
    boolean takes(Spelling spelling, int power, boolean over) {
        boolean pure = spelling.units().get(0).dimension().isNumber();
        boolean afterPure = !factors.isEmpty() && factors.get(0).spelling().units().get(0).dimension().isNumber();
        return !afterPure && (!pure || factors.isEmpty() && power == 1 && !over);
    }

    void put(Spelling spelling, int power, boolean over) {
        factors.add(new Factor(spelling, power, over));
    }

    /** Notes whether the next factor stands beside the last without a sign; {@code ft lb} is one unit, {@code in mm} two. */
    void sideBySide(boolean yes) {
        sideBySide |= yes;
    }

    /** The symbol of a factor, taken alone. */
    String symbol(int factor) {
        Factor f = factors.get(factor);
        return raised(choose(f.spelling()), f.power()).symbol();
    }

    /** What the factors mean, the asked dimension where they can; null when they are two units rather than one. */
    Unit unit() {
        Factor first = factors.get(0);
        if (factors.size() == 1 && !first.over()) {
            return raised(choose(first.spelling()), first.power());
        }
        int[] meanings = new int[factors.size()];
        boolean fits = search(meanings, 0, Dimension.NUMBER);
        if (sideBySide && !(fits && as.unit().dimension().equals(MOMENT))) {
            return null;
        }
        return built(fits ? meanings : new int[factors.size()]);
    }

    /** How many of the unit the words stand for: 0.001 for a thou, 1 for nearly all. */
    double scale() {
        double scale = 1;
        for (Factor f : factors) {
            double size = f.spelling().scale();
            scale *= size == 1 ? 1 : Math.pow(size, f.over() ? -f.power() : f.power());
        }
        return scale;
    }

    private boolean search(int[] meanings, int i, Dimension sofar) {
        if (i == meanings.length) {
            return sofar.equals(as.unit().dimension());
        }
        Factor f = factors.get(i);
        for (int n = 0; n < f.spelling().units().size(); n++) {
            meanings[i] = n;
            if (search(meanings, i + 1, sofar.times(f.dimension(n)))) {
                return true;
            }
        }
        return false;
    }

    private Unit built(int[] meanings) {
        Unit sofar = null;
        for (int i = 0; i < meanings.length; i++) {
            Factor f = factors.get(i);
            Unit next = f.unit(meanings[i]);
            if (sofar == null) {
                sofar = f.over() ? Units.ONE.over(next) : next;
            } else {
                sofar = f.over() ? sofar.over(next) : sofar.times(next);
            }
        }
        boolean isAsked = sofar.dimension().equals(as.unit().dimension()) && sofar.symbol().equals(as.unit().symbol());
        return isAsked ? as.unit() : sofar;
    }

    private Unit choose(Spelling s) {
        List<Unit> units = s.units();
        if (units.size() == 1) {
            return units.get(0);
        }
        if (units.contains(as.unit())) {
            return as.unit();
        }
        for (int i = 0; i < units.size(); i++) {
            if (units.get(i).dimension().equals(as.unit().dimension())) {
                return units.get(i);
            }
        }
        return units.get(0);
    }

    private static Unit raised(Unit unit, int power) {
        if (power == 1) {
            return unit;
        }
        return Units.named(unit.name() + power).orElseGet(() -> {
            Unit product = unit;
            for (int i = 1; i < power; i++) {
                product = product.times(unit);
            }
            return product;
        });
    }
}
