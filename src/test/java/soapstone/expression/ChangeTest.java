package soapstone.expression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import soapstone.bank.SmallBank;
import soapstone.exercise.Formula;
import soapstone.quantity.UnitSystem;

/** What can be put into a working: another line, a bare line, another formula, a calculator in radians, a fixed value. */
class ChangeTest {

    private static final double CLOSE = 1e-12;

    private static Board box(UnitSystem system) {
        return new Board(system).given("length", "48 in").given("width", "22 in").given("depth", "21 in")
                .line("volume = length*width*depth").line("gallons = to(volume, gal)").line("pails = ceil(gallons/(5 gal))");
    }

    private static Board bend(String angle) {
        return new Board(UnitSystem.US).given("angle", angle).given("radius", "1/4 in").given("thickness", "0.1 in").given("flat", "3 in")
                .line("allowance = bend_allowance(angle, radius, thickness, 0.4)").line("blank = 2*flat + allowance")
                .line("second = bend_allowance(180 deg - angle, radius, thickness, 0.4)");
    }

    private static Change slip(Board board, int number) {
        Formula.FormulaSlip slip = SmallBank.bank().formulas().get("bend_allowance").slips().get(number);
        return board.builder.formulaSwap(slip.swap()).change();
    }

    @Test
    void aSwapPutsAnotherRightSideIn() {
        Board board = box(UnitSystem.US);
        Change change = board.swap("volume = length*width*depth/2", false);
        assertThat(board.value("gallons")).isEqualTo(48 * 22 * 21.0);
        assertThat(board.with(change, "gallons")).isEqualTo(48 * 22 * 21 / 2.0);
        assertThat(board.with(change, "pails")).isEqualTo(10);
    }

    @Test
    void aSwapSeesOnlyWhatStandsAboveItsLine() {
        Board board = box(UnitSystem.US);
        assertThat(board.swap("volume = to(gallons, in3)", false)).isEqualTo(Change.NONE);
        assertThat(board.faults).singleElement().asString().startsWith("13: 'gallons' stands further down");
    }

    @Test
    void aSwapGivesTheSameKindOfValue() {
        Board board = box(UnitSystem.US);
        assertThat(board.swap("volume = length*width", false)).isEqualTo(Change.NONE);
        assertThat(board.faults).singleElement().asString()
                .isEqualTo("16: the line 'volume' is a quantity (volume), the slip gives a quantity (area). "
                        + "A right side of the same kind, or swap-bare for a wrong factor or dimension");
    }

    @Test
    void inABareSwapEveryNameIsItsNumberAndTheResultTakesTheLinesUnit() {
        Board us = box(UnitSystem.US);
        Change twelve = us.swap("gallons = volume/12", true);
        assertThat(us.with(twelve, "gallons")).as("22,176 in3 over 12 taken for gallons").isEqualTo(48 * 22 * 21 / 12.0 * 231);
        Board metric = box(UnitSystem.METRIC);
        assertThat(metric.value("gallons")).isCloseTo(48 * 22 * 21 * 16387.064, within(1.0));
        Change same = metric.swap("gallons = volume/12", true);
        double cubicMillimeters = 48 * 22 * 21 * 16387.064;
        assertThat(metric.with(same, "gallons")).as("in a metric draw the number is that of mm3, and the line stands in gal")
                .isCloseTo(cubicMillimeters / 12 * 3785411.784, within(1e3));
    }

    @Test
    void aBareSwapTakesAnAngleAsItsNumberOfDegreesIntoACalculatorInRadians() {
        Board board = new Board(UnitSystem.US).given("turn", "30 deg").given("long_side", "10 in").line("rise = long_side*sin(turn)");
        assertThat(board.value("rise")).isCloseTo(5, within(CLOSE));
        assertThat(board.with(board.swap("rise = long_side*sin(turn)", true), "rise")).isCloseTo(10 * Math.sin(30), within(CLOSE));
    }

    @Test
    void aBareSwapKeepsToPlainNumbers() {
        Board board = box(UnitSystem.US).line("row = marks(0 in, length, 3)");
        board.swap("gallons = to(volume, gal)", true);
        board.swap("gallons = bend_allowance(1, 2, 3, 4)", true);
        board.builder.line("after", Board.parse("depth"), null, (a, b, c) -> { });
        board.swap("after = sum(row)", true);
        assertThat(board.faults).containsExactly(
                "11: a bare slip works on plain numbers. Write the factor itself, such as x / 12",
                "11: a bare slip cannot call the formula 'bend_allowance'. Write its line out",
                "13: 'row' is a list. A bare slip works on single numbers");
    }

    @Test
    void aFormulaSlipReachesEveryCall() {
        Board board = bend("60 deg");
        Change skin = slip(board, 0);
        assertThat(board.with(skin, "allowance")).isCloseTo(Math.toRadians(60) * 0.25, within(CLOSE));
        assertThat(board.with(skin, "second")).isCloseTo(Math.toRadians(120) * 0.25, within(CLOSE));
        assertThat(board.with(skin, "blank")).isCloseTo(6 + Math.toRadians(60) * 0.25, within(CLOSE));
    }

    @Test
    void aFormulaSlipStandsAsideWhereItsConditionDoesNotHold() {
        Board square = bend("90 deg");
        Change between = slip(square, 1);
        assertThat(square.with(between, "allowance")).as("90 degrees between the legs are 90 degrees turned through").isEqualTo(square.value("allowance"));
        Board sharp = bend("60 deg");
        assertThat(sharp.with(slip(sharp, 1), "allowance")).isCloseTo(Math.toRadians(120) * 0.29, within(CLOSE));
    }

    @Test
    void theConditionOfAFormulaSlipIsKnownForEachCall() {
        Board square = bend("90 deg");
        Formula.FormulaSlip slip = SmallBank.bank().formulas().get("bend_allowance").slips().get(1);
        List<Value> when = square.builder.formulaSwap(slip.swap()).when();
        Frame run = square.run();
        assertThat(when).hasSize(2).noneMatch(w -> w.holds(run));
    }

    @Test
    void theConditionOfAFormulaSlipSeesWhatIsPassedThroughOtherFormulas() {
        var angle = List.of(new FormulaBody.Parameter("whole", Type.amount(soapstone.quantity.Dimension.ANGLE)));
        FormulaBody twice = new FormulaBody("twice", angle, Type.amount(soapstone.quantity.Dimension.LENGTH),
                List.of(new FormulaBody.Line("half", Board.parse("whole/2")),
                        new FormulaBody.Line("result", Board.parse("2*bend_allowance(half + 0 deg, 1 in, 1 in, 0.4)"))));
        Formula.FormulaSlip slip = SmallBank.bank().formulas().get("bend_allowance").slips().get(1);
        for (String whole : List.of("180 deg", "120 deg")) {
            Board board = new Board(UnitSystem.US, java.util.Map.of("twice", twice)).given("whole", whole).line("answer = twice(whole)");
            List<Value> when = board.builder.formulaSwap(slip.swap()).when();
            assertThat(when).singleElement().matches(w -> w.holds(board.run()) == whole.equals("120 deg"), "holds for 120 deg alone");
        }
    }

    @Test
    void whereTheConditionOfAFormulaSlipIsNotDefinedTheFormulaStands() {
        Board board = new Board(UnitSystem.US).given("number", "11").given("radius", "1/4 in")
                .line("turn = gauge(\"carbon\", number)/(1 in)*1 deg").line("allowance = if(turn > 0 deg, radius, radius)")
                .line("free = bend_allowance(90 deg, radius, radius, 0.4)");
        FormulaBody.Swap swap = new FormulaBody.Swap("bend_allowance", List.of(new FormulaBody.Line("result", Board.parse("radius"))),
                Board.parse("gauge(\"carbon\", 11) > radius"));
        Change change = board.builder.formulaSwap(swap).change();
        assertThat(board.with(change, "free")).isEqualTo(board.value("free"));
        assertThat(board.value("allowance")).isNaN();
    }

    @Test
    void aCalculatorInRadiansTakesDegreesForRadians() {
        Board board = new Board(UnitSystem.US).given("turn", "35 deg").given("half", "4 in")
                .line("x = half*cos(turn)").line("back = acos(x/half)").line("plain = 2*half").line("slope = atan2(half, x)");
        Change radians = board.builder.radians();
        assertThat(board.with(radians, "x")).isCloseTo(4 * Math.cos(35), within(CLOSE));
        assertThat(board.with(radians, "back")).as("acos shows radians, read as degrees").isCloseTo(Math.acos(Math.cos(35)), within(CLOSE));
        assertThat(board.with(radians, "slope")).isCloseTo(Math.atan2(4, 4 * Math.cos(35)), within(CLOSE));
        assertThat(radians.mask() & 1L << board.program().find("plain")).isZero();
    }

    @Test
    void aCalculatorInRadiansIsAlsoInsideOfFormulas() {
        FormulaBody drop = new FormulaBody("drop", List.of(new FormulaBody.Parameter("angle", new Type(Type.Kind.AMOUNT, soapstone.quantity.Dimension.ANGLE, null))),
                Type.NUMBER, List.of(new FormulaBody.Line("result", Board.parse("tan(angle)"))));
        Board board = new Board(UnitSystem.US, java.util.Map.of("drop", drop)).given("turn", "20 deg").line("slope = drop(turn)");
        assertThat(board.with(board.builder.radians(), "slope")).isCloseTo(Math.tan(20), within(CLOSE));
    }

    @Test
    void twoChangesGoTogetherUnlessTheyTouchOneLine() {
        Board board = box(UnitSystem.US);
        Change volume = board.swap("volume = length*width*depth/2", false);
        Change gallons = board.swap("gallons = volume/2", false);
        Change other = board.swap("volume = length*width*width", false);
        assertThat(volume.with(other)).isEmpty();
        assertThat(board.with(volume.with(gallons).orElseThrow(), "gallons")).isEqualTo(48 * 22 * 21 / 4.0);
        assertThat(board.with(other.over(volume), "gallons")).as("the one that goes over stands").isEqualTo(48 * 22 * 22.0);
        assertThat(board.with(volume.over(gallons).only(gallons.mask()), "gallons")).isEqualTo(48 * 22 * 21 / 2.0);
        assertThat(Change.NONE.isEmpty()).isTrue();
        assertThat(board.with(Change.NONE, "gallons")).isEqualTo(board.value("gallons"));
    }

    @Test
    void aFixedValueStandsInTheLinesPlace() {
        Board board = box(UnitSystem.US);
        Change typed = Change.fixed(board.program().find("gallons"), 99 * 231.0);
        assertThat(board.with(typed, "pails")).isEqualTo(20);
        assertThat(board.with(typed, "volume")).isEqualTo(board.value("volume"));
    }

    @Test
    void aLineRoundedOnTheWay() {
        Board board = box(UnitSystem.US);
        Change rounded = board.program().rounded(board.program().find("volume"), 1000);
        assertThat(board.with(rounded, "gallons")).isEqualTo(22_000);
    }
}
