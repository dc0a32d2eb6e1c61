package soapstone.record;

import java.util.List;
import org.jdbi.v3.core.Handle;

/** The tables in an order in which each stands after those that it points to. */
final class Tables {

    /** What a backup holds. */
    static final List<String> KEPT = List.of("school", "person", "class", "teaches", "member", "assignment", "task", "given_to", "sheet", "problem", "draft", "attempt",
            "mark", "remark", "whole_text", "competency", "signoff", "note", "audit", "erased", "retention", "practice", "practice_mark", "spare", "spare_problem");

    /** What is of this hour only: after a restore everybody signs in anew, and what was being printed is asked for again. */
    static final List<String> PASSING = List.of("session", "throttle", "once_code", "print", "print_part");

    /** Those that count their rows by themselves. */
    static final List<String> NUMBERED = List.of("person", "class", "assignment", "task", "sheet", "problem", "attempt", "remark", "competency", "signoff", "note", "audit",
            "practice", "spare");

    private Tables() {}

    /** The next number of a table after those that were put in. */
    static void goOn(Handle h, String table) {
        long next = h.createQuery("select coalesce(max(id), 0) + 1 from " + table).mapTo(Long.class).one();
        h.execute("alter table " + table + " alter column id restart with " + next);
    }
}
