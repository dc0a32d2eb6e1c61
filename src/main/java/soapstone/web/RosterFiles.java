package soapstone.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
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

    /** A roster as a plain list, to be looked at and changed by hand. */
    static String asText(Roster roster) {
        boolean ids = roster.rows().stream().anyMatch(r -> !r.sourcedId().isEmpty());
        StringBuilder text = new StringBuilder("seat,name,login,extra time").append(ids ? ",sourcedId" : "").append('\n');
        roster.rows().forEach(r -> text.append(cell(r.seat())).append(',').append(cell(r.name())).append(',').append(cell(r.proposed() ? "" : r.login()))
                .append(',').append(r.extraTime() == 0 ? "" : String.valueOf(r.extraTime())).append(ids ? "," + r.sourcedId() : "").append('\n'));
        return text.toString();
    }

    private static String cell(String text) {
        boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == ';' || c == '\t');
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
