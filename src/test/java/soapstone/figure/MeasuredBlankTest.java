package soapstone.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Consumer;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Measures blanks, lids, pipes, elbows and cones like a sheet of paper: all lies where the amounts say, within a pixel. */
class MeasuredBlankTest {

    private static final Offset<Double> PIXEL = Offset.offset(1.0);

    private static void eachLayout(Inputs right, Inputs yours, Consumer<DrawnSvg> check) {
        Figure f = FigureKinds.draw(right.build(), yours == null ? null : yours.build(), "f").orElseThrow();
        for (String svg : List.of(f.wide(), f.narrow())) {
            check.accept(DrawnSvg.read(svg));
        }
    }

    @ParameterizedTest
    @CsvSource({"20, 12, 2.5", "36, 6, 0.75", "12, 10, 3.25"})
    void bendLinesOfAPan(double length, double width, double side) {
        Inputs pan = Inputs.of("pan").length("length", length + 2 * side).length("width", width + 2 * side)
                .length("bottom_length", length).length("bottom_width", width);
        Inputs yours = pan.copy().length("length", length + side);
        eachLayout(pan, yours, drawn -> {
            Box blank = drawn.paths("part").get(0);
            double scale = blank.width() / (length + 2 * side);
            assertThat(blank.height()).isCloseTo((width + 2 * side) * scale, PIXEL);
            List<Box> bends = drawn.paths("bend-line");
            assertThat(bends.get(0).left() - blank.left()).isCloseTo(side * scale, PIXEL);
            assertThat(blank.right() - bends.get(1).left()).isCloseTo(side * scale, PIXEL);
            assertThat(bends.get(2).top() - blank.top()).isCloseTo(side * scale, PIXEL);
            assertThat(blank.bottom() - bends.get(3).top()).isCloseTo(side * scale, PIXEL);
            assertThat(drawn.paths("yours-part").get(0).width()).isCloseTo((length + side) * scale, PIXEL);
        });
    }

    @ParameterizedTest
    @CsvSource({"30, 4.4375, 0.5, 3.9375", "16, 2.5, 0.375, 2.125", "40, 6, 0.625, 8"})
    void notchesOfABlank(double length, double notch, double hem, double theirs) {
        Inputs right = Inputs.of("notched-edge").length("length", length).length("notch", notch).length("between", length - 2 * notch)
                .length("hem", hem);
        Inputs yours = right.copy().length("notch", theirs).length("between", length - 2 * theirs);
        eachLayout(right, yours, drawn -> {
            Box blank = drawn.paths("part").get(0);
            double scale = blank.width() / length;
            Box bends = drawn.rectangle("bend-lines");
            assertThat(bends.left() - blank.left()).isCloseTo(notch * scale, PIXEL);
            assertThat(bends.top() - blank.top()).isCloseTo(notch * scale, PIXEL);
            assertThat(bends.width()).isCloseTo((length - 2 * notch) * scale, PIXEL);
            assertThat(drawn.paths("hem-line").get(0).top() - blank.top()).isCloseTo(hem * scale, PIXEL);
            assertThat(drawn.paths("yours-part").get(0).height()).isCloseTo(theirs * scale, PIXEL);
        });
    }

    /** A box that is short for its walls, so that nothing is broken out and all is to one scale. */
    @ParameterizedTest
    @ValueSource(doubles = {0.0625, 0.125, 0.1875})
    void airUnderALid(double gap) {
        Inputs lid = Inputs.of("lid-over-box").length("length", 4).length("width", 3).length("wall", 0.25).length("gap", gap)
                .length("lid_length", 4.5 + 2 * gap).length("lid_width", 3.5 + 2 * gap);
        eachLayout(lid, lid.copy().length("lid_length", 4.5).length("lid_width", 3.5), drawn -> {
            double[] inside = {4, 3};
            for (int i = 0; i < 2; i++) {
                Box box = drawn.paths("box").get(i);
                double scale = box.width() / (inside[i] + 0.5);
                assertThat(box.left() - drawn.paths("lid").get(i).left()).isCloseTo((gap + 0.25) * scale, PIXEL);
                assertThat(box.left() - drawn.paths("yours-lid").get(i).left()).isCloseTo(0.25 * scale, PIXEL);
            }
        });
    }

    @ParameterizedTest
    @CsvSource({"10, 0.75, 31.5", "4, 0.375, 14", "14, 1, 45.5"})
    void blankOfAPipe(double inside, double lap, double theirs) {
        double blank = Math.PI * (inside + 0.04) + lap;
        double made = (theirs - lap) / Math.PI - 0.04;
        Inputs right = Inputs.of("rolled-pipe").length("inside", inside).length("thickness", 0.04).length("lap", lap)
                .length("blank", blank).length("made", inside);
        eachLayout(right, right.copy().length("blank", theirs).length("made", made), drawn -> {
            Box strip = drawn.rectangle("blank");
            double scale = strip.width() / blank;
            assertThat(2 * drawn.radius("inside")).isCloseTo(inside * scale, PIXEL);
            assertThat(strip.right() - drawn.paths("lap-line").get(0).left()).isCloseTo(lap * scale, PIXEL);
            assertThat(drawn.paths("yours-end").get(0).left() - strip.left()).isCloseTo(theirs * scale, PIXEL);
            if (!drawn.circles("yours-pipe").isEmpty()) {
                assertThat(2 * drawn.radius("yours-pipe")).isCloseTo(made * scale, PIXEL);
            }
        });
    }

    /** An elbow of 90° reaches as far up as out: to the heel's radius from the center of its turn. */
    @ParameterizedTest
    @CsvSource({"12, 18, 5", "8, 16, 3", "14, 14, 4", "10, 15, 2"})
    void piecesOfAnElbow(double across, double bend, int pieces) {
        double rise = Math.tan(Math.PI / 4 / (pieces - 1));
        double throat = (bend - across / 2) * rise;
        double heel = (bend + across / 2) * rise;
        Inputs elbow = Inputs.of("elbow").length("across", across).number("pieces", pieces).length("throat", throat).length("heel", heel);
        eachLayout(elbow, null, drawn -> {
            Box pattern = drawn.paths("pattern").get(0);
            double scale = pattern.width() / Math.PI / across;
            assertThat(pattern.height()).isCloseTo(heel * scale, PIXEL);
            Box side = drawn.paths("part").get(0);
            assertThat(side.width()).isCloseTo((bend + across / 2) * scale, PIXEL);
            assertThat(side.height()).isCloseTo((bend + across / 2) * scale, PIXEL);
            List<Box> cuts = drawn.paths("cut");
            assertThat(cuts).hasSize(pieces - 1);
            assertThat(cuts.get(0).height()).isCloseTo((heel - throat) * scale, PIXEL);
            assertThat(side.bottom() - cuts.get(0).bottom()).isCloseTo(throat * scale, PIXEL);
        });
    }

    /** With throat and heel alike the pieces make a straight pipe, as long as all of them. */
    @Test
    void anElbowThatDoesNotTurn() {
        Inputs elbow = Inputs.of("elbow").length("across", 12).number("pieces", 5).length("throat", 2.387).length("heel", 4.774);
        eachLayout(elbow, elbow.copy().length("throat", 3.58).length("heel", 3.58), drawn -> {
            double scale = drawn.paths("pattern").get(0).width() / Math.PI / 12;
            Box pipe = drawn.paths("yours-part").get(0);
            assertThat(pipe.width()).isCloseTo(12 * scale, PIXEL);
            assertThat(pipe.height()).isCloseTo(8 * 3.58 * scale, PIXEL);
        });
    }

    @ParameterizedTest
    @CsvSource({"20, 10, 12, 15, 13", "40, 6, 24, 27, 40", "16, 8, 10, 10, 10"})
    void trueLengths(double side, double round, double height, double middle, double corner) {
        double plan = (side - round) / 2;
        double cornerPlan = side * Math.sqrt(0.5) - round / 2;
        Inputs right = Inputs.of("square-to-round").length("side", side).length("round", round).length("height", height)
                .length("middle_plan", plan).length("corner_plan", cornerPlan).length("middle_line", Math.hypot(plan, height))
                .length("corner_line", Math.hypot(cornerPlan, height));
        eachLayout(right, right.copy().length("middle_line", middle).length("corner_line", corner), drawn -> {
            Box square = drawn.rectangle("square");
            double scale = square.width() / side;
            assertThat(2 * drawn.radius("collar")).isCloseTo(round * scale, PIXEL);
            assertThat(drawn.paths("corner-line").get(0).width()).isCloseTo(cornerPlan * scale, PIXEL);
            assertThat(drawn.paths("middle-line").get(0).width()).isCloseTo(plan * scale, PIXEL);
            assertThat(drawn.paths("middle-line").get(0).height()).isCloseTo(height * scale, PIXEL);
            assertThat(diagonal(drawn.paths("yours-middle").get(0))).isCloseTo(middle * scale, PIXEL);
            assertThat(diagonal(drawn.paths("yours-corner").get(0))).isCloseTo(corner * scale, PIXEL);
        });
    }

    private static double diagonal(Box box) {
        return Math.hypot(box.width(), box.height());
    }

    /** Half a turn is as wide as two radii and as high as one; what an answer has more goes under that. */
    @ParameterizedTest
    @ValueSource(doubles = {200, 215, 240, 265})
    void patternOfACone(double angle) {
        Inputs cone = Inputs.of("cone-and-flat").length("across", 12).length("top", 5).length("height", 6.0622).length("outer", 12)
                .length("inner", 5).angle("angle", 180);
        eachLayout(cone, cone.copy().angle("angle", angle), drawn -> {
            Box side = drawn.paths("cone").get(0);
            double scale = side.width() / 12;
            assertThat(side.height()).isCloseTo(6.0622 * scale, PIXEL);
            Box flat = drawn.paths("part").get(0);
            assertThat(flat.width()).isCloseTo(24 * scale, PIXEL);
            assertThat(flat.height()).isCloseTo(12 * scale, PIXEL);
            Box yours = drawn.paths("yours-part").get(0);
            assertThat(yours.bottom() - flat.bottom()).isCloseTo(12 * Math.sin(Math.toRadians(angle - 180)) * scale, PIXEL);
        });
    }
}
