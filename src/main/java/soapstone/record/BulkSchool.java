package soapstone.record;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import soapstone.school.AnswerMark;
import soapstone.school.Assignment;
import soapstone.school.Assignments;
import soapstone.school.Attempt;
import soapstone.school.Audit;
import soapstone.school.Member;
import soapstone.school.Person;
import soapstone.school.Problem;
import soapstone.school.Remark;
import soapstone.school.SchoolClass;
import soapstone.school.Sheet;

/**
 * Puts a whole school into an empty database, some thousand rows in a transaction: to measure the pages of a school that
 * would take a year to come about. The rows carry their own numbers, and stand in the order in which they are put in. What
 * points to something comes after it. Not for several threads.
 */
public final class BulkSchool implements AutoCloseable {

    private static final int ROWS_IN_A_STATEMENT = 100;
    private static final int ROWS_IN_A_TRANSACTION = 100_000;

    private final Database database;
    /** In an order in which each stands after those that it points to. */
    private final Map<String, Waiting> tables = new LinkedHashMap<>();
    private int waiting;

    /** @param database an empty school */
    public BulkSchool(Database database) {
        this.database = database;
        table("person", "id, kind, shown, login, password, must_change, language, created");
        table("class", "id, name, term, code, settings, created");
        table("teaches", "class, person");
        table("member", "class, person, seat, state, extra_time, since");
        table("assignment", "id, class, title, state, opens, due, late, tries, shows, formulas, made_by, made, after");
        table("task", "id, assignment, place, exercises, many, points");
        table("given_to", "assignment, person, due, excused, only_these");
        table("sheet", "id, assignment, person, number, made");
        table("problem", "id, sheet, task, place, round, exercise, seed, units, fingerprint, points");
        table("attempt", "id, problem, number, receipt, handed_in, late, way, program, fingerprint");
        table("mark", "attempt, place, ask, letter, typed, read_as, verdict, slip, families, says, points, possible, odds");
        table("remark", "id, attempt, place, at, by_person, cause, verdict, points, reason");
        table("whole_text", "fingerprint, content, kept");
        table("audit", "at, by_person, act, about_person, about_class, detail, left_school");
    }

    private void table(String name, String columns) {
        tables.put(name, new Waiting("insert into " + name + " (" + columns + ") values ", columns.split(",").length, new ArrayList<>()));
    }

    /** Rows that are not put down yet. */
    private record Waiting(String insert, int columns, List<Object[]> rows) {

        private String statement(int many) {
            String one = "(" + "?, ".repeat(columns - 1) + "?)";
            return insert + one + (", " + one).repeat(many - 1);
        }

        void putDown(Connection connection) throws SQLException {
            int whole = rows.size() - rows.size() % ROWS_IN_A_STATEMENT;
            putDown(connection, rows.subList(0, whole), ROWS_IN_A_STATEMENT);
            putDown(connection, rows.subList(whole, rows.size()), 1);
            rows.clear();
        }

        private void putDown(Connection connection, List<Object[]> some, int many) throws SQLException {
            if (some.isEmpty()) {
                return;
            }
            try (PreparedStatement statement = connection.prepareStatement(statement(many))) {
                for (int from = 0; from < some.size(); from += many) {
                    int at = 1;
                    for (Object[] row : some.subList(from, from + many)) {
                        for (Object value : row) {
                            statement.setObject(at++, value);
                        }
                    }
                    statement.addBatch();
                }
                statement.executeBatch();
            }
        }
    }

    private void put(String table, Object... values) {
        for (int i = 0; i < values.length; i++) {
            values[i] = kept(values[i]);
        }
        tables.get(table).rows().add(values);
        waiting++;
    }

    private static Object kept(Object value) {
        if (value instanceof Instant time) {
            return time.atOffset(ZoneOffset.UTC);
        }
        return value instanceof Enum<?> one ? one.name() : value;
    }

    private void putDownIfMany() {
        if (waiting >= ROWS_IN_A_TRANSACTION) {
            putDown();
        }
    }

    private void putDown() {
        database.run(h -> tables.values().forEach(t -> {
            try {
                t.putDown(h.getConnection());
            } catch (SQLException e) {
                throw new IllegalStateException("Rows of a school cannot be put down: " + t.insert(), e);
            }
        }));
        waiting = 0;
    }

    /** @param password encoded */
    public void add(Person p, String password) {
        put("person", p.id(), p.kind(), p.shown(), p.login(), password, p.mustChange(), p.language(), p.created());
        putDownIfMany();
    }

    public void add(SchoolClass c, long instructor) {
        put("class", c.id(), c.name(), c.term(), c.code(), Settings.write(c.settings()), c.created());
        put("teaches", c.id(), instructor);
        putDownIfMany();
    }

    public void add(Member m) {
        put("member", m.schoolClass(), m.person().id(), m.seat(), m.state(), m.extraTime(), m.since());
        putDownIfMany();
    }

    /** An assignment with its tasks, whose numbers are kept. */
    public void add(Assignment a, List<Assignments.GivenTo> given) {
        put("assignment", a.id(), a.schoolClass(), a.title(), a.state(), a.opens(), a.due().orElse(null), a.late(), a.tries(), a.shows(), a.formulas(), a.madeBy(), a.made(),
                a.after().orElse(null));
        a.tasks().forEach(t -> put("task", t.id(), a.id(), t.place(), String.join(" ", t.exercises()), t.many(), t.points()));
        given.forEach(g -> put("given_to", a.id(), g.person(), g.due().orElse(null), g.excused(), g.onlyThese()));
        putDownIfMany();
    }

    public void add(Sheet s) {
        put("sheet", s.id(), s.assignment(), s.person(), s.number(), s.made());
        for (Problem p : s.problems()) {
            put("problem", p.id(), s.id(), p.task(), p.place(), p.round(), p.exercise(), p.seed(), p.units(), p.fingerprint(), p.points());
        }
        putDownIfMany();
    }

    public void add(Attempt a) {
        put("attempt", a.id(), a.problem(), a.number(), a.receipt(), a.handedIn(), a.late(), a.way(), a.program(), a.fingerprint());
        for (AnswerMark m : a.marks()) {
            put("mark", a.id(), m.place(), m.ask(), m.letter(), m.typed(), m.readAs(), m.verdict(), m.slip(), String.join(" ", m.families()), m.says(), m.points(),
                    m.possible(), m.odds());
        }
        putDownIfMany();
    }

    public void add(Remark r) {
        put("remark", r.id(), r.attempt(), r.place(), r.at(), r.by().orElse(null), r.cause(), r.verdict(), r.points(), r.reason());
        putDownIfMany();
    }

    /** The text of all that a fingerprint stands for. */
    public void addWhole(String fingerprint, String content, Instant kept) {
        put("whole_text", fingerprint, content, kept);
        putDownIfMany();
    }

    public void add(Audit.Entry e) {
        put("audit", e.at(), e.by().orElse(null), e.act(), e.aboutPerson().orElse(null), e.aboutClass().orElse(null), e.detail(), e.leftSchool());
        putDownIfMany();
    }

    /** Puts down what is left. The tables go on counting behind it, and the database looks at what it holds, as it does by itself in the course of a year. */
    @Override
    public void close() {
        putDown();
        database.run(h -> Tables.NUMBERED.forEach(table -> Tables.goOn(h, table)));
        database.run(h -> h.execute("analyze"));
    }
}
