package soapstone.web;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import soapstone.page.Address;
import soapstone.page.Pages;
import soapstone.page.PracticeView;
import soapstone.page.SheetKey;
import soapstone.school.ClassSettings;
import soapstone.school.Marking;
import soapstone.school.Practice;
import soapstone.school.Problem;
import soapstone.school.School;
import soapstone.source.Message;

/**
 * Keeps what a student worked as a guest. Nothing of a guest is kept anywhere, so that the address and the form carry all of
 * it: the draw and what was typed. Marks are never taken from them; the answers are marked anew.
 */
final class PracticeRoom implements SchoolSite.Room {

    private static final String HERE = "/practice/{unit}/{id}";
    private static final int WRONG = 422;

    private final SchoolOffice office;
    private final Desk desk;
    private final Pages pages;

    PracticeRoom(SchoolOffice office, Desk desk, Pages pages) {
        this.office = office;
        this.desk = desk;
        this.pages = pages;
    }

    @Override
    public void addTo(Routes routes) {
        routes.get(Who.STUDENT, HERE, v -> look(v, v.query().startingWith("box-"))).post(Who.STUDENT, HERE, this::keep);
    }

    private School school() {
        return office.school().get();
    }

    private static String exercise(Visit v) {
        return v.part("unit") + "/" + v.part("id");
    }

    /** The answers marked as the open site marks them. */
    private Marking.Outcome mark(Visit v, SheetKey key, Map<String, String> typed) {
        desk.fingerprint(v.part("unit"), v.part("id"), key.units()).orElseThrow(() -> Trouble.of(404));
        if (key.fingerprint().isEmpty()) {
            throw Trouble.of(400);
        }
        Map<String, String> lines = new LinkedHashMap<>();
        typed.forEach((letter, text) -> lines.put(letter, text.replace("\r\n", "\n")));
        Problem problem = new Problem(0, 0, 0, 1, 1, exercise(v), key.seed(), key.units(), key.fingerprint(), Practice.POINTS);
        return desk.work().mark(new WorkDesk.Piece(problem, ClassSettings.USUAL, school().sheets()), lines);
    }

    private Practice practice(Visit v, SheetKey key, Marking.Outcome.Done done) {
        return new Practice(v.person().id(), office.clock().instant(), exercise(v), key.seed(), key.units(), done.fingerprint(), desk.work().program(), done.marks());
    }

    /** Why it cannot be kept. */
    private static Message refusal(Marking.Outcome outcome) {
        return Message.of(outcome instanceof Marking.Outcome.Stale ? "practice-keep.stale" : outcome instanceof Marking.Outcome.AskedAgain ? "practice-keep.again"
                : "practice-keep.blank");
    }

    private static boolean isBlank(Marking.Outcome.Done done) {
        return done.marks().stream().allMatch(m -> m.typed().isBlank());
    }

    private Reply look(Visit v, Map<String, String> typed) {
        SheetKey key = v.key();
        Marking.Outcome outcome = mark(v, key, typed);
        String path = Address.practice(v.part("unit"), v.part("id"), key);
        if (outcome instanceof Marking.Outcome.Done done && !isBlank(done)) {
            PracticeView view = new PracticeView(path, typed, Optional.of(PracticeRows.of(practice(v, key, done), id -> desk.work().exercise(id).title(),
                    v.reader().words())), Optional.empty());
            return Reply.page(pages.show(v.reader(), "practice", view));
        }
        return Reply.page(pages.show(v.reader(), "practice", new PracticeView(path, typed, Optional.empty(), Optional.of(refusal(outcome))))).as(WRONG);
    }

    /** The same twice is kept once, and nobody has to know. */
    private Reply keep(Visit v) {
        SheetKey key = v.key();
        if (!(mark(v, key, v.typed()) instanceof Marking.Outcome.Done done) || isBlank(done)) {
            return look(v, v.typed());
        }
        boolean current = desk.fingerprint(v.part("unit"), v.part("id"), key.units()).filter(done.fingerprint()::equals).isPresent();
        if (current) {
            desk.work().whole(exercise(v)).ifPresent(whole -> school().sheets().keepWhole(done.fingerprint(), whole, office.clock().instant()));
        }
        school().practices().keep(practice(v, key, done));
        return Reply.goTo("/sheets/history");
    }
}
