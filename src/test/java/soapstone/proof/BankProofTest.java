package soapstone.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import soapstone.bank.Bank;
import soapstone.bank.BankFiles;
import soapstone.bank.BankReader;
import soapstone.exercise.Ask;
import soapstone.exercise.Check;
import soapstone.exercise.Exercise;
import soapstone.exercise.Given;
import soapstone.exercise.Model;
import soapstone.exercise.Template;
import soapstone.expression.FormulaBody;
import soapstone.files.Folder;
import soapstone.mark.AskMark;
import soapstone.mark.MarkRules;
import soapstone.mark.Marker;
import soapstone.quantity.UnitSystem;
import soapstone.source.Issue;
import soapstone.variant.Drawer;
import soapstone.variant.Shown;
import soapstone.variant.Variant;
import soapstone.variant.Worked;
import soapstone.variant.WorkedLine;

/**
 * Proves the bank that comes with the program, as it stands on the class path: it is large enough, every published check
 * passes, and over many seeds every exercise is fair and its mistakes are named. Prints a line of figures.
 */
class BankProofTest {

    private static final int SEEDS = 500;
    private static final long FIRST = 1;
    private static final double MOST_FALSE_NAMES = 0.02;
    private static final double LEAST_CARRIED = 0.95;
    private static final double SLACK = 1e-9;
    /** The units of the course; a folder each. */
    private static final int UNITS = 18;

    private static Bank bank;
    private static final StringBuffer FIGURES = new StringBuffer();

    @BeforeAll
    static void readTheBank() throws IOException {
        BankReader.Result result = BankReader.read(new BankFiles(Folder.builtIn("exercise-bank", ".yaml", ".csv")));
        assertThat(result.issues().all()).map(Issue::toString).as("issues of the bank").isEmpty();
        bank = result.bank().orElseThrow();
        figure("%d exercises in %d units", bank.exercises().size(), units().size());
    }

    @AfterAll
    static void printTheFigures() {
        System.out.println("Bank proof: " + FIGURES);
    }

    private static void figure(String text, Object... with) {
        FIGURES.append(FIGURES.length() == 0 ? "" : "; ").append(String.format(Locale.ROOT, text, with));
    }

    private static Set<String> units() {
        return bank.exercises().values().stream().map(Exercise::unit).collect(Collectors.toCollection(TreeSet::new));
    }

    /** An exercise in one unit system: what is tried at the same time as others. */
    private record Side(Exercise exercise, UnitSystem system) {

        Model model() {
            return exercise.model(system);
        }

        @Override
        public String toString() {
            return exercise.id() + " " + system.word();
        }
    }

    private static Stream<Side> sides() {
        List<Side> sides = new ArrayList<>();
        for (Exercise exercise : bank.exercises().values()) {
            for (UnitSystem system : UnitSystem.values()) {
                sides.add(new Side(exercise, system));
            }
        }
        return sides.parallelStream();
    }

    @Test
    void theBankCoversTheCourse() {
        assertThat(bank.exercises().size()).as("exercises").isGreaterThanOrEqualTo(30);
        assertThat(units()).as("units with exercises").hasSizeGreaterThanOrEqualTo(UNITS);
        for (String unit : List.of("spacing", "bends", "tanks", "baffles", "pressure")) {
            assertThat(bank.unit(unit)).as(unit).hasSizeGreaterThanOrEqualTo(3);
        }
    }

    @Test
    void everyPublishedCheckPasses() {
        List<CheckRun> runs = Proof.checks(bank);
        assertThat(runs).allSatisfy(run -> assertThat(run.passes()).as("%s, %s: %s", run.check().place(), run.owner(), run.told()).isTrue());
        Map<Check.Kind, Integer> kinds = new EnumMap<>(Check.Kind.class);
        runs.forEach(run -> kinds.merge(run.check().kind(), 1, Integer::sum));
        int published = kinds.getOrDefault(Check.Kind.SEEN, 0) + kinds.getOrDefault(Check.Kind.INPUTS, 0);
        assertThat(published).as("checks whose numbers or inputs were seen in a source: %s", kinds).isGreaterThanOrEqualTo(100);
        long misprints = runs.stream().filter(run -> run.check().misprint()).count();
        figure("%d checks pass %s, %d of them misprints that do not match", runs.size(), kinds.toString().toLowerCase(Locale.ROOT), misprints);
    }

    @Test
    void misprintsOfSourcesDoNotMatch() {
        List<CheckRun> misprints = Proof.checks(bank).stream().filter(run -> run.check().misprint()).toList();
        assertThat(misprints).allSatisfy(run -> assertThat(run.matches()).as("%s: %s", run.check().place(), run.told()).isFalse());
    }

    @Test
    void drawsAreFair() {
        List<DrawStudy> studies = sides().map(s -> DrawStudy.of(s.exercise(), s.system(), SEEDS)).toList();
        List<String> faults = studies.stream().flatMap(s -> s.faults().stream().map(f -> s.exercise() + " " + s.system().word() + ": " + f)).toList();
        assertThat(faults).as("faults of draws").isEmpty();
        figure("of single tries %.0f %% are refused", 100 * studies.stream().mapToDouble(DrawStudy::refusedShare).average().orElse(0));
    }

    @Test
    void givensAreInRangeAndThePartCouldBeMade() {
        List<String> faults = sides().flatMap(side -> {
            List<String> told = new ArrayList<>();
            Drawer drawer = new Drawer(side.exercise(), side.system());
            for (long seed = FIRST; seed < FIRST + SEEDS; seed++) {
                Optional<Variant> variant = drawer.draw(seed);
                String at = side + " seed " + seed;
                variant.ifPresentOrElse(v -> faults(v).forEach(f -> told.add(at + ": " + f)), () -> told.add(at + ": no draw"));
            }
            return told.stream();
        }).toList();
        assertThat(faults).isEmpty();
        figure("%d draws in range", SEEDS * 2 * bank.exercises().size());
    }

    private static List<String> faults(Variant v) {
        List<String> faults = new ArrayList<>();
        for (Given given : v.model().givens()) {
            double value = v.right().number(given.slot());
            if (!isPossible(given, value)) {
                faults.add(given.name() + " is " + value);
            }
        }
        v.model().where().stream().filter(r -> !r.condition().holds(v.right())).forEach(r -> faults.add("not so: " + r.text()));
        for (Template.Part part : v.model().story().parts()) {
            String shown = part.isText() ? part.text() : Shown.value(v.model(), v.right(), part.slot());
            if (!part.isText() && shown.equals("?") || shown.contains("{") || shown.contains("NaN") || shown.contains("Infinity")) {
                faults.add("the story says: " + shown);
            }
        }
        return faults;
    }

    private static boolean isPossible(Given given, double value) {
        if (given.choice() instanceof Given.Range range) {
            double index = (value - range.first()) / range.step();
            return Math.abs(index - Math.rint(index)) < SLACK * Math.max(1, index) && index > -SLACK && index < range.size() - 1 + SLACK;
        }
        if (given.choice() instanceof Given.Pick pick) {
            return java.util.Arrays.stream(pick.values()).anyMatch(p -> p == value);
        }
        return Double.isFinite(value);
    }

    @Test
    void theKeyIsRightAndEverySeenSlipIsNamed() {
        List<Naming.Miss> misses = sides().flatMap(s -> Naming.slips(s.exercise(), s.system(), FIRST, SEEDS).stream()).toList();
        Map<String, Long> by = misses.stream().collect(Collectors.groupingBy(m -> m.exercise() + " " + m.system().word() + " " + m.slip(), TreeMap::new, Collectors.counting()));
        assertThat(misses).as("answers that were not marked or named as they should be, by exercise and slip %s", by).isEmpty();
        figure("key right and every seen slip named over %d seeds", SEEDS);
    }

    @Test
    void whatTheWorkingShowsForAnAskIsRight() {
        Map<String, FormulaBody> book = new TreeMap<>();
        bank.formulas().forEach((name, formula) -> book.put(name, formula.body()));
        List<String> faults = sides().flatMap(side -> {
            List<String> told = new ArrayList<>();
            Drawer drawer = new Drawer(side.exercise(), side.system());
            Worked worked = new Worked(side.model(), book);
            for (long seed = FIRST; seed < FIRST + SEEDS / 5; seed++) {
                typedFromTheBoard(side, drawer.draw(seed).orElseThrow(), worked, told);
            }
            return told.stream();
        }).toList();
        assertThat(faults).as("results of worked lines that are not right when they are typed").isEmpty();
    }

    /** Somebody who types what stands behind the asked line of the worked solution. */
    private static void typedFromTheBoard(Side side, Variant v, Worked worked, List<String> told) {
        Map<Integer, String> results = worked.lines(v.right()).stream().collect(Collectors.toMap(WorkedLine::slot, WorkedLine::result));
        List<String> answers = new ArrayList<>();
        for (Ask ask : v.model().asks()) {
            String first = results.getOrDefault(ask.slot(), "no line of the working");
            answers.add(ask.second() < 0 ? first : points(first, results.getOrDefault(ask.second(), "no line of the working")));
        }
        for (AskMark mark : Marker.mark(v, answers, '.', MarkRules.USUAL).asks()) {
            if (!mark.verdict().isRight()) {
                told.add(side + " seed " + v.seed() + ": " + mark.ask().name() + " is worked out as " + mark.typed().text() + ", which is marked " + mark.verdict().word());
            }
        }
    }

    private static String points(String xs, String ys) {
        String[] x = xs.split("; ");
        String[] y = ys.split("; ");
        List<String> points = new ArrayList<>();
        for (int i = 0; i < Math.min(x.length, y.length); i++) {
            points.add("(" + x[i] + ", " + y[i] + ")");
        }
        return String.join("; ", points);
    }

    @Test
    void fewRandomAnswersAreNamed() {
        List<FalseNames> trials = sides().flatMap(s -> FalseNames.of(s.exercise(), s.system(), 20, 100).stream()).toList();
        Map<Ask.Kind, double[]> sums = new EnumMap<>(Ask.Kind.class);
        for (FalseNames trial : trials) {
            double[] sum = sums.computeIfAbsent(trial.kind(), k -> new double[2]);
            sum[0] += trial.named();
            sum[1] += trial.answers();
        }
        StringBuilder told = new StringBuilder();
        sums.forEach((kind, sum) -> told.append(told.length() == 0 ? "" : ", ")
                .append(String.format(Locale.ROOT, "%s %.2f %%", kind.name().toLowerCase(Locale.ROOT), 100 * sum[0] / sum[1])));
        String worst = trials.stream().filter(t -> t.kind() == Ask.Kind.QUANTITY).sorted((a, b) -> Double.compare(b.share(), a.share())).limit(5)
                .map(t -> String.format(Locale.ROOT, "%s %s %s %.1f %% %s", t.exercise(), t.system().word(), t.ask(), 100 * t.share(), t.by())).collect(Collectors.joining("\n"));
        double[] quantities = sums.get(Ask.Kind.QUANTITY);
        assertThat(quantities[0] / quantities[1]).as("random wrong quantities that are named; the worst:%n%s", worst).isLessThanOrEqualTo(MOST_FALSE_NAMES);
        figure("random wrong answers named: %s", told);
    }

    @Test
    void laterAnswersAreCarriedAndNoSlipIsCountedTwice() {
        List<Naming.Carried> trials = sides().map(s -> Naming.carried(s.exercise(), s.system(), FIRST, SEEDS / 5)).toList();
        int answers = trials.stream().mapToInt(Naming.Carried::answers).sum();
        int explained = trials.stream().mapToInt(Naming.Carried::explained).sum();
        int twice = trials.stream().mapToInt(Naming.Carried::countedTwice).sum();
        Map<String, Long> misses = trials.stream().flatMap(t -> t.misses().stream())
                .collect(Collectors.groupingBy(m -> m.exercise() + " " + m.ask() + " " + m.slip(), TreeMap::new, Collectors.counting()));
        assertThat(answers).as("later answers").isPositive();
        assertThat(explained / (double) answers).as("later answers explained; the others %s", misses).isGreaterThanOrEqualTo(LEAST_CARRIED);
        assertThat(twice).as("slips counted twice").isZero();
        figure("%d of %d later answers explained (%.1f %%), none counted twice", explained, answers, 100.0 * explained / answers);
    }
}
