package soapstone.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Consumer;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Measures what an answer has made of a part, over the right one: a level, a long side, an angle, a reading, a bolt, a count. */
class MeasuredAnswerTest {

    private static final Offset<Double> PIXEL = Offset.offset(1.0);

    private static void eachLayout(Inputs right, Inputs yours, Consumer<DrawnSvg> check) {
        Figure f = FigureKinds.draw(right.build(), yours.build(), "f").orElseThrow();
        for (String svg : List.of(f.wide(), f.narrow())) {
            check.accept(DrawnSvg.read(svg));
        }
    }

    @ParameterizedTest
    @CsvSource({"tub, 13.5", "tub, 2", "upright-drum, 17", "upright-drum, 4.25"})
    void levelInAVessel(String kind, double level) {
        Inputs in = Inputs.of(kind).length("height", 18).length("level", 11);
        if (kind.equals("tub")) {
            in.length("top", 30).length("bottom", 22);
        } else {
            in.length("diameter", 23);
        }
        double across = kind.equals("tub") ? 22 + 8 * level / 18 : 23;
        eachLayout(in, in.copy().length("level", level), drawn -> {
            Box vessel = drawn.paths("part").get(0);
            Box line = drawn.paths("yours-level").get(0);
            double scale = vessel.height() / 18;
            assertThat(vessel.bottom() - line.top()).isCloseTo(level * scale, PIXEL);
            assertThat(line.width()).isCloseTo(across * scale, PIXEL);
        });
    }

    @ParameterizedTest
    @ValueSource(doubles = {40, 57, 61.5, 79.5})
    void longSideOfATriangle(double slope) {
        Inputs in = brace();
        eachLayout(in, in.copy().length("slope", slope), drawn -> {
            double scale = drawn.paths("part").get(0).width() / 48;
            Box yours = drawn.paths("yours-slope").get(0);
            assertThat(Math.hypot(yours.width(), yours.height())).isCloseTo(slope * scale, PIXEL);
        });
    }

    private static Inputs brace() {
        return Inputs.of("triangle").length("run", 48).length("rise", 31.5).length("slope", Math.hypot(48, 31.5)).angle("angle", 33.275)
                .angle("other", 56.725);
    }

    @ParameterizedTest
    @CsvSource({"angle, 20", "angle, 41", "angle, 56.725", "other, 33.275", "other, 70"})
    void anglesOfATriangle(String which, double degrees) {
        Inputs in = brace();
        eachLayout(in, in.copy().angle(which, degrees), drawn -> {
            Box yours = drawn.paths("yours-slope").get(0);
            double lean = Math.toDegrees(Math.atan2(yours.height(), yours.width()));
            assertThat(which.equals("angle") ? lean : 90 - lean).isCloseTo(degrees, Offset.offset(0.3));
        });
    }

    @ParameterizedTest
    @ValueSource(doubles = {3.375, 4, 4.0625})
    void readingOfARule(double reading) {
        Inputs in = Inputs.of("rule").length("reading", 3.6875).length("step", 0.0625);
        eachLayout(in, in.copy().length("reading", reading), drawn -> {
            List<DrawnSvg.Lettered> numbers = drawn.lettering().stream().filter(l -> l.group().equals("number")).toList();
            double inch = (middle(numbers.get(1)) - middle(numbers.get(0)));
            double off = drawn.paths("yours-line").get(0).left() - drawn.paths("reading").get(0).left();
            assertThat(off).isCloseTo((reading - 3.6875) * inch, PIXEL);
        });
    }

    private static double middle(DrawnSvg.Lettered l) {
        return (l.box().left() + l.box().right()) / 2;
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.25, 2, 2.5})
    void boltThroughAStack(double bolt) {
        Inputs in = Inputs.of("stack").length("layers", 0.25, 0.625, 0.25, 0.5).length("grip", 1.625).length("bolt", 2.25);
        eachLayout(in, in.copy().length("bolt", bolt), drawn -> {
            Box shank = drawn.rectangle("bolt");
            double scale = shank.height() / 2.25;
            double grip = drawn.rectangles("layer").stream().mapToDouble(Box::bottom).max().orElseThrow() - shank.top();
            assertThat(grip).isCloseTo(1.625 * scale, PIXEL);
            assertThat(drawn.paths("yours-end").get(0).top() - shank.top()).isCloseTo(bolt * scale, PIXEL);
        });
    }

    @ParameterizedTest
    @CsvSource({"5, 5, 5", "4, 6, 4", "5, 6, 10"})
    void partsThatAreTooMany(int along, int across, int more) {
        Inputs in = Inputs.of("nest").length("sheet_length", 96).length("sheet_width", 48).length("part_length", 21.5)
                .length("part_width", 9.25).number("along", 4).number("across", 5).length("kerf", 0.125);
        eachLayout(in, in.copy().number("along", along).number("across", across), drawn -> {
            Box sheet = drawn.rectangle("part");
            List<Box> extra = drawn.rectangles("yours-part");
            assertThat(extra).hasSize(more);
            double scale = sheet.width() / 96;
            double right = extra.stream().mapToDouble(Box::right).max().orElseThrow();
            assertThat(right - sheet.left()).isCloseTo((along * 21.625 - 0.125) * scale, PIXEL);
        });
    }

    /** Half a turn stands on a level line; an answer's sector from the same first edge ends at its own angle. */
    @ParameterizedTest
    @ValueSource(doubles = {195, 230, 260})
    void angleOfASector(double angle) {
        Inputs in = Inputs.of("sector").length("outer", 20).length("inner", 8).angle("angle", 180);
        eachLayout(in, in.copy().angle("angle", angle), drawn -> {
            Box flat = drawn.paths("part").get(0);
            Box yours = drawn.paths("yours-part").get(0);
            assertThat(yours.bottom() - flat.bottom()).isCloseTo(flat.height() * Math.sin(Math.toRadians(angle - 180)), PIXEL);
        });
    }
}
