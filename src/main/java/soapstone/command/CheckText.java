package soapstone.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import soapstone.exercise.Check;
import soapstone.proof.CheckRun;
import soapstone.proof.DrawStudy;
import soapstone.proof.FalseNames;
import soapstone.source.Issue;

/** What was found out about a bank, to be read: what is wrong comes last, where it is seen first. */
final class CheckText {

    private static final int MOST_REASONS = 4;
    /** Slips that are seen in fewer draws than this are worth a line. */
    private static final double SELDOM = 0.5;

    private CheckText() {}

    static List<String> lines(CheckResult result) {
        List<String> lines = new ArrayList<>();
        result.studies().forEach(s -> study(result, s, lines));
        if (!lines.isEmpty()) {
            lines.add("");
        }
        faults(result, lines);
        summary(result, lines);
        return lines;
    }

    private static void study(CheckResult result, DrawStudy study, List<String> lines) {
        List<String> names = result.names(study).stream().map(n -> n.ask() + " " + percent(n.share())).toList();
        lines.add(study.exercise() + " " + study.system().word() + ": refused " + percent(study.refusedShare())
                + (names.isEmpty() ? "" : "; random answers named: " + String.join(", ", names)));
        String reasons = String.join(", ", study.refused().entrySet().stream().sorted((a, b) -> b.getValue() - a.getValue()).limit(MOST_REASONS)
                .map(e -> e.getKey() + " " + percent(e.getValue() / (double) study.tries())).toList());
        add(lines, "refused for", reasons);
        add(lines, "slips seldom seen", String.join(", ", study.seen().entrySet().stream().filter(e -> e.getValue() < SELDOM)
                .map(e -> e.getKey() + " " + percent(e.getValue())).toList()));
        add(lines, "seldom told apart", String.join(", ", study.seldomApart().entrySet().stream()
                .map(e -> e.getKey() + " same in " + e.getValue() + " %").toList()));
    }

    private static void add(List<String> lines, String what, String list) {
        if (!list.isEmpty()) {
            lines.add("    " + what + ": " + list);
        }
    }

    private static void faults(CheckResult result, List<String> lines) {
        result.issues().stream().map(Issue::toString).forEach(lines::add);
        result.failed().stream().map(CheckResult::issue).map(Issue::toString).forEach(lines::add);
        for (DrawStudy study : result.unfair()) {
            study.faults().forEach(f -> lines.add(study.exercise() + " " + study.system().word() + ": draws: " + f));
        }
    }

    private static void summary(CheckResult result, List<String> lines) {
        lines.add(count(result.bank().exercises().size(), "exercise") + ", " + count(result.bank().formulas().size(), "formula") + ", "
                + count(result.bank().tables().size(), "table")
                + (result.lessons() < 0 ? "; lessons not looked at" : ", " + count(result.lessons(), "lesson")));
        lines.add(count(result.runs().size(), "published check") + ": " + kinds(result.runs()) + "; "
                + count((int) result.runs().stream().filter(r -> r.check().misprint()).count(), "known misprint"));
        result.falseShare(false).ifPresent(share -> lines.add("Random wrong answers that are named as a mistake: " + percent(share)
                + result.falseShare(true).map(c -> "; of counts " + percent(c)).orElse("")
                + "; of " + result.names().stream().mapToInt(FalseNames::answers).sum() + " tried"));
        int draws = result.unfair().stream().mapToInt(s -> s.faults().size()).sum();
        lines.add(result.isGood() ? "All is well." : "Found: " + String.join(", ", List.of(count(result.issues().size(), "issue"),
                count(result.failed().size(), "failed check"), count(draws, "fault") + " of draws")) + ".");
    }

    private static String kinds(List<CheckRun> runs) {
        List<String> kinds = new ArrayList<>();
        kinds(runs, (kind, n) -> kinds.add(n + " " + kind));
        return String.join(", ", kinds);
    }

    /** How many checks there are of each kind, in the order of the kinds. */
    static void kinds(List<CheckRun> runs, java.util.function.BiConsumer<String, Integer> each) {
        for (Check.Kind kind : Check.Kind.values()) {
            each.accept(kind.name().toLowerCase(Locale.ROOT), (int) runs.stream().filter(r -> r.check().kind() == kind).count());
        }
    }

    private static String count(int n, String what) {
        return n + " " + what + (n == 1 ? "" : "s");
    }

    static String percent(double share) {
        double percent = share * 100;
        return (percent < 10 && percent > 0 ? String.format(Locale.ROOT, "%.1f", percent) : String.valueOf(Math.round(percent))) + " %";
    }
}
