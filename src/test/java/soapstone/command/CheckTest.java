package soapstone.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckTest {

    @TempDir
    private Path folder;

    private Path copy() throws IOException {
        Path bank = folder.resolve("exercise-bank");
        try (Stream<Path> files = Files.walk(Shell.SMALL)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                Files.copy(file, bank.resolve(Shell.SMALL.relativize(file).toString()));
            }
        }
        return bank;
    }

    private Path changed(String file, String from, String to) throws IOException {
        Path bank = copy();
        String text = Files.readString(bank.resolve(file));
        assertThat(text).contains(from);
        Files.writeString(bank.resolve(file), text.replace(from, to));
        return bank;
    }

    private static Shell.Result check(Path bank, String... more) {
        return Shell.run(Stream.concat(Stream.of("check", bank.toString(), "--draws", "20"), Stream.of(more)).toArray(String[]::new));
    }

    @Test
    void aGoodBank() {
        Shell.Result result = check(Shell.SMALL);
        assertThat(result.code()).as(result.out()).isZero();
        assertThat(result.out()).contains("3 exercises, 1 formula, 1 table, 1 lesson").contains("5 published checks: 0 seen, 0 inputs, 0 memory, 5 own; 1 known misprint")
                .contains("All is well.");
    }

    @Test
    void asJson() {
        JsonNode data = check(Shell.SMALL, "--json").json();
        assertThat(Shell.keys(data)).containsExactly("good", "counts", "falseNames", "falseNamesOfCounts", "issues", "failed", "draws");
        assertThat(data.get("good").asBoolean()).isTrue();
        assertThat(data.at("/counts/checks").toString()).isEqualTo("{\"seen\":0,\"inputs\":0,\"memory\":0,\"own\":5,\"misprints\":1}");
        assertThat(data.get("draws")).hasSize(6);
        assertThat(Shell.keys(data.at("/draws/0"))).containsExactly("exercise", "units", "tries", "refused", "reasons", "slipsSeen",
                "seldomApart", "falseNames", "faults");
    }

    @Test
    void anIssueHasItsPlaceAndACaret() throws IOException {
        Shell.Result result = check(changed("rails/rivets.yaml", "length - 2*edge, say", "lenght - 2*edge, say"));
        assertThat(result.code()).isEqualTo(1);
        assertThat(result.out()).contains("exercise-bank/rails/rivets.yaml:11:18: ").contains("lenght").contains("Did you mean length").contains("^");
    }

    @Test
    void allIssuesOfAllFilesAreTold() throws IOException {
        Path bank = changed("rails/rivets.yaml", "length - 2*edge, say", "lenght - 2*edge, say");
        Files.writeString(bank.resolve("rails/latch.yaml"), "title: Nothing more\n");
        JsonNode data = check(bank, "--json").json();
        assertThat(data.get("issues").toString()).contains("rails/rivets.yaml").contains("rails/latch.yaml");
        assertThat(data.at("/counts/exercises").asInt()).isEqualTo(1);
    }

    @Test
    void aCheckThatDoesNotComeOut() throws IOException {
        Shell.Result result = check(changed("rails/rivets.yaml", "pitch: 12 in", "pitch: 13 in"));
        assertThat(result.code()).isEqualTo(1);
        assertThat(result.out()).contains("exercise-bank/rails/rivets.yaml:").contains("printed 13 in, worked out 12 in").contains("1 failed check");
    }

    @Test
    void aMisprintThatIsNone() throws IOException {
        Shell.Result result = check(changed("formulas/sheet.yaml", "expect: 51 lb", "expect: 15 lb"));
        assertThat(result.code()).isEqualTo(1);
        assertThat(result.out()).contains("is marked as a misprint");
    }

    @Test
    void unfairDraws() throws IOException {
        Shell.Result result = check(changed("rails/latch.yaml", "- width >= 2*inset + holes*step\nworking", "- width >= 19 in\nworking"));
        assertThat(result.code()).isEqualTo(1);
        assertThat(result.out()).contains("rails/latch us: draws: ").contains("of the draws are refused");
    }

    @Test
    void lessonsBesideTheBankAreRead() throws IOException {
        Path bank = copy();
        assertThat(check(bank).out()).contains("lessons not looked at");
        Files.createDirectories(folder.resolve("lessons"));
        Files.copy(Path.of("src/test/resources/small/lessons/course.yaml"), folder.resolve("lessons/course.yaml"));
        Shell.Result result = check(bank);
        assertThat(result.code()).isEqualTo(1);
        assertThat(result.out()).contains("lessons/course.yaml");
    }

    @Test
    void noBank() {
        Shell.Result result = check(folder.resolve("nowhere"));
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("there is no folder");
    }
}
