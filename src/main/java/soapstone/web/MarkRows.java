package soapstone.web;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import soapstone.page.MarkSign;
import soapstone.page.MarksView;
import soapstone.school.Assignment;
import soapstone.school.Counted;
import soapstone.school.Member;
import soapstone.school.Printed;
import soapstone.school.Scores;
import soapstone.school.Standing;

/** The grid of one assignment: which columns there are, and what stands in each student's row. */
final class MarkRows {

    /** A column: the place on the sheet, and the letter of the box; no letter where nobody has handed in. */
    private record Spot(int place, String letter) {}

    private final List<Standing> standings;
    private final List<Spot> spots = new ArrayList<>();
    private final List<MarksView.Column> columns = new ArrayList<>();

    MarkRows(Assignment assignment, List<Standing> standings, MarksDesk desk) {
        this.standings = standings;
        Map<Integer, Set<String>> letters = new TreeMap<>();
        Map<Integer, Set<String>> titles = new TreeMap<>();
        for (int place = 1; place <= assignment.tasks().stream().mapToInt(Assignment.Task::many).sum(); place++) {
            letters.put(place, new TreeSet<>());
        }
        for (Standing standing : standings) {
            for (Standing.Place place : standing.places()) {
                Set<String> there = letters.computeIfAbsent(place.place(), p -> new TreeSet<>());
                place.marks().forEach(c -> there.add(c.mark().letter()));
                titles.computeIfAbsent(place.place(), p -> new LinkedHashSet<>()).add(desk.exercise(place.work().problem().exercise()).title());
            }
        }
        letters.forEach((place, all) -> columns(place, all, String.join(" / ", titles.getOrDefault(place, Set.of()))));
    }

    private void columns(int place, Set<String> letters, String title) {
        for (String letter : letters.isEmpty() ? Set.of("") : letters) {
            spots.add(new Spot(place, letter));
            columns.add(new MarksView.Column(place + (letters.size() > 1 ? letter : ""), title));
        }
    }

    List<MarksView.Column> columns() {
        return columns;
    }

    List<MarksView.Row> rows() {
        return standings.stream().map(this::row).toList();
    }

    private MarksView.Row row(Standing s) {
        return new MarksView.Row(s.member().person().id(), s.member().seat(), s.member().person().shown(), state(s), points(s.score()), s.late(),
                s.member().state() == Member.State.LEFT, spots.stream().map(spot -> cell(s, spot)).toList());
    }

    private static MarkSign.Cell cell(Standing standing, Spot spot) {
        Optional<Standing.Place> place = standing.places().stream().filter(p -> p.place() == spot.place()).findFirst();
        if (place.isEmpty() || place.get().best().isEmpty()) {
            return MarkSign.Cell.NONE;
        }
        return place.get().marks().stream().filter(c -> c.mark().letter().equals(spot.letter())).findFirst().map(MarkRows::cell)
                .orElse(MarkSign.Cell.of(Optional.of(MarkSign.NOT_ASKED), false));
    }

    /** A mark as it counts. */
    static MarkSign.Cell cell(Counted counted) {
        MarkSign sign = counted.excused() ? MarkSign.EXCUSED : MarkSign.of(counted.mark().verdict());
        return MarkSign.Cell.of(Optional.of(sign), counted.remark().isPresent());
    }

    static String state(Standing s) {
        return s.state().name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** {@code 4.5/6}. */
    static String points(Scores.Score score) {
        return Printed.points(score.points()) + "/" + Printed.points(score.possible());
    }
}
