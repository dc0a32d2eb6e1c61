package soapstone.page;

import java.util.List;
import java.util.Map;
import soapstone.source.Message;

/**
 * One student's competencies in one class.
 *
 * @param instructors who teach the class
 */
public record CompetencyRecord(ClassHead in, String instructors, long person, String seat, String shown, List<Code> codes) {

    public CompetencyRecord {
        codes = List.copyOf(codes);
    }

    /**
     * A competency.
     *
     * @param frame    with its edition; empty for the class's own
     * @param state    {@code signed}, {@code withdrawn} or {@code open}
     * @param standing skills with evidence that stands
     * @param query    names it in the address of the page to sign on
     */
    public record Code(String frame, String code, String title, String state, int standing, List<Skill> skills, List<Entry> entries, String query,
            Map<String, String> names) {

        public Code {
            skills = List.copyOf(skills);
            entries = List.copyOf(entries);
            names = Map.copyOf(names);
        }
    }

    /** The evidence for one skill. */
    public record Skill(String title, boolean stands, List<Line> lines, List<Message> why) {

        public Skill {
            lines = List.copyOf(lines);
            why = List.copyOf(why);
        }
    }

    /**
     * One problem that was right on a day, without help.
     *
     * @param numbers the seed from which its numbers come again
     * @param points  such as {@code 2.5 of 2.5}
     */
    public record Line(String day, String exercise, String numbers, int tried, String points) {}

    /**
     * A signature or a withdrawal.
     *
     * @param act        {@code signed} or {@code withdrawn}
     * @param conditions or the reason
     * @param evidence   as it stood then, in lines
     */
    public record Entry(String act, String at, String by, String conditions, List<String> evidence) {

        public Entry {
            evidence = List.copyOf(evidence);
        }
    }
}
