package soapstone.exercise;

import java.util.List;
import soapstone.quantity.UnitSystem;

/**
 * An exercise of the bank, read and checked: whoever holds one need not check it again.
 *
 * @param id          the path below the bank, without ending: {@code spacing/bolt-holes}
 * @param cautions    names of cautions
 * @param ties        slips that no draw can tell apart
 * @param fingerprint of all that the exercise reaches: its text, formulas, tables, language
 */
public record Exercise(String id, String title, String skill, int level, List<String> cautions, Model us, Model metric,
        List<Check> checks, List<Tie> ties, String fingerprint) {

    /** Slips that give one number in every draw, and why; both are named. */
    public record Tie(List<String> slips, String because) {}

    /** The folder, which is the unit of the course. */
    public String unit() {
        return id.substring(0, id.indexOf('/'));
    }

    public Model model(UnitSystem system) {
        return system == UnitSystem.US ? us : metric;
    }

    /** Whether two slips are declared to be one number. */
    public boolean areTied(String a, String b) {
        return ties.stream().anyMatch(t -> t.slips().contains(a) && t.slips().contains(b));
    }
}
