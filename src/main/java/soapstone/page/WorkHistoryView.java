package soapstone.page;

import java.util.List;
import java.util.Optional;
import soapstone.source.Message;

/** Every try of a student, and every sheet that was kept as practice, the newest first. */
public record WorkHistoryView(List<Past> tries, List<PracticeRow> practice) {

    /**
     * A try.
     *
     * @param receipt its number in the record
     * @param points  empty while they are not shown
     */
    public record Past(String when, String className, String assignment, int place, String exercise, int number, String receipt, boolean late,
            Optional<Message> points, String path) {}

    public WorkHistoryView {
        tries = List.copyOf(tries);
        practice = List.copyOf(practice);
    }
}
