package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import soapstone.page.Words;
import soapstone.source.Message;

/** Each fault of a roster has a sentence, and another that says what would fit. */
class RosterWordsTest {

    private static final Path CODE = Path.of("src/main/java/soapstone/school");
    private static final Pattern RULE = Pattern.compile("(?:fault|warning)\\(\"([a-z0-9-]+)\"");
    private static final Words ENGLISH = Words.of("en");

    private static Set<String> rules() throws IOException {
        Set<String> rules = new TreeSet<>(Set.of("sourced-id", "sourced-id-twice"));
        try (Stream<Path> files = Files.list(CODE)) {
            for (Path file : files.toList()) {
                Matcher rule = RULE.matcher(Files.readString(file));
                while (rule.find()) {
                    rules.add(rule.group(1));
                }
            }
        }
        return rules;
    }

    @Test
    void everyFaultHasItsSentences() throws IOException {
        assertThat(rules()).contains("seat-twice", "login-taken", "no-file").allSatisfy(rule -> {
            assertThat(ENGLISH.has("school.roster." + rule)).as(rule).isTrue();
            assertThat(ENGLISH.has("school.roster." + rule + "-fits")).as(rule + "-fits").isTrue();
        });
    }

    @ParameterizedTest
    @CsvSource(delimiter = '>', textBlock = """
            7,Ada,,x     > Line 1, extra time > "x" is not an extra time.       > A whole number of per cent from 0 to 400, such as 50 or 50 %.
            Ada, Quill   > Line 1, seat       > "Ada, Quill" holds two texts, and neither is a seat number. > A seat number before or behind the name: 7, Ada Q. \
            A name with a comma in it stands in quotes: "Quill, Ada".
            """)
    void aFaultReadsAsASentence(String list, String where, String says, String fits) {
        RosterFault fault = new RosterReader(new RosterRules("K7", "Seat", l -> false)).read(list).all().get(0);
        assertThat(List.of(ENGLISH.say(fault.where()), ENGLISH.say(fault.says()), ENGLISH.say(fault.fits()))).containsExactly(where, says, fits);
    }

    @Test
    void noPlaceOfASentenceStaysOpen() {
        String list = "name,seat,nickname,birth date,login,time\nAda,7,,,jo,x\nAda,07,,,a b,\nAda,,,,a b,,,z\n"
                + "a".repeat(90) + "," + "1".repeat(30) + "\n,,,,cy\n\u0001,9";
        List<RosterFault> faults = new RosterReader(new RosterRules("K7", "Seat", "jo"::equals)).read(list).all();
        assertThat(faults).hasSizeGreaterThan(9);
        for (RosterFault fault : faults) {
            for (Message message : List.of(fault.where(), fault.says(), fault.fits())) {
                assertThat(ENGLISH.say(message)).doesNotContain("{").doesNotContain("@school").doesNotStartWith("school.");
            }
        }
    }
}
