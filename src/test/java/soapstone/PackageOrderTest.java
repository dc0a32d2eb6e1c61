package soapstone;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The architecture is a list: a package uses only those above it. Whoever needs an exception has found a class that
 * stands in the wrong package.
 */
class PackageOrderTest {

    private static final List<String> ORDER = List.of("source", "quantity", "expression", "exercise", "bank", "variant", "figure",
            "mark", "proof", "lesson", "files", "school", "record", "page", "paper", "web", "desk", "demo", "speed", "command", "Main");

    /** An import, or a name written out in full. */
    private static final Pattern USED = Pattern.compile("\\bsoapstone\\.([a-z]+)\\.[A-Za-z]");

    @Test
    void everyPackageStandsInTheList() {
        Set<String> parts = SourceFiles.all().stream().map(SourceFiles.File::part).filter(p -> !p.equals("package-info"))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(ORDER).as("packages under src/main/java/soapstone").containsAll(parts);
    }

    @Test
    void aPackageUsesOnlyThoseAboveIt() {
        List<String> wrong = new ArrayList<>();
        for (SourceFiles.File file : SourceFiles.all()) {
            int own = ORDER.indexOf(file.part());
            Matcher used = USED.matcher(file.code());
            while (used.find() && own >= 0) {
                if (ORDER.indexOf(used.group(1)) > own) {
                    wrong.add(file.path() + " uses " + used.group() + "…, which stands below " + file.part());
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void theStoryOfThePackagesIsInThisOrder() {
        String story = SourceFiles.text("package-info.java");
        List<String> told = Pattern.compile("<li>\\{@link soapstone\\.([a-z]+)}").matcher(story).results().map(m -> m.group(1)).toList();
        List<String> parts = SourceFiles.all().stream().map(SourceFiles.File::part).filter(p -> Character.isLowerCase(p.charAt(0)) && !p.equals("package-info"))
                .distinct().toList();
        assertThat(told).as("packages with a sentence in the root package-info").containsAll(parts)
                .isSortedAccordingTo(Comparator.comparingInt(ORDER::indexOf)).doesNotHaveDuplicates();
    }

    @Test
    void aNameWrittenOutInFullCountsAsUse() {
        Matcher used = USED.matcher(SourceFiles.code("/* soapstone.web.Site */ var x = soapstone.mark.Marker.mark(\"soapstone.desk.X\");"));
        assertThat(used.results().map(m -> m.group(1))).containsExactly("mark");
    }
}
