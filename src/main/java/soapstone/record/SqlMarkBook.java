package soapstone.record;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import soapstone.school.AnswerMark;
import soapstone.school.Assignments;
import soapstone.school.Attempt;
import soapstone.school.MarkBook;
import soapstone.school.Problem;
import soapstone.school.Remark;
import soapstone.school.Work;

/**
 * Answers read by the assignment, class or student. Every statement walks assignment, sheet, problem, attempt, mark by the
 * indexes of their keys; none looks at a table as a whole. The class is joined: asked for its assignments in a part of its own,
 * H2 walks by the class's sheets where those of one student would do.
 */
final class SqlMarkBook implements MarkBook {

    private static final String SHEETS = "from assignment x join sheet s on s.assignment = x.id join problem p on p.sheet = s.id ";
    private static final String ATTEMPTS = SHEETS + "join attempt a on a.problem = p.id ";
    private static final String TEXTS = "m.typed, m.read_as, m.says";
    private static final String NO_TEXTS = "'' as typed, '' as read_as, '' as says";
    private static final String OF_CLASS = "where x.class = :id ";

    private final Database database;

    SqlMarkBook(Database database) {
        this.database = database;
    }

    /** Which works, and what is put in for the names in it. */
    private record Which(String where, Map<String, ?> names, Map<String, Set<?>> lists) {

        static Which id(String where, long id) {
            return new Which(where, Map.of("id", id), Map.of());
        }

        Query of(Handle h, String select) {
            Query query = h.createQuery(select + where).bindMap(names);
            lists.forEach(query::bindList);
            return query;
        }
    }

    @Override
    public List<Work> ofAssignment(long assignment) {
        return read(Which.id("where s.assignment = :id ", assignment), TEXTS).getOrDefault(assignment, List.of());
    }

    @Override
    public Map<Long, List<Work>> ofAssignments(Set<Long> assignments, Set<String> exercises) {
        if (assignments.isEmpty() || exercises.isEmpty()) {
            return Map.of();
        }
        return read(new Which("where s.assignment in (<assignments>) and p.exercise in (<exercises>) ", Map.of(),
                Map.of("assignments", assignments, "exercises", exercises)), TEXTS);
    }

    @Override
    public Map<Long, List<Work>> points(long schoolClass) {
        return read(Which.id(OF_CLASS, schoolClass), NO_TEXTS);
    }

    @Override
    public Map<Long, List<Work>> ofClass(long schoolClass) {
        return read(Which.id(OF_CLASS, schoolClass), TEXTS);
    }

    @Override
    public Map<Long, List<Work>> ofStudent(long schoolClass, long student) {
        return read(new Which(OF_CLASS + "and s.person = :person ", Map.of("id", schoolClass, "person", student), Map.of()), TEXTS);
    }

    private Map<Long, List<Work>> read(Which which, String texts) {
        return database.read(h -> {
            Map<Long, Attempt> attempts = attempts(which, texts, h);
            Map<Long, List<Attempt>> ofProblems = new HashMap<>();
            attempts.values().forEach(a -> add(ofProblems, a.problem(), a));
            Map<Long, List<Remark>> remarks = new HashMap<>();
            h.createQuery("select r.id, r.attempt, r.place, r.at, r.by_person, r.cause, r.verdict, r.points, r.reason, " + SqlAttempts.ANEW + " from remark r where r.attempt = any(:attempts)")
                    .bindArray("attempts", Long.class, attempts.keySet()).map((row, c) -> SqlAttempts.remark(row)).list()
                    .forEach(r -> add(remarks, attempts.get(r.attempt()).problem(), r));
            Map<Long, List<Work>> works = new LinkedHashMap<>();
            which.of(h, "select s.assignment, s.person, p.id, p.sheet, p.task, p.place, p.round, p.exercise, p.seed, p.units, p.fingerprint, p.points, p.conventions " + SHEETS)
                    .map((row, c) -> add(works, row.getLong("assignment"), work(row, ofProblems, remarks))).list();
            works.replaceAll((assignment, all) -> sorted(all));
            return works;
        });
    }

    /** Attempts with their marks by one walk: on PostgreSQL a walk through a class's year takes as long as all the rest of its page. */
    private static Map<Long, Attempt> attempts(Which which, String texts, Handle h) {
        Map<Long, Attempt> bare = new LinkedHashMap<>();
        Map<Long, List<AnswerMark>> marks = new HashMap<>();
        which.of(h, "select a.id, a.problem, a.number, a.receipt, a.handed_in, a.late, a.way, a.program, a.fingerprint, m.attempt, m.place, m.ask, m.letter, " + texts
                + ", m.verdict, m.slip, m.families, m.points, m.possible, m.odds " + ATTEMPTS + "left join mark m on m.attempt = a.id ").map((row, c) -> {
                    long id = row.getLong("id");
                    if (!bare.containsKey(id)) {
                        bare.put(id, SqlAttempts.attempt(row, List.of()));
                    }
                    return row.getObject("attempt") != null && add(marks, id, SqlAttempts.mark(row));
                }).list();
        bare.replaceAll((id, a) -> a.with(inOrder(marks.getOrDefault(id, List.of()))));
        return bare;
    }

    private static Work work(ResultSet row, Map<Long, List<Attempt>> attempts, Map<Long, List<Remark>> remarks) throws SQLException {
        Problem problem = SqlSheets.problem(row);
        List<Attempt> own = new ArrayList<>(attempts.getOrDefault(problem.id(), List.of()));
        own.sort(Comparator.comparingInt(Attempt::number));
        List<Remark> said = new ArrayList<>(remarks.getOrDefault(problem.id(), List.of()));
        said.sort(Comparator.comparingLong(Remark::id));
        return new Work(row.getLong("person"), problem, own, said);
    }

    private static List<AnswerMark> inOrder(List<AnswerMark> marks) {
        return marks.stream().sorted(Comparator.comparingInt(AnswerMark::place)).toList();
    }

    private static List<Work> sorted(List<Work> works) {
        return works.stream().sorted(Comparator.comparingLong(Work::person).thenComparingInt(w -> w.problem().place())
                .thenComparingInt(w -> w.problem().round())).toList();
    }

    private static <K, V> boolean add(Map<K, List<V>> all, K key, V one) {
        return all.computeIfAbsent(key, k -> new ArrayList<>()).add(one);
    }

    @Override
    public Set<Long> typing(long assignment) {
        return new HashSet<>(database.read(h -> h.createQuery("select distinct s.person " + SHEETS
                + "join draft d on d.problem = p.id where s.assignment = :id and d.typed <> ''").bind("id", assignment).mapTo(Long.class).list()));
    }

    @Override
    public Map<Long, List<Assignments.GivenTo>> given(long schoolClass) {
        Map<Long, List<Assignments.GivenTo>> given = new HashMap<>();
        database.read(h -> h.createQuery("select s.assignment, s.person, s.due, s.excused, s.only_these from given_to s join assignment x on x.id = s.assignment " + OF_CLASS + "order by s.person")
                .bind("id", schoolClass).map((row, c) -> add(given, row.getLong("assignment"), new Assignments.GivenTo(row.getLong("person"), Times.maybe(row, "due"),
                        row.getBoolean("excused"), row.getBoolean("only_these")))).list());
        return given;
    }

    @Override
    public List<MarkedWith> markedWith(long schoolClass) {
        return database.read(h -> h.createQuery("select s.assignment, p.exercise, a.fingerprint, count(*) as attempts " + ATTEMPTS + OF_CLASS
                        + "group by s.assignment, p.exercise, a.fingerprint order by s.assignment, p.exercise, a.fingerprint").bind("id", schoolClass)
                .map((row, c) -> new MarkedWith(row.getLong("assignment"), row.getString("exercise"), row.getString("fingerprint"), row.getInt("attempts"))).list());
    }
}
