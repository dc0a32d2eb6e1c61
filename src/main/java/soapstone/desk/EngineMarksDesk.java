package soapstone.desk;

import java.security.SecureRandom;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import soapstone.exercise.Ask;
import soapstone.exercise.Exercise;
import soapstone.exercise.Slip;
import soapstone.expression.Frame;
import soapstone.page.WorkedLine;
import soapstone.page.Words;
import soapstone.school.Assignment;
import soapstone.school.ClassSettings;
import soapstone.school.Dealing;
import soapstone.school.Problem;
import soapstone.school.Regrading;
import soapstone.school.School;
import soapstone.school.Sheet;
import soapstone.school.Sheets;
import soapstone.school.Shelf;
import soapstone.school.Work;
import soapstone.variant.Drawer;
import soapstone.variant.Effect;
import soapstone.variant.Shown;
import soapstone.variant.Variant;
import soapstone.web.MarksDesk;

/** Answers the pages about marks out of a library. */
final class EngineMarksDesk implements MarksDesk {

    private final Supplier<Library> current;
    private final SecureRandom chance = new SecureRandom();

    EngineMarksDesk(Supplier<Library> current) {
        this.current = current;
    }

    @Override
    public Named exercise(String id) {
        Library library = current.get();
        return library.bank().exercise(id).map(e -> new Named(id, e.title(), e.skill(), library.course().skillTitle(e.skill()))).orElse(new Named(id, id, "", ""));
    }

    @Override
    public List<Skill> skills() {
        Library library = current.get();
        return library.course().units().stream().flatMap(u -> u.skills().stream()).map(s -> new Skill(s.name(), s.title())).toList();
    }

    @Override
    public Set<String> ofSkill(String skill) {
        return current.get().bank().exercises().values().stream().filter(e -> e.skill().equals(skill)).map(Exercise::id).collect(Collectors.toUnmodifiableSet());
    }

    @Override
    public MarksDesk.Family family(String name) {
        Library library = current.get();
        Links links = new Links(library);
        soapstone.exercise.Family family = library.bank().families().get(name);
        return new MarksDesk.Family(links.family(name), family == null ? "" : family.says(), links.remedy(name));
    }

    @Override
    public Optional<Board> board(Problem problem, String slip, String name) {
        Library library = current.get();
        Optional<Variant> drawn = library.bank().exercise(problem.exercise()).filter(e -> e.fingerprint().equals(problem.fingerprint()))
                .flatMap(e -> Drawer.draw(e, problem.units(), problem.seed()));
        return drawn.flatMap(v -> v.outcomes().stream().filter(o -> o.slip().name().equals(slip) && o.effect() != Effect.SAME).findFirst()
                .map(o -> board(library, v, o.slip(), o.theirs(), name)));
    }

    private static Board board(Library library, Variant variant, Slip slip, Frame theirs, String name) {
        List<WorkedLine> lines = new Lines(library, variant.model()).beside(variant.right(), theirs, List.of(slip), 0).stream()
                .filter(l -> l.yours().filter(y -> y.kind() == WorkedLine.Kind.SLIP).isPresent()).toList();
        return new Board(lines, new Drawings().asCut(variant, theirs, name));
    }

    @Override
    public boolean isMended(String exercise, String fingerprint) {
        return current.get().bank().exercise(exercise).filter(e -> !e.fingerprint().equals(fingerprint)).isPresent();
    }

    @Override
    public Regrading.Result regrade(School school, List<Work> works, ClassSettings settings, Instant at) {
        Library library = current.get();
        Words words = Words.of(settings.language());
        return new Regrading(library.bank(), new KeptExercises(school.sheets(), library.bank()), words::say).look(works, settings, at);
    }

    @Override
    public List<String> drill(String exercise, String family) {
        Library library = current.get();
        Optional<Exercise> first = library.bank().exercise(exercise);
        if (first.isEmpty()) {
            return List.of();
        }
        Comparator<Exercise> near = Comparator.<Exercise>comparingInt(e -> Math.abs(e.level() - first.get().level())).thenComparingInt(Exercise::level)
                .thenComparing(Exercise::id);
        String second = library.bank().exercises().values().stream().filter(e -> e.skill().equals(first.get().skill()) && !e.id().equals(exercise))
                .filter(e -> e.us().slips().stream().anyMatch(s -> s.family().equals(family))).min(near).map(Exercise::id).orElse(exercise);
        return List.of(exercise, second);
    }

    @Override
    public Map<Long, List<Sheets.Dealt>> deal(Assignment assignment, List<Long> students, List<Sheet> already, ClassSettings settings) {
        return new Dealing(current.get().bank(), settings, chance).deal(assignment, students, already);
    }

    @Override
    public Optional<String> whole(String exercise) {
        return Optional.ofNullable(current.get().bank().wholes().get(exercise));
    }

    @Override
    public List<Optional<Asked>> asked(Sheets kept, List<Problem> problems) {
        Library library = current.get();
        Shelf shelf = Shelf.of(library.bank()).or(new KeptExercises(kept, library.bank()));
        return problems.stream().map(p -> shelf.exercise(p.exercise(), p.fingerprint()).flatMap(e -> Drawer.draw(e, p.units(), p.seed())).map(EngineMarksDesk::asked)).toList();
    }

    private static Asked asked(Variant v) {
        Map<String, String> prompts = v.model().asks().stream().collect(Collectors.toMap(Ask::name, a -> Shown.text(v.model(), a.prompt(), v.right(), v.right())));
        return new Asked(Shown.text(v.model(), v.model().story(), v.right(), v.right()), prompts);
    }
}
