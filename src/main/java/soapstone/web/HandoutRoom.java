package soapstone.web;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soapstone.page.LessonView;
import soapstone.page.SlipsView;
import soapstone.paper.Handouts;
import soapstone.paper.PaperSize;
import soapstone.paper.Press;
import soapstone.school.SchoolClass;

/** Lessons, bench tasks and slips as files for a printer. For instructors: laying out costs more than showing a page. */
final class HandoutRoom implements SchoolSite.Room {

    /** A handout says nothing of when it was made: the same lesson is the same file. */
    private static final Instant NO_DAY = Instant.EPOCH;
    private static final int MOST_SLIPS = 300;

    private final OwnClasses own;
    private final Desk desk;

    HandoutRoom(SchoolOffice office, Desk desk) {
        this.own = new OwnClasses(office);
        this.desk = desk;
    }

    @Override
    public void addTo(Routes routes) {
        routes.get(Who.INSTRUCTOR, "/lessons/{id}/handout", v -> pdf(lesson(v).title(), "lesson-" + lesson(v).id(), List.of(handouts(v).lesson(lesson(v)))))
                .get(Who.INSTRUCTOR, "/lessons/{id}/bench", this::bench)
                .post(Who.INSTRUCTOR, "/classes/{class}/slips-to-sign-in/file", Fields.Limit.CHOICE, this::slips);
    }

    /** On the paper that the address names; on US Letter where it names none. */
    static Handouts handouts(Visit v) {
        PaperSize size = v.query().get("paper").map(p -> PaperSize.parse(p).orElseThrow(() -> Trouble.of(400))).orElse(PaperSize.LETTER);
        return new Handouts(v.reader().words(), size);
    }

    static Reply pdf(String title, String name, List<String> pieces) {
        try (Press press = new Press(title, NO_DAY)) {
            pieces.forEach(press::add);
            return Reply.download("application/pdf", name + ".pdf", press.bytes());
        }
    }

    private LessonView lesson(Visit v) {
        return desk.in(v.reader().words().language()).lesson(v.part("id")).orElseThrow(() -> Trouble.of(404));
    }

    private Reply bench(Visit v) {
        LessonView lesson = lesson(v);
        Optional<String> task = handouts(v).bench(lesson);
        return pdf(lesson.title(), "bench-" + lesson.id(), List.of(task.orElseThrow(() -> Trouble.of(404))));
    }

    /** The passphrases are known to the page alone, which sends them back: they are kept nowhere. */
    private Reply slips(Visit v) {
        SchoolClass in = own.open(v);
        List<SlipsView.Slip> slips = new ArrayList<>();
        for (int i = 1; i <= MOST_SLIPS && v.form().get("login-" + i).isPresent(); i++) {
            slips.add(new SlipsView.Slip(v.form().text("seat-" + i), v.form().text("shown-" + i), v.form().text("login-" + i), v.form().text("passphrase-" + i)));
        }
        if (slips.isEmpty()) {
            throw Trouble.of(400);
        }
        return pdf(in.name(), "slips-" + in.id(), handouts(v).slips(new SlipsView(in.id(), in.name(), own.address(v), slips)));
    }
}
