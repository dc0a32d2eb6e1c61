package soapstone.figure;

import java.util.Map;

/**
 * The words that stand in drawings and in their descriptions, by key, with {0}, {1} … as places. Another language is
 * another map; what it lacks is said in English.
 */
final class Words {

    private static final Map<String, String> ENGLISH = EnglishWords.ALL;

    static final Words IN_ENGLISH = new Words(Map.of());

    private final Map<String, String> own;

    Words(Map<String, String> own) {
        this.own = Map.copyOf(own);
    }

    /** The sentence or word of a key with its places filled. An unknown key is a mistake of this package. */
    String say(String key, Object... with) {
        String text = own.getOrDefault(key, ENGLISH.get(key));
        if (text == null) {
            throw new IllegalArgumentException("no words for " + key);
        }
        for (int i = 0; i < with.length; i++) {
            text = text.replace("{" + i + "}", String.valueOf(with[i]));
        }
        return text;
    }
}
