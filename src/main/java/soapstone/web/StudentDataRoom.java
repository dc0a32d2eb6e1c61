package soapstone.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soapstone.page.EraseView;
import soapstone.page.FormView;
import soapstone.page.OwnRecordView;
import soapstone.page.Pages;
import soapstone.page.StudentDataView;
import soapstone.page.StudentRecordView;
import soapstone.school.Audit;
import soapstone.school.Member;
import soapstone.school.Note;
import soapstone.school.Notes;
import soapstone.school.School;
import soapstone.school.SchoolClass;
import soapstone.source.Message;

/**
 * What is kept about one student: out to be handed over, away, or mended. An instructor takes out what belongs to classes of
 * their own; a student who also sits with somebody else is erased by nobody alone.
 */
final class StudentDataRoom implements SchoolSite.Room {

    private static final int LONGEST_ANSWER = 1500;
    private static final int LONGEST_NAME = 80;
    private static final String ZIP = "application/zip";
    /** Rows that stay under a number, for the figures of the class. */
    private static final Set<String> UNNAMED = Set.of("sheet", "problem", "attempt", "mark", "remark", "audit");

    private final OwnClasses own;
    private final Desk desk;
    private final Pages pages;

    StudentDataRoom(SchoolOffice office, Desk desk, Pages pages) {
        this.own = new OwnClasses(office);
        this.desk = desk;
        this.pages = pages;
    }

    @Override
    public void addTo(Routes routes) {
        String here = "/classes/{class}/students/{person}/data";
        routes.get(Who.INSTRUCTOR, here, v -> data(v, student(v), FormView.of(Map.of())))
                .post(Who.INSTRUCTOR, here + "/export", this::export)
                .post(Who.INSTRUCTOR, here + "/corrections/{note}", this::answer)
                .get(Who.INSTRUCTOR, here + "/erase", v -> erasing(v, student(v), FormView.of(Map.of())))
                .post(Who.INSTRUCTOR, here + "/erase", this::erase);
    }

    /**
     * A student as an instructor may handle them.
     *
     * @param classes of the student that the instructor teaches
     * @param whole   whether these are all
     */
    private record Student(SchoolClass in, Member member, List<SchoolClass> classes, boolean whole) {

        long id() {
            return member.person().id();
        }

        StudentDataView.Student shown() {
            return new StudentDataView.Student(id(), member.seat(), member.person().shown(), member.person().login());
        }

        boolean isCalled(String typed) {
            String name = plain(typed);
            return !name.isEmpty() && (name.equals(plain(member.seat())) || name.equals(plain(member.person().shown())));
        }

        private static String plain(String name) {
            return name.strip().toLowerCase(Locale.ROOT);
        }
    }

    /** Whoever is erased already is not to be found. */
    private Student student(Visit v) {
        SchoolClass in = own.schoolClass(v);
        Member member = own.member(v, in);
        School school = own.school();
        long person = member.person().id();
        if (school.privacy().erased().stream().anyMatch(e -> e.person() == person)) {
            throw Trouble.of(404);
        }
        List<Long> places = school.privacy().places(person);
        List<SchoolClass> taught = school.classes().taughtBy(v.person().id()).stream().filter(c -> places.contains(c.id())).toList();
        return new Student(in, member, taught, taught.size() == places.size());
    }

    private static String path(Student s) {
        return "/classes/" + s.in().id() + "/students/" + s.id() + "/data";
    }

    private Reply data(Visit v, Student s, FormView form) {
        Told told = new Told(own.school(), v.reader().words());
        List<OwnRecordView.Correction> corrections = corrections(s).stream().map(n -> told.correction(n, s.in().name())).toList();
        return Reply.page(pages.show(v.reader(), "student-data", new StudentDataView(EvidenceBook.head(s.in()), s.shown(), s.whole(), s.whole() ? kept(s) : List.of(),
                corrections, form)));
    }

    private List<Note> corrections(Student s) {
        return own.school().notes().of(s.id()).stream().filter(n -> n.schoolClass() == s.in().id()).toList();
    }

    private List<StudentDataView.Count> kept(Student s) {
        List<StudentDataView.Count> counts = new ArrayList<>();
        own.school().privacy().wouldGo(s.id()).forEach((kind, many) -> counts.add(new StudentDataView.Count(kind, many)));
        return counts;
    }

    private Reply export(Visit v) {
        Student s = student(v);
        Leaving.count(own.school(), v.person().id(), own.now());
        StudentExport export = new StudentExport(own.school(), desk.marks(), v.reader().words());
        StudentRecordView record = export.of(s.member().person(), s.classes(), s.whole(), own.now());
        byte[] zip = export.zip(record, pages.show(v.reader(), "student-record", record).bytes(), s.id(), own.now());
        // Each class's own book of changes says that its part of the record left.
        s.classes().forEach(in -> own.school().audit().note(new Audit.Entry(own.now(), Optional.of(v.person().id()), "student.exported", Optional.of(s.id()),
                Optional.of(in.id()), "", true)));
        return Reply.download(ZIP, "student-record.zip", zip);
    }

    private Reply answer(Visit v) {
        Student s = student(v);
        Note note = corrections(s).stream().filter(n -> n.id() == v.id("note")).findFirst().orElseThrow(() -> Trouble.of(404));
        FilledForm form = new FilledForm(v.form());
        String text = form.text("answer-" + note.id(), LONGEST_ANSWER);
        Note.Outcome outcome = form.choice("outcome-" + note.id(), Note.Outcome.class);
        if (text.isEmpty()) {
            form.fault("answer-" + note.id(), Message.of("privacy.answer-missing"));
        }
        if (outcome == Note.Outcome.OPEN) {
            form.fault("outcome-" + note.id(), Message.of("filled.choice"));
        }
        if (!form.isGood()) {
            return data(v, s, form.view()).as(422);
        }
        if (own.school().notes().answer(note.id(), new Notes.Answer(outcome, text, v.person().id(), v.person().shown(), own.now()))) {
            own.note(v, outcome == Note.Outcome.MENDED ? "correction.mended" : "correction.refused", Optional.of(s.id()), s.in(), "");
        }
        return Reply.goTo(path(s));
    }

    private Reply erasing(Visit v, Student s, FormView form) {
        List<StudentDataView.Count> kept = s.whole() ? kept(s) : List.of();
        return Reply.page(pages.show(v.reader(), "erase", new EraseView(EvidenceBook.head(s.in()), s.shown(), s.whole(),
                kept.stream().filter(c -> !UNNAMED.contains(c.kind())).toList(), kept.stream().filter(c -> UNNAMED.contains(c.kind())).toList(), form)));
    }

    /** What is written down about it names nobody. */
    private Reply erase(Visit v) {
        Student s = student(v);
        if (!s.whole()) {
            return erasing(v, s, FormView.of(Map.of())).as(409);
        }
        FilledForm form = new FilledForm(v.form());
        String typed = form.line("confirm", LONGEST_NAME);
        if (!s.isCalled(typed)) {
            form.fault("confirm", Message.of("privacy.confirm-other"));
        }
        if (!form.isGood()) {
            return erasing(v, s, form.view()).as(422);
        }
        own.school().privacy().erase(s.id(), Optional.of(v.person().id()), own.now());
        own.note(v, "student.erased", Optional.empty(), s.in(), "");
        return Reply.goTo("/classes/" + s.in().id());
    }
}
