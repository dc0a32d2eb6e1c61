package soapstone.school;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import soapstone.mark.Verdict;
import soapstone.source.Message;

/**
 * What the records say for one student and one skill: right on at least two different days, with different draws, without
 * help. It is what a signer looks at; it signs nothing by itself.
 *
 * @param skill  that is looked at
 * @param proofs two or more that stand: the first on each day, a draw once; empty or one when it does not stand
 * @param stands whether there are two
 * @param why    what was counted, and what is missing
 */
public record Evidence(String skill, List<Proof> proofs, boolean stands, List<Message> why) {

    /** So many different days are wanted. */
    public static final int DAYS = 2;

    public Evidence {
        proofs = List.copyOf(proofs);
        why = List.copyOf(why);
    }

    /**
     * One problem handed in.
     *
     * @param seed     of the draw
     * @param number   which try of this draw
     * @param verdicts as they count, one for each ask
     * @param formulas whether the formula book was at hand
     * @param shows    what a try showed while the sheet was open
     */
    public record HandedIn(long attempt, Instant at, String exercise, String skill, long seed, int number, List<Verdict> verdicts, boolean formulas,
            Assignment.Shows shows) {

        public HandedIn {
            verdicts = List.copyOf(verdicts);
        }

        /** All tries of a problem, with the marks as they count. */
        public static List<HandedIn> of(Work work, Assignment assignment, String skill) {
            Problem problem = work.problem();
            return work.attempts().stream().map(a -> new HandedIn(a.id(), a.handedIn(), problem.exercise(), skill, problem.seed(), a.number(),
                    work.marks(a).stream().map(c -> c.mark().verdict()).toList(), assignment.formulas(), assignment.shows())).toList();
        }

        /** Practice: with the formula book at hand and every line shown, so that it never proves anything. It is no attempt of the record. */
        public static HandedIn of(Practice practice, String skill) {
            return new HandedIn(0, practice.at(), practice.exercise(), skill, practice.seed(), 1, practice.marks().stream().map(AnswerMark::verdict).toList(), true,
                    Assignment.Shows.LINES);
        }

        /** Every answer right. One that is right only with an earlier wrong one is not. */
        public boolean isRight() {
            return !verdicts.isEmpty() && verdicts.stream().allMatch(Verdict::isRight);
        }

        /**
         * Without help: the formula book was closed, and nothing had been shown about this draw. So it is the first try of the
         * draw, or no try showed anything: who knows that an answer was wrong has been helped.
         */
        public boolean isWithoutHelp() {
            return !formulas && (number == 1 || shows == Assignment.Shows.NOTHING);
        }

        String draw() {
            return exercise + " " + seed;
        }
    }

    /** One that stands, and the school's day on which it was handed in. */
    public record Proof(LocalDate day, HandedIn work) {}

    /**
     * Gathers the evidence of one student.
     *
     * @param zone of the school: its midnight parts the days
     */
    public static Evidence of(String skill, List<HandedIn> works, ZoneId zone) {
        List<HandedIn> own = works.stream().filter(w -> w.skill().equals(skill)).sorted(Comparator.comparing(HandedIn::at)).toList();
        List<Proof> good = own.stream().filter(w -> w.isRight() && w.isWithoutHelp()).map(w -> new Proof(LocalDate.ofInstant(w.at(), zone), w)).toList();
        List<Proof> proofs = apart(good);
        boolean stands = proofs.size() >= DAYS;
        List<Message> why = new ArrayList<>();
        why.add(stands ? Message.of("school.evidence-stands", String.valueOf(proofs.size()))
                : Message.of("school.evidence-missing", String.valueOf(DAYS), String.valueOf(proofs.size())));
        tell(why, "school.evidence-helped", own.stream().filter(w -> w.isRight() && !w.isWithoutHelp()).count());
        tell(why, "school.evidence-same", good.size() - (long) proofs.size());
        return new Evidence(skill, proofs, stands, why);
    }

    /**
     * One for each day, no draw twice, as many as can be had. Taking the first of each day may use up the draw that a later day
     * has alone; so the days are matched with draws, each new day moving the earlier ones where it has to.
     */
    private static List<Proof> apart(List<Proof> good) {
        List<Proof> matched = new ArrayList<>();
        for (LocalDate day : good.stream().map(Proof::day).distinct().toList()) {
            place(day, good, matched, new ArrayList<>());
        }
        matched.sort(Comparator.comparing(Proof::day));
        return matched;
    }

    private static boolean place(LocalDate day, List<Proof> good, List<Proof> matched, List<String> tried) {
        for (Proof proof : good) {
            String draw = proof.work().draw();
            if (proof.day().equals(day) && !tried.contains(draw)) {
                tried.add(draw);
                Optional<Proof> holder = matched.stream().filter(p -> p.work().draw().equals(draw)).findFirst();
                if (holder.isEmpty() || place(holder.get().day(), good, matched, tried)) {
                    matched.removeIf(p -> p.day().equals(day) || p.work().draw().equals(draw));
                    matched.add(proof);
                    return true;
                }
            }
        }
        return false;
    }

    private static void tell(List<Message> why, String key, long many) {
        if (many > 0) {
            why.add(Message.of(key, String.valueOf(many)));
        }
    }
}
