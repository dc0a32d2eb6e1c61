package soapstone.desk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import soapstone.exercise.Exercise;
import soapstone.lesson.Lesson;
import soapstone.page.ExerciseLink;
import soapstone.page.Figure;
import soapstone.page.Html;
import soapstone.page.LessonView;
import soapstone.page.Reference;
import soapstone.page.SheetKey;
import soapstone.variant.Variant;

/** Lessons with their live examples. */
final class Lessons {

    private final Library library;
    private final Links links;
    private final String language;

    /** @param language of the words in drawings */
    Lessons(Library library, Links links, String language) {
        this.library = library;
        this.links = links;
        this.language = language;
    }

    LessonView view(Lesson lesson) {
        List<Lesson> all = library.course().inOrder();
        int at = all.indexOf(lesson);
        Optional<Reference> before = at > 0 ? Optional.of(links.lesson(all.get(at - 1).id())) : Optional.empty();
        Optional<Reference> next = at >= 0 && at + 1 < all.size() ? Optional.of(links.lesson(all.get(at + 1).id())) : Optional.empty();
        Reference unit = library.course().unitOf(lesson.id()).map(u -> links.unit(u.folder())).orElseThrow();
        return new LessonView(lesson.id(), lesson.title(), unit, lesson.minutes(), parts(lesson), List.of(), before, next);
    }

    /** Links to practice that follow each other stand in one list; a caution that stands in an example already is not said again. */
    private List<LessonView.Part> parts(Lesson lesson) {
        List<LessonView.Part> parts = new ArrayList<>();
        List<ExerciseLink> practice = new ArrayList<>();
        Set<String> said = new HashSet<>();
        for (Lesson.Part part : lesson.parts()) {
            if (part instanceof Lesson.Practice p) {
                practice.add(links.exercise(library.bank().exercises().get(p.exercise())));
                continue;
            }
            add(practice, parts);
            if (!(part instanceof Lesson.CautionCard card) || said.add(card.caution())) {
                parts.add(part(part));
            }
            if (part instanceof Lesson.Example example) {
                said.addAll(library.bank().exercises().get(example.exercise()).cautions());
            }
        }
        add(practice, parts);
        return parts;
    }

    private static void add(List<ExerciseLink> practice, List<LessonView.Part> parts) {
        if (!practice.isEmpty()) {
            parts.add(LessonView.Part.of(practice));
            practice.clear();
        }
    }

    private LessonView.Part part(Lesson.Part part) {
        if (part instanceof Lesson.Example example) {
            return LessonView.Part.of(example(example));
        } else if (part instanceof Lesson.FormulaCard card) {
            return LessonView.Part.of(new Books(library, links).formula(library.bank().formulas().get(card.formula())));
        } else if (part instanceof Lesson.CautionCard card) {
            return LessonView.Part.of(links.cautions(List.of(card.caution())).get(0));
        }
        return LessonView.Part.of(new Html(((Lesson.Prose) part).html()));
    }

    private LessonView.Example example(Lesson.Example example) {
        Exercise exercise = library.bank().exercises().get(example.exercise());
        SheetKey key = new SheetKey(example.seed(), example.system(), exercise.fingerprint());
        Sheets sheets = new Sheets(library, links, language);
        Variant variant = sheets.variant(exercise, key);
        String name = "told-" + Links.file(exercise) + "-" + example.seed();
        Optional<Figure> told = Drawings.in(language).told(variant.model(), variant.right(), name);
        return new LessonView.Example(sheets.asked(exercise, key), told, new Lines(library, variant.model()).pointingAt(told).right(variant.right()));
    }
}
