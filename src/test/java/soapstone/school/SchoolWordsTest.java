package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import soapstone.mark.Verdict;

/** Every sentence that the rules say is in the words, and every one in the words is said. */
class SchoolWordsTest {

    private static final Pattern KEY = Pattern.compile("\"(school\\.[a-z-]*[a-z])\"");

    /** Rosters and tables of marks put their keys together: the word behind one of these stands in the code by itself. */
    private static final List<String> JOINED = List.of("school.roster.place-file-", "school.roster.place-", "school.roster.column-", "school.roster.", "school.marks-");

    @Test
    void everyJoinedSentenceIsSaidSomewhere() throws IOException {
        StringBuilder code = new StringBuilder();
        try (Stream<Path> files = Files.list(Path.of("src/main/java/soapstone/school"))) {
            for (Path file : (Iterable<Path>) files::iterator) {
                code.append(Files.readString(file));
            }
        }
        List<String> joined = words().stringPropertyNames().stream().filter(SchoolWordsTest::isJoined).toList();
        assertThat(joined).hasSizeGreaterThan(50).allSatisfy(key -> {
            String start = JOINED.stream().filter(key::startsWith).findFirst().orElseThrow();
            assertThat(code).as(key).contains("\"" + key.substring(start.length()).replaceAll("-fits$", "") + "\"");
        });
    }

    private static boolean isJoined(String key) {
        return JOINED.stream().anyMatch(key::startsWith);
    }

    private static Properties words() throws IOException {
        Properties words = new Properties();
        try (var in = Files.newBufferedReader(Path.of("src/main/resources/soapstone/words/school_en.properties"))) {
            words.load(in);
        }
        return words;
    }

    @Test
    void sentencesAndCodeFitEachOther() throws IOException {
        Set<String> said = new TreeSet<>(Stream.of(Verdict.values()).map(Printed::verdictKey).toList());
        try (Stream<Path> files = Files.list(Path.of("src/main/java/soapstone/school"))) {
            for (Path file : (Iterable<Path>) files::iterator) {
                Matcher m = KEY.matcher(Files.readString(file));
                while (m.find()) {
                    said.add(m.group(1));
                }
            }
        }
        Set<String> kept = new TreeSet<>(words().stringPropertyNames().stream().filter(key -> !isJoined(key)).toList());
        assertThat(kept).isEqualTo(said);
    }

    @Test
    void numbersArePrintedShort() {
        assertThat(List.of(Printed.points(3), Printed.points(2.5), Printed.points(1 / 3.0), Printed.points(100), Printed.points(0))).containsExactly("3", "2.5", "0.33", "100", "0");
        assertThat(List.of(Printed.percent(1), Printed.percent(2 / 3.0), Printed.percent(0))).containsExactly("100", "66.7", "0");
    }
}
