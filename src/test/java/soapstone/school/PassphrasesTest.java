package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PassphrasesTest {

    private static final List<String> WORDS = Passphrases.words();

    @Test
    void theListHasTwelveBitsAWord() {
        assertThat(WORDS).hasSize(1 << 12).doesNotHaveDuplicates().isSorted().allMatch(w -> w.matches("[a-z]{3,7}"));
    }

    @Test
    void noTwoWordsLookAlikeInPrint() {
        Set<String> seen = new HashSet<>();
        for (String word : WORDS) {
            String look = word.replace("rn", "m").replace("cl", "d").replace("vv", "w").replace("i", "l").replaceAll("(.)\\1", "$1");
            assertThat(seen.add(look)).as(word).isTrue();
        }
    }

    @Test
    void fourWordsOfTheListAndFifteenSigns() {
        Random chance = new Random(3);
        Set<String> words = new HashSet<>();
        for (int i = 0; i < 20_000; i++) {
            String drawn = Passphrases.draw(chance);
            List<String> parts = List.of(drawn.split(" "));
            assertThat(parts).hasSize(4);
            assertThat(drawn.length()).isBetween(15, 31);
            words.addAll(parts);
        }
        assertThat(words).as("every word comes up").hasSameElementsAs(WORDS);
    }

    @Test
    void theShortestFourWordsAreLongEnough() {
        int shortest = WORDS.stream().mapToInt(String::length).min().orElseThrow();
        assertThat(Passphrases.WORDS * shortest + Passphrases.WORDS - 1).isGreaterThanOrEqualTo(Passwords.LEAST);
    }

    @Test
    void oneSeedOnePhrase() {
        assertThat(Passphrases.draw(new Random(5))).isEqualTo(Passphrases.draw(new Random(5))).isNotEqualTo(Passphrases.draw(new Random(6)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"copper willow tandem orbit", "Copper Willow Tandem Orbit", "COPPER-WILLOW-TANDEM-ORBIT", "copper.willow.tandem.orbit",
        " copper  willow - tandem\u00a0orbit. ", "copper\u2013willow\u2011tandem orbit", "copper willow tandem orbit\n"})
    void aPhraseMayBeTypedInSeveralWays(String typed) {
        assertThat(Passphrases.plain(typed)).isEqualTo("copper willow tandem orbit");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Copper Willow Tandem", "Copper Willow Tandem Orbit Lake", "Copper Willow Tandem Qorbit", "CopperWillowTandemOrbit", "Copper,Willow,Tandem,Orbit",
        "Copper_Willow_Tandem_Orbit", " MiXed Case and.dots-kept  twice ", "", "²3⁴"})
    void anyOtherPasswordIsKeptSignForSign(String typed) {
        assertThat(Passphrases.plain(typed)).isEqualTo(typed);
    }

    /** RFC 8265, 4.2.2: spaces of other kinds become the plain one, letters and marks are put together. */
    @Test
    void keyboardsThatWriteTheSameOtherwiseGiveTheSame() {
        assertThat(Passphrases.plain("Cafe\u0301\u00a0au\u2003lait")).isEqualTo("Caf\u00e9 au lait");
        assertThat(Passphrases.plain(Passphrases.plain("A\u030a\u3000x"))).isEqualTo("\u00c5 x");
    }
}
