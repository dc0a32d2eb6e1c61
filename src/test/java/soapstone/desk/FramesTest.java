package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import soapstone.files.Folder;
import soapstone.school.FrameReader;
import soapstone.school.TradeFrame;

/** The trade frames that come with the program. */
class FramesTest {

    private static FrameReader.Result read;

    @BeforeAll
    static void read() throws Exception {
        read = FrameReader.read(Folder.builtIn("soapstone/frames", ".yaml"));
    }

    @Test
    void allAreReadWithoutAFaultAndNamedWithTheirEdition() {
        assertThat(read.issues().all()).isEmpty();
        assertThat(read.frames()).hasSizeGreaterThanOrEqualTo(5).extracting(f -> f.name() + ", " + f.edition()).doesNotHaveDuplicates();
        assertThat(read.frames()).allSatisfy(f -> assertThat(f.codes()).isNotEmpty());
    }

    @Test
    void everySkillIsOneOfTheCourse() {
        Set<String> skills = RealSite.library().course().units().stream().flatMap(u -> u.skills().stream()).map(s -> s.name()).collect(Collectors.toSet());
        for (TradeFrame frame : read.frames()) {
            frame.codes().forEach(c -> assertThat(skills).as(frame.name() + " " + c.name().code()).containsAll(c.skills()));
        }
    }

    /** In one edition B-5.01 is what is B-6.01 in the other: a code without its edition would be misread. */
    @Test
    void twoEditionsOfOneFrameStandBesideEachOther() {
        assertThat(read.frames().stream().flatMap(f -> f.codes().stream()).map(c -> c.name()).filter(n -> n.title().equals("Simple and straight line layout")))
                .extracting(n -> n.code() + " " + n.edition()).containsExactlyInAnyOrder("B-5.01 2017/18", "B-6.01 current web edition");
    }
}
