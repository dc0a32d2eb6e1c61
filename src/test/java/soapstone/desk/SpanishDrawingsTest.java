package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soapstone.figure.Drawn;
import soapstone.figure.DrawnSvg;
import soapstone.figure.Figure;
import soapstone.figure.FigureKinds;
import soapstone.page.Words;

/**
 * The bank's drawings with Spanish words, which are longer: all that is drawn in English is in Spanish, just as sound, and the
 * part does not shrink away for its lettering.
 */
class SpanishDrawingsTest {

    private static final int SEEDS = 3;
    private static final double LEAST_SHARE = 0.6;
    private static final String CANNOT = Words.ofDrawings("es").get("cannot.draw.yours");

    static List<String> exercises() {
        return BankDrawings.exercises();
    }

    @ParameterizedTest
    @MethodSource("exercises")
    void areDrawnAsInEnglish(String id) {
        BankDrawings.each(id, SEEDS, english -> {
            List<String> flags = english.asked() ? List.of() : new Spoken(english.model()).sizes();
            Figure figure = FigureKinds.draw(english.right(), english.yours(), "f", Words.ofDrawings("es"), flags).orElseThrow(() -> new AssertionError(english.what()));
            Drawn.isSound(figure, english.what());
            assertThat(english.figure().desc()).as(english.what()).doesNotContain(FigureKinds.englishWords().get("cannot.draw.yours"));
            assertThat(figure.desc()).as(english.what()).doesNotContain(CANNOT);
            assertThat(part(DrawnSvg.read(figure.narrow())) / part(english.narrow())).as(english.what() + ": the part's width on a phone").isGreaterThan(LEAST_SHARE);
            assertThat(part(DrawnSvg.read(figure.wide())) / part(english.wide())).as(english.what() + ": the part's width at a desk").isGreaterThan(LEAST_SHARE);
        });
    }

    private static double part(DrawnSvg drawn) {
        return drawn.width("visible|section|bend");
    }
}
