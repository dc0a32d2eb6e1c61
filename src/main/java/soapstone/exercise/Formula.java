package soapstone.exercise;

import java.util.List;
import soapstone.expression.FormulaBody;
import soapstone.expression.Program;
import soapstone.expression.Value;
import soapstone.quantity.UnitSystem;

/**
 * A trade formula of the book.
 *
 * @param body    what the language needs of it
 * @param dims    the dimension word of each thing taken, as written, and of the result last
 * @param steps   what each line of its working says; empty texts where it says nothing
 * @param written the lines as written, {@code name = expression}
 * @param topic   the file of the book in which it stands
 */
public record Formula(FormulaBody body, String says, String symbol, List<String> dims, List<String> written, List<String> steps,
        List<Limit> limits, String source, List<FormulaSlip> slips, List<Check> checks, String caution, String topic,
        Program us, Program metric, List<Value> limitsUs, List<Value> limitsMetric) {

    /** Where it holds: binds right workings and the bench, not slips. */
    public record Limit(String text) {}

    /** A slip that comes along into every call. */
    public record FormulaSlip(String name, String family, FormulaBody.Swap swap, String written, String when, String say) {}

    public String name() {
        return body.name();
    }

    public Program program(UnitSystem system) {
        return system == UnitSystem.US ? us : metric;
    }

    public List<Value> limits(UnitSystem system) {
        return system == UnitSystem.US ? limitsUs : limitsMetric;
    }
}
