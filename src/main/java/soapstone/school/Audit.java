package soapstone.school;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Every change that matters, and every record that left the school: appended, never changed. */
public interface Audit {

    void note(Entry entry);

    /**
     * One entry.
     *
     * @param by          who did it; empty for the program
     * @param act         a key such as {@code mark.overruled}
     * @param detail      in plain words, without names of students and without secrets
     * @param leftSchool  a record went out: an export
     */
    record Entry(Instant at, Optional<Long> by, String act, Optional<Long> aboutPerson, Optional<Long> aboutClass, String detail, boolean leftSchool) {}

    List<Entry> about(long person);

    List<Entry> aboutClass(long schoolClass);

    /** The latest entries, the newest first. */
    List<Entry> latest(int most);

    /** The latest entries of one act, the newest first. */
    List<Entry> latest(String act, int most);
}
