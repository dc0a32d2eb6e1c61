package soapstone.school;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reads the students of one class out of the files of a OneRoster 1.2 set, each given as a text under its name.
 *
 * <p>Source: "1EdTech OneRoster: CSV Binding", version 1.2.1, 22 August 2023, section 3, tables of {@code users.csv},
 * {@code enrollments.csv}, {@code classes.csv} and {@code manifest.csv}. As little as possible is taken: a name as short
 * as the instructor wants it, the user name as login, and the {@code sourcedId} under which marks go back. The columns
 * of birth dates, sex, e-mail, phone, parents and passwords are not looked at, nor is any other file of the set.
 *
 * <p>The standard has no seats, and two students may come to the same short name, so each gets the number of the row
 * among the class's as seat.
 */
public final class OneRosterReader {

    public static final String USERS = "users.csv";
    public static final String ENROLLMENTS = "enrollments.csv";
    public static final String CLASSES = "classes.csv";
    public static final String MANIFEST = "manifest.csv";

    private static final String STUDENT = "student";
    private static final String VERSION = "1.2";
    /** Data type GUID of the binding: these signs, 255 at most. */
    private static final Pattern SOURCED_ID = Pattern.compile("[0-9A-Za-z._/@-]{1,255}");
    private static final RosterCheck.Labels LABELS = new RosterCheck.Labels("", "givenName", "username", "", "sourcedId");

    /** How much of a name is shown. A preferred name goes before the given one. */
    public enum NameForm {
        /** Ada Q. */
        GIVEN_AND_INITIAL,
        /** Ada */
        GIVEN,
        /** Ada Quill */
        WHOLE
    }

    /**
     * A class of the set, to choose from.
     *
     * @param code     that the school gave it; may be empty
     * @param students enrolled in it
     */
    public record Choice(String sourcedId, String title, String code, int students) {}

    /** The classes by title, and what is wrong with the files. */
    public record Choices(List<Choice> classes, List<RosterFault> faults) {

        public Choices {
            classes = List.copyOf(classes);
            faults = List.copyOf(faults);
        }
    }

    private final Map<String, String> files;
    private final List<RosterFault> faults = new ArrayList<>();

    private OneRosterReader(Map<String, String> files) {
        this.files = files;
    }

    /** Whether a text may name something in a OneRoster set. */
    public static boolean isSourcedId(String text) {
        return SOURCED_ID.matcher(text).matches();
    }

    public static Choices classes(Map<String, String> files) {
        OneRosterReader reader = new OneRosterReader(files);
        reader.version();
        List<Choice> classes = reader.choices();
        return new Choices(classes, reader.faults);
    }

    /** The students of a class, as they would be taken. */
    public static Roster read(Map<String, String> files, String classSourcedId, NameForm form, RosterRules rules) {
        return new OneRosterReader(files).roster(classSourcedId, form, rules);
    }

    private OneRosterFile file(String name, String... needed) {
        return OneRosterFile.read(files, name, Arrays.asList(needed), faults);
    }

    private OneRosterFile enrollments() {
        return file(ENROLLMENTS, "sourcedId", "classSourcedId", "userSourcedId", "role");
    }

    /** The manifest is a list of names and values; without one the files are taken as they are. */
    private void version() {
        if (!files.containsKey(MANIFEST)) {
            return;
        }
        for (OneRosterFile.Row row : file(MANIFEST, "propertyName", "value").rows()) {
            if (row.cell("propertyName").equals("oneroster.version") && !row.cell("value").equals(VERSION)) {
                faults.add(row.at("value").warning("version", row.cell("value"), VERSION));
            }
        }
    }

    private List<Choice> choices() {
        Map<String, Set<String>> students = new HashMap<>();
        enrollments().rows().stream().filter(r -> r.cell("role").equals(STUDENT))
                .forEach(r -> students.computeIfAbsent(r.cell("classSourcedId"), c -> new HashSet<>()).add(r.cell("userSourcedId")));
        Map<String, Choice> classes = new LinkedHashMap<>();
        for (OneRosterFile.Row row : file(CLASSES, "sourcedId", "title").rows()) {
            String id = row.cell("sourcedId");
            if (isKey(row, classes.keySet())) {
                classes.put(id, new Choice(id, row.cell("title"), row.cell("classCode"), students.getOrDefault(id, Set.of()).size()));
            }
        }
        return classes.values().stream().sorted(Comparator.comparing(Choice::title).thenComparing(Choice::sourcedId)).toList();
    }

    private Roster roster(String classSourcedId, NameForm form, RosterRules rules) {
        version();
        List<OneRosterFile.Row> seats = enrolled(classSourcedId);
        Map<String, OneRosterFile.Row> users = users(seats.stream().map(r -> r.cell("userSourcedId")).collect(Collectors.toSet()));
        if (seats.isEmpty() && faults.stream().noneMatch(RosterFault::isFault)) {
            faults.add(new RosterFault.Spot(ENROLLMENTS, 0, "").fault("nobody", classSourcedId));
        }
        if (seats.size() > Roster.MOST_ROWS) {
            faults.add(new RosterFault.Spot(ENROLLMENTS, 0, "").fault("too-many", Integer.toString(seats.size()), Integer.toString(Roster.MOST_ROWS)));
        }
        List<RosterCheck.Draft> drafts = new ArrayList<>();
        for (OneRosterFile.Row seat : seats.stream().limit(Roster.MOST_ROWS).toList()) {
            OneRosterFile.Row user = users.get(seat.cell("userSourcedId"));
            if (user != null) {
                drafts.add(draft(user, drafts.size() + 1, form));
            } else {
                faults.add(seat.at("userSourcedId").fault("no-user", seat.cell("userSourcedId")));
            }
        }
        return new Roster(RosterCheck.rows(drafts, rules, LABELS), faults);
    }

    /** The rows of the class's students, each student once. */
    private List<OneRosterFile.Row> enrolled(String classSourcedId) {
        List<OneRosterFile.Row> rows = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (OneRosterFile.Row row : enrollments().rows()) {
            boolean here = row.cell("classSourcedId").equals(classSourcedId) && row.cell("role").equals(STUDENT);
            if (here && seen.add(row.cell("userSourcedId"))) {
                rows.add(row);
            } else if (here) {
                faults.add(row.at("userSourcedId").warning("enrolled-twice", row.cell("userSourcedId")));
            }
        }
        return rows;
    }

    /** The rows of those users, and of nobody else: what is wrong with other people's rows is not this class's business. */
    private Map<String, OneRosterFile.Row> users(Set<String> wanted) {
        Map<String, OneRosterFile.Row> users = new HashMap<>();
        for (OneRosterFile.Row row : file(USERS, "sourcedId", "username", "givenName", "familyName").rows()) {
            if (wanted.contains(row.cell("sourcedId")) && isKey(row, users.keySet())) {
                users.put(row.cell("sourcedId"), row);
            }
        }
        return users;
    }

    /** Whether a row can be found again by its {@code sourcedId}. */
    private boolean isKey(OneRosterFile.Row row, Set<String> before) {
        String id = row.cell("sourcedId");
        boolean shaped = isSourcedId(id);
        if (!shaped || before.contains(id)) {
            faults.add(row.at("sourcedId").fault(shaped ? "sourced-id-twice" : "sourced-id", id));
        }
        return shaped && !before.contains(id);
    }

    private static RosterCheck.Draft draft(OneRosterFile.Row user, int seat, NameForm form) {
        List<RosterFault> own = new ArrayList<>();
        String username = user.cell("username");
        // Many schools take the e-mail address as user name. It is more than a login needs, so it stays where it is.
        boolean address = username.contains("@");
        if (address) {
            own.add(user.at("username").warning("address", ""));
        }
        if (user.cell("enabledUser").equals("false")) {
            own.add(user.at("enabledUser").warning("not-enabled", "false"));
        }
        return new RosterCheck.Draft(USERS, user.line().number(), Integer.toString(seat), name(user, form), true, address ? "" : username, "",
                user.cell("sourcedId"), own);
    }

    private static String name(OneRosterFile.Row user, NameForm form) {
        String given = first(user.cell("preferredGivenName"), user.cell("givenName"));
        String family = first(user.cell("preferredFamilyName"), user.cell("familyName"));
        if (form == NameForm.GIVEN && !given.isEmpty() || family.isEmpty()) {
            return given;
        }
        String shown = form == NameForm.WHOLE ? family : family.substring(0, family.offsetByCodePoints(0, 1)) + ".";
        return given.isEmpty() ? shown : given + " " + shown;
    }

    private static String first(String one, String other) {
        return one.isEmpty() ? other : one;
    }
}
