package soapstone.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soapstone.quantity.Reading.Again;
import soapstone.quantity.TypedAnswers.Row;

/** Every reason has its sentence in both languages, and every place of a sentence is filled. */
class ReadingWordsTest {

    private static final int LONGEST_SENTENCE = 160;

    static Properties words(String language) {
        Properties words = new Properties();
        String file = "/soapstone/words/reading_" + language + ".properties";
        try (Reader in = new InputStreamReader(ReadingWordsTest.class.getResourceAsStream(file), StandardCharsets.UTF_8)) {
            words.load(in);
        } catch (IOException e) {
            throw new IllegalStateException(file, e);
        }
        return words;
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void theKeysAreThoseThatAreUsed(String language) {
        Set<String> used = new TreeSet<>();
        for (Reason reason : Reason.values()) {
            used.add(reason.key());
        }
        for (String word : Dimension.knownWords()) {
            if (Dimension.parse(word).orElseThrow().toString().equals(word)) {
                used.add("dimension." + word);
            }
        }
        used.addAll(List.of("dimension.other", "tolerance.within", "tolerance.exact"));
        assertThat(words(language).stringPropertyNames()).containsExactlyInAnyOrderElementsOf(used);
    }

    @Test
    void bothLanguagesFillTheSamePlaces() {
        Properties english = words("en");
        Properties spanish = words("es");
        for (String key : english.stringPropertyNames()) {
            assertThat(places(spanish.getProperty(key))).as(key).isEqualTo(places(english.getProperty(key)));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void everyPlaceIsFilledByWhatTheTableBrings(String language) {
        Properties words = words(language);
        for (Row row : TypedAnswers.rows()) {
            if (ShopReader.read(row.text(), row.as()) instanceof Again again) {
                String sentence = words.getProperty(again.why().key());
                for (int place : places(sentence)) {
                    assertThat(place).as("%s: %s", row, sentence).isLessThan(again.why().with().size());
                }
                for (String with : again.why().with()) {
                    assertThat(with).as(row.toString()).isNotEmpty();
                    assertThat(!with.startsWith("@dimension.") || words.containsKey(with.substring(1))).as(with).isTrue();
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void sentencesAreShortAndEndAsSentences(String language) {
        for (Map.Entry<Object, Object> entry : words(language).entrySet()) {
            String sentence = (String) entry.getValue();
            assertThat(sentence).as("%s", entry.getKey()).isNotBlank().hasSizeLessThan(LONGEST_SENTENCE);
            if (((String) entry.getKey()).startsWith("reading.")) {
                assertThat(Character.isUpperCase(sentence.codePointAt(0)) || "{\"¿".indexOf(sentence.charAt(0)) >= 0).as(sentence).isTrue();
            }
        }
    }

    private static Set<Integer> places(String sentence) {
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i + 2 < sentence.length(); i++) {
            if (sentence.charAt(i) == '{' && sentence.charAt(i + 2) == '}') {
                places.add(sentence.charAt(i + 1) - '0');
            }
        }
        return new TreeSet<>(places);
    }
}
