package soapstone.web;

import java.util.StringJoiner;
import java.util.random.RandomGenerator;

/**
 * Passphrases for slips: four words of two syllables that can be said aloud. Each word is one of 4900, so that four
 * have 49 bits.
 */
final class SlipPhrases {

    private static final String CONSONANTS = "bdfgklmnprstvz";
    private static final String VOWELS = "aeiou";
    private static final int WORDS = 4;

    private SlipPhrases() {}

    static String make(RandomGenerator chance) {
        StringJoiner words = new StringJoiner("-");
        for (int i = 0; i < WORDS; i++) {
            words.add(syllable(chance) + syllable(chance));
        }
        return words.toString();
    }

    private static String syllable(RandomGenerator chance) {
        return "" + CONSONANTS.charAt(chance.nextInt(CONSONANTS.length())) + VOWELS.charAt(chance.nextInt(VOWELS.length()));
    }
}
