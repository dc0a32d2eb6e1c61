package soapstone.school;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import soapstone.source.Message;

/**
 * What marks come to. Of a problem the best try counts, with the newest remark on each of its marks. A late try earns half
 * under {@link Assignment.Late#HALF} and nothing under {@link Assignment.Late#REFUSED}. An excused ask is left out of
 * what was earned and of what was possible, in whichever try it was excused.
 */
public final class Scores {

    private static final double LATE_SHARE = 0.5;

    private Scores() {}

    /**
     * What a problem, or several, came to.
     *
     * @param possible without what is excused
     */
    public record Score(double points, double possible) {

        /** Nothing earned, nothing possible. */
        public static final Score NONE = new Score(0, 0);

        public Score plus(Score other) {
            return new Score(points + other.points, possible + other.possible);
        }

        /** From 0 to 1; empty when nothing was possible. */
        public Optional<Double> share() {
            return possible > 0 ? Optional.of(points / possible) : Optional.empty();
        }
    }

    /** A problem's score; nothing handed in is nothing earned. */
    public static Score of(Work work, Assignment.Late late) {
        Set<Integer> excused = new HashSet<>();
        double left = 0;
        for (Attempt attempt : work.attempts()) {
            for (Counted counted : work.marks(attempt)) {
                left += counted.excused() && excused.add(counted.mark().place()) ? counted.mark().possible() : 0;
            }
        }
        double best = work.attempts().stream().mapToDouble(a -> points(work, a, excused, late)).max().orElse(0);
        return new Score(best, Math.max(0, work.problem().points() - left));
    }

    private static double points(Work work, Attempt attempt, Set<Integer> excused, Assignment.Late late) {
        double sum = work.marks(attempt).stream().map(Counted::mark).filter(m -> !excused.contains(m.place())).mapToDouble(AnswerMark::points).sum();
        return !attempt.late() ? sum : switch (late) {
            case TAKEN -> sum;
            case HALF -> sum * LATE_SHARE;
            case REFUSED -> 0;
        };
    }

    /** A sheet's score: the sum over its problems. */
    public static Score sheet(List<Work> works, Assignment.Late late) {
        return works.stream().map(w -> of(w, late)).reduce(Score.NONE, Score::plus);
    }

    /**
     * One student's sheet in an average.
     *
     * @param due     for this student; empty for practice without an end
     * @param excused the whole of it
     */
    public record Entry(Score score, Optional<Instant> due, boolean excused, Assignment.Late late, boolean handedIn) {}

    /**
     * An average and how it was made.
     *
     * @param counted sheets that were due
     * @param how     sentences that say what was counted and what was left out
     */
    public record Average(Score score, int counted, List<Message> how) {

        public Average {
            how = List.copyOf(how);
        }
    }

    /** All points that were earned over all that were possible, on sheets that were due by then and are not excused. */
    public static Average average(List<Entry> entries, Instant now) {
        List<Entry> due = entries.stream().filter(e -> !e.excused() && e.due().filter(d -> !d.isAfter(now)).isPresent()).toList();
        Score score = due.stream().map(Entry::score).reduce(Score.NONE, Score::plus);
        List<Message> how = new ArrayList<>();
        how.add(score.share().map(s -> Message.of("school.average", Printed.percent(s), Printed.points(score.points()), Printed.points(score.possible()),
                String.valueOf(due.size()))).orElse(Message.of("school.average-none")));
        long excused = entries.stream().filter(Entry::excused).count();
        tell(how, "school.average-not-due", entries.size() - due.size() - excused);
        tell(how, "school.average-excused", excused);
        tell(how, "school.average-not-handed-in", due.stream().filter(e -> !e.handedIn()).count());
        tell(how, "school.average-half", due.stream().filter(e -> e.late() == Assignment.Late.HALF).count());
        return new Average(score, due.size(), how);
    }

    private static void tell(List<Message> how, String key, long many) {
        if (many > 0) {
            how.add(Message.of(key, String.valueOf(many)));
        }
    }
}
