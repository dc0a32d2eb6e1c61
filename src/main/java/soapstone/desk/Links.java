package soapstone.desk;

import java.util.List;
import java.util.Optional;
import soapstone.exercise.Check;
import soapstone.exercise.Exercise;
import soapstone.exercise.Family;
import soapstone.page.Caution;
import soapstone.page.CheckSource;
import soapstone.page.ExerciseLink;
import soapstone.page.LessonLink;
import soapstone.page.Reference;

/** Links and short entries for pages. */
final class Links {

    private final Library library;

    Links(Library library) {
        this.library = library;
    }

    ExerciseLink exercise(Exercise e) {
        return new ExerciseLink(e.unit(), file(e), e.title(), e.level(), library.course().skillTitle(e.skill()));
    }

    static String file(Exercise e) {
        return e.id().substring(e.id().indexOf('/') + 1);
    }

    Reference reference(Exercise e) {
        return Reference.exercise(e.unit(), file(e), e.title());
    }

    Reference unit(String folder) {
        return Reference.unit(folder, library.course().unit(folder).map(soapstone.lesson.CourseUnit::title).orElse(folder));
    }

    Reference lesson(String id) {
        return Reference.lesson(id, library.course().lesson(id).map(soapstone.lesson.Lesson::title).orElse(id));
    }

    LessonLink lessonLink(soapstone.lesson.Lesson lesson) {
        return new LessonLink(lesson.id(), lesson.title(), "");
    }

    Reference formula(String name) {
        return Reference.formula(name, name.replace('_', ' '));
    }

    Reference table(String name) {
        return Reference.table(name, library.bank().tables().get(name).title());
    }

    /** The lesson that undoes a family's idea. */
    Optional<Reference> remedy(String family) {
        Family f = library.bank().families().get(family);
        return f == null || f.lesson().isEmpty() || library.course().lesson(f.lesson()).isEmpty() ? Optional.empty() : Optional.of(lesson(f.lesson()));
    }

    /** The title of a family, or its name in words. */
    String family(String name) {
        Family f = library.bank().families().get(name);
        return f == null ? name.replace('-', ' ') : f.title();
    }

    List<Caution> cautions(List<String> names) {
        return names.stream().map(library.bank().cautions()::get).filter(java.util.Objects::nonNull)
                .map(c -> new Caution(c.name(), c.title(), c.says())).toList();
    }

    /** Where a check comes from. The page itself says which are from memory, so that the file's own word for it is taken off. */
    static CheckSource source(Check check) {
        String text = check.kind() == Check.Kind.OWN ? "" : check.source();
        String bare = check.kind() == Check.Kind.MEMORY ? text.replaceFirst("[;,]? from memory\\.?$", "") : text;
        return new CheckSource(CheckSource.Kind.valueOf(check.kind().name()), bare);
    }

    Optional<Exercise> find(String unit, String id) {
        return library.bank().exercise(unit + "/" + id);
    }
}
