package soapstone.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import soapstone.source.Message;

/**
 * The sentences of one language, from {@code soapstone/words/<room>_<language>.properties}. Every room of the house
 * that says something to people has its own file; here they lie together. A sentence has places {@code {0}}, {@code {1}}
 * …, and nothing else in it is special: apostrophes and quotes mean feet and inches here. What is put in a place may be
 * the name of another sentence with an {@code @} before it.
 *
 * <p>A language that lacks a sentence falls back to English; English lacking it is a fault, and shows as the key itself.
 */
public final class Words {

    /** The rooms that have words. A room whose file is not there yet has nothing to say. */
    static final List<String> ROOMS = List.of("page", "reading", "mark", "variant", "figure", "lesson", "desk", "school", "account", "class",
            "work", "marks", "competency", "privacy", "paper");

    private static final String VERBATIM = "verbatim";
    private static final String ENGLISH = "en";
    /** A student's every page asks for the words of the class: they are read once. Only languages that are spoken come in, so it stays small. */
    private static final Map<String, Words> READ = new ConcurrentHashMap<>();

    private final String language;
    private final Map<String, String> sentences;
    /** The same, with what belongs together held together: most sentences have no places, and are said as they are. */
    private final Map<String, String> kept = new ConcurrentHashMap<>();

    private Words(String language, Map<String, String> sentences) {
        this.language = language;
        this.sentences = Map.copyOf(sentences);
    }

    /** How the keys of sentences spell a word of the view models: {@code metric}. */
    public static String key(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }

    /** The words of a language such as {@code en}, with English where it has none of its own. */
    public static Words of(String language) {
        Words read = READ.get(language);
        if (read != null) {
            return read;
        }
        Words words = read(language);
        if (speaks(language)) {
            READ.put(language, words);
        }
        return words;
    }

    private static Words read(String language) {
        Map<String, String> all = new TreeMap<>();
        ROOMS.forEach(room -> all.putAll(file(room, ENGLISH)));
        if (!language.equals(ENGLISH)) {
            ROOMS.forEach(room -> all.putAll(file(room, language)));
        }
        return new Words(language, all);
    }

    /** Whether pages can be had in that language. */
    public static boolean speaks(String language) {
        return language.matches("[a-z]{2}") && !file("page", language).isEmpty();
    }

    /** The words of drawings in a language, by the keys that drawings know; empty for English, which they know themselves. */
    public static Map<String, String> ofDrawings(String language) {
        return file("figure", language);
    }

    /** A bank's own text where a message is wanted. */
    public static Message verbatim(String text) {
        return Message.of(VERBATIM, text);
    }

    /** The sentences of one room's file, in its order of keys; empty when there is no such file. */
    static Map<String, String> file(String room, String language) {
        String path = "/soapstone/words/" + room + "_" + language + ".properties";
        try (InputStream in = Words.class.getResourceAsStream(path)) {
            if (in == null) {
                return Map.of();
            }
            Properties read = new Properties();
            read.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            Map<String, String> sentences = new LinkedHashMap<>();
            read.stringPropertyNames().stream().sorted().forEach(k -> sentences.put(k, read.getProperty(k)));
            return sentences;
        } catch (IOException e) {
            throw new UncheckedIOException(path, e);
        }
    }

    boolean isEnglish() {
        return language.equals(ENGLISH);
    }

    /** Whether a message is the bank's own text. */
    static boolean isVerbatim(Message message) {
        return message.key().equals(VERBATIM);
    }

    public String language() {
        return language;
    }

    public boolean has(String key) {
        return sentences.containsKey(key);
    }

    /** The sentence of a message with its places filled. */
    public String say(Message message) {
        if (isVerbatim(message)) {
            return String.join(" ", message.with());
        }
        return say(message.key(), message.with());
    }

    /** The sentence of that key with its places filled; the key itself when there is none. */
    public String say(String key, List<String> with) {
        String sentence = sentences.get(key);
        return sentence == null ? key : with.isEmpty() ? sentence : fill(sentence, with.stream().map(this::named).toList());
    }

    /** A sentence without places, on a page; the key itself when there is none. */
    String kept(String key) {
        String sentence = sentences.get(key);
        return sentence == null ? key : kept.computeIfAbsent(key, k -> Shop.keepTogether(sentence));
    }

    /** What is put in may name a sentence itself: {@code @dimension.length}. Anything else is put in as it is. */
    private String named(String text) {
        return text.startsWith("@") ? sentences.getOrDefault(text.substring(1), text) : text;
    }

    private static String fill(String sentence, List<String> with) {
        StringBuilder out = new StringBuilder();
        int at = 0;
        while (at < sentence.length()) {
            int place = placeAt(sentence, at);
            if (place >= 0 && place < with.size()) {
                out.append(with.get(place));
                at += 3;
            } else {
                out.append(sentence.charAt(at++));
            }
        }
        return out.toString();
    }

    /** The number of a place {@code {n}} that begins here, or -1. */
    private static int placeAt(String sentence, int at) {
        boolean shaped = at + 2 < sentence.length() && sentence.charAt(at) == '{' && sentence.charAt(at + 2) == '}';
        return shaped ? Character.digit(sentence.charAt(at + 1), 10) : -1;
    }

    /** The places of a sentence, for the tests that compare languages. */
    static List<Integer> places(String sentence) {
        List<Integer> found = new ArrayList<>();
        for (int at = 0; at < sentence.length(); at++) {
            int place = placeAt(sentence, at);
            if (place >= 0 && !found.contains(place)) {
                found.add(place);
            }
        }
        Collections.sort(found);
        return found;
    }
}
