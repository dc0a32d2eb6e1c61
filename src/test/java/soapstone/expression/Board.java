package soapstone.expression;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import soapstone.bank.SmallBank;
import soapstone.quantity.Unit;
import soapstone.quantity.UnitSystem;
import soapstone.quantity.Units;

/** A working written line by line, as a test would write it on a board, with the small bank's tables and formulas. */
final class Board {

    final ProgramBuilder builder;
    final UnitSystem system;
    final List<String> faults = new ArrayList<>();
    private final Map<Integer, Double> givens = new LinkedHashMap<>();
    private Program program;

    Board(UnitSystem system) {
        this(system, Map.of());
    }

    /** @param more formulas beside those of the small bank */
    Board(UnitSystem system, Map<String, FormulaBody> more) {
        Map<String, FormulaBody> formulas = new HashMap<>(more);
        SmallBank.bank().formulas().forEach((name, formula) -> formulas.put(name, formula.body()));
        this.system = system;
        this.builder = new ProgramBuilder(system, formulas, SmallBank.bank().tables());
    }

    /** The givens that most tests use. */
    static Board usual(UnitSystem system) {
        return new Board(system).given("length", "48 in").given("edge", "1 1/2 in").given("holes", "5").given("turn", "30 deg")
                .given("load", "200 lb").given("plate", "6 ft2").given("number", "14").label("metal", "galvanized", "carbon");
    }

    Board given(String name, String amount) {
        Node.Amount a = (Node.Amount) parse(amount);
        int slot = builder.given(name, Type.amount(a.unit().dimension()), a.unit());
        givens.put(slot, a.unit().toBase(a.amount(), system));
        return this;
    }

    /** A label given as the first of those it can be. */
    Board label(String name, String... labels) {
        int slot = builder.given(name, Type.label(Set.of(labels)), Units.ONE);
        givens.put(slot, (double) builder.labels().number(labels[0]));
        return this;
    }

    Board line(String text) {
        return line(text, null);
    }

    Board line(String text, String unit) {
        try {
            Parser.Assignment a = Parser.assignment(text);
            Unit shown = unit == null ? null : Units.parse(unit).orElseThrow();
            builder.line(a.name(), a.value(), shown, (at, found, fits) -> faults.add((at + 1) + ": " + found + ". " + fits));
        } catch (Parser.Fault e) {
            faults.add((e.at() + 1) + ": " + e.getMessage() + ". " + e.fits());
        }
        return this;
    }

    Change swap(String text, boolean bare) {
        try {
            Parser.Assignment a = Parser.assignment(text);
            return builder.swap(a.name(), a.value(), bare, (at, found, fits) -> faults.add((at + 1) + ": " + found + ". " + fits))
                    .orElse(Change.NONE);
        } catch (Parser.Fault e) {
            throw new AssertionError(text + ": " + e.getMessage(), e);
        }
    }

    Program program() {
        if (program == null) {
            if (!faults.isEmpty()) {
                throw new AssertionError(faults.toString());
            }
            program = builder.build();
        }
        return program;
    }

    /** The finished run of the givens. */
    Frame run() {
        Frame f = program().frame();
        givens.forEach(f::set);
        program().run(f);
        return f;
    }

    /** The value of a name with a change put in. */
    double with(Change change, String name) {
        Frame into = program().frame();
        program().rerun(run(), into, change, program().slots().size() - 1);
        return into.number(program().find(name));
    }

    double value(String name) {
        return run().number(program().find(name));
    }

    static Node parse(String text) {
        try {
            return Parser.expression(text);
        } catch (Parser.Fault e) {
            throw new AssertionError(text + ": " + e.getMessage(), e);
        }
    }
}
