package soapstone.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import soapstone.page.Words;

/** Every key that the marker can say has a sentence. */
class WordsOfMarksTest {

    private static final Pattern KEY = Pattern.compile("\"(mark\\.[a-z-]+[a-z])\"");

    private static Set<String> keys() throws IOException {
        Set<String> keys = new TreeSet<>(Set.of("mark.decimal-point", "mark.digits-swapped", "mark.fraction-as-decimal", "mark.upside-down"));
        try (Stream<Path> files = Files.list(Path.of("src/main/java/soapstone/mark"))) {
            for (Path file : (Iterable<Path>) files::iterator) {
                Matcher m = KEY.matcher(Files.readString(file));
                while (m.find()) {
                    keys.add(m.group(1));
                }
            }
        }
        return keys;
    }

    @Test
    void areThereInBothLanguages() throws IOException {
        assertThat(keys()).hasSizeGreaterThan(18);
        for (String key : keys()) {
            assertThat(Words.of("en").has(key)).as(key).isTrue();
            assertThat(Words.of("es").say(key, java.util.List.of())).as(key).isNotEqualTo(Words.of("en").say(key, java.util.List.of()));
        }
    }
}
