package soapstone.quantity;

/**
 * An amount with the unit that was typed after it.
 *
 * @param amount what was typed
 * @param unit   its unit; null when none was typed
 * @param scale  how many of the unit the word stands for: 0.001 for a thou, else 1
 */
record Part(Amount amount, Unit unit, double scale) {

    double base(UnitSystem system) {
        return unit.toBase(amount.value(scale), system);
    }

    Part in(Unit other) {
        return new Part(amount, other, 1);
    }

    /** Amount and unit as a page shows them. */
    String said(char mark) {
        StringBuilder out = new StringBuilder(24);
        print(out, mark);
        return out.toString();
    }

    void print(StringBuilder out, char mark) {
        int from = out.length();
        amount.print(out, scale, mark);
        ShopPrinter.attach(out, from, unit.symbol());
    }
}
