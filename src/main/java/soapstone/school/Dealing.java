package soapstone.school;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import soapstone.bank.Bank;
import soapstone.exercise.Conventions;
import soapstone.exercise.Exercise;
import soapstone.exercise.Given;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;
import soapstone.variant.Variant;

/**
 * Deals sheets to a class: who gets which exercises with which numbers.
 *
 * <p>No two students get one seed for one exercise, and as long as an exercise has numbers enough, no two get the same
 * numbers. Of a pool, each exercise goes to as many students as any other, give or take one, and two students who stand
 * next to each other in the list never have the same choice of it. Everything dealt can be drawn.
 *
 * <p>The chance comes in as a generator: the same generator and the same lists deal the same sheets. Not for several
 * threads at once.
 */
public final class Dealing {

    /** Seeds are short enough to be typed from paper. */
    private static final long MOST_SEED = 999_999_999L;
    /** So many seeds are tried for numbers that nobody has yet; an exercise with few numbers may have to give them twice. */
    private static final int TRIES_FOR_OWN_NUMBERS = 60;
    private static final int MOST_TRIES = 400;
    private static final int TRIES_FOR_SIMILAR = 40;
    /** Answers of similar size are within a fifth of each other. */
    private static final double SIMILAR = Math.log(1.2);

    private final Bank bank;
    private final UnitSystem units;
    private final Conventions shop;
    private final RandomGenerator chance;
    private final Map<String, Drawer> drawers = new HashMap<>();
    private final Map<String, Boolean> fair = new HashMap<>();

    public Dealing(Bank bank, ClassSettings settings, RandomGenerator chance) {
        this.bank = bank;
        this.units = settings.units();
        this.shop = settings.shop();
        this.chance = chance;
    }

    /**
     * Deals an assignment.
     *
     * @param students in the order in which they sit, so that neighbours differ
     * @param already  sheets whose numbers must not come again: those of this assignment, and others of the class
     * @return the problems of each student, in the order of the students
     * @throws CannotDeal when an exercise is not in the bank, or nothing can be drawn of it
     */
    public Map<Long, List<Sheets.Dealt>> deal(Assignment assignment, List<Long> students, Collection<Sheet> already) {
        Taken taken = new Taken(already);
        List<Picker> pickers = assignment.tasks().stream().map(t -> new Picker(t, already)).toList();
        Map<Long, List<Sheets.Dealt>> sheets = new LinkedHashMap<>();
        for (long student : students) {
            List<Sheets.Dealt> problems = new ArrayList<>();
            for (Picker picker : pickers) {
                for (String exercise : picker.next()) {
                    problems.add(dealt(picker.task, problems.size() + 1, exercise, taken));
                }
            }
            sheets.put(student, List.copyOf(problems));
        }
        return sheets;
    }

    /**
     * The next round of one problem: the same exercise with other numbers.
     *
     * @param before every round that the student had of this exercise, on any sheet
     */
    public Sheets.Dealt again(Problem problem, Collection<Problem> before) {
        Taken taken = new Taken(List.of());
        taken.add(problem);
        before.forEach(taken::add);
        Variant variant = fresh(exercise(problem.exercise()), taken);
        return new Sheets.Dealt(problem.task(), problem.place(), problem.exercise(), variant.seed(), units, variant.exercise().fingerprint(),
                problem.points(), variant.conventions());
    }

    /**
     * A second sheet that is as hard as the first: problem by problem either another exercise of the task's pool with the same
     * {@link Difficulty} that was not on the first sheet, or the same exercise with other numbers whose answers are of similar
     * size. Points and places are those of the first sheet.
     *
     * @param first   the assignment of the first sheet
     * @param second  the assignment that the new sheet is for, with as many tasks
     * @param already sheets whose numbers must not come again; the first sheet is one of them in any case
     */
    public List<Sheets.Dealt> makeUp(Assignment first, Sheet sheet, Assignment second, Collection<Sheet> already) {
        if (first.tasks().size() != second.tasks().size()) {
            throw new IllegalArgumentException("the first assignment has " + first.tasks().size() + " tasks, the second " + second.tasks().size());
        }
        Taken taken = new Taken(already);
        sheet.problems().forEach(taken::add);
        Set<String> seen = new HashSet<>();
        sheet.problems().forEach(p -> seen.add(p.exercise()));
        List<Sheets.Dealt> problems = new ArrayList<>();
        for (Problem problem : sheet.problems()) {
            int task = place(first, problem.task());
            String exercise = another(problem, second.tasks().get(task), seen).orElse(problem.exercise());
            seen.add(exercise);
            Variant variant = exercise.equals(problem.exercise()) ? near(exercise(exercise), taken, problem) : fresh(exercise(exercise), taken);
            problems.add(new Sheets.Dealt(second.tasks().get(task).id(), problem.place(), exercise, variant.seed(), units,
                    variant.exercise().fingerprint(), problem.points(), variant.conventions()));
        }
        return List.copyOf(problems);
    }

    private static int place(Assignment assignment, long task) {
        for (int i = 0; i < assignment.tasks().size(); i++) {
            if (assignment.tasks().get(i).id() == task) {
                return i;
            }
        }
        throw new IllegalArgumentException("task " + task + " is not of the assignment \"" + assignment.title() + "\"");
    }

    private Optional<String> another(Problem problem, Assignment.Task task, Set<String> seen) {
        Difficulty wanted = Difficulty.of(exercise(problem.exercise()), units);
        List<String> fit = task.exercises().stream().filter(e -> !seen.contains(e) && bank.exercise(e).filter(this::isFair).isPresent())
                .filter(e -> Difficulty.of(exercise(e), units).equals(wanted)).toList();
        return fit.isEmpty() ? Optional.empty() : Optional.of(fit.get(chance.nextInt(fit.size())));
    }

    private Sheets.Dealt dealt(Assignment.Task task, int place, String id, Taken taken) {
        Variant variant = fresh(exercise(id), taken);
        return new Sheets.Dealt(task.id(), place, id, variant.seed(), units, variant.exercise().fingerprint(), task.points(), variant.conventions());
    }

    private Exercise exercise(String id) {
        return bank.exercise(id).orElseThrow(() -> new CannotDeal("the bank has no exercise " + id));
    }

    /** A draw with a seed that is not taken, and with numbers that are not taken if there are such. */
    private Variant fresh(Exercise exercise, Taken taken) {
        Variant spare = null;
        if (!isFair(exercise)) {
            throw new CannotDeal(exercise.id() + " has no fair draw with " + units.word() + " units and " + shop.text());
        }
        for (int i = 0; i < MOST_TRIES; i++) {
            long seed = chance.nextLong(1, MOST_SEED + 1);
            Optional<Variant> drawn = taken.has(exercise.id(), seed) ? Optional.empty() : drawer(exercise).draw(seed);
            if (drawn.isPresent() && !taken.has(exercise.id(), told(drawn.get()))) {
                return taken.with(drawn.get());
            }
            spare = drawn.orElse(spare);
            if (spare != null && i >= TRIES_FOR_OWN_NUMBERS) {
                return taken.with(spare);
            }
        }
        throw new CannotDeal(exercise.id() + " has no fair draw with " + units.word() + " units");
    }

    /** Of some fresh draws the first whose answers are of similar size, else the one that comes nearest. */
    private Variant near(Exercise exercise, Taken taken, Problem before) {
        Optional<Variant> like = drawer(exercise, before.units(), before.conventions()).draw(before.seed());
        Variant best = null;
        double least = Double.MAX_VALUE;
        for (int i = 0; i < TRIES_FOR_SIMILAR && like.isPresent() && least > SIMILAR; i++) {
            long seed = chance.nextLong(1, MOST_SEED + 1);
            Optional<Variant> drawn = taken.has(exercise.id(), seed) ? Optional.empty() : drawer(exercise).draw(seed);
            if (drawn.isPresent() && !taken.has(exercise.id(), told(drawn.get())) && Difficulty.apart(like.get(), drawn.get()) < least) {
                best = drawn.get();
                least = Difficulty.apart(like.get(), best);
            }
        }
        return best == null ? fresh(exercise, taken) : taken.with(best);
    }

    private boolean isFair(Exercise exercise) {
        return fair.computeIfAbsent(exercise.id(), id -> Fairness.isFair(exercise, units, shop));
    }

    private Drawer drawer(Exercise exercise) {
        return drawer(exercise, units, shop);
    }

    private Drawer drawer(Exercise exercise, UnitSystem system, Conventions set) {
        return drawers.computeIfAbsent(exercise.id() + " " + system + " " + set.text(), id -> new Drawer(exercise, system, set));
    }

    /** The numbers that a student reads. */
    static List<Double> told(Variant variant) {
        return variant.model().givens().stream().filter(g -> !g.hidden()).map(Given::slot).map(variant.right()::number).toList();
    }

    /** Seeds and numbers that somebody has, by exercise. */
    private final class Taken {

        private final Map<String, Set<Long>> seeds = new HashMap<>();
        private final Map<String, Set<List<Double>>> numbers = new HashMap<>();

        Taken(Collection<Sheet> sheets) {
            sheets.forEach(s -> s.problems().forEach(this::add));
        }

        void add(Problem problem) {
            seeds(problem.exercise()).add(problem.seed());
            bank.exercise(problem.exercise()).flatMap(e -> drawer(e, problem.units(), problem.conventions()).draw(problem.seed())).ifPresent(v -> numbers(problem.exercise()).add(told(v)));
        }

        Variant with(Variant variant) {
            seeds(variant.exercise().id()).add(variant.seed());
            numbers(variant.exercise().id()).add(told(variant));
            return variant;
        }

        boolean has(String exercise, long seed) {
            return seeds(exercise).contains(seed);
        }

        boolean has(String exercise, List<Double> told) {
            return numbers(exercise).contains(told);
        }

        private Set<Long> seeds(String exercise) {
            return seeds.computeIfAbsent(exercise, e -> new HashSet<>());
        }

        private Set<List<Double>> numbers(String exercise) {
            return numbers.computeIfAbsent(exercise, e -> new HashSet<>());
        }
    }

    /**
     * Takes exercises out of a pool, student by student: those first that were taken least, of these those first that the
     * student before does not have, of these at random. So the counts differ by one at most; and since what was taken
     * last never comes before what was left, the student before has another choice.
     */
    private final class Picker {

        private final Assignment.Task task;
        private final List<String> pool;
        private final Map<String, Integer> counts = new HashMap<>();
        private Set<String> before = Set.of();

        Picker(Assignment.Task task, Collection<Sheet> already) {
            this.task = task;
            List<String> there = task.exercises().stream().filter(e -> bank.exercise(e).isPresent()).toList();
            this.pool = there.stream().filter(e -> isFair(exercise(e))).toList();
            if (pool.size() < task.many()) {
                throw new CannotDeal("of " + String.join(", ", task.exercises()) + " the bank has " + there.size() + (pool.size() == there.size() ? ""
                        : ", " + pool.size() + " of them with fair numbers for what the class has set") + ", and " + task.many() + " are to be dealt");
            }
            for (Sheet sheet : already) {
                List<String> own = sheet.problems().stream().filter(p -> p.task() == task.id()).map(Problem::exercise).toList();
                own.forEach(e -> counts.merge(e, 1, Integer::sum));
                before = own.isEmpty() ? before : Set.copyOf(own);
            }
        }

        List<String> next() {
            Map<String, Long> lots = new HashMap<>();
            pool.forEach(e -> lots.put(e, chance.nextLong()));
            Comparator<String> order = Comparator.<String>comparingInt(e -> counts.getOrDefault(e, 0)).thenComparing(before::contains)
                    .thenComparingLong(lots::get);
            Set<String> taken = Set.copyOf(pool.stream().sorted(order).limit(task.many()).toList());
            taken.forEach(e -> counts.merge(e, 1, Integer::sum));
            before = taken;
            return pool.stream().filter(taken::contains).toList();
        }
    }
}
