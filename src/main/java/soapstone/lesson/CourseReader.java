package soapstone.lesson;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soapstone.bank.Bank;
import soapstone.exercise.Exercise;
import soapstone.exercise.Family;
import soapstone.source.Issues;
import soapstone.source.Near;
import soapstone.source.Source;
import soapstone.source.Text;
import soapstone.source.Yaml;

/**
 * Reads the course and its lessons, and checks them against the bank: every lesson, skill, exercise and formula that is
 * named has to be there, in an order that can be taught.
 */
public final class CourseReader {

    private static final String RULE = "course";
    private static final String COURSE = "course.yaml";

    private final Map<String, String> texts;
    private final Bank bank;
    private final Issues issues = new Issues();

    private CourseReader(Map<String, String> texts, Bank bank) {
        this.texts = texts;
        this.bank = bank;
    }

    /** A course, or why there is none. */
    public record Result(Optional<Course> course, Issues issues) {}

    /** @param texts the files of the lessons folder by path */
    public static Result read(Map<String, String> texts, Bank bank) {
        CourseReader reader = new CourseReader(texts, bank);
        Optional<Course> course = reader.course();
        return new Result(reader.issues.isEmpty() ? course : Optional.empty(), reader.issues);
    }

    /** What of a course can be read, for an author who is at work on the rest. */
    public static Course partial(Map<String, String> texts, Bank bank) {
        return new CourseReader(texts, bank).course().orElse(new Course(List.of(), Map.of()));
    }

    private Optional<Course> course() {
        String text = texts.get(COURSE);
        if (text == null) {
            issues.add(RULE, new Source("lessons/" + COURSE, "").at(1, 1), "the lessons have no " + COURSE, "It names the units in order");
            return Optional.empty();
        }
        Map<String, Lesson> lessons = new LinkedHashMap<>();
        texts.forEach((path, body) -> {
            if (path.endsWith(".md")) {
                String id = path.substring(0, path.length() - ".md".length());
                new LessonReader(new Source("lessons/" + path, body), bank, issues).read(id).ifPresent(l -> lessons.put(id, l));
            }
        });
        List<CourseUnit> units = new ArrayList<>();
        Yaml.read(new Source("lessons/" + COURSE, text), issues).ifPresent(root -> {
            for (Yaml.Value item : root.only(Set.of("units")).items("units")) {
                item.map().ifPresent(m -> unit(m, lessons, units));
            }
            agree(root, units, lessons);
        });
        return Optional.of(new Course(List.copyOf(units), lessons));
    }

    private void unit(Yaml.Entries map, Map<String, Lesson> lessons, List<CourseUnit> units) {
        map.only(List.of("unit", "title", "skills", "lessons"));
        String folder = map.need("unit").map(Text::value).orElse("");
        List<Skill> skills = new ArrayList<>();
        Set<String> known = new HashSet<>();
        units.forEach(u -> u.skills().forEach(s -> known.add(s.name())));
        for (Yaml.Value item : map.items("skills")) {
            item.map().ifPresent(m -> skill(m.only(List.of("name", "title", "after")), known, skills));
        }
        List<String> ids = new ArrayList<>();
        for (Yaml.Value item : map.items("lessons")) {
            item.text().ifPresent(t -> {
                if (!lessons.containsKey(t.value())) {
                    issues.add(RULE, t.place(), "there is no lesson '" + t.value() + "'", Near.suggest(t.value(), lessons.keySet()));
                }
                ids.add(t.value());
            });
        }
        units.add(new CourseUnit(folder, map.need("title").map(Text::value).orElse(folder), skills, ids));
    }

    private void skill(Yaml.Entries map, Set<String> known, List<Skill> skills) {
        String name = map.need("name").map(Text::value).orElse("");
        List<String> after = new ArrayList<>();
        for (Yaml.Value item : map.items("after")) {
            item.text().ifPresent(t -> {
                if (!known.contains(t.value())) {
                    issues.add(RULE, t.place(), "the skill '" + t.value() + "' does not come before '" + name + "'", Near.suggest(t.value(), known));
                }
                after.add(t.value());
            });
        }
        if (!known.add(name)) {
            issues.add(RULE, map.place("name"), "the skill '" + name + "' stands twice", "Keep one");
        }
        skills.add(new Skill(name, map.need("title").map(Text::value).orElse(name), after));
    }

    /** Every exercise belongs to a unit and a skill, every family's lesson is there, every lesson is taught once. */
    private void agree(Yaml.Entries root, List<CourseUnit> units, Map<String, Lesson> lessons) {
        for (Exercise exercise : bank.exercises().values()) {
            Optional<CourseUnit> unit = units.stream().filter(u -> u.folder().equals(exercise.unit())).findFirst();
            if (unit.isEmpty()) {
                issues.add(RULE, root.place("units"), "the exercise " + exercise.id() + " is in no unit", "Add unit: " + exercise.unit());
            } else if (units.stream().noneMatch(u -> u.skills().stream().anyMatch(s -> s.name().equals(exercise.skill())))) {
                issues.add(RULE, root.place("units"), "the exercise " + exercise.id() + " trains '" + exercise.skill() + "', which is no skill of the course",
                        "Add it to the unit " + unit.get().folder());
            }
        }
        for (Family family : bank.families().values()) {
            if (!family.lesson().isEmpty() && !lessons.containsKey(family.lesson())) {
                issues.add(RULE, root.place("units"), "the slip family '" + family.name() + "' sends people to the lesson '" + family.lesson()
                        + "', which is not there", Near.suggest(family.lesson(), lessons.keySet()));
            }
        }
        order(root, units, lessons);
    }

    private void order(Yaml.Entries root, List<CourseUnit> units, Map<String, Lesson> lessons) {
        Set<String> taught = new HashSet<>();
        for (CourseUnit unit : units) {
            for (String id : unit.lessons()) {
                Lesson lesson = lessons.get(id);
                if (lesson != null) {
                    lesson.after().stream().filter(a -> !taught.contains(a)).forEach(a -> issues.add(RULE, root.place("units"),
                            "the lesson '" + id + "' comes after '" + a + "', which is not taught before it", "Change the order, or after: in the lesson"));
                }
                if (!taught.add(id)) {
                    issues.add(RULE, root.place("units"), "the lesson '" + id + "' is taught twice", "Keep one");
                }
            }
        }
        lessons.keySet().stream().filter(id -> !taught.contains(id))
                .forEach(id -> issues.add(RULE, root.place("units"), "the lesson '" + id + "' is in no unit", "Add it to lessons: of its unit"));
    }
}
