package soapstone.variant;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import soapstone.exercise.Line;
import soapstone.exercise.Model;
import soapstone.exercise.Slip;
import soapstone.expression.FormulaBody;
import soapstone.expression.Frame;
import soapstone.expression.Node;
import soapstone.expression.Program;
import soapstone.quantity.ShopPrinter;

/** Writes out the working of a run, line by line. */
public final class Worked {

    private final Model model;
    private final Map<String, FormulaBody> book;

    public Worked(Model model, Map<String, FormulaBody> book) {
        this.model = model;
        this.book = book;
    }

    /** The lines of the working, right. */
    public List<WorkedLine> lines(Frame right) {
        List<WorkedLine> lines = new ArrayList<>();
        for (Line line : model.lines()) {
            if (line.phase() == Line.Phase.WORKING) {
                lines.add(line(line, right));
            }
        }
        return lines;
    }

    private WorkedLine line(Line line, Frame right) {
        Program.Slot slot = model.program().slot(line.slot());
        return new WorkedLine(line.slot(), words(slot.name()), Shown.text(model, line.say(), right, right),
                writing(right, false, book).write(slot.value(), slot.shown()), Shown.value(model, right, line.slot()));
    }

    /** A line as a slip writes it, with the slip's own numbers; a line that the slip leaves alone with those numbers. */
    public WorkedLine line(int slot, Slip slip, Frame theirs) {
        Program.Slot s = model.program().slot(slot);
        Node value = s.value();
        boolean bare = false;
        for (Slip.Swapped swapped : slip == null ? List.<Slip.Swapped>of() : slip.lines()) {
            if (swapped.slot() == slot) {
                value = swapped.value();
                bare = swapped.bare();
            }
        }
        String sum = value == null ? "" : writing(theirs, bare, bookWith(slip)).write(value, s.shown());
        return new WorkedLine(slot, words(s.name()), "", sum, Shown.value(model, theirs, slot));
    }

    private Map<String, FormulaBody> bookWith(Slip slip) {
        if (slip == null || slip.swap() == null || !book.containsKey(slip.formula())) {
            return book;
        }
        FormulaBody right = book.get(slip.formula());
        Map<String, FormulaBody> changed = new HashMap<>(book);
        changed.put(slip.formula(), new FormulaBody(right.name(), right.takes(), right.gives(), slip.swap().lines()));
        return changed;
    }

    private Writing writing(Frame f, boolean bare, Map<String, FormulaBody> formulas) {
        Program program = model.program();
        return new Writing(name -> {
            int slot = program.find(name);
            if (slot < 0) {
                return words(name);
            }
            Program.Slot s = program.slot(slot);
            return bare && s.type().isAmount()
                    ? ShopPrinter.number(s.shown().fromBase(f.number(slot), program.system()), model.shows()[slot], '.')
                    : Shown.value(model, f, slot);
        }, name -> {
            int slot = program.find(name);
            return slot < 0 ? null : program.slot(slot).shown();
        }, formulas, program.system());
    }

    static String words(String name) {
        return name.replace('_', ' ');
    }
}
