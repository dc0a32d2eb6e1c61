package soapstone.paper;

import java.util.List;
import soapstone.page.FormulaView;
import soapstone.page.SheetView;

/**
 * One sheet as it is printed: what a student gets on paper.
 *
 * @param number      of the sheet, as it is typed in afterwards
 * @param who         seat and name; empty where one writes it on
 * @param title       of the assignment
 * @param className   may be empty
 * @param day         that stands on it, such as {@code Mar 16, 2027}
 * @param conventions of the shop, in the instructor's words
 * @param problems    in order
 */
public record PacketSheet(String number, String who, String title, String className, String day, String conventions, List<Problem> problems) {

    /**
     * One problem.
     *
     * @param points   that it is worth; empty for none
     * @param sheet    as it is asked
     * @param formulas that it uses
     */
    public record Problem(int place, String points, SheetView sheet, List<FormulaView> formulas) {

        public Problem {
            formulas = List.copyOf(formulas);
        }
    }

    public PacketSheet {
        problems = List.copyOf(problems);
    }
}
