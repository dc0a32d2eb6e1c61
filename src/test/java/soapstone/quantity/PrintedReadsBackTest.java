package soapstone.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import soapstone.quantity.Reading.Again;
import soapstone.quantity.Reading.One;

/** Whatever the printer prints, the reader reads as the same value: over units, shows, marks and a grid of values. */
class PrintedReadsBackTest {

    private static final double[] DECIMALS = {0, 1, 2, 9, 12, 144, 231, 999, 1000, 1051, 9999, 10_000, 12_345, 99_999, 250_000,
        1_000_000, 0.5, 0.25, 0.125, 0.0598, 0.1345, 3.1416, 22.5, 41.375, 62.4, 490.1, 748.05, 1051.5, 12_345.0, 0.001, 0.00012};
    private static final List<String> COMPOUNDS = List.of("lbf/ft3", "lb/ft3", "lb/ft2", "lbf/ft2", "lb/ft", "dollar/lb", "dollar/ft2",
            "dollar/h", "lbf*in", "lbf*ft", "N*m", "kg/m3", "kg/m2", "ft/min", "ft3/min", "gal/min", "m/s2", "in/ft", "mm/m", "m/s",
            "1/in", "lb/gal", "kg/L", "lbf/in", "ft/s2", "in*lbf/ft", "oz/ft2");

    static Stream<Unit> units() {
        Stream<Unit> compounds = COMPOUNDS.stream().map(n -> n.startsWith("1/")
                ? Units.ONE.over(Units.named(n.substring(2)).orElseThrow()) : Units.parse(n).orElseThrow());
        return Stream.concat(Units.all().stream(), compounds);
    }

    static List<Unit> lengths() {
        return ofDimension(Dimension.LENGTH);
    }

    static List<Unit> ofDimension(Dimension dimension) {
        return Units.all().stream().filter(u -> u.dimension().equals(dimension)).toList();
    }

    private static double[] withNegatives(double[] values) {
        double[] all = new double[values.length * 2];
        for (int i = 0; i < values.length; i++) {
            all[2 * i] = values[i];
            all[2 * i + 1] = -values[i];
        }
        return all;
    }

    @ParameterizedTest
    @MethodSource("units")
    void everyUnitInEveryFormThatHoldsTheValue(Unit unit) {
        for (double amount : withNegatives(DECIMALS)) {
            reads(amount, unit, Show.AUTO);
            reads(amount, unit, Show.decimal(0));
            reads(amount, unit, Show.decimal(0.00001));
            if (amount == Math.rint(amount)) {
                reads(amount, unit, Show.WHOLE);
                reads(amount, unit, Show.decimal(1));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("units")
    void fractionsOfEveryUnit(Unit unit) {
        for (int bottom : new int[] {2, 4, 8, 16, 32, 64}) {
            for (int top = -3 * bottom; top <= 3 * bottom; top++) {
                double amount = (double) top / bottom;
                Show show = Fractions.areRead(unit, bottom) ? Show.fraction(bottom) : Show.decimal(0.000001);
                reads(amount, unit, show);
            }
        }
    }

    @Test
    void everySixtyFourthOfAnInchUpToTenFeet() {
        for (int n = -7680; n <= 7680; n++) {
            double inches = n / 64.0;
            One auto = reads(inches, Units.INCH, Show.AUTO);
            assertThat(auto.notation()).isIn(Notation.WHOLE, Notation.FRACTION, Notation.MIXED);
            assertThat(auto.reducible()).as(auto.text()).isFalse();
            reads(inches, Units.INCH, Show.fraction(64));
            reads(inches, Units.INCH, Show.FEET_INCHES);
            reads(inches / 12, Units.FOOT, Show.FEET_INCHES);
        }
    }

    @Test
    void anglesInDegreesAndMinutes() {
        for (int minutes = -360 * 60; minutes <= 360 * 60; minutes += 7) {
            reads(minutes / 60.0, Units.DEGREE, Show.DEGREES_MINUTES);
            reads(minutes, Units.ARCMIN, Show.DEGREES_MINUTES);
        }
    }

    @Test
    void timesInHoursAndMinutes() {
        for (int minutes = 0; minutes <= 48 * 60; minutes += 7) {
            reads(minutes / 60.0, Units.HOUR, Show.HOURS_MINUTES);
            reads(minutes, Units.MINUTE, Show.HOURS_MINUTES);
            reads(minutes * 60, Units.SECOND, Show.HOURS_MINUTES);
        }
    }

    /** A value printed in one unit is read where another of its dimension is asked; only the tons are asked again. */
    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void everyUnitWhereAnotherIsAsked(UnitSystem system) {
        List<String> askedAgain = new ArrayList<>();
        for (Unit printed : Units.all().stream().filter(u -> !u.equals(Units.ONE)).toList()) {
            for (Unit asked : ofDimension(printed.dimension())) {
                double base = printed.toBase(12.5, system);
                String text = ShopPrinter.text(base, printed, system, Show.decimal(0.1), '.');
                Reading reading = ShopReader.read(text, new ReadAs(ReadAs.Kind.QUANTITY, asked, system, '.'));
                if (reading instanceof Again again) {
                    askedAgain.add(again.why().key());
                } else {
                    assertThat(Math.abs(((One) reading).base() - base)).as("%s where %s is asked", text, asked)
                            .isLessThan(1e-9 * Math.max(1, Math.abs(base)));
                }
            }
        }
        assertThat(askedAgain).isNotEmpty().containsOnly(Reason.WHICH_TON.key());
    }

    private static One reads(double amount, Unit unit, Show show) {
        One last = null;
        for (UnitSystem system : UnitSystem.values()) {
            for (char mark : new char[] {'.', ','}) {
                double base = unit.toBase(amount, system);
                if (Math.abs(base) > Value.LARGEST_BASE) {
                    continue;
                }
                String text = ShopPrinter.text(base, unit, system, show, mark);
                Reading reading = ShopReader.read(text, new ReadAs(ReadAs.Kind.QUANTITY, unit, system, mark));
                if (!(reading instanceof One one)) {
                    throw new AssertionError(amount + " " + unit + " in " + show + " was printed " + text + " and read " + reading);
                }
                if (!(Math.abs(one.base() - base) <= 1e-9 * Math.max(1e-3, Math.abs(base)))) {
                    throw new AssertionError(amount + " " + unit + " in " + show + " was printed " + text + " and read " + one);
                }
                last = one;
            }
        }
        return last;
    }
}
