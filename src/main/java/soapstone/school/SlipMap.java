package soapstone.school;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import soapstone.source.Message;

/**
 * What a room misses: which mistakes the wrong answers fit, and who gave them. A student counts once for a mistake,
 * however often it was made. Answers that are carried on from an earlier mistake do not count again, nor do answers that
 * only two mistakes together would give.
 *
 * <p>Against chance: if every wrong answer were random, each would still be named with the odds that are kept with its mark.
 * For a student with several wrong answers the chance to be named at all is that of at least one of them; over the
 * students this gives the probability that so many would be named. It is put too high rather than too low: all wrong answers
 * to the exercises in which anybody made the mistake are counted, and being named as any mistake counts for this one.
 *
 * @param families by number of students, then by the odds, then by name
 * @param slips    the same, one row for each slip of each exercise
 * @param room     students who answered anything here
 */
public record SlipMap(List<Row> families, List<Row> slips, int room) {

    /** Rarer than this by chance, and made by more than one, a mistake is said to fit the room. */
    static final double RARE = 0.01;
    private static final double LEAST_TOLD = 0.001;

    public SlipMap {
        families = List.copyOf(families);
        slips = List.copyOf(slips);
    }

    /** How sure a row is. */
    public enum Sure {
        /** At least two students, and chance would hardly name so many. */
        FITS,
        /** One student, or not much more than chance would name, or other mistakes give these answers too. */
        COULD_BE;

        public Message word() {
            return Message.of(this == FITS ? "school.sure-fits" : "school.sure-could-be");
        }
    }

    /** A student and the answers that fit the mistake, in time. */
    public record Student(long person, String name, List<RoomAnswer> answers) {

        public Student {
            answers = List.copyOf(answers);
        }
    }

    /**
     * A mistake.
     *
     * @param name     of the slip, or of the family
     * @param exercise of the slip; empty for a family
     * @param families of the slip; of a family just itself
     * @param students who made it, in the order of the room
     * @param room     students who answered anything here
     * @param odds     the probability that chance alone would name so many; empty where the mistake is a slip of the pen,
     *                 whose odds are not known
     */
    public record Row(String name, String exercise, List<String> families, List<Student> students, int room, OptionalDouble odds, Sure sure) {

        public Row {
            families = List.copyOf(families);
            students = List.copyOf(students);
        }

        /** The share of the room, from 0 to 1. */
        public double share() {
            return (double) students.size() / room;
        }

        /** How many of the room, in a sentence that says no more than is known. */
        public Message says() {
            return Message.of(sure == Sure.FITS ? "school.room-fits" : "school.room-could-be", String.valueOf(students.size()), String.valueOf(room));
        }

        /** The odds against chance in a sentence. */
        public Message against() {
            return odds.isEmpty() ? Message.of("school.chance-unknown")
                    : odds.getAsDouble() < LEAST_TOLD ? Message.of("school.chance-small")
                    : Message.of("school.chance", String.valueOf(Math.round(odds.getAsDouble() / LEAST_TOLD)));
        }
    }

    /** The answers of an assignment. */
    public static Predicate<RoomAnswer> assignment(long id) {
        return a -> a.assignment() == id;
    }

    /** The answers that train a skill. */
    public static Predicate<RoomAnswer> skill(String skill) {
        return a -> a.skill().equals(skill);
    }

    /** All answers. */
    public static Predicate<RoomAnswer> term() {
        return a -> true;
    }

    /**
     * Looks at a room.
     *
     * @param names of the students, in the order in which they are told; answers of anybody else are passed over
     */
    public static SlipMap of(Collection<RoomAnswer> answers, Map<Long, String> names, Predicate<RoomAnswer> scope) {
        List<RoomAnswer> within = answers.stream().filter(a -> names.containsKey(a.person()) && a.mark().verdict().isMarked()).filter(scope)
                .sorted(Comparator.comparing(RoomAnswer::at).thenComparingLong(RoomAnswer::problem).thenComparingInt(a -> a.mark().place())).toList();
        Map<Long, String> inOrder = new LinkedHashMap<>(names);
        return new Maker(within, inOrder).map();
    }

    /** The work on one map. */
    private static final class Maker {

        private final List<RoomAnswer> answers;
        private final Map<Long, String> names;
        private final int room;

        Maker(List<RoomAnswer> answers, Map<Long, String> names) {
            this.answers = answers;
            this.names = names;
            this.room = (int) answers.stream().mapToLong(RoomAnswer::person).distinct().count();
        }

        SlipMap map() {
            Map<String, List<RoomAnswer>> families = new TreeMap<>();
            Map<String, List<RoomAnswer>> slips = new TreeMap<>();
            for (RoomAnswer answer : answers) {
                if (answer.isNamed()) {
                    answer.mark().families().forEach(f -> families.computeIfAbsent(f, k -> new ArrayList<>()).add(answer));
                    slips.computeIfAbsent(answer.mark().slip() + " " + answer.exercise(), k -> new ArrayList<>()).add(answer);
                }
            }
            return new SlipMap(rows(families, made -> ""), rows(slips, made -> made.get(0).exercise()), room);
        }

        private List<Row> rows(Map<String, List<RoomAnswer>> all, Function<List<RoomAnswer>, String> exercise) {
            List<Row> rows = new ArrayList<>();
            all.forEach((key, made) -> {
                String of = exercise.apply(made);
                rows.add(of.isEmpty() ? row(key, of, List.of(key), made) : row(made.get(0).mark().slip(), of, families(made), made));
            });
            rows.sort(Comparator.<Row>comparingInt(r -> -r.students().size()).thenComparingDouble(r -> r.odds().orElse(2))
                    .thenComparing(Row::name).thenComparing(Row::exercise));
            return rows;
        }

        private static List<String> families(List<RoomAnswer> made) {
            Set<String> families = new LinkedHashSet<>();
            made.forEach(a -> families.addAll(a.mark().families()));
            return List.copyOf(families);
        }

        private Row row(String name, String exercise, List<String> families, List<RoomAnswer> made) {
            Map<Long, List<RoomAnswer>> byPerson = new HashMap<>();
            made.forEach(a -> byPerson.computeIfAbsent(a.person(), p -> new ArrayList<>()).add(a));
            List<Student> students = names.entrySet().stream().filter(e -> byPerson.containsKey(e.getKey()))
                    .map(e -> new Student(e.getKey(), e.getValue(), byPerson.get(e.getKey()))).toList();
            OptionalDouble odds = odds(made);
            return new Row(name, exercise, families, students, room, odds, sure(students, odds));
        }

        /** Most of the students have to have an answer that nothing else gives. */
        private static Sure sure(List<Student> students, OptionalDouble odds) {
            long alone = students.stream().filter(s -> s.answers().stream().anyMatch(a -> a.mark().families().size() == 1)).count();
            boolean rare = students.size() > 1 && odds.orElse(1) <= RARE;
            return rare && 2 * alone > students.size() ? Sure.FITS : Sure.COULD_BE;
        }

        private OptionalDouble odds(List<RoomAnswer> made) {
            Set<Long> named = new HashSet<>();
            Set<String> exercises = new HashSet<>();
            for (RoomAnswer answer : made) {
                if (!answer.isMechanical()) {
                    named.add(answer.person());
                    exercises.add(answer.exercise());
                }
            }
            return named.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Chance.atLeast(named.size(), eachStudent(exercises)));
        }

        /** For each student with a wrong answer to one of the exercises, the chance that any of them is named. */
        private double[] eachStudent(Set<String> exercises) {
            Map<Long, Map<String, Double>> wrong = new TreeMap<>();
            for (RoomAnswer answer : answers) {
                if (answer.isWrong() && exercises.contains(answer.exercise())) {
                    // The same answer sent in again is no second chance.
                    String once = answer.problem() + " " + answer.mark().place() + " " + answer.mark().typed().strip();
                    wrong.computeIfAbsent(answer.person(), p -> new TreeMap<>()).put(once, answer.mark().odds());
                }
            }
            return wrong.values().stream().mapToDouble(m -> Chance.any(m.values().stream().mapToDouble(Double::doubleValue).toArray())).toArray();
        }
    }
}
