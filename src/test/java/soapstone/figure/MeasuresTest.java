package soapstone.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Measures likely parts of every kind like a sheet of paper, alone and with an answer's part over them. */
class MeasuresTest {

    private static final int PARTS = 60;

    static List<String> kinds() {
        return FigureKinds.kinds().stream().map(FigureKind::name).filter(Measures::areOf).toList();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void whatIsDrawnLiesWhereTheAmountsSay(String kind) {
        Measures.Taken taken = new Measures.Taken(0, 0);
        boolean asCut = FigureKinds.kind(kind).orElseThrow().asCut();
        for (int seed = 0; seed < PARTS; seed++) {
            RandomInputs random = new RandomInputs(seed);
            Inputs right = random.draw(kind);
            Inputs yours = random.off(right, FigureKinds.kind(kind).orElseThrow());
            taken = taken.plus(measure(right.build(), null, kind + " seed " + seed));
            taken = asCut ? taken.plus(measure(right.build(), yours.build(), kind + " seed " + seed + " as cut")) : taken;
        }
        assertThat(taken.all()).isPositive();
        assertThat(taken.yours() > 0).as("something of the answer's part is measured").isEqualTo(asCut);
    }

    private static Measures.Taken measure(FigureInput right, FigureInput yours, String what) {
        Figure f = FigureKinds.draw(right, yours, "f").orElseThrow();
        return Measures.take(right, yours, DrawnSvg.read(f.wide()), what + " wide").plus(Measures.take(right, yours, DrawnSvg.read(f.narrow()), what + " narrow"));
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void dimensionsAreToOneScale(String kind) {
        for (int seed = 0; seed < PARTS; seed++) {
            Dimensions.areToOneScale(new RandomInputs(seed).draw(kind).build(), kind + " seed " + seed);
        }
    }

    @Test
    void everyKindIsMeasuredOrSaysWhyNot() {
        assertThat(FigureKinds.kinds().stream().map(FigureKind::name)).allMatch(k -> Measures.has(k) != Measures.NOTHING_TO_SCALE.containsKey(k));
    }
}
