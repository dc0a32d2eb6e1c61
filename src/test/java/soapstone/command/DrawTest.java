package soapstone.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrawTest {

    @Test
    void withoutKeyNothingIsGivenAway() {
        JsonNode data = Shell.json("draw", "rails/rivets", "--seed", "5");
        assertThat(Shell.keys(data)).containsExactly("exercise", "seed", "units", "fingerprint", "story", "notes", "given", "asks");
        assertThat(Shell.keys(data.get("given"))).containsExactly("rivets", "edge", "length");
        assertThat(Shell.keys(data.get("given").get("edge"))).containsExactly("text", "value", "unit");
    }

    @Test
    void keyAndSlipsFollowFromTheGivens() {
        JsonNode data = Shell.json("draw", "rails/rivets", "--seed", "5", "--key");
        double length = data.at("/given/length/value").asDouble();
        double edge = data.at("/given/edge/value").asDouble();
        int rivets = data.at("/given/rivets/value").asInt();
        double pitch = data.at("/key/pitch/value").asDouble();
        assertThat(pitch).isEqualTo((length - 2 * edge) / (rivets - 1));
        assertThat(data.at("/given/step/value").asDouble()).isEqualTo(pitch);
        assertThat(data.at("/key/spaces/value").isIntegralNumber()).isTrue();
        assertThat(data.get("slips")).anySatisfy(slip -> {
            assertThat(Shell.keys(slip)).containsExactly("name", "family", "ask", "text", "value", "unit");
            assertThat(slip.get("name").asText()).isEqualTo("ends-left-in");
            assertThat(slip.get("value").asDouble()).isCloseTo(length / (rivets - 1), org.assertj.core.data.Offset.offset(1e-9));
        });
    }

    @Test
    void aDealtSheetIsDrawnAgainWithWhatWasSet() {
        String[] command = {"draw", "bends/flat-angle", "--seed", "5", "--key", "--convention", "k_factor=0.42", "--convention", "rounding=1/64 in"};
        JsonNode data = Shell.run(command).json();
        assertThat(data.get("conventions").asText()).isEqualTo("k_factor=0.42; rounding=0.015625 in");
        assertThat(data.at("/given/k/value").asDouble()).isEqualTo(0.42);
        assertThat(data.at("/asks/0/to").asDouble()).isEqualTo(1.0 / 64);
        assertThat(data.at("/asks/0/within").asDouble()).isEqualTo(1.0 / 128);
        String flat = "flat=" + data.at("/key/flat/text").asText();
        JsonNode marked = Shell.run("mark", "bends/flat-angle", "--seed", "5", "--convention", "k_factor=0.42", "--convention", "rounding=1/64 in",
                "--answer", flat).json();
        assertThat(marked.get("conventions")).isEqualTo(data.get("conventions"));
        assertThat(marked.at("/asks/0/verdict").asText()).isEqualTo("right");
    }

    @Test
    void whatIsSetCanLeaveNoFairNumbers() {
        Shell.Result none = Shell.run("draw", "measuring/pieces-and-kerf", "--seed", "5", "--convention", "saw_kerf=1/16 in");
        assertThat(none.code()).isEqualTo(1);
        assertThat(none.err()).contains("No fair numbers come from seed 5 for 'measuring/pieces-and-kerf' with saw_kerf=0.0625 in.");
    }

    @Test
    void sameSeedSameNumbers() {
        String[] command = {"draw", "--bank", Shell.SMALL.toString(), "rails/latch", "--seed", "4294967295", "--key"};
        assertThat(Shell.run(command).out()).isEqualTo(Shell.run(command).out());
        assertThat(Shell.small("draw", "rails/latch", "--seed", "4294967295", "--key").out()).isEqualTo(Shell.run(command).out());
        assertThat(Shell.small("draw", "rails/latch", "--seed", "0", "--key").out()).isNotEqualTo(Shell.run(command).out());
    }

    @Test
    void listsPointsAndChoices() {
        JsonNode key = Shell.json("draw", "rails/latch", "--seed", "9", "--key", "--json").get("key");
        assertThat(key.at("/right/value").get(0)).hasSize(2);
        assertThat(key.at("/row/value").size()).isBetween(3, 5);
        assertThat(key.at("/row/unit").asText()).isEqualTo("in");
        assertThat(key.at("/kind/value").asText()).isIn("thin", "middle", "thick");
    }

    @Test
    void metricIsInMillimeters() {
        JsonNode data = Shell.json("draw", "rails/rivets", "--seed", "5", "--units", "metric", "--key");
        assertThat(data.get("units").asText()).isEqualTo("metric");
        assertThat(data.at("/given/length/unit").asText()).isEqualTo("mm");
        assertThat(data.at("/key/pitch/text").asText()).endsWith(" mm");
    }

    @Test
    void aDrawingGoesToAFile(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("rivets.svg");
        assertThat(Shell.small("draw", "rails/rivets", "--seed", "5", "--figure", file.toString()).code()).isZero();
        assertThat(Files.readString(file)).startsWith("<svg xmlns=\"http://www.w3.org/2000/svg\"").contains("</svg>");

        Shell.Result none = Shell.small("draw", "rails/sheet", "--seed", "5", "--figure", file.toString());
        assertThat(none.code()).isEqualTo(1);
        assertThat(none.err()).contains("has no drawing");
        Shell.Result nowhere = Shell.small("draw", "rails/rivets", "--seed", "5", "--figure", folder.resolve("no/where.svg").toString());
        assertThat(nowhere.code()).isEqualTo(1);
        assertThat(nowhere.err()).contains("cannot be written");
    }

    @Test
    void textIsForReading() {
        Shell.Result result = Shell.small("draw", "rails/rivets", "--seed", "5", "--text");
        assertThat(result.code()).isZero();
        assertThat(result.out()).startsWith("Rivets along a rail").contains("b) Center-to-center spacing").doesNotContain("{");
    }
}
