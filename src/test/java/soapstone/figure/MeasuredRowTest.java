package soapstone.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static soapstone.figure.Measuring.PIXEL;
import static soapstone.figure.Measuring.middle;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Measures drawings of rows and plain parts: what is drawn lies where the amounts say, within a pixel. */
class MeasuredRowTest {

    @ParameterizedTest
    @ValueSource(ints = {8, 9})
    void cutsOfABar(int cuts) {
        double length = 9 * 7.25 + cuts * 0.125;
        Inputs in = Inputs.of("cut-bar").length("piece", 7.25).length("kerf", 0.125).number("count", 9).number("cuts", cuts).length("length", length);
        DrawnSvg drawn = DrawnSvg.read(FigureKinds.draw(in.build(), null, "f").orElseThrow().wide());
        Box bar = drawn.paths("part").get(0);
        List<Box> kerfs = drawn.rectangles("kerf");
        assertThat(kerfs).hasSize(cuts == 9 ? 4 : 3);
        for (int i = 0; i < 3; i++) {
            assertThat(middle(kerfs.get(i)) - bar.left()).isCloseTo((i * 7.375 + 7.3125) * bar.width() / length, PIXEL);
        }
    }

    @Test
    void squaresOfAPanelAreSquareFeet() {
        Inputs in = Inputs.of("area-grid").length("length", 60).length("width", 30);
        DrawnSvg drawn = DrawnSvg.read(FigureKinds.draw(in.build(), null, "f").orElseThrow().wide());
        Box panel = drawn.rectangle("part");
        assertThat(drawn.paths("line-along")).hasSize(4);
        assertThat(drawn.paths("line-across")).hasSize(2);
        assertThat(drawn.paths("line-along").get(0).left() - panel.left()).isCloseTo(panel.width() / 5, PIXEL);
    }
}
