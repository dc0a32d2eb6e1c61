package soapstone.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShopPrinterTest {

    /** In the expected text a plain space stands for the no-break space. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "41.375|in|auto|41 3/8 in",
        "41|in|auto|41 in",
        "0|in|auto|0 in",
        "-0.0|in|auto|0 in",
        "0.625|in|auto|5/8 in",
        "-4.25|in|auto|−4 1/4 in",
        "-0.25|in|auto|−1/4 in",
        "0.0598|in|auto|0.0598 in",
        "41.3333333333|in|auto|41.333 in",
        "41.99999999999|in|auto|42 in",
        "12345.5|in|auto|12,345 1/2 in",
        "62.4|lbf/ft3|auto|62.4 lb/ft³",
        "1250|lb|auto|1250 lb",
        "12500|lb|auto|12,500 lb",
        "1234567.8|lb|auto|1,234,568 lb",
        "9999.96|lb|auto|10,000 lb",
        "0.00001234567|lb|auto|0.000012346 lb",
        "1e-20|lb|auto|0 lb",
        "-1e-20|lb|auto|0 lb",
        "1e14|lb|auto|100,000,000,000,000 lb",
        "22.5|deg|auto|22.5°",
        "22.5|deg|deg min|22° 30′",
        "22.0833333333333|deg|deg min|22° 05′",
        "22|deg|deg min|22° 00′",
        "-22.5|deg|deg min|−22° 30′",
        "59.9999|deg|deg min|60° 00′",
        "12.5|dollar|auto|$12.50",
        "12|dollar|auto|$12.00",
        "-12.5|dollar|auto|−$12.50",
        "0.0345|dollar|auto|$0.0345",
        "12345.5|dollar|auto|$12,345.50",
        "2.5|dollar/lb|auto|$2.50/lb",
        "12|%|auto|12 %",
        "7|%|auto|7 %",
        "41.375|in|ft in|3 ft 5 3/8 in",
        "36|in|ft in|3 ft 0 in",
        "5.375|in|ft in|5 3/8 in",
        "0|in|ft in|0 in",
        "-41.375|in|ft in|−3 ft 5 3/8 in",
        "35.99999|in|ft in|3 ft 0 in",
        "41.3333|in|ft in|3 ft 5.333 in",
        "80|min|h min|1 h 20 min",
        "20|min|h min|20 min",
        "60|min|h min|1 h 0 min",
        "41.375|in|0.001 in|41.375 in",
        "41.5|in|0.001 in|41.500 in",
        "41.0005|in|0.001 in|41.001 in",
        "-41.0005|in|0.001 in|−41.000 in",
        "-0.0004|in|0.001 in|0.000 in",
        "41.3|in|1/16 in|41 5/16 in",
        "41.96875|in|1/16 in|42 in",
        "-41.3|in|1/16 in|−41 5/16 in",
        "41.375|in|decimal|41.375 in",
        "41.375|in|fraction|41 3/8 in",
        "1050.925|mm|1 mm|1051 mm",
        "1050.925|mm|auto|1050.9 mm",
        "1050.925|mm|0.5 mm|1051.0 mm",
        "1050.7|mm|0.5 mm|1050.5 mm",
        "41.7|in|whole|42 in",
        "41.5|in|10 in|40 in",
        "0.44|1|auto|0.44",
        "9|1|whole|9",
        "22.5|1|fraction|22 1/2",
        "72|degF|auto|72 °F",
        "12|in2|auto|12 in²",
        "3.5|ft|auto|3.5 ft",
        "3.5|ft|1/16 in|42 in",
        "12.5|ft2|fraction|12 1/2 ft²"})
    void prints(double amount, String unitName, String show, String expected) {
        Unit unit = Units.parse(unitName).orElseThrow();
        UnitSystem system = unitName.equals("mm") ? UnitSystem.METRIC : UnitSystem.US;
        String text = ShopPrinter.text(unit.toBase(amount, system), unit, system, Show.parse(show, system).orElseThrow(), '.');
        assertThat(text).isEqualTo(expected.replace(' ', '\u00A0'));
    }

    @Test
    void theOtherDecimalMark() {
        assertThat(ShopPrinter.text(12345.5, Units.POUND, UnitSystem.US, Show.decimal(0.1), ',')).isEqualTo("12.345,5\u00A0lb");
        assertThat(ShopPrinter.number(0.0598, Show.AUTO, ',')).isEqualTo("0,0598");
        assertThat(ShopPrinter.text(12.5, Units.DOLLAR, UnitSystem.US, Show.AUTO, ',')).isEqualTo("$12,50");
    }

    @Test
    void numbersWithoutUnit() {
        assertThat(ShopPrinter.number(0.375, Show.AUTO, '.')).isEqualTo("0.375");
        assertThat(ShopPrinter.number(0.375, Show.fraction(8), '.')).isEqualTo("3/8");
        assertThat(ShopPrinter.number(2.75, Show.fraction(3), '.')).isEqualTo("2\u00A02/3");
        assertThat(ShopPrinter.number(2.5, Show.WHOLE, '.')).isEqualTo("3");
        assertThat(ShopPrinter.number(-2.5, Show.WHOLE, '.')).isEqualTo("−2");
        assertThat(ShopPrinter.number(2.5, Show.decimal(0.001), '.')).isEqualTo("2.500");
    }

    @Test
    void anInchShowInAMetricDraw() {
        assertThat(ShopPrinter.text(1050.925, Units.MILLIMETER, UnitSystem.METRIC, Show.FEET_INCHES, '.'))
                .isEqualTo("3\u00A0ft\u00A05\u00A03/8\u00A0in");
    }

    @Test
    void aShowThatDoesNotFitFallsBack() {
        assertThat(ShopPrinter.text(22.5, Units.DEGREE, UnitSystem.US, Show.FEET_INCHES, '.')).isEqualTo("22.5°");
        assertThat(ShopPrinter.text(12.5, Units.INCH, UnitSystem.US, Show.DEGREES_MINUTES, '.')).isEqualTo("12\u00A01/2\u00A0in");
        assertThat(ShopPrinter.text(12.5, Units.MILLIMETER, UnitSystem.METRIC, Show.fraction(16), '.')).isEqualTo("12.5\u00A0mm");
        assertThat(ShopPrinter.text(12.5, Units.POUND, UnitSystem.US, Show.decimal(0.001).in(Units.INCH), '.')).isEqualTo("12.500\u00A0lb");
    }

    @Test
    void neverAPowerOfTenNorAnException() {
        for (Show show : new Show[] {Show.AUTO, Show.WHOLE, Show.FEET_INCHES, Show.fraction(16), Show.decimal(0.001), Show.decimal(1.0 / 3)}) {
            for (double x = 1e-12; x < 1e30; x *= 10) {
                assertThat(ShopPrinter.text(x, Units.INCH, UnitSystem.US, show, '.')).doesNotContain("E").doesNotContain("e");
                assertThat(ShopPrinter.text(-x, Units.INCH, UnitSystem.US, show, '.')).doesNotContain("E");
            }
        }
        assertThat(ShopPrinter.text(Double.NaN, Units.INCH, UnitSystem.US, Show.AUTO, '.')).startsWith("NaN");
        assertThat(ShopPrinter.text(Double.POSITIVE_INFINITY, Units.INCH, UnitSystem.US, Show.FEET_INCHES, '.')).isNotEmpty();
    }
}
