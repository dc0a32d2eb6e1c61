package soapstone;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The program's own source files, for tests that hold the architecture. */
final class SourceFiles {

    private static final Path ROOT = Path.of("src/main/java/soapstone");
    private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/|//[^\n]*", Pattern.DOTALL);
    private static final Pattern TEXT = Pattern.compile("\"(\\\\.|[^\"\\\\\n])*\"");

    private SourceFiles() {}

    /**
     * A source file.
     *
     * @param part the package below {@code soapstone}; the name of the class for one that stands in no package below
     * @param code its text without comments and without the contents of string literals
     */
    record File(Path path, String part, String code) {

        /** Every match of the pattern, with its line. */
        List<String> found(Pattern pattern) {
            List<String> found = new ArrayList<>();
            Matcher matcher = pattern.matcher(code);
            while (matcher.find()) {
                long line = code.substring(0, matcher.start()).lines().count();
                found.add(path + ":" + Math.max(1, line) + ": " + matcher.group().strip());
            }
            return found;
        }
    }

    static List<File> all() {
        try (Stream<Path> files = Files.walk(ROOT)) {
            return files.filter(f -> f.toString().endsWith(".java")).sorted().map(SourceFiles::read).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The whole text of a source file below {@code soapstone}. */
    static String text(String file) {
        try {
            return Files.readString(ROOT.resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static File read(Path path) {
        try {
            Path below = ROOT.relativize(path);
            String part = below.getName(0).toString().replace(".java", "");
            return new File(path, part, code(Files.readString(path)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Keeps the lines, so that places stay right. */
    static String code(String text) {
        String open = TEXT.matcher(text).replaceAll("\"\"");
        return COMMENT.matcher(open).replaceAll(m -> "\n".repeat((int) m.group().chars().filter(c -> c == '\n').count()));
    }
}
