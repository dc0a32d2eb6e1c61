package soapstone.web;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import soapstone.page.Answer;
import soapstone.page.AnswerBox;
import soapstone.page.SheetView;
import soapstone.school.Assignment;
import soapstone.school.Attempt;
import soapstone.school.Attempts;
import soapstone.school.Draft;
import soapstone.school.Marking;
import soapstone.school.Problem;
import soapstone.school.School;
import soapstone.school.SessionRule;
import soapstone.source.Message;

/**
 * Answers on their way from paper into the record: looked at with the verdict at each box, then kept as an attempt like any other, marked
 * as one that came on paper. The same answers to the same numbers count once, however often and in whichever way they are typed.
 */
final class PaperAnswers {

    private final School school;
    private final WorkDesk desk;
    private final Instant now;

    /** @param desk in the language of whoever types */
    PaperAnswers(School school, WorkDesk desk, Instant now) {
        this.school = school;
        this.desk = desk;
        this.now = now;
    }

    /**
     * What was looked at and not kept yet.
     *
     * @param sheet   the problem with what is said of each answer; empty when it cannot be drawn any more
     * @param outcome the marks, or what has to be written again
     * @param refusal why nothing is taken for this problem; empty when something is
     */
    record Looked(OwnSheet own, Problem problem, Map<String, String> texts, Optional<SheetView> sheet, Optional<Marking.Outcome> outcome, Optional<Message> refusal) {

        boolean isBlank() {
            return texts.values().stream().allMatch(String::isBlank);
        }

        /** Whether it can be kept, or is left alone since nothing is written. */
        boolean isGood() {
            return isBlank() || refusal.isEmpty() && outcome.filter(Marking.Outcome.Done.class::isInstance).isPresent();
        }
    }

    private WorkDesk.Piece piece(OwnSheet own, Problem problem) {
        return new WorkDesk.Piece(problem, own.terms().schoolClass().settings(), school.sheets());
    }

    /** The problem as it is asked, with these texts in its boxes. */
    Optional<SheetView> asked(OwnSheet own, Problem problem, Map<String, String> texts) {
        return desk.asked(piece(own, problem), texts);
    }

    /** The attempt that came on paper with these numbers. */
    static Optional<Attempt> onPaper(OwnSheet own, Problem problem) {
        return own.work(problem).attempts().stream().filter(a -> a.way() == Attempt.Way.PAPER).reduce((first, later) -> later);
    }

    /** @param typed by letters; a choice may be given by its number on the sheet */
    Looked look(OwnSheet own, Problem problem, Map<String, String> typed) {
        WorkDesk.Piece piece = piece(own, problem);
        Optional<SheetView> asked = desk.asked(piece, Map.of());
        Map<String, String> texts = new LinkedHashMap<>();
        asked.ifPresent(s -> s.boxes().forEach(b -> texts.put(b.letter(), text(b, typed.getOrDefault(b.letter(), "")))));
        if (asked.isEmpty()) {
            return new Looked(own, problem, typed, asked, Optional.empty(), Optional.of(Message.of("typing.stale")));
        }
        if (texts.values().stream().allMatch(String::isBlank)) {
            return new Looked(own, problem, texts, asked, Optional.empty(), Optional.empty());
        }
        Marking.Outcome outcome = desk.mark(piece, texts);
        boolean marked = outcome instanceof Marking.Outcome.Done;
        return new Looked(own, problem, texts, marked ? desk.handedIn(piece, texts, Assignment.Shows.LINES) : desk.read(piece, texts), Optional.of(outcome),
                refusal(own, problem, texts));
    }

    private static String text(AnswerBox box, String typed) {
        String plain = typed.replace("\r\n", "\n");
        String number = plain.strip();
        boolean choice = box.kind() == AnswerBox.Kind.CHOICE && number.matches("[1-9]") && box.options().stream().noneMatch(o -> o.label().equals(number));
        return choice && Integer.parseInt(number) <= box.options().size() ? box.options().get(Integer.parseInt(number) - 1).label() : plain;
    }

    /** Why no further attempt is taken. What is there already with the same answers is no fault. */
    private static Optional<Message> refusal(OwnSheet own, Problem problem, Map<String, String> texts) {
        Optional<Attempt> before = onPaper(own, problem);
        if (before.isPresent()) {
            return before.get().receipt().equals(receipt(problem, texts)) ? Optional.empty() : Optional.of(Message.of("typing.kept-otherwise"));
        }
        return own.triesLeft(problem.place()) > 0 ? Optional.empty() : Optional.of(WorkPages.noTries(own.terms()));
    }

    private static String receipt(Problem problem, Map<String, String> texts) {
        return SessionRule.hash("paper-" + problem.id() + "-" + new Draft(texts, Optional.empty()).version());
    }

    /**
     * Keeps what was looked at; what is blank is left alone.
     *
     * @param late whether the paper came after the due time
     * @return how many problems it was
     */
    int keep(List<Looked> all, boolean late) {
        List<Looked> filled = all.stream().filter(l -> !l.isBlank()).toList();
        if (!filled.stream().allMatch(Looked::isGood)) {
            throw new IllegalArgumentException("only what is good all through is kept");
        }
        for (Looked one : filled) {
            Marking.Outcome.Done done = (Marking.Outcome.Done) one.outcome().orElseThrow();
            Attempts.Handed handed = new Attempts.Handed(one.problem().id(), receipt(one.problem(), one.texts()), now, late, Attempt.Way.PAPER, desk.program(),
                    done.fingerprint(), done.marks());
            school.attempts().hand(handed, one.own().mostAttempts(one.problem()));
        }
        return filled.size();
    }

    /** Boxes with names of their own where several problems stand on one page: {@code a} becomes {@code 3a}. */
    static List<AnswerBox> named(String before, List<AnswerBox> boxes) {
        List<AnswerBox> named = new ArrayList<>();
        for (AnswerBox b : boxes) {
            Answer a = b.answer();
            List<Answer.Own> from = a.from().stream().map(o -> new Answer.Own(before + o.letter(), o.value())).toList();
            named.add(new AnswerBox(before + b.letter(), b.kind(), b.prompt(), b.to(), b.within(), b.unit(), b.reads(), b.options(),
                    new Answer(a.typed(), a.state(), a.readAs(), a.says(), a.fits(), from)));
        }
        return named;
    }

    /** What was typed into the boxes of that name. */
    static Map<String, String> typed(Visit v, String before) {
        Map<String, String> typed = new LinkedHashMap<>();
        v.typed().forEach((name, text) -> {
            String letter = name.startsWith(before) ? name.substring(before.length()) : "";
            if (!letter.isEmpty() && letter.chars().noneMatch(Character::isDigit)) {
                typed.put(letter, text);
            }
        });
        return typed;
    }
}
