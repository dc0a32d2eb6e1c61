package soapstone.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class WorkTest {

    private static String[] args(String what, String... given) {
        return Stream.concat(Stream.of(what), Stream.of(given).flatMap(g -> Stream.of("--given", g))).toArray(String[]::new);
    }

    private static JsonNode work(String what, String... given) {
        return Shell.json("work", args(what, given));
    }

    private static Shell.Result refused(String what, String... given) {
        return Shell.small("work", args(what, given));
    }

    /** A convention behind the numbers has the value that the exercise draws where no shop sets another. */
    @Test
    void whatAShopSettlesBehindTheNumbersIsNotAskedFor() {
        JsonNode data = Shell.run("work", "spacing/bolt-holes", "--given", "length=48 in", "--given", "holes=7", "--given", "edge=1/2 in", "--given", "hole=1/2 in").json();
        assertThat(data.get("unfit")).extracting(JsonNode::asText).containsExactly("in the exercise edge >= 1.25 * hole");
        String[] gauge = {"work", "brake/back-gauge", "--given", "leg=2 in", "--given", "other=3 in", "--given", "thickness=0.1 in", "--given", "radius=0.1 in"};
        double deduction = 5 - Shell.run(gauge).json().at("/result/blank/value").asDouble();
        assertThat(deduction).as("with K = 0.42, rounded as on the chart").isCloseTo(Math.round((0.4 - Math.PI / 2 * 0.142) * 1000) / 1000.0, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(Shell.run("work", "brake/back-gauge", "--given", "leg=2 in", "--given", "other=3 in").err()).contains("Still to be given: thickness, radius.");
    }

    @Test
    void anExerciseWithItsVisibleNumbers() {
        JsonNode data = work("rails/rivets", "length=4 ft 2 in", "rivets=5", "edge=1");
        assertThat(Shell.keys(data)).containsExactly("exercise", "units", "unfit", "lines", "result", "cautions");
        assertThat(data.at("/result/pitch/value").asInt()).isEqualTo(12);
        assertThat(data.at("/lines/0").toString()).contains("\"name\":\"span\",\"value\":48,\"unit\":\"in\",\"text\":\"span = 50 in − 2 × 1 in = 48 in\"");
    }

    @Test
    void hiddenNumbersAreNeededOnlyWhereTheyAreRead() {
        Shell.Result result = refused("rails/rivets", "rivets=5");
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("length").contains("edge").doesNotContain("step");
        // What follows from a told number is worked out.
        assertThat(work("rails/latch", "number=12", "width=15", "holes=3", "inset=1", "step=2").at("/result/kind/value").asText()).isEqualTo("middle");
    }

    @Test
    void numbersThatTheExerciseWouldNotDrawAreNoted() {
        JsonNode data = work("rails/latch", "number=12", "width=4", "holes=3", "inset=1", "step=2");
        assertThat(data.get("unfit")).hasSize(1);
        assertThat(data.at("/result/row/value").toString()).isEqualTo("[1,3,5]");
        assertThat(data.at("/cautions/0/name").asText()).isEqualTo("lifting");
    }

    @Test
    void aSizeThatTheTableLacksIsNoAnswer() {
        Shell.Result result = refused("rails/latch", "number=11", "width=15", "holes=3", "inset=1", "step=2");
        assertThat(result.code()).isEqualTo(1);
        assertThat(result.err()).contains("thickness").contains("the table stock has no such row");
    }

    @Test
    void aFormula() {
        JsonNode data = work("sheet_mass", "length=3 ft", "width=24", "each=2.5 lb/ft2");
        assertThat(data.at("/result/sheet_mass/value").asInt()).isEqualTo(15);
        assertThat(data.at("/result/sheet_mass/unit").asText()).isEqualTo("lb");
        assertThat(data.at("/lines/0/text").asText()).isEqualTo("area = 36 in × 24 in = 864 in²");
        assertThat(data.at("/cautions/0/says").asText()).isNotEmpty();
    }

    @Test
    void outsideTheLimitsOfAFormula() {
        Shell.Result formula = refused("sheet_mass", "length=3", "width=-1", "each=2");
        assertThat(formula.code()).isEqualTo(1);
        assertThat(formula.err()).contains("width > 0 in");
        assertThat(refused("rails/sheet", "length=3", "width=-1", "each=2").err()).isEqualTo(formula.err());
    }

    @Test
    void wrongUsage() {
        assertThat(refused("sheet_mas").err()).contains("Did you mean sheet_mass?");
        assertThat(refused("sheet_mass", "lenght=3").err()).contains("Did you mean length?");
        assertThat(refused("sheet_mass", "length=3", "length=4").code()).isEqualTo(2);
        assertThat(refused("sheet_mass", "length=3 gal").err()).contains("a volume");
        assertThat(refused("sheet_mass", "3").code()).isEqualTo(2);
    }
}
