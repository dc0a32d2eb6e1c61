package soapstone.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soapstone.quantity.Units;

/** Amounts that no part has: a wrong answer can be anything. Either a sound drawing or none, never an error. */
class WildValuesTest {

    private static final double[] FACTORS = {0, -1, 50, 1e-6, 1e6, 1e12, Double.NaN, Double.POSITIVE_INFINITY, 7, 0.02, 1e-300};
    private static final double[] COUNTS = {0, -3, 1, 3000, 1e9, 2.5, Double.NaN, 120};
    private static final int PARTS = 6;

    static List<String> kinds() {
        return FigureKinds.kinds().stream().map(FigureKind::name).toList();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void staysOnItsSheetWhenOneValueIsWild(String name) {
        FigureKind kind = FigureKinds.kind(name).orElseThrow();
        for (int seed = 0; seed < PARTS; seed++) {
            Inputs in = new RandomInputs(seed).draw(name);
            for (FigureArgument a : kind.arguments()) {
                double[] wild = a.name().equals("count") ? COUNTS : FACTORS;
                for (double w : wild) {
                    tryWild(in, a, w, name + " " + a.name() + " " + w + " seed " + seed);
                }
            }
        }
    }

    private static void tryWild(Inputs in, FigureArgument a, double w, String what) {
        double[] amounts = in.amounts(a.name());
        if (amounts.length == 0) {
            return;
        }
        int last = amounts.length - 1;
        amounts[last] = a.name().equals("count") ? w : amounts[last] * w;
        FigureInput wild = in.copy().change(a.name(), amounts).build();
        FigureKinds.draw(wild, null, "f").ifPresent(f -> Drawn.isSound(f, what + " alone"));
        Optional<Figure> over = FigureKinds.draw(in.build(), wild, "f");
        assertThat(over).as(what).isPresent();
        Drawn.isSound(over.get(), what + " as cut");
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void drawsNothingWithoutItsArguments(String name) {
        FigureKind kind = FigureKinds.kind(name).orElseThrow();
        Inputs in = new RandomInputs(1).draw(name);
        for (FigureArgument a : kind.arguments()) {
            if (!a.optional()) {
                assertThat(FigureKinds.draw(in.copy().without(a.name()).build(), null, "f")).as(a.name()).isEmpty();
                assertThat(FigureKinds.draw(in.copy().put(a.name(), Units.SECOND, 3).build(), null, "f")).as(a.name()).isEmpty();
                assertThat(FigureKinds.draw(in.copy().put(a.name(), Units.INCH).build(), null, "f")).as(a.name()).isEmpty();
            }
        }
    }

    @Test
    void drawsNothingOfAnUnknownKind() {
        assertThat(FigureKinds.draw(Inputs.of("gear").length("length", 3).build(), null, "f")).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void saysThatAnAnswerCannotBeDrawn(String name) {
        FigureKind kind = FigureKinds.kind(name).orElseThrow();
        Inputs in = new RandomInputs(3).draw(name);
        double[] amounts = in.amounts(kind.arguments().get(0).name());
        Arrays.fill(amounts, Double.NaN);
        FigureInput yours = in.copy().change(kind.arguments().get(0).name(), amounts).build();
        Figure figure = FigureKinds.draw(in.build(), yours, "f").orElseThrow();
        assertThat(figure.desc().contains("Yours cannot be drawn.")).isEqualTo(kind.asCut());
    }

    @Test
    void holdsListsOfAnyLength() {
        for (int n : new int[] {1, 2, 60, 199, 500}) {
            double[] many = new double[n];
            Arrays.setAll(many, i -> (i + 1) * 1.25);
            for (String[] what : new String[][] {{"mark-row", "marks", "length"}, {"flat-strip", "bends", "width"}}) {
                Inputs in = Inputs.of(what[0]).length(what[2], n * 1.25 + 2).length(what[1], many);
                String as = what[0] + " with " + n;
                FigureKinds.draw(in.build(), null, "f").ifPresent(f -> Drawn.isSound(f, as));
                Inputs one = Inputs.of(what[0]).length(what[2], 10).length(what[1], 3);
                Drawn.isSound(FigureKinds.draw(one.build(), in.build(), "f").orElseThrow(), as + " as cut");
            }
            FigureKinds.draw(Inputs.of("stack").length("layers", many).build(), null, "f").ifPresent(f -> Drawn.isSound(f, "stack " + n));
        }
    }

    @Test
    void escapesWhatItIsGiven() {
        Inputs in = Inputs.of("triangle").length("run", 30).texts("run", "<b>&\"30\u0001'").length("rise", 20).ask("rise", "<");
        Figure figure = FigureKinds.draw(in.build(), null, "a\"b<").orElseThrow();
        DrawnSvg wide = DrawnSvg.read(figure.wide());
        assertThat(wide.lettering()).extracting(DrawnSvg.Lettered::text).contains("<b>&\"30'", "<");
        assertThat(DrawnSvg.read(figure.narrow()).content("desc")).contains("<b>&\"30'");
    }

    @Test
    void takesLongTexts() {
        Map<String, Integer> lengths = new LinkedHashMap<>(Map.of("hole-row", 24, "box-tank", 24, "triangle", 30));
        lengths.forEach((kind, n) -> {
            Inputs in = new RandomInputs(5).draw(kind);
            for (FigureArgument a : FigureKinds.kind(kind).orElseThrow().arguments()) {
                if (in.amounts(a.name()).length == 1) {
                    in.texts(a.name(), "9".repeat(n));
                }
            }
            Drawn.isSound(FigureKinds.draw(in.build(), null, "f").orElseThrow(), kind + " with long texts");
        });
    }
}
