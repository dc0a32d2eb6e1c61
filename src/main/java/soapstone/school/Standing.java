package soapstone.school;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * How one student stands with one assignment.
 *
 * @param places the problems of the sheet, in order; none while there is no sheet
 * @param score  over all of them; without a sheet nothing of what the assignment is worth
 * @param late   whether a try that counts came after the due time
 * @param due    for this student; empty for practice without an end
 */
public record Standing(Member member, State state, List<Place> places, Scores.Score score, boolean late, Optional<Instant> due) {

    /** How far somebody is. */
    public enum State { NOT_BEGUN, OPEN, HANDED_IN, EXCUSED }

    /**
     * One problem of a sheet.
     *
     * @param work the round that counts: the one with the most points, the newer of two that are alike
     * @param best the try that counts; empty when nothing was handed in
     */
    public record Place(int place, Work work, Optional<Attempt> best, Scores.Score score) {

        /** The marks that count, in order. */
        public List<Counted> marks() {
            return best.map(work::marks).orElse(List.of());
        }
    }

    public Standing {
        places = List.copyOf(places);
    }

    public Scores.Entry entry(Assignment.Late rule) {
        return new Scores.Entry(score, due, state == State.EXCUSED, rule, places.stream().anyMatch(p -> p.best().isPresent()));
    }

    /** How far this one is, for the morning page. */
    public Morning.Progress progress(boolean typed) {
        int done = (int) places.stream().filter(p -> p.best().isPresent()).count();
        return new Morning.Progress(member.person().id(), member.person().shown(), places.size(), done, typed, state == State.EXCUSED);
    }

    /**
     * Everybody for whom an assignment is, in the order of the members; of those who left the class only who handed
     * something in.
     *
     * @param given  what differs for single students
     * @param works  on this assignment
     * @param typing who has something typed that is not handed in
     */
    public static List<Standing> of(Assignment assignment, List<Member> members, List<Assignments.GivenTo> given, List<Work> works, Set<Long> typing) {
        Map<Long, Assignments.GivenTo> own = new HashMap<>();
        given.forEach(g -> own.put(g.person(), g));
        boolean some = given.stream().anyMatch(Assignments.GivenTo::onlyThese);
        Map<Long, List<Work>> byPerson = new HashMap<>();
        works.forEach(w -> byPerson.computeIfAbsent(w.person(), p -> new ArrayList<>()).add(w));
        List<Standing> all = new ArrayList<>();
        for (Member member : members) {
            long person = member.person().id();
            List<Work> done = byPerson.getOrDefault(person, List.of());
            boolean handed = done.stream().anyMatch(w -> !w.attempts().isEmpty());
            boolean meant = member.state() == Member.State.IN && (!some || own.containsKey(person) && own.get(person).onlyThese());
            if (handed || meant) {
                all.add(one(assignment, member, Optional.ofNullable(own.get(person)), done, typing.contains(person)));
            }
        }
        return all;
    }

    private static Standing one(Assignment assignment, Member member, Optional<Assignments.GivenTo> own, List<Work> works, boolean typed) {
        Map<Integer, List<Work>> rounds = new TreeMap<>();
        works.forEach(w -> rounds.computeIfAbsent(w.problem().place(), p -> new ArrayList<>()).add(w));
        List<Place> places = rounds.values().stream().map(all -> place(all, assignment.late())).toList();
        Scores.Score score = places.stream().map(Place::score).reduce(Scores.Score::plus).orElse(new Scores.Score(0, possible(assignment)));
        boolean late = places.stream().anyMatch(p -> p.best().filter(Attempt::late).isPresent());
        Optional<Instant> due = Terms.due(assignment, member, own);
        boolean excused = own.filter(Assignments.GivenTo::excused).isPresent();
        return new Standing(member, excused ? State.EXCUSED : state(places, typed), places, score, late, due);
    }

    private static Place place(List<Work> rounds, Assignment.Late late) {
        Work counts = rounds.stream().max(Comparator.<Work>comparingDouble(w -> Scores.of(w, late).points()).thenComparing(w -> !w.attempts().isEmpty())
                .thenComparingInt(w -> w.problem().round())).orElseThrow();
        return new Place(counts.problem().place(), counts, best(counts, late), Scores.of(counts, late));
    }

    /** The try with the most points, the earlier of two that are alike. */
    private static Optional<Attempt> best(Work work, Assignment.Late late) {
        return work.attempts().stream().max(Comparator.<Attempt>comparingDouble(a -> Scores.of(new Work(work.person(), work.problem(), List.of(a), work.remarks()), late)
                .points()).thenComparing(Comparator.comparingInt(Attempt::number).reversed()));
    }

    private static State state(List<Place> places, boolean typed) {
        long done = places.stream().filter(p -> p.best().isPresent()).count();
        if (done == 0) {
            return typed ? State.OPEN : State.NOT_BEGUN;
        }
        return done == places.size() ? State.HANDED_IN : State.OPEN;
    }

    /** What an assignment is worth. */
    public static double possible(Assignment assignment) {
        return assignment.tasks().stream().mapToDouble(t -> t.many() * t.points()).sum();
    }
}
