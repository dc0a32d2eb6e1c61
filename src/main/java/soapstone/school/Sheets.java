package soapstone.school;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soapstone.exercise.Conventions;
import soapstone.quantity.UnitSystem;

/** Where sheets are kept, and what is typed on them before it is handed in. */
public interface Sheets {

    Optional<Sheet> find(long id);

    Optional<Sheet> of(long assignment, long person);

    Optional<Sheet> byNumber(String number);

    /** All sheets of an assignment. */
    List<Sheet> all(long assignment);

    /** Keeps a sheet with its problems; where the student has one already, that one comes back and nothing is kept. */
    Sheet deal(long assignment, long person, String number, List<Dealt> problems, Instant now);

    /** A problem before it is kept. */
    record Dealt(long task, int place, String exercise, long seed, UnitSystem units, String fingerprint, double points, Conventions conventions) {

        /** Dealt without any convention set. */
        public Dealt(long task, int place, String exercise, long seed, UnitSystem units, String fingerprint, double points) {
            this(task, place, exercise, seed, units, fingerprint, points, Conventions.NONE);
        }
    }

    /**
     * The next round of a problem with other numbers; where there is a later round already, that one comes back and nothing is kept.
     *
     * @param next its numbers; task, place, exercise and points stay those of the problem
     */
    Problem again(long problem, Dealt next);

    Optional<Problem> problem(long id);

    /** Every round of a problem's place on its sheet. */
    List<Problem> rounds(long sheet, int place);

    /** Every round of every place of a sheet, in order. */
    List<Problem> allRounds(long sheet);

    /** Every round on every sheet of a student, by sheet and in order. */
    List<Problem> roundsOfPerson(long person);

    /** All sheets of a student. */
    List<Sheet> ofPerson(long person);

    /** What is typed and when it was kept. */
    Draft draftOf(long problem);

    /**
     * Keeps what is typed unless somebody kept something else since.
     *
     * @param from versions of the draft that the page goes on from: what it was made with, and what it sent last
     * @return what is kept now: the texts that came, or the newer ones that stand in their way
     */
    Draft keepDraft(long problem, Map<String, String> typed, Set<String> from, Instant now);

    /** What is typed, by the letters of the boxes. */
    Map<String, String> draft(long problem);

    /** Keeps what is typed as it is typed; letters that are left out keep what they have. */
    void saveDraft(long problem, Map<String, String> typed, Instant now);

    /** The text of all that a fingerprint stands for; kept once. */
    void keepWhole(String fingerprint, String content, Instant now);

    Optional<String> whole(String fingerprint);
}
