package soapstone.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static soapstone.figure.MeasuredDrawingTest.eachLayout;
import static soapstone.figure.MeasuredDrawingTest.one;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Measures drawings of bends, brake tools and plates: what is drawn lies where the amounts say, within a pixel. */
class MeasuredPlateTest {

    private static final Offset<Double> PIXEL = Offset.offset(1.0);

    /** The neutral line of a bend lies K thicknesses inside the metal; its corner is a setback from where the bend begins. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void neutralLineAndMetalOfABend(boolean asCut) {
        eachLayout("bend", asCut, (in, drawn) -> {
            double outside = drawn.paths("outside").get(0).bottom();
            double scale = (outside - drawn.paths("inside").get(0).bottom()) / one(in[0], "thickness");
            if (in[0].amounts("k").length > 0) {
                double depth = drawn.paths("neutral").get(0).bottom() - drawn.paths("inside").get(0).bottom();
                assertThat(depth).isCloseTo(one(in[0], "k") * one(in[0], "thickness") * scale, PIXEL);
            }
            if (in[0].amounts("allowance").length > 0) {
                assertThat(drawn.rectangle("flat").width()).isCloseTo(one(in[0], "allowance") * scale, Offset.offset(0.04 * drawn.rectangle("flat").width() + 1));
            }
            if (in[0].amounts("deduction").length > 0) {
                Box left = drawn.paths("deduction").get(0);
                assertThat(left.width() / drawn.rectangle("flat").width())
                        .isCloseTo(one(in[0], "deduction") / (2 * one(in[0], "setback") - one(in[0], "deduction")), Offset.offset(0.05));
            }
        });
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.2, 0.3, 0.45})
    void startOfAnAnswersBend(double setback) {
        Inputs in = Inputs.of("bend").length("thickness", 0.1).length("radius", 0.2).angle("angle", 90).length("setback", 0.3);
        Figure f = FigureKinds.draw(in.build(), in.copy().length("setback", setback).build(), "f").orElseThrow();
        for (String svg : List.of(f.wide(), f.narrow())) {
            DrawnSvg drawn = DrawnSvg.read(svg);
            Box outside = drawn.paths("outside").get(0);
            double scale = (outside.bottom() - drawn.paths("inside").get(0).bottom()) / 0.1;
            double corner = outside.right();
            if (setback != 0.3) {
                assertThat(corner - drawn.paths("yours-start").get(0).left()).isCloseTo(setback * scale, Offset.offset(2.0));
            }
        }
    }

    /** The sheet lies on the shoulders of the die: measured from its outside corner, both faces touch the same circles. */
    @ParameterizedTest
    @ValueSource(strings = {"brake-die", "brake-force"})
    void openingAndSheetOfADie(String kind) {
        eachLayout(kind, false, (in, drawn) -> {
            Box die = drawn.paths("die").get(0);
            Box sheet = drawn.paths("sheet").get(0);
            double middle = (die.left() + die.right()) / 2;
            double depth = one(in[0], "opening") / 2 + BrakeTools.SHOULDER * one(in[0], "opening") * 0.01;
            double outer = one(in[0], "radius") + one(in[0], "thickness");
            double scale = (sheet.bottom() - die.top()) / (depth - outer * (Math.sqrt(2) - 1));
            BrakeTools tools = new BrakeTools(one(in[0], "opening") * scale);
            assertThat(die.width() / 2).isCloseTo(tools.side(), Offset.offset(2.0));
            assertThat(die.height()).isCloseTo(tools.bottom(), Offset.offset(2.0));
            assertThat(drawn.paths("punch").get(0).left() + drawn.paths("punch").get(0).right()).isCloseTo(2 * middle, PIXEL);
        });
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.75, 1.25, 2})
    void openingOfAnAnswersDie(double opening) {
        Inputs in = Inputs.of("brake-die").length("thickness", 0.1).length("opening", 1).length("radius", 0.15);
        Figure f = FigureKinds.draw(in.build(), in.copy().length("opening", opening).build(), "f").orElseThrow();
        for (String svg : List.of(f.wide(), f.narrow())) {
            DrawnSvg drawn = DrawnSvg.read(svg);
            Box punch = drawn.paths("punch").get(0);
            Box yours = drawn.paths("yours-die").get(0);
            double scale = punch.width() / 0.6;
            assertThat(yours.height()).isCloseTo(new BrakeTools(opening * scale).veeDepth(), Offset.offset(1.5));
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void blankAndStopOfABackGauge(boolean asCut) {
        eachLayout("back-gauge", asCut, (in, drawn) -> {
            Box blank = drawn.rectangle("blank");
            double scale = blank.width() / one(in[0], "blank");
            Box die = drawn.paths("die").get(0);
            double line = (die.left() + die.right()) / 2;
            assertThat(blank.right() - line).isCloseTo(one(in[0], "stop") * scale, PIXEL);
            assertThat(drawn.rectangle("stop").left()).isCloseTo(blank.right(), PIXEL);
            for (Box yours : drawn.paths("yours-blank")) {
                assertThat(yours.right() - line).isCloseTo(one(in[1], "stop") * scale, PIXEL);
                assertThat(yours.width()).isCloseTo(one(in[1], "blank") * scale, PIXEL);
            }
        });
    }

    /** The frame leans over its height, and its diagonals end in its corners. */
    @Test
    void leanAndDiagonalsOfAFrame() {
        eachLayout("skew-frame", false, (in, drawn) -> {
            Box square = drawn.paths("square").get(0);
            Box leaning = drawn.paths("leaning").get(0);
            double scale = square.width() / one(in[0], "length");
            assertThat(square.height()).isCloseTo(one(in[0], "height") * scale, PIXEL);
            assertThat(leaning.right() - square.right()).isCloseTo(one(in[0], "lean") * scale, PIXEL);
            Box diagonal = drawn.paths("long").get(0);
            assertThat(diagonal.width()).isCloseTo(leaning.width(), PIXEL);
            assertThat(Math.hypot(diagonal.width(), diagonal.height())).isCloseTo(one(in[0], "long") * scale, PIXEL);
            Box other = drawn.paths("short").get(0);
            assertThat(Math.hypot(other.width(), other.height())).isCloseTo(one(in[0], "short") * scale, PIXEL);
        });
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1, 4, 12})
    void leanThatAnAnswerLeaves(double push) {
        Inputs in = Inputs.of("skew-frame").length("length", 40).length("height", 30).length("lean", 2).length("push", 2);
        Figure f = FigureKinds.draw(in.build(), in.copy().length("push", push).build(), "f").orElseThrow();
        for (String svg : List.of(f.wide(), f.narrow())) {
            DrawnSvg drawn = DrawnSvg.read(svg);
            Box square = drawn.paths("square").get(0);
            Box yours = drawn.paths("yours-frame").get(0);
            double left = push < 2 ? yours.right() - square.right() : yours.left() - square.left();
            assertThat(left).isCloseTo((2 - push) * square.width() / 40, PIXEL);
        }
    }

    /** Both views keep the sides of the panel; the load ends on it. */
    @Test
    void spansOfAFloorPanel() {
        eachLayout("floor-panel", false, (in, drawn) -> {
            Box clear = drawn.rectangle("clear");
            assertThat(clear.height()).isCloseTo(one(in[0], "short") * clear.width() / one(in[0], "long"), PIXEL);
            List<Box> bearers = drawn.rectangles("bearer");
            double span = bearers.get(1).left() - bearers.get(0).right();
            Box plate = drawn.rectangle("section-plate");
            assertThat(plate.height()).isCloseTo(Math.max(3, one(in[0], "thickness") * span / one(in[0], "short")), PIXEL);
            assertThat(drawn.paths("sag").get(0).width()).isCloseTo(span, PIXEL);
        });
    }

    @Test
    void windowAndEdgeOfAPlate() {
        eachLayout("plate", false, (in, drawn) -> {
            Box plate = drawn.rectangle("part");
            double scale = plate.width() / one(in[0], "length");
            assertThat(plate.height()).isCloseTo(one(in[0], "width") * scale, PIXEL);
            if (in[0].amounts("window_length").length > 0) {
                Box window = drawn.rectangle("window");
                assertThat(window.width()).isCloseTo(one(in[0], "window_length") * scale, PIXEL);
                assertThat(window.height()).isCloseTo(one(in[0], "window_width") * scale, PIXEL);
            }
            if (in[0].amounts("thickness").length > 0) {
                assertThat(drawn.rectangle("edge").width()).isCloseTo(Math.max(3, one(in[0], "thickness") * scale), PIXEL);
            }
        });
    }

    @Test
    void holeOfARing() {
        eachLayout("ring", false, (in, drawn) -> assertThat(drawn.radius("hole"))
                .isCloseTo(drawn.radius("part") * one(in[0], "hole") / one(in[0], "outer"), PIXEL));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.03, 0.05, 0.08, 0.2})
    void thicknessOfAnAnswersSheet(double thickness) {
        Inputs in = Inputs.of("sheet-edge").length("thickness", 0.06);
        Figure f = FigureKinds.draw(in.build(), in.copy().length("thickness", thickness).build(), "f").orElseThrow();
        for (String svg : List.of(f.wide(), f.narrow())) {
            DrawnSvg drawn = DrawnSvg.read(svg);
            double lower = drawn.paths("lower").get(0).top();
            double scale = (lower - drawn.paths("upper").get(0).top()) / 0.06;
            assertThat(lower - drawn.paths("yours-upper").get(0).top()).isCloseTo(thickness * scale, PIXEL);
        }
    }
}
