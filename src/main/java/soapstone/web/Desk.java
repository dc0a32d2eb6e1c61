package soapstone.web;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import soapstone.page.AboutView;
import soapstone.page.Answer;
import soapstone.page.AnswersView;
import soapstone.page.BenchView;
import soapstone.page.Caution;
import soapstone.page.CourseUnit;
import soapstone.page.FigureKindLink;
import soapstone.page.FigureKindView;
import soapstone.page.FormulaTopic;
import soapstone.page.FormulaView;
import soapstone.page.FrontView;
import soapstone.page.LessonView;
import soapstone.page.Reference;
import soapstone.page.SheetKey;
import soapstone.page.SheetView;
import soapstone.page.TableView;
import soapstone.page.UnitSummary;
import soapstone.page.UnitView;
import soapstone.quantity.UnitSystem;

/**
 * All that the web asks of the rest of the house: it asks with what stood in a request, and gets view models. Many
 * threads ask at once; nothing is remembered from one call to the next.
 *
 * <p>An empty result means that there is no such thing: the visitor gets a "not found" page with near names out of
 * {@link #contents()}. Typed answers come as a map from a box's letter to its text, at most some thousand characters
 * each; a letter without an answer is missing in the map or has an empty text, and letters that no box has are to be
 * passed over.
 */
public interface Desk {

    /** The same with drawings in a language such as {@code en}; all other words are put in by the pages. */
    Desk in(String language);

    FrontView front();

    /** In teaching order. */
    List<UnitSummary> units();

    Optional<UnitView> unit(String unit);

    /** The fingerprint of an exercise in a unit system, for the address of a fresh sheet. */
    Optional<String> fingerprint(String unit, String id, UnitSystem units);

    /**
     * The sheet, not answered yet.
     *
     * @throws NoDraw if no numbers come from this seed
     */
    Optional<SheetView> sheet(String unit, String id, SheetKey key);

    /** The sheet with every answer read back and none marked. */
    Optional<SheetView> read(String unit, String id, SheetKey key, Map<String, String> typed);

    /**
     * The sheet marked; or only read back, as by {@link #read}, when an answer must be asked again. An answer that is
     * left out is marked as blank.
     */
    Optional<SheetView> mark(String unit, String id, SheetKey key, Map<String, String> typed);

    /** How a text reads, in the way that a box or the page about answers names; empty for an unknown way. */
    Optional<Answer> reading(String reads, String typed);

    /** The lessons, by unit, in teaching order. */
    List<CourseUnit> lessons();

    Optional<LessonView> lesson(String id);

    List<FormulaTopic> formulas();

    Optional<FormulaView> formula(String name);

    /** The exercise worked with these numbers; with an empty map, its boxes only. */
    Optional<BenchView> bench(String unit, String id, UnitSystem units, Map<String, String> typed);

    /** The formula worked with these numbers; with an empty map, its boxes only. */
    Optional<BenchView> formulaBench(String name, UnitSystem units, Map<String, String> typed);

    /** Links to all tables. */
    List<Reference> tables();

    Optional<TableView> table(String name);

    /** The kinds of drawing that a bank's file can name. */
    List<FigureKindLink> figureKinds();

    Optional<FigureKindView> figureKind(String name);

    List<Caution> cautions();

    /** Examples of notation and the ways to try; {@code tried} is filled in by the web from {@link #reading}. */
    AnswersView answers();

    AboutView about();

    /** What the pages about a class's marks ask. */
    MarksDesk marks();

    /** What a student's pages ask. */
    WorkDesk work();

    /** What is asked for what is printed. */
    PaperDesk paper();

    /** What the pages of a class ask about the shop's conventions. */
    ShopDesk shop();

    /** Everything that has a page of its own, for near names and for walking through the site. */
    List<Reference> contents();

    /** Thrown when a draw is refused: another seed may do. */
    final class NoDraw extends RuntimeException {

        private static final long serialVersionUID = 1L;

        public NoDraw(String reason) {
            super(reason);
        }
    }
}
