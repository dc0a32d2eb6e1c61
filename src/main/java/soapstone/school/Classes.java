package soapstone.school;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where classes are kept, and who teaches them and who sits in them. */
public interface Classes {

    Optional<SchoolClass> find(long id);

    Optional<SchoolClass> byCode(String code);

    /** The classes that somebody teaches, the newest first. */
    List<SchoolClass> taughtBy(long instructor);

    /** The classes in which a student has a place or has asked for one. */
    List<SchoolClass> of(long student);

    boolean teaches(long schoolClass, long instructor);

    List<Person> instructors(long schoolClass);

    SchoolClass add(String name, String term, String code, ClassSettings settings, long instructor, Instant now);

    /**
     * Gives a class another name, term and settings. With another language of its pages go the students who read in the former one; who had
     * chosen otherwise stays with that.
     */
    void change(long id, String name, String term, ClassSettings settings);

    void setCode(long id, String code);

    void setArchived(long id, Optional<Instant> when);

    void addInstructor(long schoolClass, long instructor);

    /** Takes an instructor out of a class; false when nobody else would teach it, and then nothing changes. */
    boolean removeInstructor(long schoolClass, long instructor);

    /** Everybody in it, by seat and then by name; those who left come last. */
    List<Member> members(long schoolClass);

    Optional<Member> member(long schoolClass, long student);

    /** Gives a place to somebody who has an account, or changes what is kept about the place. */
    void seat(long schoolClass, long student, String seat, Member.State state, int extraTime, Instant now);

    /**
     * Makes accounts and places for a whole roster at once, and keeps the ids that the school's own system has for them.
     *
     * @throws People.Taken when a login was taken in the meantime; then nobody was added
     */
    List<Member> enrol(long schoolClass, List<NewMember> roster, Instant now);

    /** The ids of a class's students in the school's own system, where they are known. */
    Map<Long, String> sourcedIds(long schoolClass);

    /** Keeps ids of the school's own system; an empty one is forgotten. */
    void setSourcedIds(long schoolClass, Map<Long, String> byStudent);

    /**
     * Somebody new in a class.
     *
     * @param sourcedId in the school's own system; empty where it is not known
     */
    record NewMember(People.NewPerson person, String seat, int extraTime, String sourcedId) {

        /** Somebody of whom no other system is known to know. */
        public NewMember(People.NewPerson person, String seat, int extraTime) {
            this(person, seat, extraTime, "");
        }
    }
}
