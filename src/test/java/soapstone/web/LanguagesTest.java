package soapstone.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LanguagesTest {

    private final Languages languages = new Languages();

    /** Whatever a browser says, there are words; those that the site does not have fall back to English. */
    @ParameterizedTest
    @ValueSource(strings = {"", "en-US,en;q=0.9", "de", "*", "nonsense;;q=x", "en;q=0", "\u0001", "../../etc/passwd", "a,b,c,d"})
    void thereAreAlwaysWords(String accepted) {
        assertThat(languages.of(List.of(accepted)).say("site.name", List.of())).isEqualTo("Soapstone");
    }

    @ParameterizedTest
    @ValueSource(strings = {"es", "es-MX,es;q=0.9,en;q=0.8", "fr-CA,es-US;q=0.5", "ES"})
    void aBrowserInSpanishGetsSpanish(String accepted) {
        assertThat(languages.of(List.of(accepted)).language()).isEqualTo("es");
    }

    @ParameterizedTest
    @CsvSource({"/, '', /", "/units, '', /units", "/es, /es, /", "/es/, /es, /", "/es/units/spacing, /es, /units/spacing", "/en/es, /en, /es", "/fr/units, '', /fr/units",
            "/esteel, '', /esteel", "//es, '', //es"})
    void anAddressMayBeginWithALanguage(String address, String base, String path) {
        assertThat(languages.asked(address)).isEqualTo(new Languages.Asked(base, path));
    }

    @Test
    void theAddressGoesBeforeTheBrowser() {
        assertThat(languages.of(languages.asked("/en/units"), List.of("es")).language()).isEqualTo("en");
        assertThat(languages.of(languages.asked("/es/units"), List.of("en")).language()).isEqualTo("es");
        assertThat(languages.of(languages.asked("/units"), List.of("es")).language()).isEqualTo("es");
        assertThat(languages.besides(languages.english())).containsExactly("es");
    }

    @ParameterizedTest
    @ValueSource(ints = {201, 5000})
    void aLongListIsNotRead(int length) {
        assertThat(languages.of(List.of("e".repeat(length)))).isSameAs(languages.english());
    }
}
