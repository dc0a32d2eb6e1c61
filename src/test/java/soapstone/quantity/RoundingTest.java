package soapstone.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RoundingTest {

    @Test
    void aHalfGoesUp() {
        assertThat(Rounding.halfUp(2.5)).isEqualTo(3);
        assertThat(Rounding.halfUp(-2.5)).isEqualTo(-2);
        assertThat(Rounding.halfUp(41.03125, 1.0 / 16)).isEqualTo(41.0625);
        assertThat(Rounding.halfUp(1.005, 0.01)).isEqualTo(1.01);
    }

    @Test
    void whatIsOnAStepButForNoiseIsOnIt() {
        assertThat(Rounding.floor(3 - 1e-10)).isEqualTo(3);
        assertThat(Rounding.ceil(3 + 1e-10)).isEqualTo(3);
        assertThat(Rounding.floor(3 - 1e-8)).isEqualTo(2);
        assertThat(Rounding.ceil(3 + 1e-8)).isEqualTo(4);
        assertThat(Rounding.floor(0.7 / 0.1)).isEqualTo(7);
        assertThat(Rounding.down(0.7, 0.1)).isEqualTo(0.7);
        assertThat(Rounding.up(0.3, 0.1)).isEqualTo(0.3);
        assertThat(Rounding.isOn(41.375, 1.0 / 64)).isTrue();
        assertThat(Rounding.isOn(41.38, 1.0 / 64)).isFalse();
    }

    @Test
    void decimalStepsGiveTheNearestDouble() {
        for (int n = -5000; n <= 5000; n++) {
            assertThat(Rounding.halfUp(n / 1000.0, 0.001)).isEqualTo(n / 1000.0);
        }
    }

    @Test
    void neverMinusZero() {
        assertThat(1 / Rounding.halfUp(-0.1)).isPositive();
        assertThat(1 / Rounding.ceil(-0.1)).isPositive();
        assertThat(1 / Rounding.floor(-0.0)).isPositive();
        assertThat(1 / Rounding.halfUp(-0.0001, 0.001)).isPositive();
    }
}
