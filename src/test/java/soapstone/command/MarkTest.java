package soapstone.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;

class MarkTest {

    private static final String SEED = "5";

    private static String key(String exercise, String ask) {
        return Shell.json("draw", exercise, "--seed", SEED, "--key").at("/key/" + ask + "/text").asText();
    }

    private static String slip(String exercise, String ask, String name) {
        for (JsonNode slip : Shell.json("draw", exercise, "--seed", SEED, "--key").get("slips")) {
            if (slip.get("name").asText().equals(name) && slip.get("ask").asText().equals(ask)) {
                return slip.get("text").asText();
            }
        }
        throw new AssertionError(name + " is not seen");
    }

    private static JsonNode mark(String exercise, String... answers) {
        String[] args = new String[answers.length * 2 + 3];
        args[0] = exercise;
        args[1] = "--seed";
        args[2] = SEED;
        for (int i = 0; i < answers.length; i++) {
            args[3 + 2 * i] = "--answer";
            args[4 + 2 * i] = answers[i];
        }
        return Shell.json("mark", args);
    }

    @Test
    void theKeyIsRight() {
        JsonNode data = mark("rails/latch", "right=" + key("rails/latch", "right"), "row=" + key("rails/latch", "row"),
                "kind=" + Shell.json("draw", "rails/latch", "--seed", SEED, "--key").at("/key/kind/value").asText());
        assertThat(data.get("asks")).allSatisfy(a -> assertThat(a.get("verdict").asText()).isEqualTo("right"));
        assertThat(data.get("points")).isEqualTo(data.get("possible"));
    }

    @Test
    void keysStandInOrder() {
        JsonNode data = mark("rails/rivets", "pitch=4");
        assertThat(Shell.keys(data)).containsExactly("exercise", "seed", "units", "fingerprint", "asks", "points", "possible", "consequence");
        assertThat(Shell.keys(data.at("/asks/1"))).containsExactly("ask", "verdict", "reading", "families", "points", "odds", "say", "fits");
        assertThat(Shell.keys(data.at("/asks/1/reading"))).containsExactly("text", "value", "unit");
    }

    @Test
    void aSlipIsNamedWithItsNumbers() {
        String answer = slip("rails/rivets", "pitch", "one-end");
        JsonNode ask = mark("rails/rivets", "spaces=" + key("rails/rivets", "spaces"), "pitch=" + answer).at("/asks/1");
        assertThat(ask.get("verdict").asText()).isEqualTo("slip");
        assertThat(ask.at("/fits/0/name").asText()).isEqualTo("one-end");
        assertThat(ask.get("families").get(0).asText()).isEqualTo("one-of-two");
        assertThat(ask.get("say").asText()).contains("This answer fits a span of ").doesNotContain("{");
    }

    @Test
    void whatIsLeftOutIsBlank() {
        JsonNode asks = mark("rails/rivets").get("asks");
        assertThat(asks).allSatisfy(a -> {
            assertThat(a.get("verdict").asText()).isEqualTo("blank");
            assertThat(a.get("reading").isNull()).isTrue();
        });
    }

    @Test
    void whatCannotBeReadIsAskedAgain() {
        JsonNode ask = mark("rails/rivets", "pitch=31/2").at("/asks/1");
        assertThat(ask.get("verdict").asText()).isEqualTo("ask-again");
        assertThat(ask.get("say").asText()).contains("3 1/2");
    }

    @Test
    void theConsequenceHasTheAnswersNumbers() {
        JsonNode data = mark("rails/rivets", "pitch=" + slip("rails/rivets", "pitch", "ends-left-in"));
        assertThat(data.get("consequence").asText()).startsWith("The last rivet would land ").doesNotContain("land 0 in");
    }

    @Test
    void unknownAskIsWrongUsage() {
        Shell.Result result = Shell.small("mark", "rails/rivets", "--seed", SEED, "--answer", "pich=4");
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("'pich'").contains("Did you mean pitch?");
    }
}
