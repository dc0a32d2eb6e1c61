package soapstone.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.BiConsumer;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Measures drawings like a sheet of paper: what is drawn lies where the amounts say, within a pixel. */
class MeasuredDrawingTest {

    private static final Offset<Double> PIXEL = Offset.offset(1.0);
    private static final int PARTS = 60;

    /** Draws parts of a kind and gives the amounts and each layout to a check. */
    static void eachLayout(String kind, boolean asCut, BiConsumer<Inputs[], DrawnSvg> check) {
        for (int seed = 0; seed < PARTS; seed++) {
            RandomInputs random = new RandomInputs(seed);
            Inputs right = random.draw(kind);
            Inputs yours = random.off(right, FigureKinds.kind(kind).orElseThrow());
            Figure f = FigureKinds.draw(right.build(), asCut ? yours.build() : null, "f").orElseThrow();
            for (String svg : List.of(f.wide(), f.narrow())) {
                check.accept(new Inputs[] {right, yours}, DrawnSvg.read(svg));
            }
        }
    }

    static double one(Inputs in, String name) {
        return in.amounts(name)[0];
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void holesOfARow(boolean asCut) {
        eachLayout("hole-row", asCut, (in, drawn) -> {
            Box bar = drawn.rectangle("part");
            double scale = bar.width() / one(in[0], "length");
            List<Pt> holes = drawn.circles("hole");
            boolean all = holes.size() == (int) one(in[0], "count");
            assertThat(all || one(in[0], "pitch") * scale < 5).isTrue();
            for (int i = 0; all && i < holes.size(); i++) {
                assertThat(holes.get(i).x() - bar.left()).isCloseTo((one(in[0], "first") + i * one(in[0], "pitch")) * scale, PIXEL);
            }
            if (in[0].amounts("diameter").length > 0) {
                assertThat(2 * drawn.radius("hole")).isCloseTo(Math.max(4, one(in[0], "diameter") * scale), PIXEL);
            }
        });
    }

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

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void gapsBetweenPickets(boolean asCut) {
        eachLayout("gap-row", asCut, (in, drawn) -> {
            List<Box> posts = drawn.rectangles("post");
            List<Box> pickets = drawn.rectangles("picket");
            double left = posts.get(0).right();
            double scale = (posts.get(1).left() - left) / one(in[0], "opening");
            if (pickets.size() < one(in[0], "count")) {
                return;
            }
            for (Box picket : pickets) {
                assertThat(picket.left() - left).isCloseTo(one(in[0], "gap") * scale, PIXEL);
                assertThat(picket.width()).isCloseTo(one(in[0], "width") * scale, PIXEL);
                left = picket.right();
            }
            assertThat(posts.get(1).left() - left).isCloseTo(one(in[0], "gap") * scale, PIXEL);
        });
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void spacesBetweenBaffles(boolean asCut) {
        eachLayout("baffle-tank", asCut, (in, drawn) -> {
            Box tank = drawn.rectangle("part");
            double scale = tank.width() / one(in[0], "length");
            assertThat(tank.height()).isCloseTo(one(in[0], "height") * scale, PIXEL);
            double middle = tank.left() + (one(in[0], "space") + one(in[0], "thickness") / 2) * scale;
            for (Box baffle : drawn.rectangles("baffle")) {
                assertThat((baffle.left() + baffle.right()) / 2).isCloseTo(middle, PIXEL);
                middle += (one(in[0], "space") + one(in[0], "thickness")) * scale;
            }
        });
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void marksAlongABar(boolean asCut) {
        eachLayout("mark-row", asCut, (in, drawn) -> {
            Box bar = drawn.rectangle("part");
            double scale = bar.width() / one(in[0], "length");
            List<Box> marks = drawn.paths("mark");
            double[] amounts = in[0].amounts("marks");
            assertThat(marks).hasSameSizeAs(amounts);
            for (int i = 0; i < amounts.length; i++) {
                assertThat(marks.get(i).left() - bar.left()).isCloseTo(amounts[i] * scale, PIXEL);
            }
        });
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void bendLinesOfAStrip(boolean asCut) {
        eachLayout("flat-strip", asCut, (in, drawn) -> {
            Box strip = drawn.rectangle("part");
            double scale = strip.width() / one(in[0], "width");
            List<Box> lines = drawn.paths("bend-line");
            double[] bends = in[0].amounts("bends");
            assertThat(lines).hasSameSizeAs(bends);
            for (int i = 0; i < bends.length; i++) {
                assertThat(lines.get(i).left() - strip.left()).isCloseTo(bends[i] * scale, PIXEL);
            }
            List<Box> yours = drawn.paths("yours-bend");
            double[] theirs = in[1].amounts("bends");
            for (int i = 0; yours.size() == theirs.length && i < theirs.length; i++) {
                assertThat(yours.get(i).left() - strip.left()).isCloseTo(theirs[i] * scale, PIXEL);
            }
        });
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void holesOnACircle(boolean asCut) {
        eachLayout("bolt-circle", asCut, (in, drawn) -> {
            Pt center = drawn.circles("part").get(0);
            double radius = drawn.radius("part");
            List<Pt> holes = drawn.circles("hole");
            double start = in[0].amounts("start").length > 0 ? one(in[0], "start") : 0;
            assertThat(holes).hasSize((int) one(in[0], "count"));
            for (int i = 0; i < holes.size(); i++) {
                double turn = Math.toRadians(start + 360.0 * i / holes.size());
                assertThat(holes.get(i).x()).isCloseTo(center.x() + radius * Math.cos(turn), PIXEL);
                assertThat(holes.get(i).y()).isCloseTo(center.y() - radius * Math.sin(turn), PIXEL);
            }
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"box-tank", "upright-drum", "tub", "lying-drum"})
    void levels(String kind) {
        String height = kind.equals("lying-drum") ? "diameter" : "height";
        eachLayout(kind, false, (in, drawn) -> {
            if (in[0].amounts("level").length == 0) {
                return;
            }
            Box vessel = vessel(kind, drawn);
            double scale = vessel.height() / one(in[0], height);
            assertThat(vessel.bottom() - drawn.paths("level").get(0).top()).isCloseTo(one(in[0], "level") * scale, PIXEL);
        });
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

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void centerOfPressure(boolean asCut) {
        eachLayout("panel", asCut, (in, drawn) -> {
            Box panel = drawn.rectangle("part");
            double scale = panel.height() / one(in[0], "height");
            assertThat(panel.width()).isCloseTo(one(in[0], "width") * scale, PIXEL);
            assertThat(panel.top() - drawn.paths("surface").get(0).top()).isCloseTo(one(in[0], "top") * scale, PIXEL);
            if (in[0].amounts("center").length > 0) {
                double surface = drawn.paths("surface-side").get(0).top();
                assertThat(drawn.paths("center-of-pressure").get(0).top() - surface).isCloseTo(one(in[0], "center") * scale, PIXEL);
            }
        });
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
