package soapstone.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import soapstone.page.Words;

/** Which mistakes stand on the key of a class: a substitute looks for those that this class makes. */
class KeyTest {

    private static final String HOLES = "spacing/bolt-holes";

    private static KeySheet.Slip slip(String name) {
        return new KeySheet.Slip(name, "title of " + name, name + " gives");
    }

    private static KeySheet sheet(String number, String... slips) {
        List<KeySheet.Slip> all = java.util.Arrays.stream(slips).map(KeyTest::slip).toList();
        KeySheet.Answer answer = new KeySheet.Answer("a", "9 1/2 in", Optional.of(9.5), all);
        return new KeySheet(number, "", "", List.of(new KeySheet.Problem(1, HOLES, "Bolt holes", 1, 3, List.of(answer))));
    }

    private static String markup(Map<KeySheet.Made, Integer> made) {
        List<KeySheet> sheets = List.of(sheet("A", "first", "second", "third", "fourth"), sheet("B", "second", "third", "fourth"));
        return new Key(Words.of("en"), PaperSize.LETTER).markup(new Key.Of("Week 9", "Sheet metal 1", "", sheets, Optional.empty(), made));
    }

    @Test
    void withoutAHistoryThoseStandThereThatShowOnMostSheets() {
        assertThat(markup(Map.of())).containsSubsequence("title of second", "title of third", "title of fourth").doesNotContain("title of first");
    }

    @Test
    void thoseThatTheClassHasMadeStandFirst() {
        Map<KeySheet.Made, Integer> made = Map.of(new KeySheet.Made(HOLES, "fourth"), 2, new KeySheet.Made(HOLES, "first"), 5, new KeySheet.Made("tanks/other", "third"), 9);
        assertThat(markup(made)).containsSubsequence("title of first", "title of fourth", "title of second").doesNotContain("title of third");
    }
}
