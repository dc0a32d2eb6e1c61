package soapstone.record;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import soapstone.school.Person;
import soapstone.school.Privacy;

/** One person's rows, out or away. */
final class SqlPrivacy implements Privacy {

    private static final String SHEETS = "(select id from sheet where person = :id)";
    private static final String PROBLEMS = "(select p.id from problem p join sheet s on s.id = p.sheet where s.person = :id)";
    private static final String ATTEMPTS = "(select a.id from attempt a join problem p on p.id = a.problem join sheet s on s.id = p.sheet where s.person = :id)";

    private static final String PRACTICES = "(select id from practice where person = :id)";

    /** Where a person's rows are. */
    private static final Map<String, String> OWN = new LinkedHashMap<>();

    static {
        OWN.put("person", "id = :id");
        OWN.put("member", "person = :id");
        OWN.put("given_to", "person = :id");
        OWN.put("sheet", "person = :id");
        OWN.put("problem", "sheet in " + SHEETS);
        OWN.put("draft", "problem in " + PROBLEMS);
        OWN.put("attempt", "problem in " + PROBLEMS);
        OWN.put("mark", "attempt in " + ATTEMPTS);
        OWN.put("remark", "attempt in " + ATTEMPTS);
        OWN.put("signoff", "person = :id");
        OWN.put("note", "person = :id");
        OWN.put("audit", "about_person = :id");
        OWN.put("practice", "person = :id");
        OWN.put("practice_mark", "practice in " + PRACTICES);
    }

    private final Database database;

    SqlPrivacy(Database database) {
        this.database = database;
    }

    @Override
    public Map<String, List<Map<String, Object>>> everything(long person) {
        return database.read(h -> {
            Map<String, List<Map<String, Object>>> all = new LinkedHashMap<>();
            OWN.forEach((table, where) -> {
                List<Map<String, Object>> rows = new ArrayList<>();
                h.createQuery("select * from " + table + " where " + where + " order by 1, 2").bind("id", person).mapToMap().forEach(row -> rows.add(shown(row)));
                all.put(table, rows);
            });
            return all;
        });
    }

    private static Map<String, Object> shown(Map<String, Object> row) {
        Map<String, Object> shown = new LinkedHashMap<>();
        row.forEach((column, value) -> {
            if (!column.equals("password") && !column.equals("factor") && !column.equals("factor_step")) {
                shown.put(column, value == null || value instanceof Number || value instanceof Boolean ? value : value.toString());
            }
        });
        return shown;
    }

    @Override
    public List<Long> places(long person) {
        return database.read(h -> h.createQuery("select class from member where person = :id order by class").bind("id", person).mapTo(Long.class).list());
    }

    @Override
    public Map<String, Long> wouldGo(long person) {
        return database.read(h -> {
            Map<String, Long> counts = new LinkedHashMap<>();
            OWN.forEach((table, where) -> counts.put(table,
                    h.createQuery("select count(*) from " + table + " where " + where).bind("id", person).mapTo(Long.class).one()));
            return counts;
        });
    }

    @Override
    public void erase(long person, Optional<Long> by, Instant now) {
        database.run(h -> {
            erase(h, person);
            h.createUpdate("insert into erased (person, at, by_person) values (:id, :at, :by) on conflict do nothing").bind("id", person).bind("at", now)
                    .bind("by", by.orElse(null)).execute();
        });
    }

    private static void erase(Handle h, long person) {
        h.createUpdate("delete from session where person = :id").bind("id", person).execute();
        h.createUpdate("delete from once_code where person = :id").bind("id", person).execute();
        h.createUpdate("delete from draft where problem in " + PROBLEMS).bind("id", person).execute();
        h.createUpdate("delete from given_to where person = :id").bind("id", person).execute();
        h.createUpdate("delete from practice_mark where practice in " + PRACTICES).bind("id", person).execute();
        h.createUpdate("delete from practice where person = :id").bind("id", person).execute();
        h.createUpdate("delete from signoff where person = :id").bind("id", person).execute();
        h.createUpdate("delete from note where person = :id").bind("id", person).execute();
        h.createUpdate("update member set state = 'LEFT', seat = '', extra_time = 0, sourced_id = '' where person = :id").bind("id", person).execute();
        h.createUpdate("update audit set detail = '' where about_person = :id").bind("id", person).execute();
        h.createUpdate("update remark set reason = '' where attempt in " + ATTEMPTS).bind("id", person).execute();
        h.createUpdate("update person set shown = :shown, login = :login, password = null, factor = null, disabled = true, must_change = false where id = :id")
                .bind("shown", "–").bind("login", "erased-" + person).bind("id", person).execute();
    }

    @Override
    public int eraseAgain(List<Erased> erased) {
        return database.in(h -> {
            int again = 0;
            for (Erased e : erased) {
                erase(h, e.person());
                again += h.createUpdate("insert into erased (person, at) values (:id, :at) on conflict do nothing").bind("id", e.person()).bind("at", e.at()).execute();
            }
            return again;
        });
    }

    @Override
    public List<Erased> erased() {
        return database.read(h -> h.createQuery("select person, at from erased order by person").map((row, c) -> new Erased(row.getLong("person"), Times.get(row, "at"))).list());
    }

    @Override
    public List<Person> idleSince(Instant last) {
        return database.read(h -> h.createQuery("select " + SqlPeople.COLUMNS + " from person p where p.kind = 'STUDENT' and p.created < :last "
                        + "and not exists (select 1 from erased e where e.person = p.id) "
                        + "and not exists (select 1 from member m join class c on c.id = m.class where m.person = p.id and m.state <> 'LEFT' and c.archived is null) "
                        + "and not exists (select 1 from attempt a join problem q on q.id = a.problem join sheet s on s.id = q.sheet where s.person = p.id and a.handed_in >= :last) "
                        + "and not exists (select 1 from practice w where w.person = p.id and w.at >= :last) "
                        + "order by p.id").bind("last", last).map((row, c) -> SqlPeople.person(row)).list());
    }
}
