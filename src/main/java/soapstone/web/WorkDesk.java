package soapstone.web;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import soapstone.page.ExerciseLink;
import soapstone.page.SheetView;
import soapstone.school.Assignment;
import soapstone.school.ClassSettings;
import soapstone.school.Marking;
import soapstone.school.Problem;
import soapstone.school.Sheet;
import soapstone.school.Sheets;

/** What a student's pages ask of bank and course. For many threads. */
public interface WorkDesk {

    /**
     * A problem on a student's bench.
     *
     * @param settings of the class that it was dealt in
     * @param kept     where exercises are kept as they were when they were dealt
     */
    record Piece(Problem problem, ClassSettings settings, Sheets kept) {}

    /** The same with drawings in a language such as {@code en}. */
    WorkDesk in(String language);

    /** The version of the program, for the record. */
    String program();

    /** An exercise as a list names it; one that is no longer in the bank has its id for a title. */
    ExerciseLink exercise(String id);

    /**
     * Sheets for these students, in the order in which they sit, with numbers that nobody has on those that are dealt already.
     *
     * @throws soapstone.school.CannotDeal when there is nothing to deal
     */
    Map<Long, List<Sheets.Dealt>> deal(Assignment assignment, List<Long> students, Collection<Sheet> already, ClassSettings settings);

    /**
     * A second sheet that is as hard as the first.
     *
     * @throws soapstone.school.CannotDeal when there is nothing to deal
     */
    List<Sheets.Dealt> makeUp(Assignment first, Sheet sheet, Assignment second, Collection<Sheet> already, ClassSettings settings);

    /**
     * The same problem with other numbers.
     *
     * @throws soapstone.school.CannotDeal when the exercise is not in the bank any more
     */
    Sheets.Dealt again(Problem problem, Collection<Problem> before, ClassSettings settings);

    /** The text of all that an exercise's fingerprint stands for. */
    Optional<String> whole(String exercise);

    /** The problem with what is typed standing in its boxes; empty when it was mended and its earlier form is not to be had. */
    Optional<SheetView> asked(Piece piece, Map<String, String> typed);

    /** The problem with every answer read back, or asked again with the reason, and none marked. */
    Optional<SheetView> read(Piece piece, Map<String, String> typed);

    /** The marks, as they are kept. */
    Marking.Outcome mark(Piece piece, Map<String, String> typed);

    /** What was handed in, with as much of the marking on it as may be shown, and nothing of the rest. */
    Optional<SheetView> handedIn(Piece piece, Map<String, String> typed, Assignment.Shows shows);
}
