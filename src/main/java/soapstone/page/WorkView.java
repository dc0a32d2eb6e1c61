package soapstone.page;

import java.util.List;
import java.util.Optional;
import soapstone.source.Message;

/**
 * What a student has to do, class by class.
 *
 * @param practice exercises of these assignments, to be practised with other numbers
 */
public record WorkView(List<ClassWork> classes, List<ExerciseLink> practice) {

    /**
     * A class.
     *
     * @param says that a place in it is waited for, or that it is put away; empty usually
     */
    public record ClassWork(String name, String term, Optional<Message> says, List<Item> items) {

        public ClassWork {
            items = List.copyOf(items);
        }
    }

    /**
     * An assignment.
     *
     * @param path   empty while it cannot be opened
     * @param state  how far the student is
     * @param points empty while they are not shown
     */
    public record Item(String title, String path, Message due, Message state, Optional<Message> points) {}

    public WorkView {
        classes = List.copyOf(classes);
        practice = List.copyOf(practice);
    }
}
