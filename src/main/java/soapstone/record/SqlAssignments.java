package soapstone.record;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.SqlStatement;
import org.jdbi.v3.core.statement.UnableToExecuteStatementException;
import soapstone.school.Assignment;
import soapstone.school.Assignments;

/** Assignments with their tasks. */
final class SqlAssignments implements Assignments {

    private static final String SELECT = "select a.id, a.class, a.title, a.state, a.opens, a.due, a.late, a.tries, a.shows, a.formulas, a.made_by, a.made, a.after from assignment a ";
    private static final String TASKS = "select t.assignment, t.id, t.place, t.exercises, t.many, t.points from task t ";

    private final Database database;

    SqlAssignments(Database database) {
        this.database = database;
    }

    private static Assignment assignment(ResultSet row, Map<Long, List<Assignment.Task>> tasks) throws SQLException {
        return new Assignment(row.getLong("id"), row.getLong("class"), row.getString("title"), Assignment.State.valueOf(row.getString("state")),
                Times.get(row, "opens"), Times.maybe(row, "due"), Assignment.Late.valueOf(row.getString("late")), row.getInt("tries"),
                Assignment.Shows.valueOf(row.getString("shows")), row.getBoolean("formulas"), row.getLong("made_by"), Times.get(row, "made"),
                Optional.ofNullable(row.getObject("after", Long.class)), tasks.getOrDefault(row.getLong("id"), List.of()));
    }

    private static Map<Long, List<Assignment.Task>> tasks(Handle h, String where, long id) {
        Map<Long, List<Assignment.Task>> all = new HashMap<>();
        h.createQuery(TASKS + where + " order by t.place").bind("id", id).map((row, c) -> {
            Assignment.Task task = new Assignment.Task(row.getLong("id"), row.getInt("place"), List.of(row.getString("exercises").split(" ")), row.getInt("many"),
                    row.getDouble("points"));
            return all.computeIfAbsent(row.getLong("assignment"), a -> new ArrayList<>()).add(task);
        }).list();
        return all;
    }

    @Override
    public Optional<Assignment> find(long id) {
        return database.read(h -> find(h, id));
    }

    private static Optional<Assignment> find(Handle h, long id) {
        Map<Long, List<Assignment.Task>> tasks = tasks(h, "where t.assignment = :id", id);
        return h.createQuery(SELECT + "where a.id = :id").bind("id", id).map((row, c) -> assignment(row, tasks)).findOne();
    }

    @Override
    public List<Assignment> of(long schoolClass) {
        return database.read(h -> {
            Map<Long, List<Assignment.Task>> tasks = tasks(h, "join assignment a on a.id = t.assignment where a.class = :id", schoolClass);
            return h.createQuery(SELECT + "where a.class = :class order by a.opens desc, a.id desc").bind("class", schoolClass)
                    .map((row, c) -> assignment(row, tasks)).list();
        });
    }

    @Override
    public Assignment add(Assignment fresh, List<GivenTo> given) {
        return database.in(h -> add(h, fresh, given, Optional.empty()));
    }

    private static Assignment add(Handle h, Assignment fresh, List<GivenTo> given, Optional<String> once) {
        long id = bound(h.createUpdate("insert into assignment (class, title, state, opens, due, late, tries, shows, formulas, made_by, made, after, once) "
                        + "values (:class, :title, :state, :opens, :due, :late, :tries, :shows, :formulas, :by, :made, :after, :once)"), fresh)
                .bind("class", fresh.schoolClass()).bind("by", fresh.madeBy()).bind("made", fresh.made()).bind("after", fresh.after().orElse(null))
                .bind("once", once.orElse(null)).executeAndReturnGeneratedKeys("id").mapTo(Long.class).one();
        addParts(h, id, fresh.tasks(), given);
        return find(h, id).orElseThrow();
    }

    /** The unique key and no lock makes two of them one: whoever comes second waits for the first, and then takes what it made. */
    @Override
    public Made addOnce(Assignment fresh, List<GivenTo> given, String once) {
        try {
            return new Made(database.in(h -> add(h, fresh, given, Optional.of(once))), true);
        } catch (UnableToExecuteStatementException e) {
            if (!(e.getCause() instanceof SQLException cause) || !SqlAttempts.UNIQUE.equals(cause.getSQLState())) {
                throw e;
            }
            return database.read(h -> h.createQuery("select id from assignment where once = :once").bind("once", once).mapTo(Long.class).findOne()
                    .flatMap(id -> find(h, id))).map(a -> new Made(a, false)).orElseThrow(() -> e);
        }
    }

    private static <S extends SqlStatement<S>> S bound(S statement, Assignment a) {
        return statement.bind("title", a.title()).bind("state", a.state().name()).bind("opens", a.opens()).bind("due", a.due().orElse(null))
                .bind("late", a.late().name()).bind("tries", a.tries()).bind("shows", a.shows().name()).bind("formulas", a.formulas());
    }

    private static void addParts(Handle h, long id, List<Assignment.Task> tasks, List<GivenTo> given) {
        for (Assignment.Task task : tasks) {
            h.createUpdate("insert into task (assignment, place, exercises, many, points) values (:id, :place, :exercises, :many, :points)").bind("id", id)
                    .bind("place", task.place()).bind("exercises", String.join(" ", task.exercises())).bind("many", task.many()).bind("points", task.points())
                    .execute();
        }
        given.forEach(g -> give(h, id, g));
    }

    @Override
    public boolean change(Assignment assignment, List<GivenTo> given) {
        return database.in(h -> {
            int changed = bound(h.createUpdate("update assignment set title = :title, state = :state, opens = :opens, due = :due, late = :late, tries = :tries, shows = :shows, "
                    + "formulas = :formulas where id = :id and state = 'DRAFT'"), assignment).bind("id", assignment.id()).execute();
            if (changed == 0) {
                return false;
            }
            h.createUpdate("delete from task where assignment = :id").bind("id", assignment.id()).execute();
            h.createUpdate("delete from given_to where assignment = :id").bind("id", assignment.id()).execute();
            addParts(h, assignment.id(), assignment.tasks(), given);
            return true;
        });
    }

    @Override
    public void setState(long id, Assignment.State state) {
        database.run(h -> h.createUpdate("update assignment set state = :state where id = :id").bind("state", state.name()).bind("id", id).execute());
    }

    @Override
    public void setDue(long id, Optional<Instant> due) {
        database.run(h -> h.createUpdate("update assignment set due = :due where id = :id").bind("due", due.orElse(null)).bind("id", id).execute());
    }

    @Override
    public List<GivenTo> givenTo(long id) {
        return database.read(h -> h.createQuery("select person, due, excused, only_these from given_to where assignment = :id order by person").bind("id", id)
                .map((row, c) -> new GivenTo(row.getLong("person"), Times.maybe(row, "due"), row.getBoolean("excused"), row.getBoolean("only_these"))).list());
    }

    @Override
    public void give(long id, GivenTo given) {
        database.run(h -> give(h, id, given));
    }

    private static void give(Handle h, long id, GivenTo given) {
        h.createUpdate("delete from given_to where assignment = :id and person = :person").bind("id", id).bind("person", given.person()).execute();
        h.createUpdate("insert into given_to (assignment, person, due, excused, only_these) values (:id, :person, :due, :excused, :only)").bind("id", id)
                .bind("person", given.person()).bind("due", given.due().orElse(null)).bind("excused", given.excused()).bind("only", given.onlyThese()).execute();
    }
}
