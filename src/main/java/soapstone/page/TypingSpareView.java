package soapstone.page;

import java.util.List;

/** A spare sheet came back: whose is it. */
public record TypingSpareView(String number, String title, String className, long assignment, FormView form, List<AssignmentFormView.Student> students) {

    public TypingSpareView {
        students = List.copyOf(students);
    }
}
