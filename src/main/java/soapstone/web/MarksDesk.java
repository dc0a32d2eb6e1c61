package soapstone.web;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soapstone.page.Figure;
import soapstone.page.Reference;
import soapstone.page.WorkedLine;
import soapstone.school.ClassSettings;
import soapstone.school.Problem;
import soapstone.school.Regrading;
import soapstone.school.School;
import soapstone.school.Sheets;
import soapstone.school.Work;

/** What the pages about a class's marks ask of bank and course. For many threads. */
public interface MarksDesk {

    /**
     * An exercise as a list names it; one that is no longer in the bank has its id for a title and no skill.
     *
     * @param skill of the course
     */
    record Named(String id, String title, String skill, String skillTitle) {}

    Named exercise(String id);

    /** A skill by name and title. */
    record Skill(String name, String title) {}

    /** Skills in teaching order. */
    List<Skill> skills();

    /** The exercises that train a skill; none for an unknown one. */
    Set<String> ofSkill(String skill);

    /**
     * The idea behind mistakes.
     *
     * @param lesson that undoes it
     */
    record Family(String title, String says, Optional<Reference> lesson) {}

    Family family(String name);

    /**
     * A mistake on the board, with one student's numbers.
     *
     * @param lines  where the mistake is on the way to the answer: the right line, and the other one beside it; may be empty
     * @param figure the part as the mistake would cut it, over the right one
     */
    record Board(List<WorkedLine> lines, Optional<Figure> figure) {}

    /** The same with drawings in a language such as {@code en}. */
    MarksDesk in(String language);

    /**
     * What a slip does to a problem; empty when the exercise was mended since, or when no file knows the slip.
     *
     * @param ask  the answer that fits it
     * @param name that the ids in the drawing begin with
     */
    Optional<Board> board(Problem problem, String ask, String slip, String name);

    /** Whether an exercise is in the bank with another fingerprint. */
    boolean isMended(String exercise, String fingerprint);

    /** Marks again what was handed in; nothing is kept. */
    Regrading.Result regrade(School school, List<Work> works, ClassSettings settings, Instant at);

    /** Two exercises, or one twice, in which a mistake of that family shows: the one where it was made, and one of the same skill. */
    List<String> drill(String exercise, String family);

    /**
     * What a problem asked, with its own numbers.
     *
     * @param prompts by the names of the asks
     */
    record Asked(String story, Map<String, String> prompts) {

        public Asked {
            prompts = Map.copyOf(prompts);
        }
    }

    /** The question of each problem as it was dealt, in their order; empty where its earlier form was not kept. */
    List<Optional<Asked>> asked(Sheets kept, List<Problem> problems);
}
