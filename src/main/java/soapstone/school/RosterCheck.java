package soapstone.school;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Looks at the rows of a roster, each by itself and all together, and proposes the logins that are missing. */
final class RosterCheck {

    private static final Pattern LOGIN = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{M}\\p{N}._@+-]*");
    private static final Pattern PER_CENT = Pattern.compile("\\+?([0-9]{1,3})(?: ?%)?");

    /** How the columns are called where a fault is told. */
    record Labels(String seat, String name, String login, String time, String id) {

        static final Labels PLAIN = new Labels("@school.roster.column-seat", "@school.roster.column-name", "@school.roster.column-login",
                "@school.roster.column-time", "@school.roster.column-sourcedid");
    }

    /**
     * A row as it was read.
     *
     * @param named  whether the text has a place for a name here
     * @param faults found so far
     */
    record Draft(String file, int line, String seat, String name, boolean named, String login, String time, String sourcedId,
            List<RosterFault> faults) {

        /** The same of whom the school's own system has an id. */
        Draft with(String id) {
            return new Draft(file, line, seat, name, named, login, time, id, faults);
        }

        RosterFault.Spot at(String column) {
            return new RosterFault.Spot(file, line, column);
        }
    }

    private final RosterRules rules;
    private final Labels labels;
    private final LoginProposals logins;
    private final Map<String, Integer> seats = new HashMap<>();
    private final Map<String, Integer> lines = new HashMap<>();
    private final Map<String, Integer> names = new HashMap<>();
    private final Set<String> ids = new HashSet<>();

    private RosterCheck(RosterRules rules, Labels labels) {
        this.rules = rules;
        this.labels = labels;
        this.logins = new LoginProposals(rules);
    }

    static List<Roster.Row> rows(List<Draft> drafts, RosterRules rules, Labels labels) {
        return new RosterCheck(rules, labels).rows(drafts);
    }

    private List<Roster.Row> rows(List<Draft> drafts) {
        drafts.forEach(d -> names.merge(Logins.plain(d.name()), 1, Integer::sum));
        List<Roster.Row> read = drafts.stream().map(this::row).toList();
        // Only when all typed logins are known can others be proposed that are none of them.
        return IntStream.range(0, read.size()).mapToObj(i -> withLogin(read.get(i), drafts.get(i))).toList();
    }

    private Roster.Row row(Draft draft) {
        List<RosterFault> faults = new ArrayList<>(draft.faults());
        seat(draft, faults);
        name(draft, faults);
        String login = Logins.plain(draft.login());
        login(draft, login, faults);
        id(draft, faults);
        String name = draft.name().isEmpty() && !draft.seat().isEmpty() ? rules.seatWord() + " " + draft.seat() : draft.name();
        return new Roster.Row(draft.line(), draft.seat(), name, login, login.isEmpty(), time(draft, faults), draft.sourcedId(), faults);
    }

    private void seat(Draft draft, List<RosterFault> faults) {
        RosterFault.Spot spot = draft.at(labels.seat());
        signs(spot, draft.seat(), faults);
        if (draft.seat().length() > Roster.LONGEST_SEAT) {
            faults.add(spot.fault("seat-long", draft.seat(), Integer.toString(Roster.LONGEST_SEAT)));
        }
        Integer before = draft.seat().isEmpty() ? null : seats.putIfAbsent(seatKey(draft.seat()), draft.line());
        if (before != null) {
            faults.add(spot.fault("seat-twice", draft.seat(), before.toString()));
        }
    }

    /** Seat 7 is seat 07. */
    private static String seatKey(String seat) {
        return Logins.plain(seat).replaceAll("(?<![0-9])0+(?=[0-9])", "");
    }

    private void name(Draft draft, List<RosterFault> faults) {
        RosterFault.Spot spot = draft.at(labels.name());
        signs(spot, draft.name(), faults);
        if (draft.name().length() > Roster.LONGEST_NAME) {
            faults.add(spot.fault("name-long", draft.name(), Integer.toString(Roster.LONGEST_NAME), Integer.toString(draft.name().length())));
        }
        if (draft.name().isEmpty()) {
            noName(draft, spot, faults);
        } else if (names.get(Logins.plain(draft.name())) > 1) {
            sameName(draft, spot, faults);
        }
    }

    private void noName(Draft draft, RosterFault.Spot spot, List<RosterFault> faults) {
        if (!draft.seat().isEmpty() && draft.named()) {
            faults.add(spot.warning("name-from-seat", rules.seatWord() + " " + draft.seat()));
        } else if (draft.seat().isEmpty() && draft.faults().isEmpty()) {
            faults.add(spot.fault("name-empty", ""));
        }
    }

    /** Two people may share a nickname; then their seats tell them apart. */
    private void sameName(Draft draft, RosterFault.Spot spot, List<RosterFault> faults) {
        Integer before = lines.putIfAbsent(Logins.plain(draft.name()), draft.line());
        if (draft.seat().isEmpty()) {
            faults.add(spot.fault("name-twice-no-seat", draft.name()));
        } else if (before != null) {
            faults.add(spot.warning("name-twice", draft.name(), before.toString()));
        }
    }

    private void login(Draft draft, String login, List<RosterFault> faults) {
        RosterFault.Spot spot = draft.at(labels.login());
        if (login.isEmpty()) {
            return;
        }
        if (login.length() > Roster.LONGEST_LOGIN || !LOGIN.matcher(login).matches()) {
            faults.add(spot.fault("login-signs", draft.login(), Integer.toString(Roster.LONGEST_LOGIN)));
        } else if (!logins.give(login)) {
            faults.add(spot.fault("login-twice", draft.login()));
        } else if (logins.isTaken(login)) {
            faults.add(spot.fault("login-taken", draft.login()));
        }
    }

    private void id(Draft draft, List<RosterFault> faults) {
        String id = draft.sourcedId();
        if (!id.isEmpty() && !OneRosterReader.isSourcedId(id)) {
            faults.add(draft.at(labels.id()).fault("sourced-id", id));
        } else if (!id.isEmpty() && !ids.add(id)) {
            faults.add(draft.at(labels.id()).fault("sourced-id-twice", id));
        }
    }

    private int time(Draft draft, List<RosterFault> faults) {
        Matcher typed = PER_CENT.matcher(draft.time());
        int time = draft.time().isEmpty() ? 0 : typed.matches() ? Integer.parseInt(typed.group(1)) : -1;
        if (time >= 0 && time <= Roster.MOST_EXTRA_TIME) {
            return time;
        }
        faults.add(draft.at(labels.time()).fault("extra-time", draft.time(), Integer.toString(Roster.MOST_EXTRA_TIME)));
        return 0;
    }

    private static void signs(RosterFault.Spot spot, String text, List<RosterFault> faults) {
        if (RosterSigns.hasUnfit(text)) {
            faults.add(spot.fault("signs", text));
        }
    }

    private Roster.Row withLogin(Roster.Row row, Draft draft) {
        if (!row.proposed() || row.name().isEmpty()) {
            return row;
        }
        boolean bare = row.name().equals(rules.seatWord() + " " + row.seat());
        Optional<String> login = logins.propose(bare ? "" : row.name(), row.seat(), row.line());
        List<RosterFault> faults = new ArrayList<>(row.faults());
        if (login.isEmpty()) {
            faults.add(draft.at(labels.login()).fault("login-none", row.name()));
        }
        return new Roster.Row(row.line(), row.seat(), row.name(), login.orElse(""), true, row.extraTime(), row.sourcedId(), faults);
    }
}
