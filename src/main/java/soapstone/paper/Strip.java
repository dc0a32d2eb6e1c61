package soapstone.paper;

import java.util.List;
import soapstone.page.SheetView;

/**
 * What goes back to a student on paper after marking.
 *
 * @param who      seat and name
 * @param points   such as {@code 4.5/6}; empty where they are not told
 * @param problems those that something was handed in for, in order
 */
public record Strip(String number, String who, String title, String points, List<Problem> problems) {

    /**
     * One problem.
     *
     * @param sheet   as it was marked
     * @param changed later words on its marks
     */
    public record Problem(int place, SheetView sheet, List<String> changed) {

        public Problem {
            changed = List.copyOf(changed);
        }
    }

    public Strip {
        problems = List.copyOf(problems);
    }
}
