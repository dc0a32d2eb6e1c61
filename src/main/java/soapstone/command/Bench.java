package soapstone.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soapstone.exercise.Given;
import soapstone.expression.Frame;
import soapstone.expression.Program;
import soapstone.quantity.ReadAs;
import soapstone.quantity.Reading;
import soapstone.quantity.ShopReader;
import soapstone.source.Near;

/** Puts typed numbers into a program and works out whatever they reach. */
final class Bench {

    private final Program program;
    private final Frame frame;
    private long known;

    Bench(Program program) {
        this.program = program;
        this.frame = program.frame();
    }

    Program program() {
        return program;
    }

    Frame frame() {
        return frame;
    }

    boolean isKnown(int slot) {
        return (known & 1L << slot) != 0;
    }

    /** @param names what may be given */
    void put(List<Pair> typed, List<String> names) {
        for (Pair pair : typed) {
            if (!names.contains(pair.name())) {
                throw Refusal.usage("'" + pair.name() + "' is not given here. " + Near.suggest(pair.name(), names));
            }
            int slot = program.find(pair.name());
            if (isKnown(slot)) {
                throw Refusal.usage("'" + pair.name() + "' is given twice; give it once.");
            }
            set(slot, pair);
            known |= 1L << slot;
        }
    }

    private void set(int slot, Pair pair) {
        Program.Slot s = program.slot(slot);
        if (s.type().isLabel()) {
            frame.set(slot, label(s, pair));
            return;
        }
        ReadAs as = new ReadAs(s.type().isList() ? ReadAs.Kind.LIST : ReadAs.Kind.QUANTITY, s.shown(), program.system(), '.');
        Reading reading = ShopReader.read(pair.text(), as);
        if (reading instanceof Reading.One one) {
            frame.set(slot, one.base());
        } else if (reading instanceof Reading.Many many) {
            frame.set(slot, many.items().stream().mapToDouble(Reading.One::base).toArray());
        } else {
            String why = reading instanceof Reading.Again again ? Say.message(again.why()) : "There is no number.";
            throw Refusal.usage("'" + pair.name() + "' cannot be read: " + why);
        }
    }

    private int label(Program.Slot slot, Pair pair) {
        int label = program.labels().find(pair.text());
        boolean fits = label >= 0 && (slot.type().labels() == null || slot.type().labels().contains(pair.text()));
        if (!fits) {
            List<String> names = slot.type().labels() == null ? program.labels().all() : slot.type().labels().stream().sorted().toList();
            throw Refusal.usage("'" + pair.name() + "' cannot be '" + pair.text() + "'. " + Near.suggest(pair.text(), names));
        }
        return label;
    }

    /** Takes what nobody has to give. */
    void settle(List<Given> givens) {
        for (Given given : givens) {
            if (!isKnown(given.slot()) && !Double.isNaN(given.settled())) {
                frame.set(given.slot(), given.settled());
                known |= 1L << given.slot();
            }
        }
    }

    void run() {
        known = program.runKnown(frame, known);
    }

    /**
     * Refuses when something has no value with these numbers: a size that a table does not have, a root of a negative
     * number. Every name counts, for a condition over what is not defined would quietly take the other way.
     */
    void checkDefined() {
        for (int slot = 0; slot < program.slots().size(); slot++) {
            if (isKnown(slot)) {
                checkDefined(slot);
            }
        }
    }

    private void checkDefined(int slot) {
        boolean defined = program.slot(slot).type().isList() ? frame.list(slot) != null : Double.isFinite(frame.number(slot));
        if (!defined) {
            throw Refusal.failed("With these numbers '" + program.slot(slot).name().replace('_', ' ') + "' has no value"
                    + Optional.ofNullable(frame.problem()).map(p -> ": " + p).orElse("") + ".");
        }
    }

    /** The names among {@code wanted} that would have to be given before a line can be worked out. */
    List<String> missing(int slot, List<String> names, List<String> hidden) {
        List<String> missing = new ArrayList<>();
        missing(slot, names, hidden, missing);
        return missing;
    }

    private void missing(int slot, List<String> names, List<String> hidden, List<String> missing) {
        String name = program.slot(slot).name();
        boolean given = names.contains(name) && (program.isGiven(slot) || !hidden.contains(name) && readsHidden(slot, hidden));
        if (isKnown(slot) || missing.contains(name)) {
            return;
        }
        if (given) {
            missing.add(name);
            return;
        }
        for (int i = 0; i < slot; i++) {
            if ((program.reads(slot) & 1L << i) != 0) {
                missing(i, names, hidden, missing);
            }
        }
    }

    /** A given that is worked out from hidden numbers is given itself: nobody knows what was hidden. */
    private boolean readsHidden(int slot, List<String> hidden) {
        for (int i = 0; i < slot; i++) {
            if ((program.reads(slot) & 1L << i) != 0 && (hidden.contains(program.slot(i).name()) || readsHidden(i, hidden))) {
                return true;
            }
        }
        return false;
    }
}
