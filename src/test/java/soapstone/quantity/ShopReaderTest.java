package soapstone.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import soapstone.quantity.Reading.Again;
import soapstone.quantity.Reading.Blank;
import soapstone.quantity.Reading.Many;
import soapstone.quantity.Reading.One;

/** What the table cannot say: places, printed text, reasons with their places filled, bounds. */
class ShopReaderTest {

    private static final ReadAs INCHES = new ReadAs(ReadAs.Kind.QUANTITY, Units.INCH, UnitSystem.US, '.');
    private static final ReadAs MILLIMETERS = new ReadAs(ReadAs.Kind.QUANTITY, Units.MILLIMETER, UnitSystem.METRIC, '.');

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "7-5/16|0.0625|7 5/16 in", "41.375|0.001|41.375 in", "41|1|41 in", "41.3750|0.0001|41.3750 in", "10/16|0.0625|10/16 in",
        "41⅝|0.125|41 5/8 in", "3' 5-3/8\"|0.125|3 ft 5 3/8 in", "3'|12|3 ft", "3.5'|1.2|3.5 ft", "1,250|1|1250 in", "12,500|1|12500 in", "41,375|1|41375 in",
        ".125|0.001|0.125 in", "-4 1/4|0.25|−4 1/4 in", "31 / 2|0.5|31 / 2 in", "125 thou|0.001|0.125 in", "1.2e3|100|1200 in",
        "3 ft. and 5 in.|1|3 ft 5 in", "-3' 5\"|1|−3 ft 5 in"})
    void placeAndText(String typed, double place, String text) {
        One one = (One) ShopReader.read(typed, INCHES);
        assertThat(one.place()).isCloseTo(place, within(1e-15));
        assertThat(one.text()).isEqualTo(text.replace(' ', '\u00A0'));
    }

    @Test
    void placesInOtherUnits() {
        assertThat(place("1051 mm", MILLIMETERS)).isEqualTo(1);
        assertThat(place("7 5/16 in", MILLIMETERS)).isCloseTo(25.4 / 16, within(1e-12));
        assertThat(place("1051 mm", INCHES)).isCloseTo(1 / 25.4, within(1e-15));
        assertThat(place("22° 30'", as(Units.DEGREE))).isCloseTo(1.0 / 60, within(1e-15));
        assertThat(place("72.5 °F", as(Units.named("degC").orElseThrow()))).isCloseTo(0.1, within(1e-12));
        assertThat(place("12 dollars 50 cents", as(Units.DOLLAR))).isEqualTo(0.01);
    }

    private static double place(String text, ReadAs as) {
        return ((One) ShopReader.read(text, as)).place();
    }

    private static ReadAs as(Unit unit) {
        return new ReadAs(ReadAs.Kind.QUANTITY, unit, UnitSystem.US, '.');
    }

    @Test
    void bareMeansThatNoUnitWasTyped() {
        assertThat(((One) ShopReader.read("41 3/8", INCHES)).bare()).isTrue();
        assertThat(((One) ShopReader.read("41 3/8\"", INCHES)).bare()).isFalse();
        assertThat(((One) ShopReader.read("3'5", INCHES)).bare()).isFalse();
        assertThat(((One) ShopReader.read("9 holes", INCHES.as(ReadAs.Kind.COUNT))).bare()).isTrue();
    }

    @Test
    void fractionsThatCanBeReduced() {
        assertThat(((One) ShopReader.read("10/16", INCHES)).reducible()).isTrue();
        assertThat(((One) ShopReader.read("41 10/16 in", MILLIMETERS)).reducible()).isTrue();
        assertThat(((One) ShopReader.read("-2/4", INCHES)).reducible()).isTrue();
        assertThat(((One) ShopReader.read("5/8", INCHES)).reducible()).isFalse();
        assertThat(((One) ShopReader.read("0.50", INCHES)).reducible()).isFalse();
        assertThat(((One) ShopReader.read("0/8", INCHES)).reducible()).isFalse();
    }

    /** The places of the sentences: what was typed, what would fit. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "31/2|mixed-or-fraction|0|31/2, 3 1/2, 15 1/2",
        "1,25|decimal-mark|0|1,25, ., 1.25, 125",
        "0,125|other-mark|0|0,125, ., 0.125",
        "1.250,5|other-mark|0|1.250,5, ., 1250.5",
        "12 in²|wrong-dimension|0|12 in², @dimension.area, @dimension.length, in",
        "-12 lb/ft2|wrong-dimension|1|12 lb/ft², @dimension.other, @dimension.length, in",
        "41 3/8 incehs|nearly-a-word|7|incehs, inches, inch",
        "41 3/8 bananas|unknown-word|7|bananas, in",
        "3 15|two-numbers|2|3, 15",
        "1 250|gap-in-number|2|1250",
        "7 /3|gap-at-slash|2|7/3",
        "41\" 3/8|unit-inside|4|41 in, 3/8, 41 3/8 in",
        "3' 5/8|two-ways|3|3 ft 5/8 in, 3 5/8 ft",
        "3' 14\"|part-too-big|3|14 in, 1 ft",
        "3.5' 2\"|part-not-whole|0|3.5 ft",
        "1/7|no-such-rule|0|7",
        "4O|letter-o|1|40",
        "1.2.3|two-marks|1|1.2.3, .",
        "4 😀|strange-sign|2|😀",
        "3 in mm|two-units|2|in, mm"})
    void reasons(String typed, String reason, int at, String with) {
        Again again = (Again) ShopReader.read(typed, INCHES);
        assertThat(again.why().key()).isEqualTo("reading." + reason);
        assertThat(String.join(", ", again.why().with()).replace('\u00A0', ' ')).isEqualTo(with);
        assertThat(again.at()).isEqualTo(at);
    }

    @Test
    void signsWithoutAShapeAreShownByTheirNumber() {
        assertThat(((Again) ShopReader.read("4\u0007", INCHES)).why().with()).containsExactly("U+0007");
        assertThat(((Again) ShopReader.read("4\uD83D", INCHES)).why().with()).containsExactly("U+D83D");
        assertThat(((Again) ShopReader.read("4\u202E", INCHES)).why().with()).containsExactly("U+202E");
    }

    @ParameterizedTest
    @EnumSource(ReadAs.Kind.class)
    void nothingIsBlank(ReadAs.Kind kind) {
        for (String nothing : new String[] {"", " ", "\u00A0\t ", "\u200B"}) {
            assertThat(ShopReader.read(nothing, INCHES.as(kind))).isEqualTo(new Blank());
        }
        assertThat(ShopReader.read(null, INCHES.as(kind))).isEqualTo(new Blank());
    }

    @ParameterizedTest
    @EnumSource(ReadAs.Kind.class)
    void longTextsAreRefusedBeforeAnyWork(ReadAs.Kind kind) {
        ReadAs as = INCHES.as(kind);
        String huge = "1 ".repeat(5_000_000);
        org.assertj.core.api.Assertions.assertThatNoException().isThrownBy(() ->
                org.junit.jupiter.api.Assertions.assertTimeout(Duration.ofMillis(100), () -> ShopReader.read(huge, as)));
        assertThat(((Again) ShopReader.read(huge, as)).why().key()).isEqualTo("reading.too-long");
    }

    @Test
    void hostileRepeatsEndSoon() {
        for (String piece : new String[] {"(", "-", "1/", "1 ", "'", "\"", "½", "²", ",1", ".1", "1e", "x", "ft", "ft ", ";", "\n", "/", "°", "1'", "1;", "(1,1)",
            "per ", "sq ", "e", "1:", "$", "#", "=", "\u0301", "\uD83D"}) {
            for (ReadAs.Kind kind : ReadAs.Kind.values()) {
                int most = kind == ReadAs.Kind.LIST || kind == ReadAs.Kind.POINTS ? 4000 : 200;
                String text = piece.repeat(most / piece.length());
                Reading reading = org.junit.jupiter.api.Assertions.assertTimeout(Duration.ofSeconds(1), () -> ShopReader.read(text, INCHES.as(kind)));
                assertThat(reading).isNotNull();
            }
        }
    }

    @Test
    void aLongListIsRead() {
        String thirty = "10 ft 4 13/16 in; ".repeat(30);
        assertThat(((Many) ShopReader.read(thirty, INCHES.as(ReadAs.Kind.LIST))).items()).hasSize(30);
        assertThat(((Again) ShopReader.read("1;".repeat(300), INCHES.as(ReadAs.Kind.LIST))).why().key()).isEqualTo("reading.too-many");
        assertThat(((Again) ShopReader.read("(1,1)".repeat(300), INCHES.as(ReadAs.Kind.POINTS))).why().key()).isEqualTo("reading.too-many");
    }

    @Test
    void aDecimalMarkIsAPointOrAComma() {
        assertThatThrownBy(() -> new ReadAs(ReadAs.Kind.QUANTITY, Units.INCH, UnitSystem.US, ';')).isInstanceOf(IllegalArgumentException.class);
    }

    /** A class reads thousands of answers at once when a sheet is marked again. */
    @Test
    void readingAllocatesLittle() {
        com.sun.management.ThreadMXBean threads =
                (com.sun.management.ThreadMXBean) java.lang.management.ManagementFactory.getThreadMXBean();
        String[] typical = {"41 3/8", "3' 5-3/8\"", "41.375", "12 sq ft", "31/2", "22° 30'"};
        for (int i = 0; i < 20_000; i++) {
            ShopReader.read(typical[i % typical.length], INCHES);
        }
        long before = threads.getCurrentThreadAllocatedBytes();
        for (int i = 0; i < 6000; i++) {
            ShopReader.read(typical[i % typical.length], INCHES);
        }
        assertThat((threads.getCurrentThreadAllocatedBytes() - before) / 6000).as("bytes a reading").isLessThan(4000);
    }
}
