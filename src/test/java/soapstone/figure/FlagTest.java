package soapstone.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Numbered flags beside the sizes of a drawing: where they stand, what they are tied to, and that nothing lies under them. */
class FlagTest {

    private static final int PARTS = 40;
    private static final int MOST_FLAGS = 8;
    private static final double HALF_HEIGHT = 8.5;

    static List<String> kinds() {
        return FigureKinds.kinds().stream().map(FigureKind::name).toList();
    }

    /** Every argument, and every value of those that are lists. */
    private static List<String> all(FigureKind kind, Inputs in) {
        List<String> names = new ArrayList<>();
        for (FigureArgument a : kind.arguments()) {
            int many = in.amounts(a.name()).length;
            if (a.list()) {
                IntStream.range(0, many).forEach(i -> names.add(Flags.item(a.name(), i)));
            } else if (many > 0) {
                names.add(a.name());
            }
        }
        return names;
    }

    private static Figure draw(FigureInput right, FigureInput yours, List<String> flags) {
        return FigureKinds.draw(right, yours, "f", Map.of(), flags).orElseThrow();
    }

    private static Figure holes(List<String> flags) {
        Samples.Sample sample = Samples.all().stream().filter(s -> s.name().equals("hole-row")).findFirst().orElseThrow();
        return draw(sample.right(), null, flags);
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void standClearOnEveryDrawing(String name) {
        FigureKind kind = FigureKinds.kind(name).orElseThrow();
        for (int seed = 0; seed < PARTS; seed++) {
            RandomInputs random = new RandomInputs(seed);
            Inputs right = random.draw(name);
            FigureInput yours = seed % 3 == 0 ? random.off(right, kind).build() : null;
            List<String> names = all(kind, right);
            Collections.shuffle(names, new Random(seed));
            Figure figure = draw(right.build(), yours, names.subList(0, Math.min(MOST_FLAGS, names.size())));
            Drawn.isSound(figure, name + " seed " + seed + " with flags");
            for (String svg : List.of(figure.wide(), figure.narrow())) {
                areClear(DrawnSvg.read(svg), figure.flags().size(), name + " seed " + seed);
            }
        }
    }

    private static void areClear(DrawnSvg drawn, int flags, String what) {
        List<Box> boxes = drawn.paths("flag");
        assertThat(boxes).as(what).hasSize(flags);
        for (Box flag : boxes) {
            for (Pt[] piece : drawn.pieces("visible|phantom|bend|yours-mark")) {
                assertThat(flag.isCrossedBy(piece[0], piece[1])).as(what + ": a thick line runs through a flag").isFalse();
            }
            long inside = drawn.lettering().stream().filter(l -> l.box().overlaps(flag)).count();
            assertThat(inside).as(what + ": lettering in a flag is its number alone").isEqualTo(1);
            assertThat(boxes.stream().filter(other -> other.overlaps(flag)).count()).as(what + ": flags on each other").isEqualTo(1);
        }
    }

    @Test
    void areNumberedAsTheyWereAskedFor() {
        Figure figure = holes(List.of("pitch", "length", "first"));
        assertThat(figure.flags()).containsExactly("pitch", "length", "first");
        for (String svg : List.of(figure.wide(), figure.narrow())) {
            assertThat(svg).contains("data-size=\"pitch\" data-flag=\"1\"", "data-size=\"length\" data-flag=\"2\"", "data-size=\"first\" data-flag=\"3\"");
        }
        assertThat(figure.desc()).contains("Center to center, flag 1:", "Length, flag 2:");
    }

    @Test
    void whatIsNotLetteredHasNone() {
        Figure figure = holes(List.of("nothing", "pitch", "pitch"));
        assertThat(figure.flags()).containsExactly("pitch");
        assertThat(figure.wide()).contains("data-flag=\"1\"").doesNotContain("data-flag=\"2\"");
    }

    @Test
    void tieTheLinesOfTheirDimension() {
        DrawnSvg drawn = DrawnSvg.read(holes(List.of("pitch")).wide());
        assertThat(drawn.text().split("data-size=\"pitch\"")).as("lines, two arrows, lettering, flag and number").hasSizeGreaterThanOrEqualTo(8);
    }

    @Test
    void standAtTheHeightOfWhatTheyPointAt() {
        DrawnSvg drawn = DrawnSvg.read(holes(List.of("length")).wide());
        Box flag = drawn.paths("flag").get(0);
        Box length = drawn.lettering().stream().filter(l -> l.text().startsWith("36")).findFirst().orElseThrow().box();
        assertThat((flag.top() + flag.bottom()) / 2).isBetween(length.top() - HALF_HEIGHT, length.bottom() + HALF_HEIGHT);
        assertThat(flag.left() - length.right()).isBetween(0.0, 8.0);
    }

    @Test
    void aDrawingWithoutFlagsIsTheSameAsBefore() {
        assertThat(holes(List.of()).wide().replace("data-part=", "")).doesNotContain("data-");
    }
}
