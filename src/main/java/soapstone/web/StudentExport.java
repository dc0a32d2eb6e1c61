package soapstone.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import soapstone.page.StudentRecordView;
import soapstone.page.Words;
import soapstone.school.AnswerMark;
import soapstone.school.Assignment;
import soapstone.school.Attempt;
import soapstone.school.Member;
import soapstone.school.Person;
import soapstone.school.Remark;
import soapstone.school.School;
import soapstone.school.SchoolClass;
import soapstone.school.Work;

/** Gathers everything about one student into a record that can be handed over. */
final class StudentExport {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final School school;
    private final MarksDesk desk;
    private final Words words;
    private final Told told;

    StudentExport(School school, MarksDesk desk, Words words) {
        this.school = school;
        this.desk = desk;
        this.words = words;
        this.told = new Told(school, words);
    }

    /**
     * The record.
     *
     * @param classes that go into it
     * @param whole   whether these are all of the student's
     */
    StudentRecordView of(Person student, List<SchoolClass> classes, boolean whole, Instant now) {
        List<Long> ids = classes.stream().map(SchoolClass::id).toList();
        long id = student.id();
        List<StudentRecordView.Sheet> sheets = new ArrayList<>();
        classes.forEach(in -> sheets.addAll(sheets(in, id)));
        return new StudentRecordView(now.toString(), whole, new StudentRecordView.Account(student.shown(), student.login(), student.language(), student.created().toString()),
                classes.stream().flatMap(in -> school.classes().member(in.id(), id).stream().map(m -> place(in, m))).toList(), sheets,
                school.signoffs().of(id).stream().filter(s -> ids.contains(s.schoolClass())).map(s -> new StudentRecordView.Signed(s.code().isOwn() ? ""
                        : words.say("competency.frame", List.of(s.code().frame(), s.code().edition())), s.code().code(), s.code().title(), Words.key(s.act()), s.at().toString(),
                        s.byName(), s.conditions(), s.evidence().lines().toList())).toList(),
                school.notes().of(id).stream().filter(n -> ids.contains(n.schoolClass())).map(n -> new StudentRecordView.Correction(n.at().toString(), n.asks(),
                        Words.key(n.outcome()), n.answer(), n.answered().map(Instant::toString).orElse(""), n.byName())).toList(),
                school.audit().about(id).stream().filter(e -> whole || e.aboutClass().filter(ids::contains).isPresent()).map(e -> new StudentRecordView.Change(e.at().toString(),
                        told.name(e.by()), told.act(e), e.detail(), e.leftSchool())).toList(),
                whole ? PracticeRows.of(school.practices().of(id), e -> desk.exercise(e).title(), words) : List.of());
    }

    private static StudentRecordView.Place place(SchoolClass in, Member m) {
        return new StudentRecordView.Place(in.name(), in.term(), m.seat(), Words.key(m.state()), m.extraTime(), m.since().toString());
    }

    private List<StudentRecordView.Sheet> sheets(SchoolClass in, long student) {
        Map<Long, List<Work>> works = school.book().ofStudent(in.id(), student);
        List<StudentRecordView.Sheet> sheets = new ArrayList<>();
        for (Assignment a : school.assignments().of(in.id())) {
            List<Work> own = works.getOrDefault(a.id(), List.of());
            List<Optional<MarksDesk.Asked>> asked = desk.asked(school.sheets(), own.stream().map(Work::problem).toList());
            List<StudentRecordView.Problem> problems = new ArrayList<>();
            for (int i = 0; i < own.size(); i++) {
                problems.add(problem(own.get(i), asked.get(i)));
            }
            if (!problems.isEmpty()) {
                sheets.add(new StudentRecordView.Sheet(in.name(), a.title(), problems));
            }
        }
        return sheets;
    }

    private StudentRecordView.Problem problem(Work w, Optional<MarksDesk.Asked> asked) {
        Map<String, String> prompts = asked.map(MarksDesk.Asked::prompts).orElse(Map.of());
        return new StudentRecordView.Problem(w.problem().exercise(), desk.exercise(w.problem().exercise()).title(), w.problem().seed(), w.problem().units().word(),
                w.problem().conventions().text(), w.problem().round(), asked.map(MarksDesk.Asked::story).orElse(""), w.attempts().stream().map(a -> attempt(w, a, prompts)).toList());
    }

    private StudentRecordView.Attempt attempt(Work w, Attempt a, Map<String, String> prompts) {
        return new StudentRecordView.Attempt(a.number(), a.handedIn().toString(), a.late(), Words.key(a.way()), a.marks().stream().map(m -> answer(m,
                prompts.getOrDefault(m.ask(), m.ask()), w.remarks().stream().filter(r -> r.attempt() == a.id() && r.place() == m.place()).toList())).toList());
    }

    private StudentRecordView.Answer answer(AnswerMark m, String prompt, List<Remark> remarks) {
        return new StudentRecordView.Answer(prompt, m.typed(), m.readAs(), verdict(m.verdict().word()), m.says(), EvidenceBook.printed(m.points()),
                EvidenceBook.printed(m.possible()), remarks.stream().map(r -> new StudentRecordView.Remark(r.at().toString(), told.name(r.by()), Words.key(r.cause()),
                verdict(r.verdict().word()), EvidenceBook.printed(r.points()), r.reason())).toList());
    }

    private String verdict(String word) {
        return words.say("school.verdict-" + word, List.of());
    }

    /**
     * The files that are handed over. All of the rows that are kept go with a record that is whole.
     *
     * @param page the record as a page to read
     */
    byte[] zip(StudentRecordView record, byte[] page, long student, Instant now) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("record.html", page);
        files.put("record.json", json(record));
        if (record.whole()) {
            files.put("rows.json", json(school.privacy().everything(student)));
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                ZipEntry entry = new ZipEntry(file.getKey());
                entry.setTime(now.toEpochMilli());
                zip.putNextEntry(entry);
                zip.write(file.getValue());
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static byte[] json(Object all) {
        try {
            return JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(all);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}
