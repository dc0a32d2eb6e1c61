package soapstone;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Printed text that is kept for review: a change of the program shows as a changed line. With {@code -Dbaseline=write} the
 * files are written anew; the difference is then read before it is committed.
 */
public final class Baseline {

    private static final Path RESOURCES = Path.of("src/test/resources");

    private Baseline() {}

    /** Compares with the file below the test resources. */
    public static void check(String file, String text) {
        try {
            Path path = RESOURCES.resolve(file);
            if ("write".equals(System.getProperty("baseline"))) {
                Files.createDirectories(path.getParent());
                Files.writeString(path, text);
            }
            assertThat(text).as("the text of " + file + " (-Dbaseline=write writes it anew)").isEqualTo(Files.readString(path));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The text of a file below the test resources. */
    public static String read(String file) {
        try {
            return Files.readString(RESOURCES.resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
