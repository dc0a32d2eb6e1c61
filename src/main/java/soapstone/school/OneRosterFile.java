package soapstone.school;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * One file of a OneRoster set: its rows by the names of the columns. The file format is section 3 ("CSV Format") of
 * "1EdTech OneRoster: CSV Binding", version 1.2.1, 22 August 2023: RFC 4180 with commas, UTF-8 with or without a mark in
 * front, a heading that must be there and is spelled exactly. Columns are found by their names, so that a file with extra
 * ones, or with others of its own at the right, is read all the same.
 */
final class OneRosterFile {

    private static final int LONGEST_TEXT = 20_000_000;
    private static final String LEAVING = "tobedeleted";

    private final String name;
    private final List<String> headings;
    private final List<CsvText.Line> lines;

    private OneRosterFile(String name, List<String> headings, List<CsvText.Line> lines) {
        this.name = name;
        this.headings = headings;
        this.lines = lines;
    }

    /** A row that is there to stay. */
    record Row(OneRosterFile file, CsvText.Line line) {

        /** The text of a column; empty where the file has no such column. */
        String cell(String column) {
            return line.cell(file.headings.indexOf(column));
        }

        RosterFault.Spot at(String column) {
            return new RosterFault.Spot(file.name, line.number(), column);
        }
    }

    /** Reads a file out of a set; what is missing or broken goes to the faults, and then there are no rows. */
    static OneRosterFile read(Map<String, String> files, String name, List<String> needed, List<RosterFault> faults) {
        RosterFault.Spot whole = new RosterFault.Spot(name, 0, "");
        String text = CsvText.withoutMark(files.getOrDefault(name, ""));
        List<RosterFault> found = new ArrayList<>();
        if (text.isBlank()) {
            found.add(whole.fault("no-file", name));
        } else if (text.length() > LONGEST_TEXT) {
            found.add(whole.fault("too-long", Integer.toString(text.length()), Integer.toString(LONGEST_TEXT)));
        }
        CsvText read = found.isEmpty() ? CsvText.read(text, ',') : new CsvText(List.of(), 0);
        if (read.brokenAt() > 0) {
            found.add(new RosterFault.Spot(name, read.brokenAt(), "").fault("quotes", ""));
        }
        List<String> headings = read.lines().isEmpty() ? List.of() : read.lines().get(0).cells();
        if (found.isEmpty()) {
            columnFaults(name, read.lines().isEmpty() ? 1 : read.lines().get(0).number(), headings, needed, found);
        }
        faults.addAll(found);
        return new OneRosterFile(name, headings, found.isEmpty() ? read.lines().subList(1, read.lines().size()) : List.of());
    }

    private static void columnFaults(String name, int line, List<String> headings, List<String> needed, List<RosterFault> found) {
        Set<String> seen = new HashSet<>();
        for (String heading : headings) {
            if (!heading.isEmpty() && !seen.add(heading)) {
                found.add(new RosterFault.Spot(name, line, heading).fault("heading-twice", heading, heading));
            }
        }
        needed.stream().filter(c -> !seen.contains(c))
                .forEach(c -> found.add(new RosterFault.Spot(name, line, c).fault("no-column", c, String.join(", ", needed))));
    }

    /** The rows but those that the set takes back: their status is {@code tobedeleted}. */
    List<Row> rows() {
        return lines.stream().map(l -> new Row(this, l)).filter(r -> !r.cell("status").equals(LEAVING)).toList();
    }
}
