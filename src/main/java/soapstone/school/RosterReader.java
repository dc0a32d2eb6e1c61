package soapstone.school;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a list of students that was typed, pasted from a spreadsheet, or saved as plain CSV, and tells for each line what
 * was understood and what is wrong with it. Nothing that anybody can put in is an exception.
 *
 * <p>A line without headings above is {@code Ada Q.}, {@code 7}, {@code 7 Ada Q.}, {@code 7, Ada Q.} or
 * {@code Ada Q.<tab>7}; with more cells it is seat, name, login, extra time, in that order. With headings the columns may
 * stand in any order, and those that nobody asked for are left alone.
 */
public final class RosterReader {

    private static final int LONGEST_TEXT = 1_000_000;
    private static final RosterFault.Spot WHOLE = new RosterFault.Spot("", 0, "");
    /** 7, 12b, A3, B-14. */
    private static final Pattern SEAT = Pattern.compile("#?\\p{L}{0,2}-?[0-9]{1,4}\\p{L}?");
    private static final Pattern SEAT_AND_NAME = Pattern.compile("([0-9]{1,4})[.):]?\\s+(\\D.*)");

    private final RosterRules rules;

    public RosterReader(RosterRules rules) {
        this.rules = rules;
    }

    /** Reads a file, which has to be UTF-8. */
    public Roster read(byte[] file) {
        if (file.length > LONGEST_TEXT) {
            return only(WHOLE.fault("too-long", Integer.toString(file.length), Integer.toString(LONGEST_TEXT)));
        }
        Utf8 utf8 = Utf8.of(file);
        return utf8.isRight() ? read(utf8.text()) : only(new RosterFault.Spot("", utf8.line(), "").fault("not-utf8", utf8.found()));
    }

    /** Reads what was typed or pasted. */
    public Roster read(String typed) {
        if (typed.length() > LONGEST_TEXT) {
            return only(WHOLE.fault("too-long", Integer.toString(typed.length()), Integer.toString(LONGEST_TEXT)));
        }
        String text = CsvText.withoutMark(typed);
        CsvText read = CsvText.read(text, CsvText.separator(text));
        List<RosterFault> faults = new ArrayList<>();
        if (read.brokenAt() > 0) {
            faults.add(new RosterFault.Spot("", read.brokenAt(), "").fault("quotes", ""));
        }
        List<RosterCheck.Draft> drafts = drafts(read.lines(), faults);
        if (drafts.isEmpty() && faults.stream().noneMatch(RosterFault::isFault)) {
            faults.add(WHOLE.fault("empty", ""));
        }
        if (drafts.size() > Roster.MOST_ROWS) {
            faults.add(WHOLE.fault("too-many", Integer.toString(drafts.size()), Integer.toString(Roster.MOST_ROWS)));
        }
        List<RosterCheck.Draft> most = drafts.subList(0, Math.min(drafts.size(), Roster.MOST_ROWS));
        return new Roster(RosterCheck.rows(most, rules, RosterCheck.Labels.PLAIN), faults);
    }

    private static List<RosterCheck.Draft> drafts(List<CsvText.Line> lines, List<RosterFault> faults) {
        Optional<List<Optional<RosterColumn>>> headings = lines.isEmpty() ? Optional.empty() : headings(lines.get(0));
        if (headings.isEmpty()) {
            return lines.stream().map(RosterReader::bare).toList();
        }
        headingFaults(lines.get(0), headings.get(), faults);
        return lines.stream().skip(1).map(l -> underHeadings(l, headings.get())).toList();
    }

    private static Roster only(RosterFault fault) {
        return new Roster(List.of(), List.of(fault));
    }

    /** A first line is headings if two are known, or one of seats or names where nothing beside it looks like a seat. */
    private static Optional<List<Optional<RosterColumn>>> headings(CsvText.Line first) {
        List<Optional<RosterColumn>> headings = first.cells().stream().map(RosterColumn::of).toList();
        boolean listed = headings.contains(Optional.of(RosterColumn.SEAT)) || headings.contains(Optional.of(RosterColumn.NAME));
        boolean seats = first.cells().stream().anyMatch(RosterReader::isSeat);
        return listed && (known(headings) > 1 || !seats) ? Optional.of(headings) : Optional.empty();
    }

    private static long known(List<Optional<RosterColumn>> headings) {
        return headings.stream().filter(Optional::isPresent).count();
    }

    private static void headingFaults(CsvText.Line line, List<Optional<RosterColumn>> headings, List<RosterFault> faults) {
        RosterFault.Spot spot = new RosterFault.Spot("", line.number(), "");
        // Somebody may be called so: nobody is dropped from a list without a word.
        if (known(headings) == 1) {
            faults.add(spot.warning("heading-taken", String.join(", ", line.cells())));
        }
        for (int i = 0; i < headings.size(); i++) {
            if (headings.get(i).isPresent() && headings.indexOf(headings.get(i)) < i) {
                faults.add(spot.fault("heading-twice", line.cell(i), headings.get(i).get().label()));
            } else if (headings.get(i).isEmpty() && !line.cell(i).isEmpty()) {
                faults.add(spot.warning("heading-left", line.cell(i)));
            }
        }
    }

    private static RosterCheck.Draft underHeadings(CsvText.Line line, List<Optional<RosterColumn>> headings) {
        boolean named = headings.contains(Optional.of(RosterColumn.NAME));
        String id = cell(line, headings, RosterColumn.SOURCEDID);
        List<RosterFault> faults = new ArrayList<>(tooMany(line, headings.size()));
        if (!id.isEmpty() && !OneRosterReader.isSourcedId(id)) {
            faults.add(new RosterFault.Spot("", line.number(), RosterColumn.SOURCEDID.label()).fault("sourced-id", id));
        }
        return new RosterCheck.Draft("", line.number(), cell(line, headings, RosterColumn.SEAT), cell(line, headings, RosterColumn.NAME), named,
                cell(line, headings, RosterColumn.LOGIN), cell(line, headings, RosterColumn.TIME), id, faults);
    }

    private static String cell(CsvText.Line line, List<Optional<RosterColumn>> headings, RosterColumn column) {
        return line.cell(headings.indexOf(Optional.of(column)));
    }

    private static RosterCheck.Draft bare(CsvText.Line line) {
        List<String> filled = line.cells().stream().filter(c -> !c.isEmpty()).toList();
        return filled.size() == 1 ? oneCell(line, filled.get(0)) : severalCells(line, line.cells());
    }

    private static RosterCheck.Draft oneCell(CsvText.Line line, String cell) {
        Matcher both = SEAT_AND_NAME.matcher(cell);
        if (both.matches()) {
            return draft(line, both.group(1), both.group(2), true, "", "", List.of());
        }
        boolean seat = isSeat(cell);
        return draft(line, seat ? cell : "", seat ? "" : cell, false, "", "", List.of());
    }

    /** Seat, name, login, extra time; the first two may have changed places. */
    private static RosterCheck.Draft severalCells(CsvText.Line line, List<String> cells) {
        List<RosterFault> faults = tooMany(line, RosterColumn.BARE);
        boolean turned = !isSeat(cells.get(0)) && isSeat(cells.get(1));
        if (!turned && !isSeat(cells.get(0)) && !cells.get(0).isEmpty()) {
            faults = new ArrayList<>(faults);
            faults.add(new RosterFault.Spot("", line.number(), RosterColumn.SEAT.label()).fault("no-seat", String.join(", ", cells)));
        }
        String seat = cells.get(turned ? 1 : 0);
        String name = cells.get(turned ? 0 : 1);
        return draft(line, seat, name, true, cells.size() > 2 ? cells.get(2) : "", cells.size() > 3 ? cells.get(3) : "", faults);
    }

    private static boolean isSeat(String cell) {
        return SEAT.matcher(cell).matches();
    }

    private static List<RosterFault> tooMany(CsvText.Line line, int most) {
        boolean more = line.cells().stream().skip(most).anyMatch(c -> !c.isEmpty());
        return !more ? List.of() : List.of(new RosterFault.Spot("", line.number(), "")
                .fault("columns", line.cell(most), Integer.toString(line.cells().size()), Integer.toString(most)));
    }

    private static RosterCheck.Draft draft(CsvText.Line line, String seat, String name, boolean named, String login, String time,
            List<RosterFault> faults) {
        return new RosterCheck.Draft("", line.number(), seat, name, named, login, time, "", faults);
    }
}
