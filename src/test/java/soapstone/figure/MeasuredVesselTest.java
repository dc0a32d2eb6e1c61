package soapstone.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static soapstone.figure.Measuring.PIXEL;
import static soapstone.figure.Measuring.both;
import static soapstone.figure.Measuring.middle;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soapstone.quantity.Units;

/** Measures drawings of vessels and welds: what is drawn lies where the amounts say, within a pixel. */
class MeasuredVesselTest {

    @ParameterizedTest
    @ValueSource(doubles = {20, 42, 100, 150})
    void columnOfAnAnswersPressure(double head) {
        Inputs in = Inputs.of("water-column").length("depth", 84).length("head", 84);
        for (DrawnSvg drawn : both(in, in.copy().length("head", head))) {
            Box column = drawn.rectangle("column");
            double scale = column.height() / 84;
            assertThat(column.top()).isCloseTo(drawn.paths("surface").get(0).top(), PIXEL);
            assertThat(drawn.circles("gauge").get(0).y()).isCloseTo(column.bottom(), PIXEL);
            assertThat(column.bottom() - drawn.paths("yours-head").get(0).top()).isCloseTo(head * scale, PIXEL);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {6, 9.5, 20, 31})
    void openingOfAnAnswer(double opening) {
        Inputs in = Inputs.of("baffle-plate").length("width", 40).length("height", 28).length("opening", 17);
        for (DrawnSvg drawn : both(in, in.copy().length("opening", opening))) {
            assertThat(2 * drawn.radius("yours-opening")).isCloseTo(opening * drawn.rectangle("part").width() / 40, PIXEL);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 5, 8})
    void bafflesOfAnAnswerMakeEqualCompartments(int count) {
        Inputs in = Inputs.of("compartments").length("length", 100).number("count", 4).length("limit", 22);
        for (DrawnSvg drawn : both(in, in.copy().number("count", count))) {
            Box tank = drawn.rectangle("part");
            List<Box> yours = drawn.paths("yours-piece");
            assertThat(yours).hasSize(count);
            for (int i = 0; i < count; i++) {
                assertThat(middle(yours.get(i)) - tank.left()).isCloseTo(tank.width() * (i + 1) / (count + 1), PIXEL);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {60, 150, 210})
    void levelsOfATankThatFills(double filled) {
        Inputs in = Inputs.of("filling-tank").put("capacity", Units.GALLONS, 180).put("start", Units.GALLONS, 45).put("filled", Units.GALLONS, 180);
        for (DrawnSvg drawn : both(in, in.copy().put("filled", Units.GALLONS, filled))) {
            double bottom = drawn.paths("part").get(0).bottom();
            double full = bottom - drawn.paths("full").get(0).top();
            assertThat(bottom - drawn.paths("start").get(0).top()).isCloseTo(full / 4, PIXEL);
            assertThat(bottom - drawn.paths("yours-level").get(0).top()).isCloseTo(full * filled / 180, PIXEL);
        }
    }

    @Test
    void throatOfAFilletIsTheShortestWayThroughIt() {
        Inputs in = Inputs.of("fillet-weld").length("leg", 0.5).length("throat", 0.5 * Math.sqrt(0.5));
        Figure f = FigureKinds.draw(in.build(), null, "f").orElseThrow();
        for (String svg : List.of(f.wide(), f.narrow())) {
            DrawnSvg drawn = DrawnSvg.read(svg);
            Box weld = drawn.paths("weld").get(0);
            assertThat(weld.width()).isCloseTo(weld.height(), PIXEL);
            assertThat(drawn.paths("throat").get(0).right() - weld.left()).isCloseTo(weld.width() / 2, PIXEL);
        }
    }

    @Test
    void theSignOfAFilletHasItsPlumbLegAtTheLeft() {
        Figure f = FigureKinds.draw(Inputs.of("fillet-weld").length("leg", 0.25).build(), null, "f").orElseThrow();
        assertThat(f.wide()).containsPattern("data-part=\"fillet-sign\" d=\"M([\\d.]+) ([\\d.]+)L\\1 [\\d.]+L[\\d.]+ \\2\"");
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 8, 10})
    void stitchesOfAnAnswer(int count) {
        Inputs in = Inputs.of("stitch-row").length("length", 50).length("stitch", 2).length("pitch", 6).number("count", 9);
        for (DrawnSvg drawn : both(in, in.copy().number("count", count))) {
            Box seam = drawn.rectangle("part");
            List<Box> yours = drawn.rectangles("yours-stitch");
            assertThat(yours).hasSize(count);
            assertThat(yours.get(count - 1).left() - seam.left()).isCloseTo((count - 1) * 6 * seam.width() / 50, PIXEL);
        }
    }
}
