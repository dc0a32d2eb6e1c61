package soapstone.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import soapstone.page.OneRosterView;
import soapstone.page.Pages;
import soapstone.page.SchoolTimes;
import soapstone.school.Assignment;
import soapstone.school.Attempt;
import soapstone.school.Audit;
import soapstone.school.MarksTable;
import soapstone.school.Member;
import soapstone.school.OneRosterMarks;
import soapstone.school.OneRosterReader;
import soapstone.school.PlainMarks;
import soapstone.school.SchoolClass;
import soapstone.school.Standing;
import soapstone.source.Message;

/** Marks that leave the school as files: a plain table, or a set of OneRoster files. Each is noted as a record that left. */
final class MarksOutRoom implements SchoolSite.Room {

    private static final List<String> IDS = List.of("school", "class", "session", "category");

    private final SchoolOffice office;
    private final Pages pages;
    private final Taught taught;

    MarksOutRoom(SchoolOffice office, MarksDesk desk, Pages pages) {
        this.office = office;
        this.pages = pages;
        this.taught = new Taught(office, desk);
    }

    @Override
    public void addTo(Routes routes) {
        routes.post(Who.INSTRUCTOR, "/classes/{class}/marks/plain", this::plain)
                .get(Who.INSTRUCTOR, "/classes/{class}/marks/one-roster", v -> {
                    SchoolClass in = taught.schoolClass(v);
                    return Reply.page(pages.show(v.reader(), "one-roster", view(in, table(in), Map.of("category", "soapstone"), Map.of())));
                }).post(Who.INSTRUCTOR, "/classes/{class}/marks/one-roster", this::oneRoster);
    }

    private Reply plain(Visit v) {
        SchoolClass in = taught.schoolClass(v);
        Leaving.count(taught.school(), v.person().id(), office.clock().instant());
        MarksTable table = table(in);
        note(v, in, "marks.plain", table);
        return Reply.download("text/csv;charset=utf-8", "marks-class-" + in.id() + ".csv", PlainMarks.file(table, v.reader().words()::say));
    }

    private static OneRosterView view(SchoolClass in, MarksTable table, Map<String, String> typed, Map<String, Message> troubles) {
        return new OneRosterView(Taught.head(in), typed, OneRosterMarks.leftOut(table).stream().map(MarksTable.Student::name).toList(), troubles);
    }

    private Reply oneRoster(Visit v) {
        SchoolClass in = taught.schoolClass(v);
        MarksTable table = table(in);
        Map<String, String> typed = new HashMap<>();
        Map<String, Message> troubles = new HashMap<>();
        for (String id : IDS) {
            typed.put(id, v.form().text(id).strip());
            if (!OneRosterReader.isSourcedId(typed.get(id))) {
                troubles.put(id, Message.of("marks.no-id", "@marks.id-" + id));
            }
        }
        if (!troubles.isEmpty()) {
            return Reply.page(pages.show(v.reader(), "one-roster", view(in, table, typed, troubles))).as(422);
        }
        Instant now = office.clock().instant();
        Leaving.count(taught.school(), v.person().id(), now);
        OneRosterMarks.Book book = new OneRosterMarks.Book(typed.get("school"), typed.get("class"), typed.get("session"), typed.get("category"), "Soapstone");
        byte[] zip = zip(OneRosterMarks.files(table, book, now, LocalDate.ofInstant(now, SchoolTimes.zone())), now);
        note(v, in, "marks.one-roster", table);
        return Reply.download("application/zip", "one-roster-class-" + in.id() + ".zip", zip);
    }

    private static byte[] zip(Map<String, String> files, Instant now) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            for (Map.Entry<String, String> file : files.entrySet()) {
                ZipEntry entry = new ZipEntry(file.getKey());
                entry.setTime(now.toEpochMilli());
                zip.putNextEntry(entry);
                zip.write(file.getValue().getBytes(StandardCharsets.UTF_8));
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a zip in memory", e);
        }
        return bytes.toByteArray();
    }

    /** Noted for the class, and for each student whose record it holds. */
    private void note(Visit v, SchoolClass in, String act, MarksTable table) {
        String detail = "Students: " + table.students().size() + ", assignments: " + table.columns().size();
        Instant now = office.clock().instant();
        taught.school().audit().note(new Audit.Entry(now, Optional.of(v.person().id()), act, Optional.empty(), Optional.of(in.id()), detail, true));
        inClass(in).forEach(m -> taught.school().audit().note(new Audit.Entry(now, Optional.of(v.person().id()), act, Optional.of(m.person().id()), Optional.of(in.id()),
                "Marks of the class", true)));
    }

    private List<Member> inClass(SchoolClass in) {
        return taught.members(in).stream().filter(m -> m.state() == Member.State.IN).toList();
    }

    private MarksTable table(SchoolClass in) {
        List<Member> members = inClass(in);
        MarksRoom.Term term = new MarksRoom.Term(taught.school(), in, members);
        Map<Long, String> ids = new LinkedHashMap<>(taught.school().classes().sourcedIds(in.id()));
        List<MarksTable.Column> columns = term.assignments().stream().map(a -> new MarksTable.Column(a.id(), a.title(), Standing.possible(a), day(a.opens()),
                a.due().map(MarksOutRoom::day))).toList();
        List<MarksTable.Student> students = new ArrayList<>();
        List<List<MarksTable.Mark>> marks = new ArrayList<>();
        for (Member m : members) {
            students.add(new MarksTable.Student(m.seat(), m.person().shown(), m.person().login(), ids.getOrDefault(m.person().id(), "")));
            marks.add(term.assignments().stream().map(a -> mark(term, a, m)).toList());
        }
        return new MarksTable(students, columns, marks);
    }

    /** An assignment that is for others does not count for this student. */
    private static MarksTable.Mark mark(MarksRoom.Term term, Assignment assignment, Member member) {
        Optional<Standing> standing = term.standing(assignment, member.person().id());
        if (standing.isEmpty() || standing.get().state() == Standing.State.EXCUSED) {
            return MarksTable.Mark.EXCUSED;
        }
        Standing s = standing.get();
        Optional<LocalDate> newest = s.places().stream().flatMap(p -> p.best().stream()).map(Attempt::handedIn).max(Comparator.naturalOrder()).map(MarksOutRoom::day);
        return s.state() == Standing.State.NOT_BEGUN ? MarksTable.Mark.notBegun(s.due().map(MarksOutRoom::day))
                : new MarksTable.Mark(s.state() == Standing.State.HANDED_IN ? MarksTable.State.DONE : MarksTable.State.BEGUN, s.score().points(), s.late(), newest);
    }

    private static LocalDate day(Instant at) {
        return LocalDate.ofInstant(at, SchoolTimes.zone());
    }
}
