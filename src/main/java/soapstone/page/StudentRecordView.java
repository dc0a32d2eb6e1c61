package soapstone.page;

import java.util.List;

/**
 * Everything that is kept about one student, to be handed over: the same facts as JSON and as a page to read.
 *
 * @param taken when
 * @param whole    whether every class is in it; otherwise only those of the instructor who took it
 * @param practice belongs to no class, and so is in a whole record only
 */
public record StudentRecordView(String taken, boolean whole, Account account, List<Place> places, List<Sheet> sheets, List<Signed> competencies,
        List<Correction> corrections, List<Change> changes, List<PracticeRow> practice) {

    public StudentRecordView {
        places = List.copyOf(places);
        sheets = List.copyOf(sheets);
        competencies = List.copyOf(competencies);
        corrections = List.copyOf(corrections);
        changes = List.copyOf(changes);
        practice = List.copyOf(practice);
    }

    /** Who it is. */
    public record Account(String shown, String login, String language, String created) {}

    /** A place in a class. */
    public record Place(String in, String term, String seat, String state, int extraTime, String since) {}

    /** The work for one assignment. */
    public record Sheet(String in, String assignment, List<Problem> problems) {

        public Sheet {
            problems = List.copyOf(problems);
        }
    }

    /**
     * One exercise with its draw.
     *
     * @param seed     brings its numbers again
     * @param conventions that were set, which do so with it; empty where none was
     * @param question as it stood on the sheet; empty when its earlier form was not kept
     */
    public record Problem(String exercise, String title, long seed, String units, String conventions, int round, String question, List<Attempt> attempts) {

        public Problem {
            attempts = List.copyOf(attempts);
        }
    }

    /** One time that it was handed in. */
    public record Attempt(int number, String at, boolean late, String way, List<Answer> answers) {

        public Attempt {
            answers = List.copyOf(answers);
        }
    }

    /** One answer with its first mark, and every later word on it. */
    public record Answer(String prompt, String typed, String readAs, String verdict, String says, String points, String possible, List<Remark> remarks) {

        public Answer {
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * A later word on a mark.
     *
     * @param by empty for the program
     */
    public record Remark(String at, String by, String cause, String verdict, String points, String reason) {}

    /** A signature or a withdrawal. */
    public record Signed(String frame, String code, String title, String act, String at, String by, String conditions, List<String> evidence) {

        public Signed {
            evidence = List.copyOf(evidence);
        }
    }

    /** A request to correct a record. */
    public record Correction(String at, String asks, String outcome, String answer, String answered, String by) {}

    /** What was changed about the student, and when a record left. */
    public record Change(String at, String by, String what, String detail, boolean left) {}
}
