package soapstone.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
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
    @ValueSource(ints = {201, 5000})
    void aLongListIsNotRead(int length) {
        assertThat(languages.of(List.of("e".repeat(length)))).isSameAs(languages.english());
    }
}
