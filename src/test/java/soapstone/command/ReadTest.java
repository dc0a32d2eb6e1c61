package soapstone.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;

class ReadTest {

    private static JsonNode read(String... args) {
        String[] all = new String[args.length + 1];
        all[0] = "read";
        System.arraycopy(args, 0, all, 1, args.length);
        Shell.Result result = Shell.run(all);
        assertThat(result.code()).as(result.err()).isZero();
        return result.json();
    }

    @Test
    void oneAmount() {
        JsonNode data = read("in", "3' 5-3/8\"");
        assertThat(Shell.keys(data)).containsExactly("value", "unit", "notation", "text", "place", "asked");
        assertThat(data.get("value").asDouble()).isEqualTo(41.375);
        assertThat(data.get("notation").asText()).isEqualTo("feet-inches");
    }

    @Test
    void anotherUnitIsKeptAndTurnedIntoTheAskedOne() {
        JsonNode data = read("in", "1051 mm");
        assertThat(data.get("value").asInt()).isEqualTo(1051);
        assertThat(data.get("unit").asText()).isEqualTo("mm");
        assertThat(data.at("/asked/value").asDouble()).isCloseTo(1051 / 25.4, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(data.at("/asked/unit").asText()).isEqualTo("in");
    }

    @Test
    void belowZeroWithoutAnyQuoting() {
        assertThat(read("in", "-4 1/4").get("value").asDouble()).isEqualTo(-4.25);
    }

    @Test
    void countsListsAndPoints() {
        assertThat(read("count", "9 holes").get("value").asInt()).isEqualTo(9);
        assertThat(read("--list", "in", "1; 2 1/2; 4").get("value").toString()).isEqualTo("[1,2.5,4]");
        assertThat(read("--point", "in", "4 1/4; 2 1/2").get("value").toString()).isEqualTo("[[4.25,2.5]]");
        assertThat(read("--point", "in", "(1, 2) (3, 4)").get("value").toString()).isEqualTo("[[1,2],[3,4]]");
    }

    @Test
    void whatCannotBeReadIsASentence() {
        assertThat(Shell.keys(read("in", "31/2"))).containsExactly("problem");
        assertThat(read("in", "3 gal").get("problem").asText()).contains("a volume").contains("a length").doesNotContain("@");
        assertThat(read("in", "").get("problem").asText()).isNotEmpty();
    }

    @Test
    void decimalMark() {
        assertThat(read("mm", "12,5", "--decimal-mark", ",").get("value").asDouble()).isEqualTo(12.5);
    }

    @Test
    void unknownUnit() {
        Shell.Result result = Shell.run("read", "inn", "3");
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("Did you mean in");
    }
}
