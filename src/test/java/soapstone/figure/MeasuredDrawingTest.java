package soapstone.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Measures drawings like a sheet of paper: what is drawn lies where the amounts say, within a pixel. */
class MeasuredDrawingTest {

    private static final Offset<Double> PIXEL = Offset.offset(1.0);

    @ParameterizedTest
    @ValueSource(doubles = {3.75, 4, 4.5, 5})
    void holesOfAnAnswersRow(double pitch) {
        Inputs row = Inputs.of("hole-row").length("length", 36.5).length("first", 1.25).length("pitch", 4.25).number("count", 9);
        Figure f = FigureKinds.draw(row.build(), row.copy().length("pitch", pitch).build(), "f").orElseThrow();
        for (String svg : List.of(f.wide(), f.narrow())) {
            DrawnSvg drawn = DrawnSvg.read(svg);
            Box bar = drawn.rectangle("part");
            List<Pt> holes = drawn.circles("yours-hole");
            assertThat(holes).hasSize(9);
            for (int i = 0; i < 9; i++) {
                assertThat(holes.get(i).x() - bar.left()).isCloseTo((1.25 + i * pitch) * bar.width() / 36.5, PIXEL);
            }
        }
    }

    private static Box vessel(String kind, DrawnSvg drawn) {
        if (kind.equals("lying-drum")) {
            Pt c = drawn.circles("part").get(0);
            return Box.around(c, c).grown(drawn.radius("part"));
        }
        return kind.equals("box-tank") ? drawn.rectangle("part") : drawn.paths("part").get(0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"box-tank", "lying-drum"})
    void levelsOfAnAnswer(String kind) {
        Inputs in = Inputs.of(kind).length("length", 40).length("width", 20).length("height", 24).length("diameter", 24).length("level", 9);
        if (kind.equals("lying-drum")) {
            in.without("width").without("height");
        } else {
            in.without("diameter");
        }
        for (double level : new double[] {3, 8, 15.5, 22}) {
            Figure f = FigureKinds.draw(in.build(), in.copy().length("level", level).build(), "f").orElseThrow();
            for (String svg : List.of(f.wide(), f.narrow())) {
                DrawnSvg drawn = DrawnSvg.read(svg);
                Box vessel = vessel(kind, drawn);
                assertThat((vessel.bottom() - drawn.paths("yours-level").get(0).top()) / vessel.height() * 24)
                        .isCloseTo(level, Offset.offset(24 / vessel.height()));
            }
        }
    }

    /** Outside sizes of a right-angled section: its bounds are those of the legs. */
    @ParameterizedTest
    @ValueSource(doubles = {0.03, 0.078, 0.125, 0.25})
    void legsAreOutsideSizes(double thickness) {
        Inputs in = Inputs.of("folded").length("thickness", thickness).length("radius", 0.125).length("legs", 1.5, 4, 2.25)
                .angle("turns", 90, 90);
        Figure f = FigureKinds.draw(in.build(), null, "f").orElseThrow();
        for (String svg : List.of(f.wide(), f.narrow())) {
            Box section = DrawnSvg.read(svg).paths("section-outline").get(0);
            assertThat(section.height() / section.width()).isCloseTo(2.25 / 4, Offset.offset(1 / section.width()));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0625, 2.8125, 7.46875, 11.96875})
    void readingOfARule(double reading) {
        Inputs in = Inputs.of("rule").length("reading", reading).length("step", 1.0 / 32).ask("reading", "a");
        Figure f = FigureKinds.draw(in.build(), null, "f").orElseThrow();
        for (String svg : List.of(f.wide(), f.narrow())) {
            DrawnSvg drawn = DrawnSvg.read(svg);
            List<DrawnSvg.Lettered> numbers = drawn.lettering().stream().filter(l -> l.group().equals("number")).toList();
            DrawnSvg.Lettered number = numbers.get(0);
            double inch = numbers.size() > 1 ? middle(numbers.get(1)) - middle(number) : Double.NaN;
            if (Double.isFinite(inch)) {
                double at = Double.parseDouble(number.text()) + (drawn.paths("reading").get(0).left() - middle(number)) / inch;
                assertThat(at).isCloseTo(reading, Offset.offset(1.0 / 128));
            }
        }
    }

    private static double middle(DrawnSvg.Lettered l) {
        return (l.box().left() + l.box().right()) / 2;
    }
}
