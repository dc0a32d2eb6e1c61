package soapstone;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The engine takes values and gives values: no file, no clock, no thread, no reflection, nothing that stays behind. So it
 * can run anywhere, a mark can be computed again years later, and two classes of students cannot disturb each other.
 */
class EngineIsPureTest {

    private static final Set<String> ENGINE =
            Set.of("source", "quantity", "expression", "exercise", "bank", "variant", "figure", "mark");

    /** Reading a text that is in memory already goes through java.io; that is no file. */
    private static final Pattern FILES =
            Pattern.compile("\\bjava\\.io\\.(?!(StringReader|StringWriter|IOException|UncheckedIOException)\\b)[\\w.*]+|\\bjava\\.nio\\.(file|channels)\\b[\\w.]*");
    private static final Pattern CLOCK = Pattern.compile("\\bjava\\.time\\b[\\w.]*|\\bSystem\\.(currentTimeMillis|nanoTime)\\b|\\bnew Date\\b|\\bjava\\.util\\.Date\\b");
    private static final Pattern THREADS = Pattern.compile("\\bjava\\.util\\.concurrent\\b[\\w.]*|\\bThread\\b|\\bsynchronized\\b|\\bvolatile\\b|\\bparallel(Stream)?\\(");
    private static final Pattern REFLECTION = Pattern.compile("\\bjava\\.lang\\.(reflect|invoke)\\b[\\w.]*|\\bClass\\.forName\\b|\\.getDeclared\\w+\\(|\\bgetResource\\w*\\(");
    private static final Pattern SURROUNDINGS = Pattern.compile("\\bSystem\\.(getenv|getProperty|out|err|in|exit)\\b|\\bLocale\\.getDefault\\b|\\bMath\\.random\\b|\\bnew Random\\(\\)");
    /** A static field that is not final; a static method has a bracket, a nested type its word. */
    private static final Pattern STATIC_STATE = Pattern.compile(
            "^[ \\t]*(?:(?:public|protected|private)[ \\t]+)?static[ \\t]+(?!final\\b|class\\b|record\\b|interface\\b|enum\\b|abstract\\b|sealed\\b|<)[\\w.<>\\[\\], ?]+?[ \\t]+\\w+[ \\t]*(=[^=]|;)",
            Pattern.MULTILINE);

    @Test
    void noFiles() {
        assertThat(found(FILES)).isEmpty();
    }

    @Test
    void noClock() {
        assertThat(found(CLOCK)).isEmpty();
    }

    @Test
    void noThreads() {
        assertThat(found(THREADS)).isEmpty();
    }

    @Test
    void noReflection() {
        assertThat(found(REFLECTION)).isEmpty();
    }

    @Test
    void nothingOfTheMachineAroundIt() {
        assertThat(found(SURROUNDINGS)).isEmpty();
    }

    @Test
    void noStaticStateThatChanges() {
        assertThat(found(STATIC_STATE)).isEmpty();
    }

    @Test
    void thePatternsSeeWhatTheyAreFor() {
        assertThat(STATIC_STATE.matcher("    private static int count = 0;").find()).isTrue();
        assertThat(STATIC_STATE.matcher("    static Map<String, List<Integer>> seen;").find()).isTrue();
        assertThat(STATIC_STATE.matcher("    private static final int MOST = 3;").find()).isFalse();
        assertThat(STATIC_STATE.matcher("    static int count(String text) {").find()).isFalse();
        assertThat(FILES.matcher("import java.io.File;").find()).isTrue();
        assertThat(FILES.matcher("import java.io.StringReader;").find()).isFalse();
    }

    private static List<String> found(Pattern pattern) {
        List<String> found = SourceFiles.all().stream().filter(f -> ENGINE.contains(f.part())).flatMap(f -> f.found(pattern).stream()).toList();
        assertThat(SourceFiles.all().stream().map(SourceFiles.File::part)).contains("expression", "bank", "mark");
        return found;
    }
}
