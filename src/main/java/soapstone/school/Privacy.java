package soapstone.school;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is kept about one person: all of it out, or all of it away. */
public interface Privacy {

    /**
     * Everything about a person, by the names of the tables and columns, in the order in which it came about. The hash of
     * the password and the secret of a second factor are left out: they are of no use to anybody else.
     */
    Map<String, List<Map<String, Object>>> everything(long person);

    /** Every class in which a student has or had a place, or asked for one. */
    List<Long> places(long person);

    /** What an erasure takes away, by table: to be shown before it is done. */
    Map<String, Long> wouldGo(long person);

    /**
     * Erases a person. Account, seat, drafts and sessions go; what was handed in stays in the figures of the class under
     * a name that says nothing. A restored backup erases the person again.
     */
    void erase(long person, Optional<Long> by, Instant now);

    /** Erases again whoever was erased before: after a restore. */
    int eraseAgain(List<Erased> erased);

    /** Who was erased, by number. */
    record Erased(long person, Instant at) {}

    List<Erased> erased();

    /** Students who have handed in nothing since then and are in no class that is open: what the retention rule would erase. */
    List<Person> idleSince(Instant last);
}
