package soapstone.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.BiConsumer;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soapstone.quantity.Units;

/** Measures the drawings of work: what is drawn lies where the amounts say, within a pixel. */
class MeasuredWorkDrawingTest {

    private static final Offset<Double> PIXEL = Offset.offset(1.0);
    private static final int PARTS = 60;

    private static void eachLayout(String kind, boolean asCut, BiConsumer<Inputs, DrawnSvg> check) {
        for (int seed = 0; seed < PARTS; seed++) {
            RandomInputs random = new RandomInputs(seed);
            Inputs right = random.draw(kind);
            Inputs yours = random.off(right, FigureKinds.kind(kind).orElseThrow());
            Figure f = FigureKinds.draw(right.build(), asCut ? yours.build() : null, "f").orElseThrow();
            for (String svg : List.of(f.wide(), f.narrow())) {
                check.accept(right, DrawnSvg.read(svg));
            }
        }
    }

    /** Both layouts of a part with an answer's part over it. */
    private static List<DrawnSvg> both(Inputs right, Inputs yours) {
        Figure f = FigureKinds.draw(right.build(), yours.build(), "f").orElseThrow();
        return List.of(DrawnSvg.read(f.wide()), DrawnSvg.read(f.narrow()));
    }

    private static double one(Inputs in, String name) {
        return in.amounts(name)[0];
    }

    private static double bed(Inputs in) {
        return in.amounts("bed").length == 0 ? 0 : one(in, "bed");
    }

    private static double middle(Box box) {
        return (box.left() + box.right()) / 2;
    }

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

    @Test
    void wallAndHeadsOfAReceiver() {
        eachLayout("receiver", false, (in, drawn) -> {
            List<Box> walls = drawn.rectangles("wall");
            double inside = walls.get(1).left() - walls.get(0).right();
            assertThat(walls.get(0).width()).isCloseTo(Math.max(3, one(in, "thickness") / one(in, "diameter") * inside), PIXEL);
            for (Box head : drawn.paths("head")) {
                assertThat(head.height() - walls.get(0).width()).isCloseTo(inside / 4, PIXEL);
            }
        });
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void openingOfABaffle(boolean asCut) {
        eachLayout("baffle-plate", asCut, (in, drawn) -> {
            Box plate = drawn.rectangle("part");
            double scale = plate.width() / one(in, "width");
            assertThat(plate.height()).isCloseTo(one(in, "height") * scale, PIXEL);
            assertThat(2 * drawn.radius("opening")).isCloseTo(one(in, "opening") * scale, PIXEL);
            List<Box> cut = drawn.rectangles("section");
            assertThat(cut.get(1).top() - cut.get(0).bottom()).isCloseTo(one(in, "opening") * scale, PIXEL);
        });
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
        assertThat(f.wide()).containsPattern("class=\"fillet-sign\" d=\"M([\\d.]+) ([\\d.]+)L\\1 [\\d.]+L[\\d.]+ \\2\"");
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void stitchesOfARow(boolean asCut) {
        eachLayout("stitch-row", asCut, (in, drawn) -> {
            Box seam = drawn.rectangle("part");
            double scale = seam.width() / one(in, "length");
            List<Box> beads = drawn.rectangles("bead");
            for (int i = 0; beads.size() == (int) one(in, "count") && i < beads.size(); i++) {
                assertThat(beads.get(i).left() - seam.left()).isCloseTo(i * one(in, "pitch") * scale, PIXEL);
                assertThat(beads.get(i).width()).isCloseTo(one(in, "stitch") * scale, PIXEL);
            }
        });
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

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void axleAndBalancePointOfATrailer(boolean asCut) {
        eachLayout("trailer", asCut, (in, drawn) -> {
            double ball = drawn.circles("ball").get(0).x();
            double scale = (drawn.circles("axle").get(0).x() - ball) / (bed(in) + one(in, "axle"));
            assertThat(middle(drawn.paths("weight").get(0)) - ball).isCloseTo((bed(in) + one(in, "center")) * scale, PIXEL);
            if (bed(in) > 0) {
                assertThat(drawn.rectangle("bed").left() - ball).isCloseTo(bed(in) * scale, PIXEL);
            }
        });
    }

    @ParameterizedTest
    @ValueSource(doubles = {-20, 30, 66, 90})
    void balancePointOfAnAnswersTrailer(double place) {
        Inputs in = Inputs.of("trailer").length("bed", 48).length("axle", 84).length("center", 68).length("place", 68);
        for (DrawnSvg drawn : both(in, in.copy().length("place", place))) {
            double ball = drawn.circles("ball").get(0).x();
            double scale = (drawn.circles("axle").get(0).x() - ball) / 132;
            assertThat(middle(drawn.paths("yours-weight").get(0)) - ball).isCloseTo((48 + place) * scale, PIXEL);
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void loadsAndBalanceOfASkid(boolean asCut) {
        eachLayout("loaded-skid", asCut, (in, drawn) -> {
            Box skid = drawn.rectangle("part");
            double scale = skid.width() / one(in, "length");
            List<Box> weights = drawn.paths("weight");
            for (int i = 0; i < weights.size(); i++) {
                assertThat(middle(weights.get(i)) - skid.left()).isCloseTo(in.amounts("places")[i] * scale, PIXEL);
            }
            assertThat(middle(drawn.paths("balance").get(0)) - skid.left()).isCloseTo(one(in, "balance") * scale, PIXEL);
        });
    }

    /** The shaft of an arrow and its head of 12 are as long as the weight says. */
    private static double arrow(Box shaft) {
        return Math.hypot(shaft.width(), shaft.height()) + 12;
    }

    @ParameterizedTest
    @ValueSource(doubles = {500, 914, 1400, 2000})
    void arrowsOfASlingAreToOneScale(double pull) {
        Inputs in = Inputs.of("sling").put("load", Units.POUND, 1400).length("spread", 48).angle("angle", 50).put("pull", Units.POUND, 913);
        for (DrawnSvg drawn : both(in, in.copy().put("pull", Units.POUND, pull))) {
            double load = arrow(drawn.paths("weight").get(0));
            assertThat(arrow(drawn.paths("pull").get(0))).isCloseTo(load * 913 / 1400, PIXEL);
            assertThat(arrow(drawn.paths("yours-pull").get(0))).isCloseTo(load * pull / 1400, PIXEL);
            Box legs = drawn.paths("legs").get(0);
            assertThat(Math.toDegrees(Math.atan2(legs.height(), legs.width() / 2))).isCloseTo(50, Offset.offset(0.5));
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void sharesOfARating(boolean asCut) {
        eachLayout("load-bar", asCut, (in, drawn) -> {
            Box bar = drawn.rectangle("part");
            double scale = bar.width() / one(in, "rating");
            List<Box> shares = drawn.rectangles("share");
            String[] names = {"trailer", "tank", "load"};
            double left = bar.left();
            for (int i = 0; i < names.length; i++) {
                assertThat(shares.get(i).left()).isCloseTo(left, PIXEL);
                assertThat(shares.get(i).width()).isCloseTo(one(in, names[i]) * scale, PIXEL);
                left = shares.get(i).right();
            }
        });
    }

    @Test
    void piecesOfAnOrder() {
        Inputs in = Inputs.of("order-bar").put("order", Units.parse("ft2").orElseThrow(), 200).put("good", Units.parse("ft2").orElseThrow(), 170)
                .put("piece", Units.parse("ft2").orElseThrow(), 32);
        Figure asked = FigureKinds.draw(in.copy().ask("order", "a").build(), null, "f").orElseThrow();
        assertThat(DrawnSvg.read(asked.wide()).paths("piece")).as("nobody can count them while they are asked").isEmpty();
        DrawnSvg drawn = DrawnSvg.read(FigureKinds.draw(in.build(), null, "f").orElseThrow().wide());
        Box bar = drawn.rectangle("part");
        List<Box> pieces = drawn.paths("piece");
        assertThat(pieces).hasSize(6);
        assertThat(pieces.get(5).left() - bar.left()).isCloseTo(bar.width() * 6 * 32 / 200, PIXEL);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void postsOfARun(boolean asCut) {
        eachLayout("post-row", asCut, (in, drawn) -> {
            List<Box> posts = drawn.rectangles("post");
            double first = middle(posts.get(0));
            double scale = (middle(posts.get(posts.size() - 1)) - first) / one(in, "length");
            for (int i = 0; posts.size() == (int) one(in, "count") && i < posts.size(); i++) {
                assertThat(middle(posts.get(i)) - first).isCloseTo(i * one(in, "spacing") * scale, PIXEL);
            }
        });
    }

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
    void barsEndToEnd() {
        eachLayout("butted-bars", true, (in, drawn) -> {
            List<Box> bars = drawn.rectangles("bar");
            double all = one(in, "first") + one(in, "first_rest");
            double scale = bars.get(0).width() / all;
            assertThat(bars.get(2).width()).isCloseTo((one(in, "third") + one(in, "third_rest")) * scale, PIXEL);
            assertThat(bars.get(1).left()).isCloseTo(bars.get(0).right(), PIXEL);
        });
    }

    @Test
    void wallOfATube() {
        eachLayout("round-tube", false, (in, drawn) -> assertThat(drawn.radius("outside") - drawn.radius("inside"))
                .isCloseTo(one(in, "wall") / one(in, "outside") * 2 * drawn.radius("outside"), PIXEL));
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

    @Test
    void aJobIsDrawnFromOneSetOfValues() {
        eachLayout("hauling-tank", false, (in, drawn) -> {
            double ball = drawn.circles("ball").get(0).x();
            double scale = (drawn.circles("axle").get(0).x() - ball) / (bed(in) + one(in, "axle"));
            assertThat(middle(drawn.paths("weight").get(0)) - ball).isCloseTo((bed(in) + one(in, "center")) * scale, PIXEL);
            Box section = drawn.rectangles("part").get(1);
            assertThat(drawn.rectangles("baffle").get(0).left() - section.left())
                    .isCloseTo(one(in, "space") * section.width() / one(in, "inside"), Offset.offset(2.0));
        });
    }

    @Test
    void aPartOfAJobThatIsRightStandsAlone() {
        Samples.Sample guard = Samples.all().stream().filter(s -> s.name().equals("ramp-guard-as-cut")).findFirst().orElseThrow();
        Inputs wrong = Inputs.of("ramp-guard");
        guard.right().values().forEach((name, v) -> wrong.put(name, v.unit(), v.amounts()));
        DrawnSvg drawn = both(wrong, wrong.copy().number("posts", 4)).get(0);
        assertThat(drawn.paths("yours-piece")).hasSize(4);
        assertThat(drawn.rectangles("yours-piece")).isEmpty();
    }
}
