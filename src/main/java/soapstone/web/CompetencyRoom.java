package soapstone.web;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import soapstone.page.CompetencyGridView;
import soapstone.page.CompetencyRecord;
import soapstone.page.CompetencyRecordView;
import soapstone.page.CompetencySignView;
import soapstone.page.FormView;
import soapstone.page.Pages;
import soapstone.page.SchoolTimes;
import soapstone.school.Competency;
import soapstone.school.CompetencyStanding;
import soapstone.school.Member;
import soapstone.school.Person;
import soapstone.school.SchoolClass;
import soapstone.school.Signoff;
import soapstone.school.TradeCode;
import soapstone.source.Message;

/** Competencies of a class: who has shown what, and who signed it. */
final class CompetencyRoom implements SchoolSite.Room {

    private static final int LONGEST_CONDITIONS = 400;

    private final OwnClasses own;
    private final Desk desk;
    private final Pages pages;

    CompetencyRoom(SchoolOffice office, Desk desk, Pages pages) {
        this.own = new OwnClasses(office);
        this.desk = desk;
        this.pages = pages;
    }

    @Override
    public void addTo(Routes routes) {
        routes.get(Who.INSTRUCTOR, "/classes/{class}/competencies", this::grid)
                .get(Who.INSTRUCTOR, "/classes/{class}/competencies/{person}", this::record)
                .post(Who.INSTRUCTOR, "/classes/{class}/competencies/{person}/file", this::file)
                .get(Who.INSTRUCTOR, "/classes/{class}/competencies/{person}/sign", v -> signing(v, v.query(), FormView.of(Map.of())))
                .post(Who.INSTRUCTOR, "/classes/{class}/competencies/{person}/sign", this::sign);
    }

    private EvidenceBook book(Visit v) {
        return new EvidenceBook(own.school(), desk.marks(), v.reader().words());
    }

    private Reply grid(Visit v) {
        SchoolClass in = own.schoolClass(v);
        List<Competency> listed = own.school().signoffs().listed(in.id());
        List<Member> members = own.sitting(in);
        EvidenceBook book = book(v);
        Map<Long, List<CompetencyStanding>> standings = book.ofClass(in, listed, members);
        List<CompetencyGridView.Column> columns = listed.stream().map(c -> new CompetencyGridView.Column(c.code().code(), c.code().title(), book.frame(c.code()))).toList();
        List<CompetencyGridView.Row> rows = members.stream().map(m -> row(m, standings.get(m.person().id()), listed.size())).toList();
        return Reply.page(pages.show(v.reader(), "competencies", new CompetencyGridView(EvidenceBook.head(in), columns, rows)));
    }

    /** What is signed and no longer on the list stands behind; the grid shows the list. */
    private static CompetencyGridView.Row row(Member m, List<CompetencyStanding> standings, int listed) {
        return new CompetencyGridView.Row(m.person().id(), m.seat(), m.person().shown(), standings.stream().limit(listed)
                .map(s -> new CompetencyGridView.Cell(EvidenceBook.state(s), s.standing(), s.evidence().size())).toList());
    }

    private CompetencyRecord ofStudent(Visit v, SchoolClass in) {
        return book(v).ofStudent(in, own.member(v, in));
    }

    private Reply record(Visit v) {
        CompetencyRecord record = ofStudent(v, own.schoolClass(v));
        return Reply.page(pages.show(v.reader(), "competency-record", new CompetencyRecordView(record, SchoolTimes.moment(own.now(), v.reader().words().language()))));
    }

    /** The record as a file: one that leaves, and so is noted; what is noted changes something, and comes by a form. */
    private Reply file(Visit v) {
        SchoolClass in = own.schoolClass(v);
        CompetencyRecord record = ofStudent(v, in);
        CompetencyRecordView view = new CompetencyRecordView(record, SchoolTimes.moment(own.now(), v.reader().words().language()));
        own.note(v, "competency.printed", Optional.of(record.person()), in, "");
        return HandoutRoom.pdf(record.shown(), "competencies-" + record.person(), List.of(HandoutRoom.handouts(v).competency(view)));
    }

    private Reply signing(Visit v, Fields names, FormView form) {
        CompetencyRecord record = ofStudent(v, own.schoolClass(v));
        CompetencyRecord.Code code = EvidenceBook.find(record, names).orElseThrow(() -> Trouble.of(404));
        return Reply.page(pages.show(v.reader(), "competency-sign", new CompetencySignView(record, code, v.person().shown(), code.state().equals("signed"), form)));
    }

    /** The form says which entry it is for: sent twice, or when somebody else was faster, it changes nothing. */
    private Reply sign(Visit v) {
        SchoolClass in = own.open(v);
        CompetencyRecord record = ofStudent(v, in);
        CompetencyRecord.Code code = EvidenceBook.find(record, v.form()).orElseThrow(() -> Trouble.of(404));
        FilledForm form = new FilledForm(v.form());
        Signoff.Act act = form.choice("act", Signoff.Act.class);
        String conditions = form.text("conditions", LONGEST_CONDITIONS);
        if (conditions.isEmpty()) {
            form.fault("conditions", Message.of(act == Signoff.Act.SIGNED ? "competency.conditions-missing" : "competency.reason-missing"));
        }
        if (!form.isGood()) {
            return signing(v, v.form(), form.view()).as(422);
        }
        append(v, in, record, code, act, conditions);
        return Reply.goTo("/classes/" + in.id() + "/competencies/" + record.person());
    }

    private void append(Visit v, SchoolClass in, CompetencyRecord record, CompetencyRecord.Code code, Signoff.Act act, String conditions) {
        Person signer = v.person();
        TradeCode name = new TradeCode(code.names().get("frame"), code.names().get("edition"), code.code(), code.title());
        boolean kept = own.school().signoffs().append(new Signoff(0, record.person(), in.id(), name, act, conditions, book(v).written(code), signer.id(), signer.shown(),
                own.now()));
        if (kept) {
            own.note(v, act == Signoff.Act.SIGNED ? "competency.signed" : "competency.withdrawn", Optional.of(record.person()), in, code.code());
        }
    }
}
