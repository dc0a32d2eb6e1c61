package soapstone.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Measures drawings of bends, brake tools and plates: what is drawn lies where the amounts say, within a pixel. */
class MeasuredPlateTest {

    private static final Offset<Double> PIXEL = Offset.offset(1.0);

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
