package soapstone.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soapstone.quantity.Reading.Again;
import soapstone.quantity.Reading.Blank;
import soapstone.quantity.Reading.Many;
import soapstone.quantity.Reading.One;
import soapstone.quantity.Reading.Points;
import soapstone.quantity.TypedAnswers.Row;

class TypedAnswersTest {

    static List<Row> rows() {
        return TypedAnswers.rows();
    }

    @Test
    void theTableIsLargeAndHasEveryReason() {
        List<Row> rows = rows();
        assertThat(rows).hasSizeGreaterThan(250);
        List<String> expected = rows.stream().map(Row::expect).toList();
        SoftAssertions.assertSoftly(softly -> {
            for (Reason reason : Reason.values()) {
                if (reason != Reason.TOO_LONG && reason != Reason.TOO_MANY) {
                    softly.assertThat(expected).contains("again " + reason.key().substring("reading.".length()));
                }
            }
        });
    }

    @ParameterizedTest
    @MethodSource("rows")
    void isReadAsTheTableSays(Row row) {
        Reading reading = ShopReader.read(row.text(), row.as());
        assertThat(meaning(reading)).as("%s read as %s", row, reading).isEqualTo(kindOf(row));
        List<Double> expected = numbers(row.expect());
        List<Double> read = bases(reading);
        assertThat(read).hasSameSizeAs(expected);
        for (int i = 0; i < read.size(); i++) {
            assertThat(read.get(i)).isCloseTo(expected.get(i), within(1e-12 * Math.max(1, Math.abs(expected.get(i)))));
        }
        if (reading instanceof One one) {
            assertThat(one.notation()).isEqualTo(Notation.valueOf(row.notation()));
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void whatWasUnderstoodReadsBack(Row row) {
        Reading reading = ShopReader.read(row.text(), row.as());
        for (One one : ones(reading)) {
            ReadAs.Kind kind = row.as().partsValues() ? ReadAs.Kind.QUANTITY : row.as().kind();
            Reading again = ShopReader.read(one.text(), row.as().as(kind));
            assertThat(again).as("%s printed as <%s>", row, one.text()).isInstanceOf(One.class);
            One second = (One) again;
            assertThat(second.base()).isCloseTo(one.base(), within(1e-12 * Math.max(1, Math.abs(one.base()))));
            double place = one.notation() == Notation.SCIENTIFIC ? second.place() : one.place();
            assertThat(second.place()).as("place of <%s>", one.text()).isCloseTo(place, within(1e-9 * place));
            assertThat(second.text()).isEqualTo(one.text());
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void theWholeReadingReadsBackAsItsOwnKind(Row row) {
        Reading reading = ShopReader.read(row.text(), row.as());
        Reading again = ShopReader.read(reading.text(), row.as());
        if (reading instanceof Again) {
            assertThat(reading.text()).isEmpty();
        } else {
            assertThat(again.text()).isEqualTo(reading.text());
            assertThat(again).hasSameClassAs(reading);
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void amountAndUnitGiveTheBase(Row row) {
        for (One one : ones(ShopReader.read(row.text(), row.as()))) {
            double base = one.unit().toBase(one.amount(), row.as().system());
            assertThat(one.base()).isCloseTo(base, within(1e-12 * Math.max(1, Math.abs(base))));
            assertThat(one.place()).isPositive();
        }
    }

    static List<One> ones(Reading reading) {
        List<One> ones = new ArrayList<>();
        if (reading instanceof One one) {
            ones.add(one);
        } else if (reading instanceof Many many) {
            ones.addAll(many.items());
        } else if (reading instanceof Points points) {
            for (int i = 0; i < points.x().size(); i++) {
                ones.add(points.x().get(i));
                ones.add(points.y().get(i));
            }
        }
        return ones;
    }

    private static List<Double> bases(Reading reading) {
        return ones(reading).stream().map(One::base).toList();
    }

    private static String meaning(Reading reading) {
        if (reading instanceof Again again) {
            return "again " + again.why().key().substring("reading.".length());
        }
        return reading instanceof Blank ? "blank" : reading instanceof One ? "one" : reading instanceof Many ? "many" : "points";
    }

    private static String kindOf(Row row) {
        if (row.expect().equals("blank") || row.expect().startsWith("again")) {
            return row.expect();
        }
        return switch (row.as().kind()) {
            case LIST -> "many";
            case POINT, POINTS -> "points";
            default -> "one";
        };
    }

    /** {@code 3; 6*25.4; 1/2 7} is four numbers. */
    private static List<Double> numbers(String expect) {
        List<Double> numbers = new ArrayList<>();
        if (!expect.equals("blank") && !expect.startsWith("again")) {
            for (String number : expect.split("[; ]+")) {
                String[] over = number.split("/");
                String[] times = over[0].split("\\*");
                double top = Double.parseDouble(times[0]) * (times.length > 1 ? Double.parseDouble(times[1]) : 1);
                numbers.add(over.length > 1 ? top / Double.parseDouble(over[1]) : top);
            }
        }
        return numbers;
    }
}
