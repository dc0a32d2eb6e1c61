package soapstone.bank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soapstone.Baseline;
import soapstone.source.Issue;

/**
 * What an author is told of a broken file. Each file below {@code broken} says in its first line as what it is read, in the
 * place of a file of the small bank; beside it stands all that is told of it.
 */
class BrokenFilesTest {

    private static final String FOLDER = "soapstone/bank/broken/";
    private static final Pattern READ_AS = Pattern.compile("# read as (\\S+)\n");
    private static final Pattern HEAD = Pattern.compile("(exercise-bank/\\S+):(\\d+):(\\d+): ([a-z-]+): (.+)");

    static List<String> files() {
        return SmallBank.texts("soapstone/bank/broken").keySet().stream().filter(f -> !f.endsWith(".issues")).toList();
    }

    @Test
    void thereAreManyBrokenFiles() {
        assertThat(files()).hasSizeGreaterThan(90);
        assertThat(SmallBank.texts("soapstone/bank/broken").keySet().stream().filter(f -> f.endsWith(".issues")).map(f -> f.replace(".issues", "")).toList())
                .as("every file of issues has its broken file").isSubsetOf(files().stream().map(BrokenFilesTest::bare).toList());
    }

    private static String bare(String file) {
        return file.substring(0, file.lastIndexOf('.'));
    }

    private record Broken(String path, BankReader.Result result) {}

    private static Broken read(String file) {
        String text = Baseline.read(FOLDER + file);
        Matcher as = READ_AS.matcher(text);
        assertThat(as.find()).as("%s begins with: # read as PATH", file).isTrue();
        // The other exercises are left aside: what is shared may be what is broken.
        Map<String, String> files = new TreeMap<>(SmallBank.files());
        files.keySet().removeIf(f -> f.endsWith(".yaml") && f.contains("/") && !f.startsWith("formulas/"));
        files.put(as.group(1), text);
        return new Broken("exercise-bank/" + as.group(1), BankReader.read(new BankFiles(files)));
    }

    @ParameterizedTest
    @MethodSource("files")
    void allThatIsWrongIsTold(String file) {
        Broken broken = read(file);
        assertThat(broken.result().bank()).as("a bank in spite of faults").isEmpty();
        List<String> told = broken.result().issues().all().stream().map(Issue::toString).toList();
        assertThat(told).isNotEmpty();
        Baseline.check(FOLDER + bare(file) + ".issues", String.join("\n", told) + "\n");
    }

    @ParameterizedTest
    @MethodSource("files")
    void everyIssueShowsItsPlace(String file) {
        Broken broken = read(file);
        List<String> lines = new ArrayList<>(Baseline.read(FOLDER + file).lines().toList());
        lines.add("");
        for (Issue issue : broken.result().issues().all()) {
            String[] told = issue.toString().split("\n", -1);
            Matcher head = HEAD.matcher(told[0]);
            assertThat(head.matches()).as("file:line:column: rule: what in <%s>", told[0]).isTrue();
            assertThat(told).as("head, line and caret of %s", issue).hasSize(3);
            assertThat(head.group(1)).isEqualTo(broken.path());
            int line = Integer.parseInt(head.group(2));
            int column = Integer.parseInt(head.group(3));
            assertThat(lines.get(line - 1).replace('\t', ' ')).as("the line of %s", issue).contains(told[1].strip());
            assertThat(column).as("the column of %s", issue).isBetween(1, lines.get(line - 1).length() + 1);
            assertThat(told[2]).matches(" *\\^");
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void everyIssueSaysWhatWouldFitOrSaysItAll(String file) {
        assertThat(read(file).result().issues().all()).allSatisfy(issue -> {
            assertThat(issue.found()).isNotBlank().doesNotContain("null", "Optional", "@", "java.");
            assertThat(issue.fits()).doesNotContain("null", "Optional", "java.");
        });
    }

    @ParameterizedTest
    @MethodSource("files")
    void noIssueIsToldTwice(String file) {
        List<String> told = read(file).result().issues().all().stream().map(Issue::toString).toList();
        assertThat(told).doesNotHaveDuplicates();
    }

    @Test
    void whatCallsABrokenFormulaIsNotToldAgain() {
        Map<String, String> files = SmallBank.files();
        files.merge("formulas/shop.yaml", "  is: arc(radius + k*thickness, angle)\n", (text, is) -> text.replace(is, "  is: arc(radius + k, angle)\n"));
        files.put("formulas/more.yaml", """
                twice_allowance:
                  says: Two bends
                  takes: {angle: angle, radius: length}
                  gives: length
                  is: 2*bend_allowance(angle, radius, radius, 0.4)
                  source: invented
                """);
        files.merge("spacing/bolt-holes.yaml", "span = length - 2*edge", (text, span) -> text.replace(span, "span = length - twice_allowance(90 deg, edge)"));
        List<Issue> issues = BankReader.read(new BankFiles(files)).issues().all();
        assertThat(issues).extracting(i -> i.place() + " " + i.found())
                .containsExactly("exercise-bank/formulas/shop.yaml:6:18 cannot add a quantity (length) and a plain number");
    }
}
