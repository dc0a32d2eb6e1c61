package soapstone.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soapstone.exercise.Exercise;
import soapstone.lesson.Lesson;
import soapstone.page.Html;
import soapstone.page.LessonView;
import soapstone.page.Reference;
import soapstone.page.SheetKey;
import soapstone.variant.Variant;

/** Lessons with their live examples. */
final class Lessons {

    private final Library library;
    private final Links links;

    Lessons(Library library, Links links) {
        this.library = library;
        this.links = links;
    }

    LessonView view(Lesson lesson) {
        List<Lesson> all = library.course().inOrder();
        int at = all.indexOf(lesson);
        Optional<Reference> before = at > 0 ? Optional.of(links.lesson(all.get(at - 1).id())) : Optional.empty();
        Optional<Reference> next = at >= 0 && at + 1 < all.size() ? Optional.of(links.lesson(all.get(at + 1).id())) : Optional.empty();
        Reference unit = library.course().unitOf(lesson.id()).map(u -> links.unit(u.folder())).orElseThrow();
        List<LessonView.Part> parts = new ArrayList<>();
        lesson.parts().forEach(p -> part(p).ifPresent(parts::add));
        return new LessonView(lesson.id(), lesson.title(), unit, lesson.minutes(), parts,
                lesson.practice().stream().flatMap(id -> library.bank().exercise(id).stream()).map(links::exercise).toList(), before, next);
    }

    /** Links to practice stand together at the end of the page. */
    private Optional<LessonView.Part> part(Lesson.Part part) {
        if (part instanceof Lesson.Prose prose) {
            return Optional.of(LessonView.Part.of(new Html(prose.html())));
        } else if (part instanceof Lesson.Example example) {
            return Optional.of(LessonView.Part.of(example(example)));
        } else if (part instanceof Lesson.FormulaCard card) {
            return Optional.of(LessonView.Part.of(new Books(library, links).formula(library.bank().formulas().get(card.formula()))));
        } else if (part instanceof Lesson.CautionCard card) {
            return Optional.of(LessonView.Part.of(links.cautions(List.of(card.caution())).get(0)));
        }
        return Optional.empty();
    }

    private LessonView.Example example(Lesson.Example example) {
        Exercise exercise = library.bank().exercises().get(example.exercise());
        SheetKey key = new SheetKey(example.seed(), example.system(), exercise.fingerprint());
        Sheets sheets = new Sheets(library, links);
        Variant variant = sheets.variant(exercise, key);
        return new LessonView.Example(sheets.asked(exercise, key), new Lines(library, variant.model()).right(variant.right()));
    }
}
