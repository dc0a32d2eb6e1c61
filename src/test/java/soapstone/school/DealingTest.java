package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import soapstone.bank.Bank;
import soapstone.bank.SmallBank;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;
import soapstone.variant.Variant;

class DealingTest {

    private static final List<String> ALL = List.of(Desks.HOLES, Desks.CIRCLE, Desks.BEND, Desks.DRUM, Desks.RULE);

    private static Dealing dealing(long seed) {
        return new Dealing(SmallBank.bank(), ClassSettings.USUAL, Desks.chance(seed));
    }

    @Test
    void everybodyGetsTheTasksInOrderWithWhatMarksThem() {
        Assignment assignment = Desks.assignment(Desks.task(1, 1, Desks.HOLES), Desks.task(2, 2, Desks.DRUM, Desks.BEND));
        Map<Long, List<Sheets.Dealt>> sheets = dealing(1).deal(assignment, Desks.students(3), List.of());
        assertThat(sheets.keySet()).containsExactly(101L, 102L, 103L);
        for (List<Sheets.Dealt> sheet : sheets.values()) {
            assertThat(sheet).extracting(Sheets.Dealt::place).containsExactly(1, 2, 3);
            assertThat(sheet).extracting(Sheets.Dealt::exercise).containsExactly(Desks.HOLES, Desks.DRUM, Desks.BEND);
            assertThat(sheet).extracting(Sheets.Dealt::task).containsExactly(11L, 12L, 12L);
            assertThat(sheet).extracting(Sheets.Dealt::points).containsOnly(4.0);
            assertThat(sheet).extracting(Sheets.Dealt::fingerprint).containsExactly(SmallBank.exercise(Desks.HOLES).fingerprint(),
                    SmallBank.exercise(Desks.DRUM).fingerprint(), SmallBank.exercise(Desks.BEND).fingerprint());
        }
    }

    @Test
    void nobodyHasTheSeedOrTheNumbersOfAnother() {
        for (UnitSystem units : UnitSystem.values()) {
            for (long chance = 1; chance <= 5; chance++) {
                Assignment assignment = Desks.assignment(Desks.task(1, 1, Desks.HOLES), Desks.task(2, 1, Desks.CIRCLE), Desks.task(3, 1, Desks.BEND));
                Dealing dealing = new Dealing(SmallBank.bank(), Desks.settings(units), Desks.chance(chance));
                Set<String> seeds = new HashSet<>();
                Set<String> numbers = new HashSet<>();
                for (List<Sheets.Dealt> sheet : dealing.deal(assignment, Desks.students(24), List.of()).values()) {
                    for (Sheets.Dealt problem : sheet) {
                        assertThat(problem.units()).isEqualTo(units);
                        Variant variant = SmallBank.draw(problem.exercise(), units, problem.seed());
                        assertThat(seeds.add(problem.exercise() + problem.seed())).as("seed of " + problem).isTrue();
                        assertThat(numbers.add(problem.exercise() + Dealing.told(variant))).as("numbers of " + problem).isTrue();
                    }
                }
                assertThat(seeds).hasSize(3 * 24);
            }
        }
    }

    @Test
    void theSameChanceDealsTheSameSheets() {
        Assignment assignment = Desks.assignment(Desks.task(1, 2, Desks.HOLES, Desks.BEND, Desks.DRUM));
        assertThat(dealing(9).deal(assignment, Desks.students(6), List.of())).isEqualTo(dealing(9).deal(assignment, Desks.students(6), List.of()));
        assertThat(dealing(9).deal(assignment, Desks.students(6), List.of())).isNotEqualTo(dealing(10).deal(assignment, Desks.students(6), List.of()));
    }

    /** Every size of pool and every number out of it, several times: counts differ by one at most, neighbours have another choice. */
    @Test
    void aPoolIsSpreadEvenlyAndNeighboursDiffer() {
        for (int size = 2; size <= ALL.size(); size++) {
            for (int many = 1; many < size; many++) {
                for (long chance = 1; chance <= 4; chance++) {
                    Assignment assignment = Desks.assignment(Desks.task(1, many, ALL.subList(0, size).toArray(new String[0])));
                    Map<String, Integer> counts = new HashMap<>();
                    Set<String> before = Set.of();
                    for (List<Sheets.Dealt> sheet : dealing(chance).deal(assignment, Desks.students(13), List.of()).values()) {
                        Set<String> own = new TreeSet<>(sheet.stream().map(Sheets.Dealt::exercise).toList());
                        String where = many + " of " + size + ", chance " + chance;
                        assertThat(own).as(where).hasSize(many).isNotEqualTo(before);
                        own.forEach(e -> counts.merge(e, 1, Integer::sum));
                        before = own;
                    }
                    assertThat(counts).hasSize(size);
                    int least = counts.values().stream().mapToInt(i -> i).min().orElseThrow();
                    assertThat(counts.values()).allMatch(n -> n - least <= 1);
                }
            }
        }
    }

    @Test
    void whoComesLaterIsDealtOnFromWhatTheOthersHave() {
        Assignment assignment = Desks.assignment(Desks.task(1, 1, Desks.HOLES, Desks.BEND));
        List<Sheet> sheets = new ArrayList<>();
        Map<String, Integer> counts = new HashMap<>();
        Set<String> seeds = new HashSet<>();
        for (long student : Desks.students(8)) {
            List<Sheets.Dealt> own = dealing(3).deal(assignment, List.of(student), sheets).get(student);
            sheets.add(Desks.kept(student, own));
            counts.merge(own.get(0).exercise(), 1, Integer::sum);
            assertThat(seeds.add(own.get(0).exercise() + own.get(0).seed())).as("the same chance at each, and still another seed").isTrue();
        }
        assertThat(counts).containsOnly(Map.entry(Desks.HOLES, 4), Map.entry(Desks.BEND, 4));
    }

    @Test
    void anExerciseWithoutNumbersEnoughGivesThemTwiceUnderOtherSeeds() {
        String fixed = SmallBank.files().get("spacing/bolt-holes.yaml").replaceAll("(?m)^  length: \\{.*}", "  length: {pick: [60 in, 61 in]}")
                .replaceAll("(?m)^  holes: \\{.*}", "  holes: {pick: [7]}").replaceAll("(?m)^  edge: \\{.*}", "  edge: {pick: [1 1/2 in]}")
                .replaceAll("(?m)^  hole: \\{.*}", "  hole: {pick: [3/8 in]}");
        Bank bank = SmallBank.read(SmallBank.with("spacing/bolt-holes.yaml", fixed));
        Dealing dealing = new Dealing(bank, ClassSettings.USUAL, Desks.chance(1));
        Map<Long, List<Sheets.Dealt>> sheets = dealing.deal(Desks.assignment(Desks.task(1, 1, Desks.HOLES)), Desks.students(10), List.of());
        assertThat(sheets.values().stream().map(s -> s.get(0).seed()).distinct()).hasSize(10);
    }

    @Test
    void nothingToDealIsSaidWithTheExercise() {
        Assignment unknown = Desks.assignment(Desks.task(1, 1, "spacing/no-such"));
        assertThatThrownBy(() -> dealing(1).deal(unknown, Desks.students(1), List.of())).isInstanceOf(CannotDeal.class).hasMessageContaining("spacing/no-such");
        Assignment oneGone = Desks.assignment(Desks.task(1, 1, "spacing/no-such", Desks.HOLES));
        assertThat(dealing(1).deal(oneGone, Desks.students(1), List.of()).get(101L).get(0).exercise()).isEqualTo(Desks.HOLES);
    }

    @Test
    void againGivesOtherNumbersEveryTime() {
        Dealing dealing = dealing(5);
        Problem first = Desks.problem(SmallBank.bank(), Desks.BEND, 77, 3);
        List<Problem> rounds = new ArrayList<>(List.of(first));
        Set<List<Double>> numbers = new HashSet<>(Set.of(Dealing.told(SmallBank.draw(Desks.BEND, UnitSystem.US, 77))));
        for (int round = 2; round <= 30; round++) {
            Sheets.Dealt next = dealing.again(first, rounds);
            assertThat(rounds).extracting(Problem::seed).doesNotContain(next.seed());
            assertThat(numbers.add(Dealing.told(SmallBank.draw(Desks.BEND, UnitSystem.US, next.seed())))).as("round " + round).isTrue();
            assertThat(List.of(next.exercise(), next.place(), next.points(), next.task())).isEqualTo(List.of(Desks.BEND, 1, 3.0, 11L));
            rounds.add(new Problem(round, 1, 11, 1, round, Desks.BEND, next.seed(), UnitSystem.US, next.fingerprint(), 3));
        }
    }

    /** Another exercise of the same skill and level; one with a line more; one of another level. */
    private static Bank bankWithSiblings() {
        Map<String, String> files = SmallBank.files();
        String text = files.get("spacing/bolt-holes.yaml");
        files.put("spacing/sibling.yaml", text.replace("title: Bolt holes along an angle", "title: Rivets along a strip"));
        files.put("spacing/longer.yaml", text.replace("  - let: span = length - 2*edge", "  - let: both = 2*edge\n    say: Both ends.\n  - let: span = length - both"));
        files.put("spacing/harder.yaml", text.replace("level: 1", "level: 2"));
        return SmallBank.read(files);
    }

    @Test
    void aMakeUpIsEquallyHardWithFreshNumbers() {
        Bank bank = bankWithSiblings();
        Assignment.Task pool = Desks.task(1, 1, Desks.HOLES, "spacing/sibling", "spacing/longer", "spacing/harder");
        Assignment first = Desks.assignment(1, pool, Desks.task(2, 1, Desks.BEND));
        Assignment second = Desks.assignment(2, new Assignment.Task(31, 1, pool.exercises(), 1, 4), new Assignment.Task(32, 2, List.of(Desks.BEND), 1, 4));
        Set<String> changes = new TreeSet<>();
        for (long chance = 1; chance <= 12; chance++) {
            Dealing dealing = new Dealing(bank, ClassSettings.USUAL, Desks.chance(chance));
            List<Sheet> class24 = Desks.kept(dealing.deal(first, Desks.students(6), List.of()));
            for (Sheet sheet : class24) {
                List<Sheets.Dealt> fresh = dealing.makeUp(first, sheet, second, class24);
                assertThat(fresh).extracting(Sheets.Dealt::task).containsExactly(31L, 32L);
                for (int i = 0; i < fresh.size(); i++) {
                    Problem before = sheet.problems().get(i);
                    Sheets.Dealt after = fresh.get(i);
                    assertThat(difficulty(bank, after.exercise())).isEqualTo(difficulty(bank, before.exercise()));
                    assertThat(class24).allSatisfy(s -> assertThat(s.problems()).noneMatch(p -> p.exercise().equals(after.exercise()) && p.seed() == after.seed()));
                    assertThat(Drawer.draw(bank.exercise(after.exercise()).orElseThrow(), UnitSystem.US, after.seed())).isPresent();
                    changes.add(before.exercise() + " > " + after.exercise());
                }
            }
        }
        assertThat(changes).containsExactly("bends/one-bend > bends/one-bend", "spacing/bolt-holes > spacing/sibling", "spacing/harder > spacing/harder",
                "spacing/longer > spacing/longer", "spacing/sibling > spacing/bolt-holes");
    }

    /** A make-up with the same exercise asks for answers of similar size; a fresh draw alone would not. */
    @Test
    void theNumbersOfAMakeUpAreOfSimilarSize() {
        Bank bank = SmallBank.bank();
        Assignment first = Desks.assignment(1, Desks.task(1, 1, Desks.HOLES));
        Assignment second = Desks.assignment(2, new Assignment.Task(31, 1, List.of(Desks.HOLES), 1, 4));
        int far = 0;
        for (long chance = 1; chance <= 10; chance++) {
            Dealing dealing = new Dealing(bank, ClassSettings.USUAL, Desks.chance(chance));
            for (Sheet sheet : Desks.kept(dealing.deal(first, Desks.students(4), List.of()))) {
                Problem before = sheet.problems().get(0);
                Sheets.Dealt after = dealing.makeUp(first, sheet, second, List.of()).get(0);
                far += Difficulty.apart(SmallBank.draw(Desks.HOLES, UnitSystem.US, before.seed()), SmallBank.draw(Desks.HOLES, UnitSystem.US, after.seed())) > Math.log(1.2) ? 1 : 0;
            }
        }
        assertThat(far).as("of 40 make-ups whose answer is over a fifth away").isLessThanOrEqualTo(4);
    }

    private static Difficulty difficulty(Bank bank, String exercise) {
        return Difficulty.of(bank.exercise(exercise).orElseThrow(), UnitSystem.US);
    }

    @Test
    void difficultyIsSkillLevelLinesAndAsks() {
        assertThat(difficulty(SmallBank.bank(), Desks.HOLES)).isEqualTo(new Difficulty("equal-spacing", 1, 3, 1));
        assertThat(difficulty(SmallBank.bank(), Desks.CIRCLE)).isEqualTo(new Difficulty("bolt-circle", 3, 5, 3));
    }

    @Test
    void aMakeUpNeedsTheTasksOfTheFirst() {
        Assignment first = Desks.assignment(Desks.task(1, 1, Desks.HOLES));
        Sheet sheet = Desks.kept(dealing(1).deal(first, Desks.students(1), List.of())).get(0);
        Assignment other = Desks.assignment(Desks.task(1, 1, Desks.HOLES), Desks.task(2, 1, Desks.BEND));
        assertThatThrownBy(() -> dealing(1).makeUp(first, sheet, other, List.of())).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("1 tasks");
    }
}
