package soapstone.desk;

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
import soapstone.exercise.Line;
import soapstone.exercise.Model;
import soapstone.page.WorkedLine;
import soapstone.page.Words;
import soapstone.school.ClassSettings;
import soapstone.school.Problem;
import soapstone.school.Regrading;
import soapstone.school.School;
import soapstone.school.Sheets;
import soapstone.school.Shelf;
import soapstone.school.Work;
import soapstone.variant.Effect;
import soapstone.variant.Shown;
import soapstone.variant.Variant;
import soapstone.web.MarksDesk;

/** Answers the pages about marks out of a library. */
final class EngineMarksDesk implements MarksDesk {

    private final Supplier<Library> current;
    private final String language;

    /** @param language of the words in drawings */
    EngineMarksDesk(Supplier<Library> current, String language) {
        this.current = current;
        this.language = language;
    }

    @Override
    public MarksDesk in(String reader) {
        return reader.equals(language) ? this : new EngineMarksDesk(current, reader);
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
    public Optional<Board> board(Problem problem, String ask, String slip, String name) {
        Library library = current.get();
        Optional<Variant> drawn = library.bank().exercise(problem.exercise()).filter(e -> e.fingerprint().equals(problem.fingerprint()))
                .flatMap(problem::drawn);
        return drawn.flatMap(v -> v.outcomes().stream().filter(o -> o.slip().name().equals(slip) && o.effect() != Effect.SAME).findFirst()
                .map(o -> board(library, v, ask, o, name)));
    }

    /** Of the lines that the slip swaps, the last one on the way to the ask: what comes before it is not what the answer shows. */
    private Board board(Library library, Variant variant, String ask, Variant.Outcome outcome, String name) {
        Model model = variant.model();
        List<Integer> slots = model.lines().stream().filter(l -> l.phase() == Line.Phase.WORKING).map(Line::slot).toList();
        int upTo = model.ask(ask) == null ? -1 : slots.indexOf(model.ask(ask).slot());
        List<WorkedLine> lines = new Lines(library, model).beside(variant.right(), outcome.theirs(), List.of(outcome.slip()), 0);
        List<WorkedLine> swapped = lines.subList(0, upTo < 0 ? lines.size() : upTo + 1).stream()
                .filter(l -> l.yours().filter(y -> y.kind() == WorkedLine.Kind.SLIP).isPresent()).toList();
        return new Board(swapped.subList(Math.max(0, swapped.size() - 1), swapped.size()), Drawings.in(language).asCut(variant, outcome.theirs(), name));
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
    public List<Optional<Asked>> asked(Sheets kept, List<Problem> problems) {
        Library library = current.get();
        Shelf shelf = Shelf.of(library.bank()).or(new KeptExercises(kept, library.bank()));
        return problems.stream().map(p -> shelf.exercise(p.exercise(), p.fingerprint()).flatMap(p::drawn).map(EngineMarksDesk::asked)).toList();
    }

    private static Asked asked(Variant v) {
        Map<String, String> prompts = v.model().asks().stream().collect(Collectors.toMap(Ask::name, a -> Shown.text(v.model(), a.prompt(), v.right(), v.right())));
        return new Asked(Shown.text(v.model(), v.model().story(), v.right(), v.right()), prompts);
    }
}
