package soapstone.record;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import soapstone.exercise.Conventions;
import soapstone.quantity.UnitSystem;
import soapstone.school.Draft;
import soapstone.school.Problem;
import soapstone.school.Sheet;
import soapstone.school.Sheets;

/** Sheets, their problems and what is typed on them. */
final class SqlSheets implements Sheets {

    private static final String SHEET = "select s.id, s.assignment, s.person, s.number, s.made from sheet s ";
    private static final String PROBLEM = "select p.id, p.sheet, p.task, p.place, p.round, p.exercise, p.seed, p.units, p.fingerprint, p.points, p.conventions from problem p ";
    private static final String NEWEST = "and not exists (select 1 from problem n where n.sheet = p.sheet and n.place = p.place and n.round > p.round)";

    private final Database database;

    SqlSheets(Database database) {
        this.database = database;
    }

    static Problem problem(ResultSet row) throws SQLException {
        return new Problem(row.getLong("id"), row.getLong("sheet"), row.getLong("task"), row.getInt("place"), row.getInt("round"), row.getString("exercise"),
                row.getLong("seed"), UnitSystem.valueOf(row.getString("units")), row.getString("fingerprint"), row.getDouble("points"),
                Conventions.parse(row.getString("conventions")));
    }

    private static Sheet sheet(ResultSet row, List<Problem> problems) throws SQLException {
        return new Sheet(row.getLong("id"), row.getLong("assignment"), row.getLong("person"), row.getString("number"), Times.get(row, "made"), problems);
    }

    private static Optional<Sheet> sheet(Handle h, String where, Map<String, ?> names) {
        Optional<Sheet> bare = h.createQuery(SHEET + where).bindMap(names).map((row, c) -> sheet(row, List.of())).findOne();
        return bare.map(s -> new Sheet(s.id(), s.assignment(), s.person(), s.number(), s.made(),
                h.createQuery(PROBLEM + "where p.sheet = :sheet " + NEWEST + " order by p.place").bind("sheet", s.id()).map((row, c) -> problem(row)).list()));
    }

    @Override
    public Optional<Sheet> find(long id) {
        return database.read(h -> sheet(h, "where s.id = :id", Map.of("id", id)));
    }

    @Override
    public Optional<Sheet> of(long assignment, long person) {
        return database.read(h -> of(h, assignment, person));
    }

    static Optional<Sheet> of(Handle h, long assignment, long person) {
        return sheet(h, "where s.assignment = :assignment and s.person = :person", Map.of("assignment", assignment, "person", person));
    }

    @Override
    public Optional<Sheet> byNumber(String number) {
        return database.read(h -> sheet(h, "where s.number = :number", Map.of("number", number)));
    }

    @Override
    public List<Sheet> all(long assignment) {
        return sheets("where s.assignment = :id ", assignment);
    }

    @Override
    public List<Sheet> ofPerson(long person) {
        return sheets("where s.person = :id ", person);
    }

    private List<Sheet> sheets(String where, long id) {
        return database.read(h -> {
            Map<Long, List<Problem>> problems = new HashMap<>();
            h.createQuery(PROBLEM + "join sheet s on s.id = p.sheet " + where + NEWEST + " order by p.place").bind("id", id)
                    .map((row, c) -> problem(row)).list().forEach(p -> problems.computeIfAbsent(p.sheet(), k -> new java.util.ArrayList<>()).add(p));
            return h.createQuery(SHEET + where + "order by s.id").bind("id", id)
                    .map((row, c) -> sheet(row, problems.getOrDefault(row.getLong("id"), List.of()))).list();
        });
    }

    @Override
    public Sheet deal(long assignment, long person, String number, List<Dealt> problems, Instant now) {
        return database.in(h -> deal(h, assignment, person, number, problems, now));
    }

    static Sheet deal(Handle h, long assignment, long person, String number, List<Dealt> problems, Instant now) {
        int fresh = h.createUpdate("insert into sheet (assignment, person, number, made) values (:assignment, :person, :number, :now) on conflict do nothing")
                .bind("assignment", assignment).bind("person", person).bind("number", number).bind("now", now).execute();
        Map<String, Long> whose = Map.of("assignment", assignment, "person", person);
        String where = "where s.assignment = :assignment and s.person = :person";
        if (fresh == 1) {
            long id = h.createQuery("select s.id from sheet s " + where).bindMap(whose).mapTo(Long.class).one();
            problems.forEach(d -> add(h, id, d, 1));
        }
        return sheet(h, where, whose).orElseThrow(() -> new IllegalStateException("the sheet number " + number + " is given already"));
    }

    private static long add(Handle h, long sheet, Dealt d, int round) {
        return h.createUpdate("insert into problem (sheet, task, place, round, exercise, seed, units, fingerprint, points, conventions) "
                        + "values (:sheet, :task, :place, :round, :exercise, :seed, :units, :fingerprint, :points, :conventions)")
                .bind("sheet", sheet).bind("task", d.task()).bind("place", d.place()).bind("round", round).bind("exercise", d.exercise()).bind("seed", d.seed())
                .bind("units", d.units().name()).bind("fingerprint", d.fingerprint()).bind("points", d.points())
                .bind("conventions", d.conventions().text())
                .executeAndReturnGeneratedKeys("id").mapTo(Long.class).one();
    }

    @Override
    public Problem again(long problem, Dealt next) {
        return database.in(h -> {
            Problem p = find(h, problem).orElseThrow();
            // The sheet's row keeps two taps at once from making two rounds of the same number.
            h.createQuery("select id from sheet where id = :id for update").bind("id", p.sheet()).mapTo(Long.class).one();
            Problem newest = h.createQuery(PROBLEM + "where p.sheet = :sheet and p.place = :place " + NEWEST).bind("sheet", p.sheet()).bind("place", p.place())
                    .map((row, c) -> problem(row)).one();
            Dealt own = new Dealt(p.task(), p.place(), p.exercise(), next.seed(), next.units(), next.fingerprint(), p.points(), next.conventions());
            return newest.round() > p.round() ? newest : find(h, add(h, p.sheet(), own, p.round() + 1)).orElseThrow();
        });
    }

    @Override
    public Optional<Problem> problem(long id) {
        return database.read(h -> find(h, id));
    }

    private static Optional<Problem> find(Handle h, long id) {
        return h.createQuery(PROBLEM + "where p.id = :id").bind("id", id).map((row, c) -> problem(row)).findOne();
    }

    @Override
    public List<Problem> rounds(long sheet, int place) {
        return database.read(h -> h.createQuery(PROBLEM + "where p.sheet = :sheet and p.place = :place order by p.round").bind("sheet", sheet).bind("place", place)
                .map((row, c) -> problem(row)).list());
    }

    @Override
    public List<Problem> allRounds(long sheet) {
        return database.read(h -> h.createQuery(PROBLEM + "where p.sheet = :sheet order by p.place, p.round").bind("sheet", sheet).map((row, c) -> problem(row)).list());
    }

    @Override
    public List<Problem> roundsOfPerson(long person) {
        return database.read(h -> h.createQuery(PROBLEM + "join sheet s on s.id = p.sheet where s.person = :person order by p.sheet, p.place, p.round")
                .bind("person", person).map((row, c) -> problem(row)).list());
    }

    @Override
    public Draft draftOf(long problem) {
        return database.read(h -> draft(h, problem));
    }

    private static Draft draft(Handle h, long problem) {
        Map<String, String> typed = new LinkedHashMap<>();
        List<Instant> saved = h.createQuery("select letter, typed, saved from draft where problem = :problem order by letter").bind("problem", problem)
                .map((row, c) -> {
                    typed.put(row.getString("letter"), row.getString("typed"));
                    return Times.get(row, "saved");
                }).list();
        return new Draft(typed, saved.stream().max(Comparator.naturalOrder()));
    }

    @Override
    public Draft keepDraft(long problem, Map<String, String> typed, Set<String> from, Instant now) {
        return database.in(h -> {
            // One at a time for each problem: of two pages, the second finds what the first kept.
            h.createQuery("select id from problem where id = :id for update").bind("id", problem).mapTo(Long.class).one();
            Draft kept = draft(h, problem);
            Draft wanted = kept.with(typed, now);
            if (!kept.isEmpty() && !from.contains(kept.version()) && !kept.version().equals(wanted.version())) {
                return kept;
            }
            save(h, problem, typed, now);
            return draft(h, problem);
        });
    }

    @Override
    public Map<String, String> draft(long problem) {
        return draftOf(problem).typed();
    }

    @Override
    public void saveDraft(long problem, Map<String, String> typed, Instant now) {
        database.run(h -> save(h, problem, typed, now));
    }

    private static void save(Handle h, long problem, Map<String, String> typed, Instant now) {
        typed.forEach((letter, text) -> {
            int there = h.createUpdate("update draft set typed = :typed, saved = :now where problem = :problem and letter = :letter").bind("typed", text)
                    .bind("now", now).bind("problem", problem).bind("letter", letter).execute();
            if (there == 0) {
                h.createUpdate("insert into draft (problem, letter, typed, saved) values (:problem, :letter, :typed, :now) on conflict do nothing")
                        .bind("problem", problem).bind("letter", letter).bind("typed", text).bind("now", now).execute();
            }
        });
    }

    @Override
    public void keepWhole(String fingerprint, String content, Instant now) {
        database.run(h -> h.createUpdate("insert into whole_text (fingerprint, content, kept) values (:fingerprint, :content, :now) on conflict do nothing")
                .bind("fingerprint", fingerprint).bind("content", content).bind("now", now).execute());
    }

    @Override
    public Optional<String> whole(String fingerprint) {
        return database.read(h -> h.createQuery("select content from whole_text where fingerprint = :fingerprint").bind("fingerprint", fingerprint)
                .mapTo(String.class).findOne());
    }
}
