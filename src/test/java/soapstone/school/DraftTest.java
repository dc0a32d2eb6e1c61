package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A draft is named by what stands in its boxes. */
class DraftTest {

    private static final Instant NOW = Instant.parse("2027-03-16T07:00:00Z");

    private static String version(Map<String, String> typed) {
        return new Draft(typed, Optional.of(NOW)).version();
    }

    @Test
    void theVersionNamesWhatIsTypedAndNothingElse() {
        assertThat(version(Map.of("a", "5 in"))).isEqualTo(new Draft(Map.of("a", "5 in", "b", " "), Optional.empty()).version()).isNotEmpty();
        assertThat(version(Map.of("a", "5 in"))).isNotEqualTo(version(Map.of("a", "5  in"))).isNotEqualTo(version(Map.of("b", "5 in")));
        assertThat(version(Map.of("a", "1", "b", "2"))).isNotEqualTo(version(Map.of("a", "1b=1:2")));
        assertThat(version(Map.of())).isEmpty();
        assertThat(version(Map.of("a", ""))).isEmpty();
    }

    @Test
    void lettersThatAreLeftOutKeepWhatTheyHave() {
        Draft draft = Draft.NONE.with(Map.of("a", "1", "b", "2"), NOW).with(Map.of("b", ""), NOW.plusSeconds(1));
        assertThat(draft.typed()).isEqualTo(Map.of("a", "1", "b", ""));
        assertThat(draft.saved()).contains(NOW.plusSeconds(1));
        assertThat(draft.isEmpty()).isFalse();
        assertThat(Draft.NONE.isEmpty()).isTrue();
    }
}
