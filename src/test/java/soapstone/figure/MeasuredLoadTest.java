package soapstone.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static soapstone.figure.Measuring.PIXEL;
import static soapstone.figure.Measuring.both;
import static soapstone.figure.Measuring.middle;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soapstone.quantity.Units;

/** Measures drawings of loads, shares and whole jobs: what is drawn lies where the amounts say, within a pixel. */
class MeasuredLoadTest {

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

    @Test
    void aPartOfAJobThatIsRightStandsAlone() {
        Samples.Sample guard = Samples.all().stream().filter(s -> s.name().equals("picket-guard-as-cut")).findFirst().orElseThrow();
        Inputs wrong = Inputs.of("picket-guard");
        guard.right().values().forEach((name, v) -> wrong.put(name, v.unit(), v.amounts()));
        DrawnSvg drawn = both(wrong, wrong.copy().number("posts", 4)).get(0);
        assertThat(drawn.paths("yours-piece")).hasSize(4);
        assertThat(drawn.rectangles("yours-piece")).isEmpty();
    }
}
