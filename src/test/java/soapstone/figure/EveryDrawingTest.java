package soapstone.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every kind with 200 parts that could be made: with and without asked values, with and without an answer's part. */
class EveryDrawingTest {

    private static final int PARTS = 200;

    static List<String> kinds() {
        return FigureKinds.kinds().stream().map(FigureKind::name).toList();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void isSoundAndTellsAllThatItShows(String name) {
        FigureKind kind = FigureKinds.kind(name).orElseThrow();
        for (int seed = 0; seed < PARTS; seed++) {
            RandomInputs random = new RandomInputs(seed);
            Inputs right = random.draw(name);
            if (seed % 2 == 1) {
                random.ask(right, kind);
            }
            FigureInput yours = seed % 4 < 2 ? null : random.off(right, kind).build();
            String what = name + " seed " + seed;
            Optional<Figure> figure = FigureKinds.draw(right.build(), yours, "f");
            assertThat(figure).as(what).isPresent();
            Drawn.isSound(figure.get(), what);
        }
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void keepsAskedNumbersToItself(String name) {
        FigureKind kind = FigureKinds.kind(name).orElseThrow();
        for (int seed = 0; seed < PARTS / 4; seed++) {
            RandomInputs random = new RandomInputs(seed);
            Inputs in = random.draw(name);
            for (FigureArgument a : kind.arguments()) {
                double[] amounts = in.amounts(a.name());
                if (amounts.length == 0) {
                    continue;
                }
                Inputs asked = in.copy().texts(a.name(), Arrays.stream(amounts).mapToObj(x -> "ZQ7").toArray(String[]::new))
                        .ask(a.name(), "q");
                Figure figure = FigureKinds.draw(asked.build(), null, "f").orElseThrow();
                assertThat(figure.desc() + figure.wide() + figure.narrow()).as(name + " " + a.name() + " seed " + seed)
                        .doesNotContain("ZQ7");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void isTheSameEachTime(String name) {
        FigureInput in = new RandomInputs(7).draw(name).build();
        assertThat(FigureKinds.draw(in, null, "f")).isEqualTo(FigureKinds.draw(in, null, "f"));
    }
}
