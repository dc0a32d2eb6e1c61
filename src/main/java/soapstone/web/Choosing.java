package soapstone.web;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import soapstone.page.AssignmentFormView;
import soapstone.page.UnitSummary;
import soapstone.page.UnitView;

/** The exercises of the bank in teaching order, as an instructor chooses among them. */
final class Choosing {

    /** Units with their exercises. */
    record Shelf(Map<String, AssignmentFormView.Exercise> exercises, List<UnitView> units) {

        boolean has(String id) {
            return exercises.containsKey(id);
        }

        /** The title of an exercise; its name when the bank has it no more. */
        String title(String id) {
            return has(id) ? exercises.get(id).title() : id;
        }

        List<AssignmentFormView.Unit> units(Collection<String> chosen) {
            List<AssignmentFormView.Unit> shown = new ArrayList<>();
            for (UnitView unit : units) {
                List<AssignmentFormView.Exercise> own = unit.exercises().stream().map(e -> exercises.get(e.unit() + "/" + e.id())).toList();
                shown.add(new AssignmentFormView.Unit(unit.name(), unit.title(), own, (int) own.stream().filter(e -> chosen.contains(e.id())).count()));
            }
            return shown;
        }
    }

    private Choosing() {}

    static Shelf of(Desk desk) {
        Map<String, AssignmentFormView.Exercise> exercises = new LinkedHashMap<>();
        List<UnitView> units = desk.units().stream().map(UnitSummary::name).map(desk::unit).flatMap(Optional::stream).toList();
        units.forEach(u -> u.exercises().forEach(e -> exercises.put(e.unit() + "/" + e.id(),
                new AssignmentFormView.Exercise(e.unit() + "/" + e.id(), e.title(), e.level(), e.skill()))));
        return new Shelf(exercises, units);
    }
}
