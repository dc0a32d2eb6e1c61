package soapstone.expression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soapstone.Baseline;
import soapstone.quantity.UnitSystem;

/** What expressions give, in both unit systems, by a table. */
class ValuesTest {

    private static final String FILE = "soapstone/expression/values.txt";
    private static final double CLOSE = 1e-13;

    record Row(String expression, UnitSystem system, String expect) {

        @Override
        public String toString() {
            return expression + " in a " + system.word() + " draw";
        }
    }

    static Stream<Row> rows() {
        List<Row> rows = new ArrayList<>();
        Baseline.read(FILE).lines().filter(l -> !l.isBlank() && !l.startsWith("#")).forEach(line -> {
            String[] cells = line.split("\\|");
            rows.add(new Row(cells[0].strip(), UnitSystem.US, cells[1].strip()));
            rows.add(new Row(cells[2].isBlank() ? "" : cells[0].strip(), UnitSystem.METRIC, cells[2].strip()));
        });
        return rows.stream();
    }

    @Test
    void theTableIsLarge() {
        assertThat(rows()).hasSizeGreaterThan(250);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void isWorkedOutAsTheTableSays(Row row) {
        Board board = Board.usual(row.system());
        Node node = Board.parse(row.expression());
        List<String> faults = new ArrayList<>();
        int slot = board.builder.line("answer", node, null, (at, found, fits) -> faults.add(found));
        if (row.expect().equals("unknown")) {
            assertThat(faults).hasSize(1);
            return;
        }
        assertThat(faults).isEmpty();
        Frame f = board.run();
        double value = f.number(slot);
        Type type = board.program().slot(slot).type();
        if (row.expect().equals("undefined")) {
            assertThat(Double.isFinite(value)).as("%s gives %s", row, value).isFalse();
        } else if (type.kind() == Type.Kind.TRUTH) {
            assertThat(value == 1).as("%s gives %s", row, value).isEqualTo(Boolean.parseBoolean(row.expect()));
        } else if (type.isLabel()) {
            assertThat("\"" + board.program().labels().text(value) + "\"").isEqualTo(row.expect());
        } else {
            number(row, value);
        }
    }

    private static void number(Row row, double value) {
        boolean close = row.expect().startsWith("~");
        double expect = Double.parseDouble(row.expect().substring(close ? 1 : 0));
        String told = String.format(Locale.ROOT, "%s gives %s", row, value);
        assertThat(value).as(told).isCloseTo(expect, within(close ? CLOSE * Math.max(1, Math.abs(expect)) : 0.0));
    }
}
