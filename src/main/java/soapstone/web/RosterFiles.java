package soapstone.web;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import soapstone.school.Logins;
import soapstone.school.Member;
import soapstone.school.OneRosterReader;
import soapstone.school.Roster;
import soapstone.school.RosterReader;
import soapstone.school.RosterRules;
import soapstone.source.Message;

/** The files that may come with a roster's form: one plain list, or three of a OneRoster set. */
final class RosterFiles {

    static final String LIST = "list";
    static final String SET = "users";
    private static final Map<String, String> ONE_ROSTER = Map.of("users", OneRosterReader.USERS, "enrollments", OneRosterReader.ENROLLMENTS, "classes",
            OneRosterReader.CLASSES);
    private static final int MOST_NAMED = 12;

    private RosterFiles() {}

    /** What the files say; empty when there are none, or when the form says beside one of them why not. */
    static Optional<Roster> read(FilledForm form, Fields fields, RosterRules rules) {
        Optional<byte[]> list = fields.file(LIST);
        if (list.isPresent()) {
            return Optional.of(new RosterReader(rules).read(list.get()));
        }
        Map<String, String> set = new LinkedHashMap<>();
        for (Map.Entry<String, String> file : ONE_ROSTER.entrySet()) {
            fields.file(file.getKey()).flatMap(Fields::text).ifPresent(text -> set.put(file.getValue(), text));
            if (fields.file(file.getKey()).isPresent() && !set.containsKey(file.getValue())) {
                form.fault(file.getKey(), Message.of("class-roster.not-utf8"));
            }
        }
        return set.isEmpty() || !form.isGood() ? Optional.empty() : ofSet(form, fields, set, rules);
    }

    private static Optional<Roster> ofSet(FilledForm form, Fields fields, Map<String, String> set, RosterRules rules) {
        OneRosterReader.NameForm names = form.choice("names", OneRosterReader.NameForm.class);
        OneRosterReader.Choices choices = OneRosterReader.classes(set);
        String wanted = fields.text("one-class").strip();
        List<OneRosterReader.Choice> fit = choices.classes().stream()
                .filter(c -> wanted.isEmpty() || c.sourcedId().equals(wanted) || c.code().equals(wanted) || c.title().equals(wanted)).toList();
        if (choices.classes().isEmpty() && !choices.faults().isEmpty()) {
            return Optional.of(new Roster(List.of(), choices.faults()));
        }
        if (fit.size() != 1) {
            String named = choices.classes().stream().limit(MOST_NAMED).map(c -> c.title() + " (" + c.sourcedId() + ")").collect(Collectors.joining("; "));
            form.fault("one-class", named.isEmpty() ? Message.of("class-roster.no-class") : Message.of("class-roster.which-class", named));
        }
        return form.isGood() ? Optional.of(OneRosterReader.read(set, fit.get(0).sourcedId(), names, rules)) : Optional.empty();
    }

    /** The list as its file has it, line by line, when that is text and not too long to be mended by hand. */
    static Optional<String> asSent(Fields fields, int most) {
        return fields.file(LIST).flatMap(Fields::text).map(text -> text.startsWith("\uFEFF") ? text.substring(1) : text)
                .filter(text -> text.length() <= most && text.chars().noneMatch(c -> Character.isISOControl(c) && "\t\r\n".indexOf(c) < 0));
    }

    /**
     * A roster as a plain list, to be looked at and changed by hand. Files of a set know no seats: whoever would get
     * the number of somebody who sits in the class gets the next free one.
     */
    static String asText(Roster roster, List<Member> sitting) {
        boolean ids = roster.rows().stream().anyMatch(r -> !r.sourcedId().isEmpty());
        Set<String> taken = new HashSet<>(sitting.stream().map(Member::seat).toList());
        roster.rows().forEach(r -> taken.add(r.seat()));
        StringBuilder text = new StringBuilder("seat,name,login,extra time").append(ids ? ",sourcedId\n" : "\n");
        roster.rows().forEach(r -> text.append(cell(seat(r, sitting, taken))).append(',').append(cell(r.name())).append(',').append(cell(r.proposed() ? "" : r.login()))
                .append(',').append(r.extraTime() == 0 ? "" : String.valueOf(r.extraTime())).append(ids ? "," + cell(r.sourcedId()) : "").append('\n'));
        return text.toString();
    }

    private static String seat(Roster.Row row, List<Member> sitting, Set<String> taken) {
        boolean another = sitting.stream().anyMatch(m -> m.seat().equals(row.seat()) && !Logins.plain(m.person().shown()).equals(Logins.plain(row.name())));
        if (row.sourcedId().isEmpty() || !another) {
            return row.seat();
        }
        String free = IntStream.iterate(1, i -> i + 1).mapToObj(String::valueOf).filter(s -> !taken.contains(s)).findFirst().orElseThrow();
        taken.add(free);
        return free;
    }

    private static String cell(String text) {
        boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == ';' || c == '\t');
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
