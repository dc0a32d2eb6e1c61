package soapstone.web;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import soapstone.page.CompetencyRecord;
import soapstone.page.FormView;
import soapstone.page.OwnRecordView;
import soapstone.page.Pages;
import soapstone.page.SchoolTimes;
import soapstone.school.Member;
import soapstone.school.School;
import soapstone.school.SchoolClass;
import soapstone.source.Message;

/** A student's own record: to be read, and to be objected to. */
final class OwnRecordRoom implements SchoolSite.Room {

    private static final int LONGEST = 1500;

    private final OwnClasses own;
    private final Desk desk;
    private final Pages pages;

    OwnRecordRoom(SchoolOffice office, Desk desk, Pages pages) {
        this.own = new OwnClasses(office);
        this.desk = desk;
        this.pages = pages;
    }

    @Override
    public void addTo(Routes routes) {
        routes.get(Who.STUDENT, "/sheets/record", v -> record(v, FormView.of(Map.of())))
                .post(Who.STUDENT, "/sheets/record", this::ask);
    }

    /** Classes in which the student has or had a place; asking for one gives no record yet. */
    private List<SchoolClass> classes(long student) {
        School school = own.school();
        return school.privacy().places(student).stream().filter(c -> school.classes().member(c, student).filter(m -> m.state() != Member.State.ASKED).isPresent())
                .flatMap(c -> school.classes().find(c).stream()).toList();
    }

    private Reply record(Visit v, FormView form) {
        long student = v.person().id();
        List<SchoolClass> classes = classes(student);
        EvidenceBook book = new EvidenceBook(own.school(), desk.marks(), v.reader().words());
        List<CompetencyRecord> records = classes.stream().map(in -> book.forStudent(in, own.school().classes().member(in.id(), student).orElseThrow(), own.now())).toList();
        Told told = new Told(own.school(), v.reader().words());
        List<OwnRecordView.Correction> corrections = own.school().notes().of(student).stream()
                .map(n -> told.correction(n, own.school().classes().find(n.schoolClass()).map(SchoolClass::name).orElse(""))).toList();
        return Reply.page(pages.show(v.reader(), "own-record", new OwnRecordView(v.person().shown(), SchoolTimes.moment(own.now(), v.reader().words().language()), records,
                classes.stream().map(c -> new OwnRecordView.Named(c.id(), c.name())).toList(), corrections,
                PracticeRows.of(own.school().practices().of(student), id -> desk.work().exercise(id).title(), v.reader().words()), form)));
    }

    private Reply ask(Visit v) {
        FilledForm form = new FilledForm(v.form());
        String asks = form.text("asks", LONGEST);
        if (asks.isEmpty()) {
            form.fault("asks", Message.of("privacy.asks-missing"));
        }
        Optional<SchoolClass> in = classes(v.person().id()).stream().filter(c -> String.valueOf(c.id()).equals(v.form().text("class"))).findFirst();
        if (in.isEmpty()) {
            form.fault("class", Message.of("filled.choice"));
        }
        if (!form.isGood()) {
            return record(v, form.view()).as(422);
        }
        own.school().notes().ask(v.person().id(), in.orElseThrow().id(), asks, own.now());
        own.note(v, "correction.asked", Optional.of(v.person().id()), in.get(), "");
        return Reply.goTo("/sheets/record");
    }
}
