package soapstone.exercise;

import java.util.List;
import soapstone.quantity.Show;
import soapstone.quantity.Unit;

/**
 * One thing that the student has to answer.
 *
 * @param name       the name of the asked line
 * @param letter     a, b, c …: how page and drawing call it
 * @param kind       what is to be typed
 * @param slot       the asked line
 * @param second     the line of the other coordinate; -1 unless points are asked
 * @param to         what it is to be rounded to, in base units; 0 for counts and choices
 * @param within     what is marked right, in base units, inclusive; 0 for counts and choices
 * @param unit       the unit beside the box
 * @param show       how an answer rounded as asked is printed
 * @param options    of a choice, in the order in which they are shown
 * @param convention what it is rounded to where a shop has set that; empty where it is always rounded as the exercise says
 */
public record Ask(String name, String letter, Kind kind, int slot, int second, Template prompt, double to, double within,
        Unit unit, Show show, double points, List<Option> options, String convention) {

    public enum Kind { QUANTITY, COUNT, LIST, CHOICE, FRACTION, POINT, POINTS }

    /** One way to answer a choice: its label's number in the program, the label, and what is shown. */
    public record Option(int label, String name, Template text) {}

    /** The same ask, rounded otherwise. */
    public Ask rounded(double otherTo, double otherWithin, Show otherShow) {
        return new Ask(name, letter, kind, slot, second, prompt, otherTo, otherWithin, unit, otherShow, points, options, convention);
    }

    public boolean isNumber() {
        return kind == Kind.QUANTITY || kind == Kind.FRACTION || kind == Kind.COUNT;
    }

    public boolean isMany() {
        return kind == Kind.LIST || kind == Kind.POINTS;
    }
}
