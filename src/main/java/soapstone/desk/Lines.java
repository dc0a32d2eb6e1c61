package soapstone.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import soapstone.exercise.Ask;
import soapstone.exercise.Line;
import soapstone.exercise.Model;
import soapstone.exercise.Slip;
import soapstone.expression.Frame;
import soapstone.expression.Node;
import soapstone.expression.Program;
import soapstone.page.Figure;
import soapstone.page.WorkedLine;
import soapstone.variant.Shown;
import soapstone.variant.Worked;
import soapstone.variant.Writing;

/** The working as a page shows it: right lines, and beside them the student's own. */
final class Lines {

    /** What makes a text more than a value: something to be done in it. */
    private static final Pattern SUM = Pattern.compile("[+×÷√∛(^²³⁴]| − |, |^(if|the) ");

    private final Model model;
    private final Worked worked;
    private final Spoken spoken;
    private List<String> flagged = List.of();

    Lines(Library library, Model model) {
        this.model = model;
        this.worked = new Worked(model, library.bodies());
        this.spoken = new Spoken(model);
    }

    /** Lets the lines point at the flags of a drawing that stands on the same page. */
    Lines pointingAt(Optional<Figure> figure) {
        flagged = figure.map(Figure::flags).orElse(List.of());
        return this;
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
                lines.add(new WorkedLine(Shown.text(model, line.say(), right, right), side(line.slot(), slot.value(), right), beside.of(line.slot()),
                        spoken.flags(line.slot(), flagged)));
            }
        }
        return lines;
    }

    private WorkedLine.Side side(int slot, Node value, Frame run) {
        Optional<WorkedLine.Side> choice = choice(slot, run);
        if (choice.isPresent()) {
            return choice.get();
        }
        soapstone.variant.WorkedLine w = worked.line(slot, null, run);
        String formula = value == null ? "" : Writing.symbolic(value, model.system());
        return side(w, formula);
    }

    /** Letters, numbers, value; what would only say the same again is left out. */
    private static WorkedLine.Side side(soapstone.variant.WorkedLine w, String formula) {
        boolean said = w.sum().equals(formula) || !SUM.matcher(w.sum()).find();
        return new WorkedLine.Side(w.name(), formula.equals(w.result()) ? "" : formula, said ? "" : w.sum(), w.result());
    }

    /** How one of several is picked by a program is nothing for the board: the line says which one it is. */
    private Optional<WorkedLine.Side> choice(int slot, Frame run) {
        return model.asks().stream().filter(a -> a.kind() == Ask.Kind.CHOICE && a.slot() == slot).findFirst()
                .map(a -> new WorkedLine.Side("", "", "", Boxes.answer(model, run, a)));
    }

    private WorkedLine.Yours yours(int slot, Frame right, Frame theirs, List<Slip> slips, long typed) {
        String mine = Shown.value(model, theirs, slot);
        if (mine.equals(Shown.value(model, right, slot))) {
            String value = choice(slot, right).map(WorkedLine.Side::value).orElse(mine);
            return new WorkedLine.Yours(WorkedLine.Kind.SAME, new WorkedLine.Side("", "", "", value));
        }
        Slip swapping = slips.stream().filter(s -> (s.change().mask() & 1L << slot) != 0).findFirst().orElse(null);
        if (swapping != null) {
            return new WorkedLine.Yours(WorkedLine.Kind.SLIP, swapped(slot, swapping, theirs));
        }
        soapstone.variant.WorkedLine w = worked.line(slot, null, theirs);
        boolean own = (typed & 1L << slot) != 0;
        return new WorkedLine.Yours(WorkedLine.Kind.CARRIED, choice(slot, theirs)
                .orElse(own ? new WorkedLine.Side(w.name(), "", "", w.result()) : side(w, "")));
    }

    /** The line as the slip has it. Where only a formula behind it is another, its letters are those of the right line beside it. */
    private WorkedLine.Side swapped(int slot, Slip slip, Frame theirs) {
        soapstone.variant.WorkedLine w = worked.line(slot, slip, theirs);
        String formula = slip.lines().stream().filter(s -> s.slot() == slot && slip.swap() == null).findFirst()
                .map(s -> Writing.symbolic(s.value(), model.system())).orElse("");
        return side(w, formula);
    }
}
