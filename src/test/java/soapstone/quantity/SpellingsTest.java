package soapstone.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * The words that are read, for review: a new word shows here as a changed line. With {@code -Dbaseline=write} the file is
 * written anew.
 */
class SpellingsTest {

    private static final Path BASELINE = Path.of("src/test/resources/soapstone/quantity/spellings.baseline");

    @Test
    void theWordsAreThoseOfTheBaseline() throws IOException {
        if ("write".equals(System.getProperty("baseline"))) {
            Files.writeString(BASELINE, Spellings.dump());
        }
        try (InputStream in = Files.newInputStream(BASELINE)) {
            assertThat(Spellings.dump()).isEqualTo(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    @Test
    void everyWordIsFoldedAsTyped() {
        Spellings.dump().lines().map(l -> l.substring(0, l.indexOf(' '))).forEach(word -> {
            StringBuilder folded = new StringBuilder();
            word.chars().forEach(c -> folded.append(Signs.letter((char) c)));
            assertThat(folded.toString()).isEqualTo(word);
        });
    }
}
