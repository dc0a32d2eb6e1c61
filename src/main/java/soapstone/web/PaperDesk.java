package soapstone.web;

import java.util.List;
import java.util.Optional;
import soapstone.page.FormulaView;
import soapstone.page.SheetView;
import soapstone.paper.KeySheet;

/** What is printed, as bank and course have it. For many threads. */
public interface PaperDesk {

    /** The same with drawings in a language such as {@code en}. */
    PaperDesk in(String language);

    /** A problem as it is asked, and the formulas that it uses. */
    record Asked(SheetView sheet, List<FormulaView> formulas) {

        public Asked {
            formulas = List.copyOf(formulas);
        }
    }

    /** A problem to be printed; empty when it was mended and its earlier form is not to be had. */
    Optional<Asked> asked(WorkDesk.Piece piece);

    /** Its answers, and what mistakes give; empty as above. */
    Optional<KeySheet.Problem> key(WorkDesk.Piece piece);
}
