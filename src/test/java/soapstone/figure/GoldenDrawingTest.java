package soapstone.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * One drawing of every kind, and one as cut of those that can be, held as files: a change of how they look shows on purpose.
 * {@code -Dgolden.rewrite=true} writes them anew; look at them before they are kept.
 */
class GoldenDrawingTest {

    private static final Path FOLDER = Path.of("src/test/resources/soapstone/figure");

    static List<String> names() {
        return Samples.all().stream().map(Samples.Sample::name).filter(GoldenDrawingTest::isGolden).toList();
    }

    private static boolean isGolden(String name) {
        return FigureKinds.kind(name.replace("-as-cut", "")).isPresent();
    }

    @ParameterizedTest
    @MethodSource("names")
    void isDrawnAsBefore(String name) throws IOException {
        Samples.Sample sample = Samples.all().stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow();
        Figure figure = FigureKinds.draw(sample.right(), sample.yours(), name).orElseThrow();
        for (String[] layout : new String[][] {{"wide", figure.wide()}, {"narrow", figure.narrow()}}) {
            Path file = FOLDER.resolve(name + "." + layout[0] + ".svg");
            if (Boolean.getBoolean("golden.rewrite")) {
                Files.createDirectories(FOLDER);
                Files.writeString(file, layout[1], StandardCharsets.UTF_8);
            }
            assertThat(layout[1]).as(name).isEqualTo(Files.readString(file, StandardCharsets.UTF_8));
        }
    }

    @Test
    void holdsEveryKind() {
        List<String> names = names();
        for (FigureKind kind : FigureKinds.kinds()) {
            assertThat(names).contains(kind.name());
            if (kind.asCut()) {
                assertThat(names).contains(kind.name() + "-as-cut");
            }
        }
    }

    @Test
    void allSamplesAreSound() {
        for (Samples.Sample s : Samples.all()) {
            Drawn.isSound(FigureKinds.draw(s.right(), s.yours(), "f").orElseThrow(), s.name());
        }
    }
}
