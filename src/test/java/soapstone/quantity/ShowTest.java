package soapstone.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ShowTest {

    @Test
    void formsByName() {
        assertThat(Show.parse("ft in", UnitSystem.US)).contains(Show.FEET_INCHES);
        assertThat(Show.parse(" deg min ", UnitSystem.US)).contains(Show.DEGREES_MINUTES);
        assertThat(Show.parse("h min", UnitSystem.US)).contains(Show.HOURS_MINUTES);
        assertThat(Show.parse("whole", UnitSystem.US)).contains(Show.WHOLE);
        assertThat(Show.parse("auto", UnitSystem.US)).contains(Show.AUTO);
        assertThat(Show.parse("fraction", UnitSystem.US)).contains(Show.fraction(64));
        assertThat(Show.parse("decimal", UnitSystem.US)).contains(Show.decimal(0));
    }

    @Test
    void steps() {
        assertThat(Show.parse("1/16 in", UnitSystem.US)).contains(Show.fraction(16).in(Units.INCH));
        assertThat(Show.parse("1/16", UnitSystem.US)).contains(Show.fraction(16));
        assertThat(Show.parse("0.001 in", UnitSystem.US)).contains(Show.decimal(0.001).in(Units.INCH));
        assertThat(Show.parse("0.001", UnitSystem.US)).contains(Show.decimal(0.001));
        assertThat(Show.parse("1 mm", UnitSystem.METRIC)).contains(Show.decimal(1).in(Units.MILLIMETER));
        assertThat(Show.parse(".5 mm", UnitSystem.METRIC)).contains(Show.decimal(0.5).in(Units.MILLIMETER));
        assertThat(Show.parse("0.1 lbf/ft3", UnitSystem.US).orElseThrow().unit().name()).isEqualTo("lbf/ft3");
        assertThat(Show.fraction(16).denominator()).isEqualTo(16);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "x", "0", "0 in", "-1 in", "1/0 in", "1/ in", "3/16 in", "1/16 mm", "1 foo", "1.2.3 in", "ft", "in ft", "1//2",
        "0.001in2x", "1/99999 in", "1e3 in", "1. in", "."})
    void anythingElseIsNone(String text) {
        assertThat(Show.parse(text, UnitSystem.US)).isEmpty();
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> Show.fraction(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Show.decimal(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Show.decimal(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
