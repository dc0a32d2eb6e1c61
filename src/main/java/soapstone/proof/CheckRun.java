package soapstone.proof;

import java.util.List;
import java.util.Map;
import soapstone.exercise.Check;
import soapstone.exercise.Exercise;
import soapstone.exercise.Formula;
import soapstone.expression.Frame;
import soapstone.expression.Program;
import soapstone.quantity.Quantity;
import soapstone.quantity.Show;
import soapstone.quantity.ShopPrinter;
import soapstone.quantity.UnitSystem;
import soapstone.quantity.Units;

/**
 * Works out a published check and compares. A misprint of the source passes when the working does <em>not</em> give the
 * printed value.
 *
 * @param owner   exercise id, or {@code formulas/} and the formula's name
 * @param matches whether the working gives what was printed, within the print's tolerance
 * @param told    what was printed and what comes out
 */
public record CheckRun(String owner, Check check, boolean matches, String told) {

    private static final double NOISE = 1e-9;

    /** Whether the check does what it should: match, or for a misprint not match. */
    public boolean passes() {
        return matches != check.misprint();
    }

    public static CheckRun of(Exercise exercise, Check check) {
        return run(exercise.id(), exercise.model(check.system()).program(), check, Map.of());
    }

    public static CheckRun of(Formula formula, Check check) {
        List<soapstone.expression.FormulaBody.Line> lines = formula.body().lines();
        return run("formulas/" + formula.name(), formula.program(check.system()), check,
                Map.of(Check.RESULT, lines.get(lines.size() - 1).name()));
    }

    private static CheckRun run(String owner, Program program, Check check, Map<String, String> names) {
        Frame f = program.frame();
        long known = 0;
        for (Map.Entry<String, Check.Item> given : check.given().entrySet()) {
            int slot = program.find(given.getKey());
            if (slot < 0 || !set(program, f, slot, given.getValue())) {
                return new CheckRun(owner, check, false, "'" + given.getKey() + "' is no name here, or cannot be " + given.getValue().text());
            }
            known |= 1L << slot;
        }
        known = program.runKnown(f, known);
        StringBuilder told = new StringBuilder();
        boolean matches = true;
        for (Map.Entry<String, Check.Item> expect : check.expect().entrySet()) {
            String name = names.getOrDefault(expect.getKey(), expect.getKey());
            int slot = program.find(name);
            if (slot < 0 || (known & 1L << slot) == 0) {
                return new CheckRun(owner, check, false, "'" + name + "' needs more than the check gives" + (f.problem() == null ? "" : ": " + f.problem()));
            }
            matches &= compare(program, f, slot, expect.getValue(), check, told);
        }
        return new CheckRun(owner, check, matches, told.toString());
    }

    private static boolean set(Program program, Frame f, int slot, Check.Item item) {
        Program.Slot s = program.slot(slot);
        UnitSystem system = program.system();
        if (s.type().isLabel()) {
            f.set(slot, program.labels().find(item.label() == null ? item.text() : item.label()));
            return f.number(slot) >= 0;
        }
        if (item.amounts().isEmpty() || item.amounts().stream().anyMatch(q -> !q.unit().dimension().equals(s.type().dimension()))) {
            return false;
        }
        if (s.type().isList()) {
            f.set(slot, item.amounts().stream().mapToDouble(q -> q.base(system)).toArray());
        } else {
            f.set(slot, item.amounts().get(0).base(system));
        }
        return true;
    }

    private static boolean compare(Program program, Frame f, int slot, Check.Item item, Check check, StringBuilder told) {
        Program.Slot s = program.slot(slot);
        told.append(told.length() == 0 ? "" : "; ").append(s.name()).append(" printed ").append(item.text()).append(", worked out ");
        if (s.type().isLabel()) {
            String label = program.labels().text(f.number(slot));
            told.append(label);
            return label.equals(item.label());
        }
        double[] worked = s.type().isList() ? f.list(slot) : new double[] {f.number(slot)};
        if (worked == null || worked.length != item.amounts().size()) {
            told.append(worked == null ? "nothing" : worked.length + " values");
            return false;
        }
        boolean same = true;
        for (int i = 0; i < worked.length; i++) {
            Quantity printed = item.amounts().get(i);
            double in = printed.unit().fromBase(worked[i], program.system());
            told.append(i == 0 ? "" : ", ").append(ShopPrinter.text(worked[i], printed.unit(), program.system(), Show.decimal(0), '.').replace('\u00a0', ' '));
            same &= Math.abs(in - printed.amount()) <= tolerance(check.within(), printed, program.system()) + NOISE * Math.max(1, Math.abs(in));
        }
        return same;
    }

    /** The tolerance in the printed unit. A percent is a share of the printed value; a plain number counts in its unit. */
    private static double tolerance(Quantity within, Quantity printed, UnitSystem system) {
        if (within == null) {
            return 0;
        }
        if (within.unit().equals(Units.PERCENT) && !printed.unit().equals(Units.PERCENT)) {
            return within.amount() / 100 * Math.abs(printed.amount());
        }
        if (within.unit().equals(Units.ONE) || within.unit().equals(printed.unit())) {
            return within.amount();
        }
        return within.unit().dimension().equals(printed.unit().dimension())
                ? Math.abs(printed.unit().fromBase(within.base(system), system) - printed.unit().fromBase(0, system)) : 0;
    }
}
