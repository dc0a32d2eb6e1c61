package soapstone.desk;

import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import soapstone.exercise.Exercise;
import soapstone.mark.MarkRules;
import soapstone.page.Answer;
import soapstone.page.AnswerBox;
import soapstone.page.ExerciseLink;
import soapstone.page.Feedback;
import soapstone.page.SheetView;
import soapstone.page.Words;
import soapstone.school.Assignment;
import soapstone.school.ClassSettings;
import soapstone.school.Dealing;
import soapstone.school.Marking;
import soapstone.school.Problem;
import soapstone.school.Sheet;
import soapstone.school.Sheets.Dealt;
import soapstone.variant.Drawer;
import soapstone.variant.Variant;
import soapstone.web.WorkDesk;

/** Answers a student's pages out of a library. */
final class EngineWorkDesk implements WorkDesk {

    private final Supplier<Library> current;
    private final String language;
    private final SecureRandom chance = new SecureRandom();

    /** @param language of the words in drawings */
    EngineWorkDesk(Supplier<Library> current, String language) {
        this.current = current;
        this.language = language;
    }

    @Override
    public WorkDesk in(String reader) {
        return reader.equals(language) ? this : new EngineWorkDesk(current, reader);
    }

    @Override
    public String program() {
        return EngineDesk.VERSION;
    }

    @Override
    public ExerciseLink exercise(String id) {
        Library library = current.get();
        int slash = id.indexOf('/');
        return library.bank().exercise(id).map(new Links(library)::exercise)
                .orElseGet(() -> new ExerciseLink(id.substring(0, Math.max(0, slash)), id.substring(slash + 1), id, 0, ""));
    }

    @Override
    public Map<Long, List<Dealt>> deal(Assignment assignment, List<Long> students, Collection<Sheet> already, ClassSettings settings) {
        return dealing(settings).deal(assignment, students, already);
    }

    @Override
    public List<Dealt> makeUp(Assignment first, Sheet sheet, Assignment second, Collection<Sheet> already, ClassSettings settings) {
        return dealing(settings).makeUp(first, sheet, second, already);
    }

    @Override
    public Dealt again(Problem problem, Collection<Problem> before, ClassSettings settings) {
        return dealing(settings).again(problem, before);
    }

    private Dealing dealing(ClassSettings settings) {
        return new Dealing(current.get().bank(), settings, chance);
    }

    @Override
    public Optional<String> whole(String exercise) {
        return Optional.ofNullable(current.get().bank().wholes().get(exercise));
    }

    @Override
    public Optional<SheetView> asked(Piece piece, Map<String, String> typed) {
        Library library = current.get();
        return variant(library, piece).map(v -> sheets(library, piece).draft(v, typed));
    }

    @Override
    public Optional<SheetView> read(Piece piece, Map<String, String> typed) {
        Library library = current.get();
        return variant(library, piece).map(v -> again(sheets(library, piece).read(v, typed), marking(library, piece).mark(piece.problem(), typed, piece.settings())));
    }

    /** A class may ask for more than that an answer can be read, such as a unit behind the number. */
    private static SheetView again(SheetView read, Marking.Outcome outcome) {
        if (!(outcome instanceof Marking.Outcome.AskedAgain asked)) {
            return read;
        }
        List<AnswerBox> boxes = new ArrayList<>();
        for (AnswerBox box : read.boxes()) {
            boxes.add(asked.boxes().stream().filter(a -> a.letter().equals(box.letter())).findFirst()
                    .map(a -> box.with(Answer.askedAgain(a.typed(), a.why()))).orElse(box));
        }
        return read.with(read.stage(), boxes, Optional.empty());
    }

    @Override
    public Marking.Outcome mark(Piece piece, Map<String, String> typed) {
        return marking(current.get(), piece).mark(piece.problem(), typed, piece.settings());
    }

    @Override
    public Optional<SheetView> handedIn(Piece piece, Map<String, String> typed, Assignment.Shows shows) {
        Library library = current.get();
        Sheets sheets = sheets(library, piece);
        ClassSettings s = piece.settings();
        MarkRules rules = new MarkRules(s.carriedEarns(), s.nearEarns(), s.coarseEarns());
        return variant(library, piece).map(v -> shows == Assignment.Shows.NOTHING ? sheets.read(v, typed) : allowed(sheets.marked(v, typed, rules), shows));
    }

    /** Leaves out what the student must not see yet: how far off an answer is, and the right part, would give the next try away. */
    private static SheetView allowed(SheetView marked, Assignment.Shows shows) {
        Optional<Feedback> all = marked.feedback();
        if (shows == Assignment.Shows.LINES || all.isEmpty()) {
            return marked;
        }
        boolean named = shows == Assignment.Shows.MISTAKE;
        Feedback some = new Feedback(all.get().right(), all.get().asked(), named ? all.get().explanations() : List.of(), Optional.empty(), Optional.empty(), List.of(),
                named ? all.get().readNext() : List.of());
        List<AnswerBox> boxes = marked.boxes().stream().map(b -> b.with(allowed(b.answer(), named))).toList();
        return marked.with(SheetView.Stage.MARKED, boxes, Optional.of(some));
    }

    private static Answer allowed(Answer answer, boolean named) {
        return switch (answer.state()) {
            case NEAR -> Answer.marked(answer.typed(), Answer.State.NEAR, answer.readAs());
            case SLIP, UNEXPLAINED -> named ? answer : Answer.marked(answer.typed(), Answer.State.NOT_RIGHT, answer.readAs());
            default -> answer;
        };
    }

    /** The numbers that a problem was dealt with; empty where its earlier form was not kept. */
    static Optional<Variant> variant(Library library, Piece piece) {
        Optional<Exercise> exercise = marking(library, piece).exercise(piece.problem());
        return exercise.flatMap(piece.problem()::drawn);
    }

    private Sheets sheets(Library library, Piece piece) {
        return new Sheets(library, new Links(library), language, piece.settings().decimalMark());
    }

    private static Marking marking(Library library, Piece piece) {
        return new Marking(library.bank(), new KeptExercises(piece.kept(), library.bank()), Words.of(piece.settings().language())::say);
    }
}
