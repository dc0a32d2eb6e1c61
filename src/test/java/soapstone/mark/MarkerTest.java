package soapstone.mark;

import static soapstone.mark.MarkAssert.assertThat;

import java.util.List;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Shown;
import soapstone.variant.Variant;

/**
 * What is said of an answer, verdict by verdict. The numbers are fixed: five holes on 50 in with 1 in at the ends are 12 in
 * apart, twenty such spaces are 240 in long and leave 60 in of 300.
 */
class MarkerTest {

    private static final UnitSystem US = UnitSystem.US;
    private static final UnitSystem METRIC = UnitSystem.METRIC;

    private final Variant holes = FixedDraw.of("spacing/bolt-holes", US, "length", "50 in", "holes", "5", "edge", "1 in", "hole", "3/8 in");
    private final Variant rack = FixedDraw.own("rack", US);

    private static List<AskMark> marks(Variant variant, String... answers) {
        return Marker.mark(variant, List.of(answers), '.', MarkRules.USUAL).asks();
    }

    private static AskMark mark(Variant variant, String answer) {
        return marks(variant, answer).get(0);
    }

    @Nested
    class Right {

        @Test
        void uptoAndWithTheToleranceEitherWay() {
            assertThat(mark(holes, "12")).isRight().earns(1);
            assertThat(mark(holes, "12 1/32")).isRight();
            assertThat(mark(holes, "11 31/32")).isRight();
            assertThat(mark(holes, "12.03125")).isRight();
            assertThat(mark(holes, "12.0313")).isNear();
            assertThat(mark(holes, "11.9687")).isNear();
        }

        @Test
        void alsoWhereToleranceAndAnswerAreNotExactInBinary() {
            Variant tenth = FixedDraw.of("circles/bolt-circle", METRIC, "across", "100 mm", "turn", "50 deg", "first", "25 mm", "step", "50 mm", "count", "3");
            // 42.2618… to 0.1 mm and within 0.1 mm.
            assertThat(marks(tenth, "", "42.3").get(1)).isRight();
            assertThat(marks(tenth, "", "42.36").get(1)).isRight();
            assertThat(marks(tenth, "", "42.37").get(1)).isNear();
        }

        @Test
        void inAllThatPeopleWrite() {
            for (String same : List.of("12", "12 in", "12\"", "12.0", "12 inches", "12''", "1' 0\"", "1 ft 0 in", " 12 ", "12.00 IN")) {
                assertThat(mark(holes, same)).isRight();
            }
        }

        @Test
        void withACommaWhereTheClassSetsOne() {
            Assertions.assertThat(Marker.mark(holes, List.of("12,03"), ',', MarkRules.USUAL).asks().get(0).verdict()).isEqualTo(Verdict.RIGHT);
        }

        @Test
        void countsAreExact() {
            Variant drum = drum();
            assertThat(marks(drum, "", "9").get(1)).isRight();
            assertThat(marks(drum, "", "9.0").get(1)).isRight();
            assertThat(marks(drum, "", "7").get(1)).isUnexplained();
        }
    }

    /** 24 in across and 22 in deep are 43.08 gal: nine pails of five, and the middle cart. */
    private static Variant drum() {
        return FixedDraw.of("tanks/drum", US, "across", "24 in", "depth", "22 in", "pail", "5 gal");
    }

    @Nested
    class RightBut {

        @Test
        void inAnotherUnit() {
            assertThat(mark(holes, "304.8 mm")).isRightBut("mark.right-but-unit").saysOf("mm", "in").ofNoFamily().earns(1);
            assertThat(mark(holes, "1 ft")).isRightBut("mark.right-but-unit").saysOf("ft", "in");
        }

        @Test
        void notReduced() {
            Variant rule = FixedDraw.of("measuring/rule", US, "parts", "16", "mark", "12", "whole", "9");
            assertThat(mark(rule, "9 12/16")).isRightBut("mark.reduce").saysOf("9 12/16", "9 3/4 in").earns(1);
            assertThat(mark(rule, "9 3/4")).isRight();
        }

        @Test
        void withACoarseConstant() {
            Variant coarse = FixedDraw.own("coarse", US);
            // Exact: 1256.637 in2 and 453.79 lb.
            assertThat(mark(coarse, "1256.6")).isRight();
            assertThat(mark(coarse, "1256")).isRightBut("mark.coarse-constant").ofFamily("coarse-constant").earns(2);
            assertThat(mark(coarse, "1257.1")).isRightBut("mark.coarse-constant");
            assertThat(marks(coarse, "1256.6", "454.0").get(1)).isRightBut("mark.coarse-constant");
            assertThat(marks(coarse, "1256.6", "453.6").get(1)).as("3.14 with 62.4").isRightBut("mark.coarse-constant");
            assertThat(marks(coarse, "1256.6", "454.2").get(1)).as("22/7 with 62.43: 454.19").isRightBut("mark.coarse-constant");
        }

        @Test
        void aCoarseConstantIsNothingWrongToCarry() {
            Variant coarse = FixedDraw.own("coarse", US);
            List<AskMark> marks = marks(coarse, "1256", "453.6");
            assertThat(marks.get(0)).isRightBut("mark.coarse-constant");
            assertThat(marks.get(1)).isRightBut("mark.coarse-constant");
        }
    }

    @Nested
    class OneSlip {

        @Test
        void roundedAsAsked() {
            assertThat(mark(holes, "9 5/8")).isSlip("shared-over-holes").ofFamily("fence-post").earns(0);
            assertThat(mark(holes, "8")).isSlip("one-space-too-many").ofFamily("ends-of-the-row");
            assertThat(mark(holes, "12 1/4")).isSlip("one-end-only").ofFamily("one-of-two");
            assertThat(mark(holes, "12 1/2")).isSlip("ends-left-in").ofFamily("allowance-forgotten");
        }

        @Test
        void inDecimalsAndInOtherUnits() {
            assertThat(mark(holes, "9.6")).isSlip("shared-over-holes");
            assertThat(mark(holes, "9.600")).isSlip("shared-over-holes");
            assertThat(mark(holes, "243.84 mm")).isSlip("shared-over-holes");
            assertThat(mark(holes, "1' 1/4\"")).isSlip("one-end-only");
        }

        @Test
        void theMoreFiguresTheSharper() {
            assertThat(mark(holes, "9.62")).as("typed to hundredths: 9.6 is not within half of one").isUnexplained();
            assertThat(mark(holes, "9 9/16")).as("a mark on the rule, 0.04 from 9.6").isUnexplained();
        }

        @Test
        void roundedToThreeFigures() {
            Variant metric = FixedDraw.of("spacing/bolt-holes", METRIC, "length", "2500 mm", "holes", "4", "edge", "25 mm", "hole", "10 mm");
            // 2450 in 3 spaces are 816.67; over 4 holes 612.5; 2500 in 3 are 833.3.
            assertThat(mark(metric, "612")).isSlip("shared-over-holes");
            assertThat(mark(metric, "613")).isSlip("shared-over-holes");
            Variant crowd = FixedDraw.own("crowd", US);
            assertThat(mark(crowd, "127")).as("127.2 to three figures, asked to hundredths").isSlip("slip-seven");
        }

        @Test
        void tiedSlipsAreBothNamed() {
            assertThat(marks(rack, "12", "228").get(1)).isAnyOf("nineteen-spaces", "twenty-without-one").ofFamily("fence-post", "one-of-two");
        }

        @Test
        void threeThatFitAreNamedAndMoreExplainNothing() {
            Variant crowd = FixedDraw.own("crowd", US);
            assertThat(mark(crowd, "122.90")).isSlip("slip-three");
            assertThat(mark(crowd, "123")).as("six slips round to 123").isUnexplained();
        }

        @Test
        void notWhereItMakesNoSense() {
            Variant square = FixedDraw.of("bends/one-bend", US, "number", "10", "metal", "carbon", "angle", "90 deg", "radius", "1/4 in", "left", "3 in",
                    "right", "2 in", "k", "0.4");
            assertThat(mark(square, "0.4772")).isRight();
            Assertions.assertThat(mark(square, "0.3927").fits()).extracting(Fit::name).containsExactly("inside-radius-only");
            Assertions.assertThat(square.outcomes()).filteredOn(o -> o.slip().name().equals("included-angle"))
                    .extracting(o -> o.effect().name()).containsOnly("NONE");
        }

        @Test
        void ofAFormulaIsNamedLikeOneOfTheExercise() {
            assertThat(mark(bend(), "0.2620")).isSlip("inside-radius-only").ofFamily("inside-for-neutral");
            assertThat(mark(bend(), "0.6365")).isSlip("included-angle").ofFamily("angle-of-another-kind");
        }

        @Test
        void inACountOrAChoiceIsNamedWhereOneAloneFits() {
            Variant drum = drum();
            assertThat(marks(drum, "", "8").get(1)).isSlip("pails-rounded-down");
            assertThat(marks(drum, "", "10").get(1)).isSlip("one-pail-more");
            assertThat(marks(drum, "", "", "middle").get(2)).isRight().earns(0.5);
            assertThat(marks(drum, "", "", "2").get(2)).as("the second in the list").isRight();
            assertThat(marks(drum, "", "", "large").get(2)).as("two slips give it").isUnexplained();
            // 7.5 gal, a small cart; by its depth of 22 in a large one, and no other slip gives that.
            Variant narrow = FixedDraw.of("tanks/drum", US, "across", "10 in", "depth", "22 in", "pail", "1 gal");
            assertThat(marks(narrow, "", "", " LARGE ").get(2)).isSlip("cart-by-depth").earns(0);
            assertThat(marks(narrow, "", "", "2").get(2)).isUnexplained();
        }
    }

    /** 10 gauge carbon, 60 degrees: an allowance of 0.3181 in and a blank of 5.3181 in; with the inside radius 0.2618. */
    private static Variant bend() {
        return FixedDraw.of("bends/one-bend", US, "number", "10", "metal", "carbon", "angle", "60 deg", "radius", "1/4 in", "left", "3 in", "right", "2 in", "k", "0.4");
    }

    @Nested
    class Carried {

        @Test
        void withTheTypedValue() {
            List<AskMark> marks = marks(rack, "13", "260", "40");
            assertThat(marks.get(0)).isUnexplained();
            assertThat(marks.get(1)).isCarried().ofNoFamily().earns(1);
            assertThat(marks.get(2)).isCarried().earns(1);
        }

        @Test
        void withTheUnroundedValueOfTheSlip() {
            // Twenty times 9.6 are 192; twenty times the typed 9 5/8 would be 192 1/2.
            List<AskMark> marks = marks(rack, "9 5/8", "192", "108");
            assertThat(marks.get(0)).isSlip("shared-over-holes");
            assertThat(marks.get(1)).isCarried().named("shared-over-holes").ofFamily("fence-post");
            assertThat(marks.get(2)).isCarried().named("shared-over-holes");
        }

        @Test
        void withEitherInTurn() {
            List<AskMark> marks = marks(rack, "9 5/8", "192 1/2", "107 1/2");
            assertThat(marks.get(1)).isCarried();
            assertThat(marks.get(2)).isCarried();
        }

        @Test
        void oneSlipCountsOnceHoweverManyAnswersItSpoils() {
            List<AskMark> marks = marks(rack, "9 5/8", "192", "108");
            Assertions.assertThat(marks).filteredOn(AskMark::counts).hasSize(1);
        }

        @Test
        void withAMistakeOfThePen() {
            List<AskMark> marks = marks(rack, "120", "2400", "-2100");
            assertThat(marks.get(0)).isOfThePen("decimal-point", "mark.decimal-point");
            assertThat(marks.get(1)).isCarried();
            assertThat(marks.get(2)).isCarried();
        }

        @Test
        void theNextMarkIsARoundingOnTheWay() {
            // 9.6 rounded down to the mark 9 9/16 and twenty of those, after 9 5/8 was typed.
            List<AskMark> marks = marks(rack, "9 5/8", "191 1/4");
            assertThat(marks.get(1)).isOfThePen("rounded-early", "mark.rounded-early");
        }

        @Test
        void aNewSlipOnOwnValuesIsNew() {
            // 13 is nobody's; nineteen of them are 247.
            List<AskMark> marks = marks(rack, "13", "247");
            assertThat(marks.get(1)).isAnyOf("nineteen-spaces", "twenty-without-one").onOwnValues();
            Assertions.assertThat(marks.get(1).counts()).isTrue();
        }

        @Test
        void aNewSlipOnTopOfAnOldOneIsNew() {
            // Nineteen of the unrounded 9.6 are 182.4.
            List<AskMark> marks = marks(rack, "9 5/8", "182 3/8", "117 5/8");
            assertThat(marks.get(0)).isSlip("shared-over-holes");
            assertThat(marks.get(1)).isAnyOf("nineteen-spaces", "twenty-without-one").onOwnValues();
            assertThat(marks.get(2)).isCarried();
        }

        @Test
        void theRightValueIsRightAfterAWrongOne() {
            List<AskMark> marks = marks(rack, "13", "240", "60");
            assertThat(marks.get(0)).isUnexplained();
            assertThat(marks.get(1)).isRight();
            assertThat(marks.get(2)).isRight();
        }

        @Test
        void nothingIsCarriedFromABlank() {
            List<AskMark> marks = marks(rack, "", "192");
            assertThat(marks.get(0)).isBlank();
            assertThat(marks.get(1)).isSlip("shared-over-holes");
        }

        @Test
        void aLaterAnswerAloneNamesTheSlipItself() {
            assertThat(marks(rack, "", "", "108").get(2)).isSlip("shared-over-holes");
        }

        @Test
        void aRightAnswerAsItWasRoundedIsTold() {
            // 12 1/32 is right; twenty of those are 240 5/8, which is not.
            List<AskMark> marks = marks(rack, "12 1/32", "240 5/8");
            assertThat(marks.get(0)).isRight();
            assertThat(marks.get(1)).isOfThePen("rounded-early", "mark.rounded-early").earns(0);
        }

        @Test
        void aSlipGoesBeforeSuchARounding() {
            assertThat(marks(rack, "12", "228").get(1)).isAnyOf("nineteen-spaces", "twenty-without-one");
            assertThat(marks(rack, "12 1/32", "192").get(1)).isSlip("shared-over-holes");
        }
    }

    @Nested
    class OfThePen {

        @Test
        void theNumberOfAnotherUnit() {
            assertThat(mark(holes, "304.8")).isOfThePen("other-unit", "mark.other-unit").saysOf("mm", "in");
            assertThat(mark(holes, "30.48")).isOfThePen("other-unit", "mark.other-unit").saysOf("cm", "in");
            assertThat(mark(holes, "304.8 in")).as("with a unit written there is nothing to mistake").isUnexplained();
        }

        @Test
        void aLineOnTheWay() {
            assertThat(mark(holes, "48")).isOfThePen("stopped-early", "mark.stopped-early").saysOf("span");
        }

        @Test
        void aLineRoundedBeforeItWasUsed() {
            Variant odd = FixedDraw.of("spacing/bolt-holes", US, "length", "61 1/2 in", "holes", "8", "edge", "1 1/2 in", "hole", "3/8 in");
            // 58 1/2 in 7 spaces are 8.357; 59 in 7 would be 8.429.
            assertThat(mark(odd, "8 3/8")).isRight();
            assertThat(mark(odd, "8 7/16")).isOfThePen("rounded-early", "mark.rounded-line").saysOf("span", "1 in");
        }

        @Test
        void thePointOutOfPlace() {
            for (String moved : List.of("120", "1.2", "1200")) {
                assertThat(mark(holes, moved)).isOfThePen("decimal-point", "mark.decimal-point");
            }
            assertThat(mark(holes, "0.12")).as("too small to have digits on a rule").isUnexplained();
        }

        @Test
        void twoDigitsSwapped() {
            Variant metric = FixedDraw.of("spacing/bolt-holes", METRIC, "length", "1500 mm", "holes", "13", "edge", "30 mm", "hole", "10 mm");
            assertThat(mark(metric, "120")).isRight();
            assertThat(mark(metric, "210")).isOfThePen("digits-swapped", "mark.digits-swapped");
            assertThat(mark(metric, "102")).isOfThePen("digits-swapped", "mark.digits-swapped");
            assertThat(mark(holes, "21")).as("two figures swap by chance too easily").isUnexplained();
        }

        @Test
        void aFractionWrittenBehindThePoint() {
            Variant odd = FixedDraw.of("spacing/bolt-holes", US, "length", "61 1/2 in", "holes", "8", "edge", "1 1/2 in", "hole", "3/8 in");
            assertThat(mark(odd, "8.3")).as("8 3/8").isOfThePen("fraction-as-decimal", "mark.fraction-as-decimal");
        }

        @Test
        void oneDividedByIt() {
            // 1.729 in straight across; 1/1.729 is 0.578.
            assertThat(marks(circle(), "", "0.58").get(1)).isOfThePen("upside-down", "mark.upside-down");
        }

        @Test
        void aCalculatorInRadians() {
            // 5.75 times the sine of 17.5 radians.
            assertThat(marks(circle(), "", "-5.61").get(1)).isOfThePen("radians", "mark.radians");
            // 2.875 times cosine and sine of 35 radians.
            assertThat(marks(circle(), "(-2.60, -1.23)").get(0)).isOfThePen("radians", "mark.radians");
        }
    }

    private static Variant circle() {
        return FixedDraw.of("circles/bolt-circle", US, "across", "5 3/4 in", "turn", "35 deg", "first", "1 in", "step", "2 1/2 in", "count", "4");
    }

    @Nested
    class TwoSlips {

        @Test
        void thatShareNoLine() {
            assertThat(mark(holes, "10")).isPair("shared-over-holes", "ends-left-in").ofFamily("fence-post", "allowance-forgotten").earns(0);
        }

        @Test
        void aSingleSlipGoesBefore() {
            assertThat(mark(holes, "8")).isSlip("one-space-too-many");
        }

        @Test
        void areNotNamedOfCounts() {
            // Rounded down and one more at once would be nine again; ten less is nobody's.
            assertThat(marks(drum(), "", "12").get(1)).isUnexplained();
        }

        @Test
        void doNotCount() {
            Assertions.assertThat(mark(holes, "10").counts()).isFalse();
        }
    }

    @Nested
    class NotNamed {

        @Test
        void nearIsWithinFourTimesTheTolerance() {
            assertThat(mark(holes, "12.1")).isNear().says("mark.near").saysOf("0.1 in", "1/32 in").earns(0.5);
            assertThat(mark(holes, "12 1/8")).isNear();
            assertThat(mark(holes, "12.126")).isUnexplained();
        }

        @Test
        void whatNothingGives() {
            assertThat(mark(holes, "17.3")).isUnexplained().earns(0);
            assertThat(mark(holes, "0")).isUnexplained();
            assertThat(mark(holes, "-12")).isUnexplained();
        }

        @Test
        void whatCannotBeReadIsAskedAgainAndCostsNothing() {
            assertThat(mark(holes, "31/2")).isAskedAgain("reading.mixed-or-fraction");
            assertThat(mark(holes, "twelve")).isAskedAgain("reading.digits-please");
            assertThat(mark(holes, "12 gal")).isAskedAgain("reading.wrong-dimension");
            List<AskMark> marks = marks(rack, "31/2", "240", "60");
            assertThat(marks.get(1)).isRight();
            assertThat(marks.get(2)).isRight();
            Assertions.assertThat(marks(rack, "31/2", "192").get(1).verdict()).as("nothing is carried from it").isEqualTo(Verdict.SLIP);
        }

        @Test
        void whatIsNotThereIsBlank() {
            assertThat(mark(holes, "")).isBlank();
            assertThat(mark(holes, "   ")).isBlank();
            Assertions.assertThat(marks(rack)).hasSize(3).allSatisfy(m -> assertThat(m).isBlank());
        }

        @Test
        void aChoiceThatIsNoneIsAskedAgain() {
            assertThat(marks(drum(), "", "", "huge").get(2)).isAskedAgain("mark.no-such-option").saysOf("huge", "small, middle, large");
        }
    }

    @Nested
    class ListsAndPoints {

        @Test
        void aRowOfMarksIsRightFromEitherEnd() {
            assertThat(marks(circle(), "", "", "1; 3 1/2; 6; 8 1/2").get(2)).isRight().earns(3);
            assertThat(marks(circle(), "", "", "8 1/2; 6; 3 1/2; 1").get(2)).isRight();
            assertThat(marks(circle(), "", "", "1\n3 1/2\n6\n8 9/16").get(2)).as("each within its tolerance").isRight();
        }

        @Test
        void slipsOfLists() {
            assertThat(marks(circle(), "", "", "3 1/2; 6; 8 1/2; 11").get(2)).isSlip("from-the-end");
            assertThat(marks(circle(), "", "", "1; 3 1/2; 6; 8 1/2; 11").get(2)).isSlip("one-mark-more");
        }

        @Test
        void listsThatNothingGives() {
            assertThat(marks(circle(), "", "", "1; 3 1/2; 6").get(2)).isUnexplained();
            assertThat(marks(circle(), "", "", "1; 3 1/2; 6; 20").get(2)).isUnexplained();
            assertThat(marks(circle(), "", "", "1; 3 1/2; 6; 8 5/8").get(2)).isNear().says("mark.near-list");
        }

        @Test
        void aPointIsRightWhereBothNumbersAre() {
            assertThat(marks(circle(), "(2.36, 1.65)").get(0)).isRight();
            assertThat(marks(circle(), "2.36; 1.65").get(0)).isRight();
            assertThat(marks(circle(), "(2.36, 1.68)").get(0)).isNear();
            assertThat(marks(circle(), "(2.36, 3)").get(0)).isUnexplained();
        }

        @Test
        void slipsOfPoints() {
            assertThat(marks(circle(), "(1.65, 2.36)").get(0)).isSlip("sides-swapped");
            assertThat(marks(circle(), "(4.71, 3.30)").get(0)).isSlip("across-for-half-here");
        }
    }

    @Nested
    class Points {

        private Marked marked(MarkRules rules, String... answers) {
            return Marker.mark(rack, List.of(answers), '.', rules);
        }

        @Test
        void areThoseOfTheAsks() {
            Marked all = marked(MarkRules.USUAL, "12", "240", "60");
            Assertions.assertThat(all.points()).isEqualTo(4);
            Assertions.assertThat(all.possible()).isEqualTo(4);
            Assertions.assertThat(all.isAllRight()).isTrue();
            Assertions.assertThat(all.first()).isEmpty();
        }

        @Test
        void carriedAnswersEarnTheirsWhereTheRulesSaySo() {
            Assertions.assertThat(marked(MarkRules.USUAL, "9 5/8", "192", "108").points()).isEqualTo(2);
            Assertions.assertThat(marked(new MarkRules(false, 0.5, true), "9 5/8", "192", "108").points()).isZero();
        }

        @Test
        void nearAnswersEarnAShare() {
            Assertions.assertThat(marked(MarkRules.USUAL, "12.1").points()).isEqualTo(1);
            Assertions.assertThat(marked(new MarkRules(true, 0, true), "12.1").points()).isZero();
            Assertions.assertThat(marked(new MarkRules(true, 0.25, true), "12.1").points()).isEqualTo(0.5);
        }

        @Test
        void coarseConstantsEarnWhereTheRulesSaySo() {
            Variant coarse = FixedDraw.own("coarse", US);
            Assertions.assertThat(Marker.mark(coarse, List.of("1256"), '.', MarkRules.USUAL).points()).isEqualTo(2);
            Assertions.assertThat(Marker.mark(coarse, List.of("1256"), '.', new MarkRules(true, 0.5, false)).points()).isZero();
        }

        @Test
        void theFirstThatIsNamedIsShownFirst() {
            Assertions.assertThat(marked(MarkRules.USUAL, "13", "247").first().orElseThrow().ask().name()).isEqualTo("row");
            Assertions.assertThat(marked(MarkRules.USUAL, "13", "260").first().orElseThrow().ask().name()).isEqualTo("pitch");
        }
    }

    @Nested
    class WhatWouldComeOfIt {

        private String consequence(Variant variant, String... answers) {
            Marked marked = Marker.mark(variant, List.of(answers), '.', MarkRules.USUAL);
            return marked.consequence().map(c -> Shown.text(variant.model(), c.say(), marked.asCut(), marked.asCut()).replace('\u00a0', ' ')).orElse("");
        }

        @Test
        void theFirstConsequenceThatHoldsWithTheAnswerPutIn() {
            Assertions.assertThat(consequence(holes, "13")).isEqualTo("The last hole would land 4 in past its place.");
            Assertions.assertThat(consequence(holes, "11")).isEqualTo("The last hole would stop short of its place.");
            Assertions.assertThat(consequence(rack, "15")).as("20 times 15 are 300: the bar is just long enough").isEqualTo("Spaces of 15 in let a foot through.");
            Assertions.assertThat(consequence(rack, "16")).isEqualTo("The bar is too short.");
        }

        @Test
        void aLaterAnswerStandsAsItWasTyped() {
            Assertions.assertThat(consequence(rack, "16", "240")).as("240 is the right row").isEqualTo("The bar is too short.");
            Assertions.assertThat(consequence(rack, "16", "250")).isEqualTo("Spaces of 16 in let a foot through.");
        }

        @Test
        void nothingComesOfRightOrMissingAnswers() {
            Assertions.assertThat(consequence(holes, "12")).isEmpty();
            Assertions.assertThat(consequence(holes, "12 1/32")).isEmpty();
            Assertions.assertThat(consequence(holes, "")).isEmpty();
            Assertions.assertThat(consequence(holes, "31/2")).isEmpty();
        }
    }

    @Nested
    class Odd {

        @Test
        void theChanceOfANameIsTheShareOfTheRangeThatSlipsCover() {
            // Four windows of 1/16 in at 8, 9.6, 12.25 and 12.5 between 2.4 and 60, on a logarithmic scale.
            double covered = 0;
            for (double slip : new double[] {8, 9.6, 12.25, 12.5}) {
                covered += Math.log((slip + 1 / 32.0) / (slip - 1 / 32.0));
            }
            Assertions.assertThat(Odds.of(holes, holes.model().asks().get(0))).isCloseTo(covered / (2 * Math.log(5)), Assertions.within(1e-12));
            Assertions.assertThat(Odds.of(drum(), drum().model().asks().get(2))).isZero();
        }

        @Test
        void markingTwiceGivesTheSame() {
            List<String> answers = List.of("9 5/8", "182 3/8", "117 5/8");
            Marked first = Marker.mark(rack, answers, '.', MarkRules.USUAL);
            Marker.mark(rack, List.of("13", "247", "60"), '.', MarkRules.USUAL);
            Marked again = Marker.mark(rack, answers, '.', MarkRules.USUAL);
            Assertions.assertThat(again.asks()).extracting(m -> m.verdict() + " " + m.say() + " " + m.families() + " " + m.points())
                    .isEqualTo(first.asks().stream().map(m -> m.verdict() + " " + m.say() + " " + m.families() + " " + m.points()).toList());
        }

        @Test
        void verdictsAreAClosedList() {
            Assertions.assertThat(Verdict.values()).extracting(Verdict::word)
                    .containsExactly("right", "right-but", "carried", "near", "slip", "unexplained", "ask-again", "blank");
        }
    }
}
