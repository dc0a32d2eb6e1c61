package soapstone.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soapstone.exercise.Line;
import soapstone.exercise.Model;
import soapstone.exercise.Slip;
import soapstone.expression.Frame;
import soapstone.expression.Node;
import soapstone.expression.Program;
import soapstone.page.WorkedLine;
import soapstone.variant.Shown;
import soapstone.variant.Worked;
import soapstone.variant.Writing;

/** The working as a page shows it: right lines, and beside them the student's own. */
final class Lines {

    private final Model model;
    private final Worked worked;

    Lines(Library library, Model model) {
        this.model = model;
        this.worked = new Worked(model, library.bodies());
    }

    /** All lines, right, without anyone's own beside them. */
    List<WorkedLine> right(Frame right) {
        return lines(right, line -> Optional.empty());
    }

    /**
     * All lines with the student's beside them.
     *
     * @param theirs the run with the slip or the typed answers put in
     * @param slips  the slips that are put in
     * @param typed  slots that hold a typed answer
     */
    List<WorkedLine> beside(Frame right, Frame theirs, List<Slip> slips, long typed) {
        return lines(right, slot -> Optional.of(yours(slot, right, theirs, slips, typed)));
    }

    private interface Beside {
        Optional<WorkedLine.Yours> of(int slot);
    }

    private List<WorkedLine> lines(Frame right, Beside beside) {
        List<WorkedLine> lines = new ArrayList<>();
        for (Line line : model.lines()) {
            if (line.phase() == Line.Phase.WORKING) {
                Program.Slot slot = model.program().slot(line.slot());
                soapstone.variant.WorkedLine w = worked.line(line.slot(), null, right);
                lines.add(new WorkedLine(Shown.text(model, line.say(), right, right), side(w, slot.value()), beside.of(line.slot())));
            }
        }
        return lines;
    }

    private WorkedLine.Side side(soapstone.variant.WorkedLine w, Node value) {
        String formula = value == null ? "" : Writing.symbolic(value, model.system());
        boolean plain = formula.equals(w.sum()) || w.sum().equals(w.result());
        return new WorkedLine.Side(w.name(), formula.equals(w.result()) ? "" : formula, plain ? "" : w.sum(), w.result());
    }

    private WorkedLine.Yours yours(int slot, Frame right, Frame theirs, List<Slip> slips, long typed) {
        Slip swapping = slips.stream().filter(s -> (s.change().mask() & 1L << slot) != 0).findFirst().orElse(null);
        String mine = Shown.value(model, theirs, slot);
        boolean same = mine.equals(Shown.value(model, right, slot));
        if (swapping != null && !same) {
            soapstone.variant.WorkedLine w = worked.line(slot, swapping, theirs);
            return new WorkedLine.Yours(WorkedLine.Kind.SLIP, new WorkedLine.Side(w.name(), "", w.sum().equals(w.result()) ? "" : w.sum(), w.result()));
        }
        if (same) {
            return new WorkedLine.Yours(WorkedLine.Kind.SAME, new WorkedLine.Side("", "", "", mine));
        }
        soapstone.variant.WorkedLine w = worked.line(slot, null, theirs);
        boolean own = (typed & 1L << slot) != 0;
        return new WorkedLine.Yours(WorkedLine.Kind.CARRIED, new WorkedLine.Side(w.name(), "", own ? "" : w.sum(), w.result()));
    }
}
