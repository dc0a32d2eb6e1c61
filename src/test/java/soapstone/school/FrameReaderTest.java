package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import soapstone.source.Issue;

/** A trade frame's file is read whole, or told with its line. */
class FrameReaderTest {

    private static final String GOOD = """
            frame: Sheet work
            owner: Somebody
            edition: 2027
            codes:
              - {code: B-1, title: Lays out, known: read, skills: [equal-spacing, mark-list]}
              - {code: B-2, title: Bends, known: memory}
            """;

    private static FrameReader.Result read(String text) {
        return FrameReader.read(Map.of("a.yaml", text));
    }

    @Test
    void everyCodeKnowsItsFrameAndItsEdition() {
        FrameReader.Result read = read(GOOD);
        assertThat(read.issues().all()).isEmpty();
        assertThat(read.frames()).containsExactly(new TradeFrame("Sheet work", "Somebody", "2027", List.of(
                new TradeFrame.Code(new TradeCode("Sheet work", "2027", "B-1", "Lays out"), List.of("equal-spacing", "mark-list"), true),
                new TradeFrame.Code(new TradeCode("Sheet work", "2027", "B-2", "Bends"), List.of(), false))));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "edition: 2027|editions: 2027|unknown key 'editions'",
            "edition: 2027|owner2: x|this file has no 'edition'",
            "known: memory|known: perhaps|'known' is perhaps",
            "code: B-2|code: B-1|the code B-1 stands twice",
            "title: Bends|title: ''|this text has 0 characters",
            "{code: B-2, title: Bends, known: memory}|B-2|has no entries"})
    void whatDoesNotFitIsToldWithItsPlace(String right, String wrong, String says) {
        List<Issue> issues = read(GOOD.replace(right, wrong)).issues().all();
        assertThat(issues).anySatisfy(i -> {
            assertThat(i.found()).contains(says);
            assertThat(i.place().line()).isPositive();
        });
    }

    @Test
    void aNameThatAnEntryHasNoRoomForIsAFault() {
        assertThat(read(GOOD.replace("Sheet work", "x".repeat(81))).issues().all()).hasSize(1);
    }

    @Test
    void theSameCodeOfAnotherEditionIsAnotherCode() {
        TradeCode code = new TradeCode("Sheet work", "2027", "B-1", "Lays out");
        assertThat(code.isSame(new TradeCode("Sheet work", "2027", "B-1", "Layout"))).isTrue();
        assertThat(code.isSame(new TradeCode("Sheet work", "2017", "B-1", "Lays out"))).isFalse();
        assertThat(code.isSame(TradeCode.own("B-1", "Lays out"))).isFalse();
    }
}
