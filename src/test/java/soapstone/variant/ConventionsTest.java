package soapstone.variant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import soapstone.bank.Bank;
import soapstone.bank.SmallBank;
import soapstone.exercise.Ask;
import soapstone.exercise.Conventions;
import soapstone.exercise.Exercise;
import soapstone.quantity.Quantity;
import soapstone.quantity.UnitSystem;
import soapstone.quantity.Units;

/** What a shop has set, in the numbers that are drawn. */
class ConventionsTest {

    private static final String BEND = "bends/one-bend";

    private static Exercise bend() {
        String text = SmallBank.files().get(BEND + ".yaml").replace("  k: {pick", "  k: {convention: k_factor, pick")
                .replace("to: 1/32 in, within: 1/64 in}", "to: 1/32 in, within: 3/64 in, convention: rounding}");
        Bank bank = SmallBank.read(SmallBank.with(BEND + ".yaml", text));
        return bank.exercise(BEND).orElseThrow();
    }

    private static Conventions set(String name, double amount, soapstone.quantity.Unit unit) {
        return new Conventions(Map.of(name, new Quantity(amount, unit)));
    }

    private static double number(Variant v, String name) {
        return v.right().number(v.model().program().find(name));
    }

    @Test
    void aSetGivenIsTheSameInEveryDraw() {
        Conventions set = set("k_factor", 0.42, Units.ONE);
        for (UnitSystem system : UnitSystem.values()) {
            Drawer drawer = new Drawer(bend(), system, set);
            for (long seed = 1; seed <= 50; seed++) {
                Variant v = drawer.draw(seed).orElseThrow();
                assertThat(number(v, "k")).isEqualTo(0.42);
                assertThat(number(v, "allowance")).as("worked out with it").isCloseTo(
                        Math.toRadians(number(v, "angle")) * (number(v, "radius") + 0.42 * number(v, "thickness")), org.assertj.core.data.Offset.offset(1e-9));
            }
        }
    }

    @Test
    void theOtherGivensOfATryStayAsTheyWere() {
        Drawer free = new Drawer(bend(), UnitSystem.US);
        Drawer fixed = new Drawer(bend(), UnitSystem.US, set("k_factor", 0.42, Units.ONE));
        for (long seed = 1; seed <= 30; seed++) {
            Variant a = free.at(seed, 0).orElseThrow();
            Variant b = fixed.at(seed, 0).orElseThrow();
            for (String name : List.of("number", "angle", "radius", "left", "right")) {
                assertThat(number(b, name)).as(name).isEqualTo(number(a, name));
            }
        }
    }

    @Test
    void whatTheExerciseDoesNotFollowChangesNothing() {
        Conventions set = set("hole_size", 0.5, Units.INCH);
        Variant v = Drawer.draw(bend(), UnitSystem.US, set, 5).orElseThrow();
        assertThat(v.conventions()).isEqualTo(Conventions.NONE);
        assertThat(number(v, "k")).isEqualTo(number(Drawer.draw(bend(), UnitSystem.US, 5).orElseThrow(), "k"));
    }

    /** The exercise allows 1/32 in beyond half of its step for what is rounded on the way: that does not change. */
    @Test
    void anotherRoundingChangesOnlyTheLastStep() {
        Map<Integer, Double> within = Map.of(16, 1.0 / 32 + 1.0 / 32, 32, 1.0 / 64 + 1.0 / 32, 64, 1.0 / 128 + 1.0 / 32);
        within.forEach((bottom, expected) -> {
            Variant v = Drawer.draw(bend(), UnitSystem.US, set("rounding", 1.0 / bottom, Units.INCH), 5).orElseThrow();
            Ask blank = v.model().ask("blank");
            assertThat(blank.to()).isEqualTo(1.0 / bottom);
            assertThat(blank.within()).isEqualTo(expected);
            assertThat(blank.show().denominator()).isEqualTo(bottom);
            assertThat(v.model().ask("allowance")).as("follows no convention").isEqualTo(bend().us().ask("allowance").rounded(
                    0.0005, 0.0005, bend().us().ask("allowance").show()));
        });
        Ask metric = Drawer.draw(bend(), UnitSystem.METRIC, set("rounding", 0.5, Units.MILLIMETER), 5).orElseThrow().model().ask("blank");
        assertThat(metric.to()).isEqualTo(0.5);
        assertThat(metric.show().step()).isEqualTo(0.5);
    }

    @Test
    void aTextKeepsTheVerySameAmounts() {
        Conventions set = new Conventions(Map.of("saw_kerf", new Quantity(3.0 / 32, Units.INCH), "k_factor", new Quantity(0.1 + 0.2, Units.ONE),
                "price_margin", new Quantity(30, Units.PERCENT)));
        assertThat(set.text()).isEqualTo("k_factor=0.30000000000000004; price_margin=30.0 %; saw_kerf=0.09375 in");
        assertThat(Conventions.parse(set.text())).isEqualTo(set);
        assertThat(Conventions.parse("")).isEqualTo(Conventions.NONE);
        assertThat(Conventions.NONE.text()).isEmpty();
        assertThat(set.only(Set.of("k_factor", "freeboard")).values()).containsOnlyKeys("k_factor");
        assertThatThrownBy(() -> Conventions.parse("k_factor")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Conventions.parse("saw_kerf=1 furlong")).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("furlong");
    }
}
