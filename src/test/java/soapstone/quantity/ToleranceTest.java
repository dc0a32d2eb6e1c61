package soapstone.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class ToleranceTest {

    private static final Tolerance THIRTY_SECOND = Tolerance.of(1.0 / 32, Units.INCH, UnitSystem.US);

    @Test
    void theEdgeIsIn() {
        for (int n = 0; n < 2000; n++) {
            double right = n / 7.0;
            assertThat(THIRTY_SECOND.accepts(right, right + 1.0 / 32)).as("%s from above", right).isTrue();
            assertThat(THIRTY_SECOND.accepts(right, right - 1.0 / 32)).as("%s from below", right).isTrue();
            assertThat(THIRTY_SECOND.accepts(right, right + 1.0 / 32 + 1e-6)).isFalse();
            assertThat(THIRTY_SECOND.accepts(right, right - 1.0 / 32 - 1e-6)).isFalse();
        }
    }

    @Test
    void theEdgeIsInForLargeMetricVolumes() {
        Tolerance liter = Tolerance.of(1, Units.LITER, UnitSystem.METRIC);
        double right = Units.GALLONS.toBase(1234.5, UnitSystem.METRIC);
        assertThat(liter.accepts(right, right + 1e6)).isTrue();
        assertThat(liter.accepts(right, right + 1e6 + 100)).isFalse();
    }

    @Test
    void noiseOfConversionDoesNotDecide() {
        double right = Units.MILLIMETER.toBase(1051, UnitSystem.US);
        Tolerance half = Tolerance.of(0.5, Units.MILLIMETER, UnitSystem.US);
        assertThat(half.accepts(right, Units.MILLIMETER.toBase(1051.5, UnitSystem.US))).isTrue();
        assertThat(half.accepts(right, Units.CENTIMETER.toBase(105.05, UnitSystem.US))).isTrue();
        assertThat(half.accepts(right, Units.MILLIMETER.toBase(1051.6, UnitSystem.US))).isFalse();
    }

    @Test
    void aShareOfTheRightValue() {
        Tolerance share = Tolerance.share(0.02);
        assertThat(share.accepts(50, 51)).isTrue();
        assertThat(share.accepts(-50, -51)).isTrue();
        assertThat(share.accepts(50, 51.01)).isFalse();
        assertThat(share.accepts(0, 0)).isTrue();
        assertThat(share).hasToString("within 2\u00A0%");
    }

    @Test
    void exactlyMeansExactly() {
        Tolerance exact = Tolerance.exact(UnitSystem.US);
        assertThat(exact.accepts(9, 9)).isTrue();
        assertThat(exact.accepts(9, 10)).isFalse();
        assertThat(exact.accepts(9, 9.001)).isFalse();
        assertThat(exact.isExact()).isTrue();
        assertThat(exact).hasToString("exactly");
    }

    @Test
    void nearIsSoManyTimesIt() {
        assertThat(THIRTY_SECOND.covers(10, 10.125, 4)).isTrue();
        assertThat(THIRTY_SECOND.covers(10, 10.13, 4)).isFalse();
    }

    @Test
    void whatIsNoNumberIsNeverRight() {
        assertThat(THIRTY_SECOND.accepts(10, Double.NaN)).isFalse();
        assertThat(THIRTY_SECOND.accepts(Double.NaN, 10)).isFalse();
        assertThat(THIRTY_SECOND.accepts(10, Double.POSITIVE_INFINITY)).isFalse();
        assertThat(THIRTY_SECOND.accepts(Double.POSITIVE_INFINITY, 10)).isFalse();
    }

    @Test
    void itExplainsItself() {
        assertThat(THIRTY_SECOND).hasToString("within 1/32\u00A0in");
        assertThat(Tolerance.of(0.5, Units.MILLIMETER, UnitSystem.METRIC)).hasToString("within 0.5\u00A0mm");
        assertThat(Tolerance.of(1, Units.named("degF").orElseThrow(), UnitSystem.METRIC)).hasToString("within 1\u00A0°F");
        assertThat(THIRTY_SECOND.message(',').key()).isEqualTo("tolerance.within");
        assertThat(Tolerance.of(0.5, Units.MILLIMETER, UnitSystem.METRIC).message(',').with()).containsExactly("0,5\u00A0mm");
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> Tolerance.share(-0.1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Tolerance.share(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
