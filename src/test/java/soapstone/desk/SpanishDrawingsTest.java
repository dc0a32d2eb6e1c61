package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soapstone.figure.Drawn;
import soapstone.figure.FigureKinds;
import soapstone.page.Words;
import soapstone.quantity.UnitSystem;

/**
 * The drawings in Spanish, whose words are longer: as sound as the English ones, and of every answer's part that English draws, a
 * Spanish drawing too. A drawing with too little room for its words would be left out, and the page would say that there is none.
 */
class SpanishDrawingsTest {

    private static final int FEW = 1;
    private static final int MANY = 100;

    static List<String> drawn() {
        return BankDrawings.exercises();
    }

    @ParameterizedTest
    @MethodSource("drawn")
    void areAsSoundAsTheEnglishOnes(String id) {
        BankDrawings.each(id, FEW, "es", SpanishDrawingsTest::isSound);
    }

    /** The longest row of lettering that a draw has had. */
    @Test
    void seedsThatFoundSomething() {
        BankDrawings.of("spacing/bolt-holes", UnitSystem.US, 20, "es", SpanishDrawingsTest::isSound);
    }

    @Tag("soak")
    @ParameterizedTest
    @MethodSource("drawn")
    void areSoInManyDraws(String id) {
        BankDrawings.each(id, MANY, "es", SpanishDrawingsTest::isSound);
    }

    private static void isSound(BankDrawings.Drawing d) {
        Drawn.isSound(d.figure(), d.wide(), d.narrow(), d.what());
        if (cannotBeDrawn(d.figure().desc(), "es")) {
            assertThat(cannotBeDrawn(inEnglish(d), "en")).as(d.what() + " is drawn in Spanish as in English").isTrue();
        }
    }

    private static boolean cannotBeDrawn(String description, String language) {
        return description.contains(Words.ofDrawings(language).getOrDefault("cannot.draw.yours", FigureKinds.englishWords().get("cannot.draw.yours")));
    }

    private static String inEnglish(BankDrawings.Drawing d) {
        return FigureKinds.draw(d.right(), d.yours(), "e").orElseThrow().desc();
    }
}
