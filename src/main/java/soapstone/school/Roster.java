package soapstone.school;

import java.util.List;
import java.util.stream.Stream;

/**
 * A list of students as it was understood, to be looked at before anything is saved. Where it is not right, nothing of it
 * may be saved.
 *
 * @param rows   in the order of the text
 * @param faults of the text as a whole; those of a row stand with the row
 */
public record Roster(List<Row> rows, List<RosterFault> faults) {

    /** More students than any class has; a longer list is something else. */
    public static final int MOST_ROWS = 500;
    /** Letters of a shown name at most, in the units that both databases can hold. */
    public static final int LONGEST_NAME = 80;
    public static final int LONGEST_SEAT = 20;
    public static final int LONGEST_LOGIN = 80;
    /** Five times the time of others. */
    public static final int MOST_EXTRA_TIME = 400;

    /**
     * One student.
     *
     * @param line      of the text, from 1
     * @param seat      may be empty
     * @param name      that others see
     * @param login     as given, or else proposed; in the form of {@link Logins#plain}
     * @param proposed  whether the login is a proposal
     * @param extraTime in per cent of the time that others have
     * @param sourcedId of the student in the school's own system; empty where the list came from elsewhere
     */
    public record Row(int line, String seat, String name, String login, boolean proposed, int extraTime, String sourcedId, List<RosterFault> faults) {

        public Row {
            faults = List.copyOf(faults);
        }

        public boolean isRight() {
            return faults.stream().noneMatch(RosterFault::isFault);
        }
    }

    public Roster {
        rows = List.copyOf(rows);
        faults = List.copyOf(faults);
    }

    /** Whether it may be saved: there are students, and no fault anywhere. */
    public boolean isRight() {
        return !rows.isEmpty() && faults.stream().noneMatch(RosterFault::isFault) && rows.stream().allMatch(Row::isRight);
    }

    /** Faults and warnings of the whole text, then of each row. */
    public List<RosterFault> all() {
        return Stream.concat(faults.stream(), rows.stream().flatMap(r -> r.faults().stream())).toList();
    }
}
