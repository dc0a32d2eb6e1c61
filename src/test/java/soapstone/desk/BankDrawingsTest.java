package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import soapstone.exercise.Exercise;
import soapstone.exercise.Given;
import soapstone.figure.Dimensions;
import soapstone.figure.Drawn;
import soapstone.figure.DrawnSvg;
import soapstone.figure.Measures;
import soapstone.quantity.UnitSystem;

/**
 * The drawings of every exercise of the bank, as they are asked, with all told, and as each mistake would have cut them: well formed,
 * inside their frame, no lettering on other lettering or across a thick line; every number that is drawn is described, and is one of
 * the working's; and every given that a drawing can show stands in its description.
 */
class BankDrawingsTest {

    private static final int FEW = 4;
    private static final int MANY = 200;

    /**
     * Told givens that no description says, by exercise: a density, a rate, a price, a weight of what is not drawn, a row of a table;
     * the sizes from which a drawn one is worked out; and the lines of a rule, which are drawn and not lettered.
     */
    private static final String NOT_DRAWN = """
            baffles/compartment-gallons depth one_weighs
            baffles/flow-opening share
            bends/bend-allowance number
            bends/bend-deduction number
            bends/flat-angle k number
            bends/flat-channel k number
            bends/hose-tray k number
            bends/k-from-strip number strip
            bends/metric-factor legs
            bends/setback number
            boxes/corner-notch deduction
            brake/back-gauge deduction
            brake/bend-tons base rule strength
            brake/die-opening number
            circles/bolt-circle-points number
            circles/ring-area per_area
            estimating/quote hour_cost hours lot margin minutes per_lot sheet_weight
            estimating/sheets-to-order needed spares
            jobs/ramp-guard gap_limit picket_bar picket_height post post_weight rail
            jobs/sap-hauling-tank limit sap tank thickness trailer
            measuring/nearest-sixteenth step
            measuring/rule-reading major step
            measuring/stack-up room stock
            moving/payload-left one_weighs
            moving/tongue-weight cargo empty
            pressure/cover-bolts bolt_load
            pressure/panel-stress free held ratio
            ratio/right-size per_area
            ratio/waste-on-order waste
            sheet/gauge-look-up number
            sheet/plate-by-density density
            sheet/sheet-by-area number per_area
            sheet/tube-weight density
            spacing/hole-marks edge holes play
            spacing/max-gap limit
            tanks/depth-for-gallons amount step
            tanks/full-weight empty one_weighs
            tanks/outside-to-inside thickness
            units/cubic-inches-to-gallons freeboard
            units/feet-and-inches one small_in_one
            welding/filler-weight density efficiency
            welding/heat-input efficiency
            """;

    /** Exercises whose answers leave the part as it is drawn: what they have wrong is told in words. */
    private static final Set<String> NOT_OVER_THE_PART = Set.of();

    static List<String> drawn() {
        return BankDrawings.exercises();
    }

    @ParameterizedTest
    @MethodSource("drawn")
    void areSound(String id) {
        BankDrawings.each(id, FEW, BankDrawingsTest::isSound);
    }

    @ParameterizedTest
    @MethodSource("drawn")
    void sayOnlyNumbersOfTheWorking(String id) {
        BankDrawings.each(id, FEW, BankDrawingsTest::saysNothingElse);
    }

    @ParameterizedTest
    @MethodSource("drawn")
    void sayEveryGivenThatTheyShow(String id) {
        Set<String> unsaid = new TreeSet<>();
        BankDrawings.each(id, FEW, d -> unsaid.addAll(unsaid(d)));
        assertThat(unsaid).as(id).isEqualTo(notDrawn().getOrDefault(id, Set.of()));
    }

    @ParameterizedTest
    @MethodSource("drawn")
    void measureWhatTheirNumbersSay(String id) {
        String kind = RealSite.library().bank().exercise(id).orElseThrow().us().figure().orElseThrow().kind();
        Taken taken = new Taken();
        BankDrawings.each(id, FEW, taken::measure);
        assertThat(taken.all.all() > 0).as("something is measured").isEqualTo(Measures.areOf(kind));
        assertThat(taken.all.yours() > 0 || taken.yours == 0 || NOT_OVER_THE_PART.contains(id)).as(id + ": something of an answer's part is measured").isTrue();
    }

    @ParameterizedTest
    @MethodSource("drawn")
    void dimensionTheirSizesToOneScale(String id) {
        BankDrawings.each(id, FEW, BankDrawingsTest::isToOneScale);
    }

    /** A deduction that is an addition; a row of an answer that is much too long; and what printed untrue numbers. */
    @ParameterizedTest
    @CsvSource({"bends/metric-factor, US, 57", "jobs/ramp-guard, US, 199", "spacing/bolt-holes, US, 1", "measuring/rule-reading, US, 1",
        "baffles/compartment-gallons, US, 0", "boxes/lid-fit, US, 1"})
    void seedsThatFoundSomething(String id, UnitSystem units, long seed) {
        BankDrawings.of(id, units, seed, d -> {
            isSound(d);
            saysNothingElse(d);
            new Taken().measure(d);
            isToOneScale(d);
        });
    }

    @Tag("soak")
    @ParameterizedTest
    @MethodSource("drawn")
    void allOfItHoldsInManyDraws(String id) {
        Set<String> may = notDrawn().getOrDefault(id, Set.of());
        BankDrawings.each(id, MANY, d -> {
            isSound(d);
            saysNothingElse(d);
            new Taken().measure(d);
            isToOneScale(d);
            assertThat(may).as(d.what()).containsAll(unsaid(d));
        });
    }

    @Test
    void everyExerciseHasOneAndAConsequence() {
        List<String> without = RealSite.library().bank().exercises().values().stream().filter(e -> e.us().figure().isEmpty() || e.us().consequence().isEmpty())
                .map(Exercise::id).toList();
        assertThat(without).isEmpty();
    }

    /** What was measured of some drawings, and how many of them have an answer's part. */
    private static final class Taken {
        private Measures.Taken all = new Measures.Taken(0, 0);
        private int yours;

        private void measure(BankDrawings.Drawing d) {
            yours += d.yours() == null ? 0 : 1;
            for (DrawnSvg layout : d.layouts()) {
                all = all.plus(Measures.take(d.right(), d.yours(), layout, d.what()));
            }
        }
    }

    private static void isSound(BankDrawings.Drawing d) {
        Drawn.isSound(d.figure(), d.wide(), d.narrow(), d.what());
    }

    private static void isToOneScale(BankDrawings.Drawing d) {
        if (!d.asked() && d.yours() == null) {
            Dimensions.areToOneScale(d.right(), d.what());
        }
    }

    private static void saysNothingElse(BankDrawings.Drawing d) {
        DrawnNumbers numbers = new DrawnNumbers(d.model(), d.run(), d.theirs(), DerivedSizes.of(d.right(), d.yours()));
        assertThat(numbers.strange(d.figure(), d.layouts())).as(d.what()).isEmpty();
    }

    /** The told givens that neither title nor description says. A label is no number; what is asked for is no given. */
    private static Set<String> unsaid(BankDrawings.Drawing d) {
        DrawnNumbers numbers = new DrawnNumbers(d.model(), d.run(), null, List.of());
        return d.model().givens().stream().filter(g -> !g.hidden() && d.model().program().slot(g.slot()).type().isAmount())
                .filter(g -> !numbers.says(d.figure(), g.slot(), d.run())).map(Given::name).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Map<String, Set<String>> notDrawn() {
        Map<String, Set<String>> all = new TreeMap<>();
        NOT_DRAWN.lines().map(l -> l.trim().split(" ")).forEach(l -> all.put(l[0], new TreeSet<>(Arrays.asList(l).subList(1, l.length))));
        return all;
    }
}
