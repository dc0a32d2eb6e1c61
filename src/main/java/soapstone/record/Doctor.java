package soapstone.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/** Looks a school over: what it holds, and what in it does not fit together. */
public final class Doctor {

    /** What must not be found, each with the sentence that is said about it and the count of the rows. */
    private static final Map<String, String> FAULTS = new LinkedHashMap<>();

    static {
        FAULTS.put("attempts have no marks", "select count(*) from attempt a where not exists (select 1 from mark m where m.attempt = a.id)");
        FAULTS.put("marks earn more than is possible, or less than nothing", "select count(*) from mark where points > possible + 1e-9 or points < 0");
        FAULTS.put("remarks stand on a mark that is not there",
                "select count(*) from remark r where not exists (select 1 from mark m where m.attempt = r.attempt and m.place = r.place)");
        FAULTS.put("problems belong to a task of another assignment",
                "select count(*) from problem p join sheet s on s.id = p.sheet join task t on t.id = p.task where t.assignment <> s.assignment");
        FAULTS.put("sheets are of people who never were in the class",
                "select count(*) from sheet s join assignment a on a.id = s.assignment where not exists (select 1 from member m where m.class = a.class and m.person = s.person) "
                        + "and not exists (select 1 from erased e where e.person = s.person)");
        FAULTS.put("attempts are numbered with gaps",
                "select count(*) from (select problem from attempt group by problem having max(number) <> count(*)) gaps");
        FAULTS.put("problems stand for a bank of which nothing was kept",
                "select count(*) from problem p where not exists (select 1 from whole_text w where w.fingerprint = p.fingerprint)");
        FAULTS.put("sheets kept as practice have no marks", "select count(*) from practice p where not exists (select 1 from practice_mark m where m.practice = p.id)");
        FAULTS.put("sheets kept as practice stand for a bank of which nothing was kept",
                "select count(*) from practice p where not exists (select 1 from whole_text w where w.fingerprint = p.fingerprint)");
        FAULTS.put("erased people can still sign in", "select count(*) from person p join erased e on e.person = p.id where p.password is not null");
        FAULTS.put("classes have nobody who teaches them", "select count(*) from class c where not exists (select 1 from teaches t where t.class = c.id) and c.archived is null");
        FAULTS.put("people who can sign in have no password",
                "select count(*) from person p where p.password is null and not p.disabled and not exists (select 1 from erased e where e.person = p.id)");
    }

    private Doctor() {}

    /**
     * What was found.
     *
     * @param holds  rows by table
     * @param faults sentences; none when all is well
     */
    public record Findings(String step, Map<String, Long> holds, List<String> faults) {}

    public static Findings look(Database database) {
        String step = database.step();
        return database.read(h -> {
            Map<String, Long> holds = new LinkedHashMap<>();
            Tables.KEPT.forEach(t -> holds.put(t, count(h, "select count(*) from " + t)));
            List<String> faults = new ArrayList<>();
            FAULTS.forEach((says, sql) -> {
                long found = count(h, sql);
                if (found > 0) {
                    faults.add(found + " " + says);
                }
            });
            return new Findings(step, holds, faults);
        });
    }

    private static long count(Handle h, String sql) {
        return h.createQuery(sql).mapTo(Long.class).one();
    }
}
