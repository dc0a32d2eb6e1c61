package soapstone.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tech.units.indriya.function.RationalNumber;

/** Conversions against an independent table of units (indriya), and the laws of our own. */
class UnitsTest {

    /** Units rebuilt with indriya from SI units and the legal definitions; all in one dimension convert to each other. */
    private static Map<String, javax.measure.Unit<?>> references() {
        Map<String, javax.measure.Unit<?>> r = new LinkedHashMap<>();
        javax.measure.Unit<?> metre = tech.units.indriya.unit.Units.METRE;
        javax.measure.Unit<?> inch = scaled(metre, 254, 10_000);
        javax.measure.Unit<?> pound = scaled(tech.units.indriya.unit.Units.KILOGRAM, 45_359_237, 100_000_000);
        javax.measure.Unit<?> newton = tech.units.indriya.unit.Units.NEWTON;
        javax.measure.Unit<?> poundForce = scaled(newton, 44_482_216_152_605L, 10_000_000_000_000L);
        lengths(r, metre, inch);
        r.put("lb", pound);
        r.put("oz", scaled(pound, 1, 16));
        r.put("ton", scaled(pound, 2000, 1));
        r.put("kg", tech.units.indriya.unit.Units.KILOGRAM);
        r.put("g", tech.units.indriya.unit.Units.GRAM);
        r.put("t", scaled(tech.units.indriya.unit.Units.KILOGRAM, 1000, 1));
        r.put("N", newton);
        r.put("kN", scaled(newton, 1000, 1));
        r.put("lbf", poundForce);
        r.put("kip", scaled(poundForce, 1000, 1));
        r.put("psi", poundForce.divide(inch.pow(2)));
        r.put("psf", poundForce.divide(scaled(inch, 12, 1).pow(2)));
        r.put("Pa", tech.units.indriya.unit.Units.PASCAL);
        r.put("bar", scaled(tech.units.indriya.unit.Units.PASCAL, 100_000, 1));
        r.put("MPa", scaled(tech.units.indriya.unit.Units.PASCAL, 1_000_000, 1));
        r.put("s", tech.units.indriya.unit.Units.SECOND);
        r.put("min", tech.units.indriya.unit.Units.MINUTE);
        r.put("h", tech.units.indriya.unit.Units.HOUR);
        return r;
    }

    private static void lengths(Map<String, javax.measure.Unit<?>> r, javax.measure.Unit<?> metre, javax.measure.Unit<?> inch) {
        Map<String, javax.measure.Unit<?>> lengths = Map.of("in", inch, "ft", scaled(inch, 12, 1), "yd", scaled(inch, 36, 1),
                "mm", scaled(metre, 1, 1000), "cm", scaled(metre, 1, 100), "m", metre);
        lengths.forEach((name, unit) -> {
            r.put(name, unit);
            r.put(name + "2", unit.pow(2));
            r.put(name + "3", unit.pow(3));
        });
        r.put("gal", scaled(inch.pow(3), 231, 1));
        r.put("qt", scaled(inch.pow(3), 231, 4));
        r.put("L", tech.units.indriya.unit.Units.LITRE);
        r.put("mL", scaled(tech.units.indriya.unit.Units.LITRE, 1, 1000));
    }

    private static javax.measure.Unit<?> scaled(javax.measure.Unit<?> unit, long times, long by) {
        return unit.multiply(RationalNumber.of(times, by));
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void conversionsAgreeWithTheReference(UnitSystem system) throws Exception {
        Map<String, javax.measure.Unit<?>> references = references();
        int compared = 0;
        for (Map.Entry<String, javax.measure.Unit<?>> from : references.entrySet()) {
            for (Map.Entry<String, javax.measure.Unit<?>> to : references.entrySet()) {
                Unit one = Units.named(from.getKey()).orElseThrow();
                Unit other = Units.named(to.getKey()).orElseThrow();
                assertThat(one.dimension().equals(other.dimension())).isEqualTo(from.getValue().isCompatible(to.getValue()));
                if (one.dimension().equals(other.dimension())) {
                    double expected = from.getValue().getConverterToAny(to.getValue()).convert(7.25);
                    double ours = other.fromBase(one.toBase(7.25, system), system);
                    assertThat(ours).as("%s to %s", one, other).isCloseTo(expected, within(1e-13 * expected));
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(150);
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void thereAndBackIsTheSame(UnitSystem system) {
        for (Unit unit : Units.all()) {
            for (double x : new double[] {0, 1, 7.25, 1e-3, 123456.789, -41.375}) {
                assertThat(unit.fromBase(unit.toBase(x, system), system)).as(unit.name()).isCloseTo(x, within(1e-12 * Math.max(40, Math.abs(x))));
            }
        }
    }

    /** Exact definitions must come out exact, or counts that are exact in the shop would not be here. */
    @ParameterizedTest
    @CsvSource({"ft,us,1,12", "in,metric,1,25.4", "mm,us,25.4,1", "mm,us,254,10", "gal,us,1,231", "in2,metric,1,645.16",
        "in3,metric,1,16387.064", "lb,metric,1,0.45359237", "ft2,us,1,144", "ft3,us,1,1728", "h,us,1,3600", "deg,us,90,90",
        "arcmin,us,30,0.5", "degF,metric,212,100", "degF,metric,32,0", "degC,us,100,212", "degC,us,-40,-40", "%,us,12,0.12"})
    void exactDefinitionsStayExact(String unit, String system, double amount, double base) {
        assertThat(Units.named(unit).orElseThrow().toBase(amount, UnitSystem.parse(system).orElseThrow())).isEqualTo(base);
    }

    @Test
    void compoundsAreParsedAsTheyAreNamed() {
        for (String name : new String[] {"lbf/ft3", "dollar/lb", "lbf*in", "lbf*in/ft", "kg/m3"}) {
            assertThat(Units.parse(name).orElseThrow().name()).isEqualTo(name);
        }
        assertThat(Units.parse("lbf/").isPresent()).isFalse();
        assertThat(Units.parse("/ft").isPresent()).isFalse();
        assertThat(Units.parse("").isPresent()).isFalse();
        assertThat(Units.parse("lbf//ft").isPresent()).isFalse();
    }

    @Test
    void namesAreUniqueAndPlain() {
        Set<String> names = new HashSet<>();
        for (Unit unit : Units.all()) {
            assertThat(names.add(unit.name())).as(unit.name()).isTrue();
            assertThat(unit.name().chars().allMatch(c -> c > ' ' && c < 0x7f)).as(unit.name()).isTrue();
            assertThat(Units.named(unit.name())).containsSame(unit);
        }
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void everyDimensionHasAUsualUnit(UnitSystem system) {
        for (String word : Dimension.knownWords()) {
            Dimension d = Dimension.parse(word).orElseThrow();
            assertThat(Units.usual(d, system).dimension()).as(word).isEqualTo(d);
        }
        Dimension odd = Dimension.parse("mass/length^3/time").orElseThrow();
        assertThat(Units.usual(odd, system).dimension()).isEqualTo(odd);
    }

    @Test
    void quantitiesConvert() {
        Quantity q = new Quantity(3.5, Units.FOOT);
        assertThat(q.in(Units.INCH, UnitSystem.METRIC).amount()).isCloseTo(42, within(1e-12));
        assertThat(q.base(UnitSystem.US)).isEqualTo(42);
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> q.in(Units.POUND, UnitSystem.US))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("length").hasMessageContaining("mass");
    }
}
