package soapstone.page;

import java.util.List;
import java.util.Optional;
import soapstone.source.Message;

/**
 * An assignment as its instructor sees it.
 *
 * @param open     whether anything in its class may change
 * @param due      empty for none
 * @param late     a key: {@code taken}, {@code half}, {@code refused}
 * @param shows    a key: {@code nothing}, {@code verdict}, {@code mistake}, {@code lines}
 * @param after    the assignment that this one makes up for
 * @param only     names of those whom it is for; empty for the whole class
 * @param own      due times of single students
 * @param students whom it is for
 * @param others   own classes that it can be copied to
 * @param refused  which exercises are not dealt, and why
 * @param seen     the newest that comes after it, which says what the page was like when a make-up was asked for
 */
public record AssignmentView(long id, String title, long inClass, String className, boolean open, ClassView.Stands stands, String opens, String due, String late,
        int tries, String shows, boolean formulas, List<Task> tasks, int problems, String points, Optional<Before> after, List<String> only, List<OwnDue> own,
        List<AssignmentFormView.Student> students, List<Choice> others, List<Message> refused, long seen, Forms forms) {

    /** One thing to do: the titles of its exercises, and how many of them. */
    public record Task(List<String> titles, int many, String points) {

        public Task {
            titles = List.copyOf(titles);
        }
    }

    /** What it comes after. */
    public record Before(long id, String title) {}

    /** A student's own due time. */
    public record OwnDue(String shown, String due) {}

    /** Something to choose from a list. */
    public record Choice(long id, String text) {}

    /** The forms of the page. */
    public record Forms(FormView give, FormView due, FormView own, FormView makeUp, FormView copy) {}

    public AssignmentView {
        tasks = List.copyOf(tasks);
        only = List.copyOf(only);
        own = List.copyOf(own);
        students = List.copyOf(students);
        others = List.copyOf(others);
        refused = List.copyOf(refused);
    }
}
