package soapstone.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import soapstone.figure.FigureKinds;
import soapstone.source.Message;

/** Every sentence that a page says is in the words, and every one in the words is said. */
class WordsTest {

    private static final Path TEMPLATES = Path.of("src/main/resources/soapstone/templates");
    private static final Path WORDS = Path.of("src/main/resources/soapstone/words");
    private static final Path CODE = Path.of("src/main/java/soapstone");
    private static final Words ENGLISH = Words.of("en");
    private static final String DRAWINGS = "figure";

    /** The words of a room in English; those of drawings stand in the code, since a drawing reads no file. */
    private static Map<String, String> english(String room) {
        return room.equals(DRAWINGS) ? FigureKinds.englishWords() : Words.file(room, "en");
    }

    private static List<Path> files(Path folder, String end) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(p -> p.toString().endsWith(end)).sorted().toList();
        }
    }

    @Test
    void fillsPlacesAndLeavesShopSignsAlone() {
        assertThat(ENGLISH.say("hint.to", List.of("1/16 in"))).isEqualTo("to the nearest 1/16 in");
        assertThat(ENGLISH.say("front.how-2", List.of())).contains("3' 5-3/8\"");
        assertThat(ENGLISH.say("beside.mark.near", List.of("{1}", "$1 \\"))).isEqualTo("It is {1} off; $1 \\ is allowed.");
        assertThat(ENGLISH.say(Words.verbatim("It's {0} 'here'"))).isEqualTo("It's {0} 'here'");
    }

    @Test
    void aPlaceMayNameAnotherSentence() {
        assertThat(ENGLISH.say("hint.to", List.of("@block.exact"))).isEqualTo("to the nearest exact");
        assertThat(ENGLISH.say("hint.to", List.of("@home"))).isEqualTo("to the nearest @home");
    }

    @Test
    void aMissingSentenceShowsItsKey() {
        assertThat(ENGLISH.say(Message.of("no.such-sentence"))).isEqualTo("no.such-sentence");
    }

    /** Keys are looked up as written in the templates; a key that goes on as a variable must have at least two that begin so. */
    @Test
    void everyKeyOfTheTemplatesIsThere() throws IOException {
        Pattern call = Pattern.compile("\\b[wbq]\\((?:marking\\?then\\()?\"([^\"]*)\"(, \"([^\"]*)\"\\))?(\\s*\\+)?");
        for (Path template : files(TEMPLATES, ".ftlh")) {
            Matcher m = call.matcher(Files.readString(template));
            while (m.find()) {
                if (m.group(4) != null) {
                    assertThat(keys().stream().filter(k -> k.startsWith(m.group(1))).count()).as(template + ": " + m.group(1)).isGreaterThan(1);
                } else {
                    assertThat(ENGLISH.has(m.group(1))).as(template + ": " + m.group(1)).isTrue();
                }
                if (m.group(3) != null && m.group().contains("marking?then")) {
                    assertThat(ENGLISH.has(m.group(3))).as(template + ": " + m.group(3)).isTrue();
                }
            }
        }
    }

    @Test
    void everyKeyOfOurCodeIsThere() throws IOException {
        Pattern key = Pattern.compile("(?:Message\\.of|words\\.say)\\((?:\\d+, )?\"([^\"]+)\"\\s*[,)]");
        for (Path source : Stream.concat(files(CODE.resolve("page"), ".java").stream(), files(CODE.resolve("web"), ".java").stream()).toList()) {
            Matcher m = key.matcher(Files.readString(source));
            while (m.find()) {
                assertThat(ENGLISH.has(m.group(1))).as(source + ": " + m.group(1)).isTrue();
            }
        }
    }

    @Test
    void everyClosedListHasItsWords() {
        for (soapstone.quantity.UnitSystem units : soapstone.quantity.UnitSystem.values()) {
            for (String start : List.of("units.", "sheet.other-", "bench.other-")) {
                assertThat(ENGLISH.has(start + units.word())).as(start + units.word()).isTrue();
            }
        }
        hasAll("check.", CheckSource.Kind.values());
        hasAll("outcome.", CheckRow.Outcome.values());
        hasAll("reference.", Reference.Kind.values());
        hasAll("title.", SheetView.Stage.values());
    }

    private static void hasAll(String start, Enum<?>[] all) {
        for (Enum<?> one : all) {
            String key = start + one.name().toLowerCase(java.util.Locale.ROOT);
            assertThat(ENGLISH.has(key)).as(key).isTrue();
        }
    }

    /** A sentence of the pages that nothing says any more is taken out. */
    @Test
    void noSentenceIsIdle() throws IOException {
        StringBuilder all = new StringBuilder();
        for (Path file : Stream.concat(files(TEMPLATES, ".ftlh").stream(), files(CODE, ".java").stream()).toList()) {
            all.append(Files.readString(file));
        }
        String text = all.toString();
        List<String> idle = new ArrayList<>();
        for (String key : Words.file("page", "en").keySet()) {
            boolean whole = text.contains("\"" + key + "\"");
            boolean begun = Stream.iterate(key.length() - 1, i -> i > 2, i -> i - 1)
                    .anyMatch(i -> text.contains("\"" + key.substring(0, i) + "\" +"));
            if (!whole && !begun) {
                idle.add(key);
            }
        }
        assertThat(idle).isEmpty();
    }

    @Test
    void roomsDoNotTakeEachOthersKeys() {
        Set<String> seen = new TreeSet<>();
        for (String room : Words.ROOMS) {
            for (String key : Words.file(room, "en").keySet()) {
                assertThat(seen.add(key)).as(room + ": " + key).isTrue();
            }
        }
    }

    @Test
    void everyRoomWithAFileIsLoaded() throws IOException {
        for (Path file : files(WORDS, ".properties")) {
            assertThat(Words.ROOMS).contains(file.getFileName().toString().replaceAll("_..\\.properties$", ""));
        }
    }

    /** Another language has every sentence, no others, and the same places in each. */
    @Test
    void languagesHaveTheSameSentencesAndPlaces() throws IOException {
        for (String room : Words.ROOMS) {
            assertThat(Words.file(room, "es").keySet()).as(room).isEqualTo(english(room).keySet());
        }
        for (Path file : files(WORDS, ".properties")) {
            String[] name = file.getFileName().toString().replace(".properties", "").split("_");
            Map<String, String> english = english(name[0]);
            Words.file(name[0], name[1]).forEach((key, sentence) -> {
                assertThat(english).as(file + ": " + key).containsKey(key);
                assertThat(Words.places(sentence)).as(file + ": " + key).isEqualTo(Words.places(english.get(key)));
            });
        }
    }

    /** What one would type, signs of markup and ends that join with what follows are the same in each language. */
    @Test
    void languagesHaveTheSameShopSigns() {
        Pattern typed = Pattern.compile("\\b\\d+ \\d/\\d|\\d' \\d-\\d/\\d\"|[<>&]|\\w+\\.csv");
        for (String room : Words.ROOMS) {
            Words.file(room, "es").forEach((key, sentence) -> {
                String english = english(room).get(key);
                assertThat(found(typed, sentence)).as(key).isEqualTo(found(typed, english));
                assertThat(sentence.endsWith(" ")).as(key).isEqualTo(english.endsWith(" "));
                assertThat(sentence).as(key).isNotBlank();
            });
        }
    }

    private static List<String> found(Pattern pattern, String text) {
        return pattern.matcher(text).results().map(java.util.regex.MatchResult::group).toList();
    }

    /** What stands between tags in a template is put in, never written there. */
    @Test
    void templatesHoldNoSentences() throws IOException {
        for (Path template : files(TEMPLATES, ".ftlh")) {
            String bare = Files.readString(template)
                    .replaceAll("(?s)<#--.*?-->", "")
                    .replaceAll("(?s)</?[#@](?:->|[^<>\"]|\"[^\"]*\"|<(?![#@/a-z]))*?>", " ")
                    .replaceAll("\\$\\{(?:[^{}\"]|\"[^\"]*\")*}", " ")
                    .replaceAll("(?s)<[^>]*>", " ");
            assertThat(bare.replaceAll("[^A-Za-z]+", " ").trim()).as(template.toString()).isEmpty();
        }
    }

    private static Set<String> keys() {
        Set<String> keys = new TreeSet<>();
        Words.ROOMS.forEach(room -> keys.addAll(Words.file(room, "en").keySet()));
        return keys;
    }
}
