package soapstone.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Paper without a site, and without a school. */
class PrintTest {

    @TempDir
    Path folder;

    private static String text(Path file) throws Exception {
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(pdf).replaceAll("[\\s\\u00A0]+", " ");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"packet", "key", "folded"})
    void exercisesAndSeedsArePrintedTwiceTheSame(String kind) throws Exception {
        Path one = folder.resolve("one.pdf");
        Path other = folder.resolve("other.pdf");
        for (Path file : new Path[] {one, other}) {
            Shell.Result ran = Shell.run("print", kind, "--exercise", "spacing/bolt-holes", "--exercise", "brake/die-opening", "--seeds", "7,8", "--paper", "a4", "--to", file.toString());
            assertThat(ran.code()).as(ran.err()).isZero();
            assertThat(ran.out()).contains("\"sheets\" : 2");
        }
        assertThat(Files.mismatch(one, other)).isEqualTo(-1);
        assertThat(text(one)).contains("Bolt holes along an angle", "Pick the die");
    }

    @Test
    void theKeyOfASeedIsThatOfDraw() throws Exception {
        Path file = folder.resolve("key.pdf");
        Shell.run("print", "key", "--exercise", "spacing/bolt-holes", "--seeds", "7", "--to", file.toString());
        String pitch = Shell.run("draw", "spacing/bolt-holes", "--seed", "7", "--key").json().at("/key/pitch/text").asText();
        assertThat(pitch).isNotBlank();
        assertThat(text(file)).contains(pitch.replace('\u00A0', ' '));
    }

    @Test
    void whatDoesNotFitIsSaid() {
        Path file = folder.resolve("x.pdf");
        assertThat(Shell.run("print", "packets", "--to", file.toString()).err()).contains("'packets' cannot be printed").contains("packet");
        assertThat(Shell.run("print", "packet", "--to", file.toString()).err()).contains("--assignment N with --data DIR, or --exercise ID and --seeds");
        assertThat(Shell.run("print", "strips", "--exercise", "spacing/bolt-holes", "--seeds", "7", "--to", file.toString()).err()).contains("which a school keeps");
        assertThat(Shell.run("print", "packet", "--assignment", "3", "--data", folder.toString(), "--to", file.toString()).err()).contains("There is no school in");
        assertThat(Shell.run("print", "packet", "--exercise", "spacing/bolt-holes", "--seeds", "7", "--half", "--large", "--to", file.toString()).err()).contains("--half, --large or --close");
        assertThat(Shell.run("print", "packet", "--exercise", "spacing/bolt-holes", "--seeds", "7", "--to", folder.resolve("no/such.pdf").toString()).err()).contains("cannot be written");
        assertThat(file).doesNotExist();
    }
}
