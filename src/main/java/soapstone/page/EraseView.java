package soapstone.page;

import java.util.List;

/**
 * What goes when a student is erased, before it is done.
 *
 * @param whole   whether the instructor teaches every class that the student has a place in; otherwise it cannot be done here
 * @param goes    is deleted
 * @param unnamed stays in the figures of the class without a name
 */
public record EraseView(ClassHead in, StudentDataView.Student student, boolean whole, List<StudentDataView.Count> goes, List<StudentDataView.Count> unnamed,
        FormView form) {

    public EraseView {
        goes = List.copyOf(goes);
        unnamed = List.copyOf(unnamed);
    }
}
