package soapstone.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.Instant;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soapstone.page.Answer;
import soapstone.page.AnswerBox;
import soapstone.page.Pages;
import soapstone.page.PlainTimes;
import soapstone.page.SheetView;
import soapstone.page.WorkProblemView;
import soapstone.page.WorkRefusedView;
import soapstone.page.WorkReviewView;
import soapstone.page.WorkTryView;
import soapstone.school.Assignment;
import soapstone.school.Attempt;
import soapstone.school.Attempts;
import soapstone.school.CannotDeal;
import soapstone.school.Draft;
import soapstone.school.Marking;
import soapstone.school.Problem;
import soapstone.school.School;
import soapstone.school.SessionRule;
import soapstone.school.Sheets;
import soapstone.school.SignedIn;
import soapstone.school.Terms;
import soapstone.source.Message;

/**
 * One problem of a student's own sheet: typed, kept, looked over, handed in.
 *
 * <p>A form names the round that it was filled in for and the draft that it goes on from, so that an old page neither
 * counts for other numbers nor writes over what is newer. What is handed in is what stood on the review page.
 */
final class ProblemRoom implements SchoolSite.Room {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int CONFLICT = 409;

    private final SchoolOffice office;
    private final WorkDesk desk;
    private final Pages pages;

    ProblemRoom(SchoolOffice office, WorkDesk desk, Pages pages) {
        this.office = office;
        this.desk = desk;
        this.pages = pages;
    }

    @Override
    public void addTo(Routes routes) {
        routes.get(Who.STUDENT, "/sheets/{sheet}/{place}", this::problem)
                .post(Who.STUDENT, "/sheets/{sheet}/{place}", this::keep)
                .post(Who.STUDENT, "/sheets/{sheet}/{place}/draft", this::keepByScript)
                .get(Who.STUDENT, "/sheets/{sheet}/{place}/review", this::review)
                .post(Who.STUDENT, "/sheets/{sheet}/{place}/review", this::handIn)
                .post(Who.STUDENT, "/sheets/{sheet}/{place}/again", this::again)
                .get(Who.STUDENT, "/sheets/{sheet}/{place}/tries/{attempt}", this::attempt);
    }

    private School school() {
        return office.school().get();
    }

    private Instant now() {
        return office.clock().instant();
    }

    /** With drawings in the language of the page. */
    private WorkDesk desk(Visit v) {
        return desk.in(v.reader().words().language());
    }

    private WorkPages views(Visit v) {
        return new WorkPages(desk, v.reader().words(), now());
    }

    private OwnProblem own(Visit v) {
        return OwnProblem.of(school(), v);
    }

    private static boolean hasRound(Visit v, OwnProblem at) {
        return v.form().text("round").equals(String.valueOf(at.problem().round()));
    }

    /** Nothing is shown of a problem before it opens, even where its sheet is dealt already. */
    private static boolean isHidden(OwnProblem at, Instant now) {
        return at.own().terms().door(now) == Terms.Door.NOT_YET;
    }

    private Reply problem(Visit v) {
        OwnProblem at = own(v);
        if (isHidden(at, now())) {
            return refused(v, at, views(v).refusal(at).orElseThrow());
        }
        return problem(v, at, school().sheets().draftOf(at.problem().id()), List.of());
    }

    private Reply problem(Visit v, OwnProblem at, Draft draft, List<WorkProblemView.Newer> newer) {
        return Reply.page(pages.show(v.reader(), "work-problem", view(v, at, draft, draft.typed(), newer)));
    }

    private WorkProblemView view(Visit v, OwnProblem at, Draft draft, Map<String, String> typed, List<WorkProblemView.Newer> newer) {
        Optional<SheetView> sheet = desk(v).asked(at.piece(school()), typed);
        Optional<String> kept = draft.isEmpty() ? Optional.empty() : draft.saved().map(PlainTimes::hour);
        boolean tablet = v.caller().signedIn().map(SignedIn::tablet).orElse(true);
        return new WorkProblemView(views(v).place(at, sheet, sheet.isEmpty()), sheet, draft.version(), kept, tablet, views(v).refusal(at), newer);
    }

    private Reply refused(Visit v, OwnProblem at, Message says) {
        WorkRefusedView view = new WorkRefusedView(views(v).head(at.own()), says, "/sheets/" + at.own().sheet().id());
        return Reply.page(pages.show(v.reader(), "work-refused", view)).as(CONFLICT);
    }

    /** Why a form of this problem is not taken; empty when it is. */
    private Optional<Message> refusal(Visit v, OwnProblem at) {
        Optional<Message> refusal = views(v).refusal(at);
        return refusal.isPresent() || hasRound(v, at) ? refusal : Optional.of(Message.of("work.other-round"));
    }

    private Draft keep(Visit v, OwnProblem at, Map<String, String> typed) {
        Map<String, String> sent = new LinkedHashMap<>();
        v.form().startingWith("was-").forEach((letter, text) -> sent.put(letter, text.replace("\r\n", "\n")));
        Set<String> from = new HashSet<>(List.of(v.form().text("draft"), new Draft(sent, Optional.empty()).version()));
        return school().sheets().keepDraft(at.problem().id(), typed, from, now());
    }

    /** What stands in the boxes that the problem has; anything else in the form is passed over. */
    private Map<String, String> typed(Visit v, OwnProblem at) {
        Map<String, String> all = v.typed();
        Map<String, String> typed = new LinkedHashMap<>();
        desk.asked(at.piece(school()), Map.of()).ifPresent(s -> s.boxes().stream().map(AnswerBox::letter).filter(all::containsKey)
                .forEach(letter -> typed.put(letter, all.get(letter).replace("\r\n", "\n"))));
        return typed;
    }

    private static boolean isKept(Draft kept, Map<String, String> typed) {
        return typed.entrySet().stream().allMatch(e -> e.getValue().equals(kept.typed().getOrDefault(e.getKey(), "")));
    }

    private static List<WorkProblemView.Newer> newer(Draft kept, Map<String, String> typed) {
        return typed.entrySet().stream().filter(e -> !e.getValue().equals(kept.typed().getOrDefault(e.getKey(), "")))
                .map(e -> new WorkProblemView.Newer(e.getKey(), kept.typed().getOrDefault(e.getKey(), ""), e.getValue())).toList();
    }

    private Reply keep(Visit v) {
        OwnProblem at = own(v);
        Optional<Message> refusal = refusal(v, at);
        if (refusal.isPresent()) {
            return refused(v, at, refusal.get());
        }
        Map<String, String> typed = typed(v, at);
        Draft kept = keep(v, at, typed);
        if (!isKept(kept, typed)) {
            return Reply.page(pages.show(v.reader(), "work-problem", view(v, at, kept, typed, newer(kept, typed)))).as(CONFLICT);
        }
        return Reply.goTo(v.form().text("action").equals("review") ? at.path() + "/review" : at.path());
    }

    /** For the script: the same, answered in a few words. */
    private Reply keepByScript(Visit v) {
        OwnProblem at = own(v);
        Optional<Message> refusal = refusal(v, at);
        Map<String, Object> answer = new LinkedHashMap<>();
        if (refusal.isPresent()) {
            return json(answer, "refused", v.reader().words().say(refusal.get()));
        }
        Map<String, String> typed = typed(v, at);
        Draft kept = keep(v, at, typed);
        answer.put("draft", kept.version());
        String hour = PlainTimes.hour(kept.saved().orElse(now()));
        if (isKept(kept, typed)) {
            return json(answer, "kept", v.reader().words().say("work.kept", List.of(hour)));
        }
        answer.put("newer", kept.typed());
        return json(answer, "newer", v.reader().words().say("work.newer-kept", List.of(hour)));
    }

    private static Reply json(Map<String, Object> answer, String state, String text) {
        answer.put("state", state);
        answer.put("text", text);
        try {
            return Reply.json(JSON.writeValueAsString(answer));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("texts make JSON", e);
        }
    }

    private Reply review(Visit v) {
        OwnProblem at = own(v);
        Optional<Message> refusal = views(v).refusal(at);
        if (refusal.isPresent()) {
            return refused(v, at, refusal.get());
        }
        Draft draft = school().sheets().draftOf(at.problem().id());
        Optional<SheetView> read = desk(v).read(at.piece(school()), draft.typed());
        return read.isEmpty() ? Reply.goTo(at.path()) : Reply.page(pages.show(v.reader(), "work-review", review(v, at, read.get(), draft)));
    }

    private WorkReviewView review(Visit v, OwnProblem at, SheetView read, Draft draft) {
        List<String> empty = read.boxes().stream().filter(b -> b.answer().state() == Answer.State.EMPTY).map(AnswerBox::letter).toList();
        boolean doubtful = read.boxes().stream().anyMatch(b -> !b.answer().isReadable());
        return new WorkReviewView(views(v).place(at, Optional.of(read), false), read, empty, doubtful, draft.isEmpty(), receipt(at, draft));
    }

    /** One for what is kept after so many tries: the same review in two tabs is handed in once. */
    private static String receipt(OwnProblem at, Draft draft) {
        long tries = at.own().attempts().stream().filter(a -> a.problem() == at.problem().id()).count();
        return SessionRule.tokenOf(at.problem().id() + "-" + tries + "-" + draft.version());
    }

    private Reply handIn(Visit v) {
        OwnProblem at = own(v);
        if (!SessionRule.isToken(v.form().text("receipt"))) {
            throw Trouble.of(400);
        }
        // Bound to the sheet's place: nobody can make a receipt that stands in the way of somebody else's.
        String receipt = SessionRule.hash(at.own().sheet().id() + "-" + at.place() + "-" + v.form().text("receipt"));
        Optional<Attempt> before = at.own().attempts().stream().filter(a -> a.receipt().equals(receipt)).findFirst();
        if (before.isPresent()) {
            return Reply.goTo(WorkPages.path(at, before.get()));
        }
        Optional<Message> refusal = refusal(v, at);
        if (refusal.isPresent()) {
            return refused(v, at, refusal.get());
        }
        Map<String, String> typed = typed(v, at);
        if (typed.values().stream().allMatch(String::isBlank)) {
            return Reply.goTo(at.path() + "/review");
        }
        Marking.Outcome outcome = desk.mark(at.piece(school()), typed);
        if (outcome instanceof Marking.Outcome.Done done) {
            return hand(v, at, receipt, done);
        } else if (outcome instanceof Marking.Outcome.Stale stale) {
            return refused(v, at, stale.why());
        }
        school().sheets().saveDraft(at.problem().id(), typed, now());
        return Reply.goTo(at.path() + "/review");
    }

    private Reply hand(Visit v, OwnProblem at, String receipt, Marking.Outcome.Done done) {
        Terms terms = at.own().terms();
        Attempts.Handed handed = new Attempts.Handed(at.problem().id(), receipt, now(), terms.isOverdue(now()), Attempt.Way.SCREEN, desk.program(),
                done.fingerprint(), done.marks());
        Attempts.Kept kept = school().attempts().hand(handed, at.own().mostAttempts(at.problem()));
        if (kept instanceof Attempts.Kept.Counted counted) {
            return Reply.goTo(WorkPages.path(at, counted.attempt()));
        } else if (kept instanceof Attempts.Kept.Before before) {
            return Reply.goTo(WorkPages.path(at, before.attempt()));
        }
        return refused(v, at, WorkPages.noTries(terms));
    }

    private Reply again(Visit v) {
        OwnProblem at = own(v);
        Optional<Message> refusal = views(v).refusal(at.own().terms());
        if (refusal.isPresent()) {
            return refused(v, at, refusal.get());
        }
        boolean stale = desk.asked(at.piece(school()), Map.of()).isEmpty();
        if (hasRound(v, at) && (stale || at.own().canTakeOthers(at.place(), now()))) {
            try {
                Sheets.Dealt dealt = desk.again(at.problem(), at.own().rounds(at.place()), at.own().terms().schoolClass().settings());
                desk.whole(dealt.exercise()).ifPresent(whole -> school().sheets().keepWhole(dealt.fingerprint(), whole, now()));
                school().sheets().again(at.problem().id(), dealt);
            } catch (CannotDeal e) {
                return refused(v, at, Message.of("work.cannot-deal"));
            }
        } else if (hasRound(v, at)) {
            return refused(v, at, Message.of("work.no-others"));
        }
        return Reply.goTo(at.path());
    }

    private Reply attempt(Visit v) {
        OwnProblem at = own(v);
        long id = v.id("attempt");
        for (Problem round : at.own().rounds(at.place())) {
            Optional<Attempt> found = at.own().work(round).attempts().stream().filter(a -> a.id() == id).findFirst();
            if (found.isPresent()) {
                return Reply.page(pages.show(v.reader(), "work-try", attempt(v, at, round, found.get())));
            }
        }
        throw Trouble.of(404);
    }

    private WorkTryView attempt(Visit v, OwnProblem at, Problem round, Attempt attempt) {
        WorkPages views = views(v);
        Assignment.Shows shows = at.own().shows(at.place(), now());
        Map<String, String> typed = new LinkedHashMap<>();
        at.own().work(round).marks(attempt).forEach(c -> typed.put(c.mark().letter(), c.mark().typed()));
        Optional<SheetView> sheet = desk(v).handedIn(at.piece(school(), round), typed, shows);
        boolean marked = shows != Assignment.Shows.NOTHING;
        boolean more = round.id() == at.problem().id() && views.refusal(at).isEmpty();
        return new WorkTryView(views.place(at, sheet, false), attempt.number(), String.valueOf(attempt.id()), views.moment(attempt.handedIn()), attempt.late(),
                sheet, WorkPages.answers(attempt, shows), marked, views.points(at.own(), round, attempt),
                marked ? views.changed(at.own().work(round), attempt) : List.of(), more);
    }
}
