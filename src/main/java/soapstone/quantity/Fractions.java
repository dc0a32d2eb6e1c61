package soapstone.quantity;

/** Which fractions a shop has of a unit. */
final class Fractions {

    private static final int FINEST_HALVING = 128;
    private static final int MILLIMETERS = 1000;

    private Fractions() {}

    /** Whether the unit is divided into fractions at all: millimetres and their powers are not. */
    static boolean areUsed(Unit unit) {
        return !unit.name().startsWith("mm") || unit.name().contains("/");
    }

    /**
     * Whether a fraction with this bottom is read and printed. Rules have halves down to 64ths (and people halve those),
     * tenths, twentieths, fiftieths, hundredths; a foot also has its inches, a metre whatever comes out in millimetres.
     * Amounts other than lengths can have any bottom.
     */
    static boolean areRead(Unit unit, long bottom) {
        if (!areUsed(unit)) {
            return false;
        }
        if (!unit.dimension().equals(Dimension.LENGTH)) {
            return true;
        }
        if (unit.equals(Units.METER) || unit.equals(Units.CENTIMETER)) {
            return MILLIMETERS / (unit.equals(Units.METER) ? 1 : 100) % bottom == 0;
        }
        int inches = unit.equals(Units.FOOT) ? 12 : unit.equals(Units.YARD) ? 36 : 1;
        return isHalving(bottom) || isDecimal(bottom) || inches % bottom == 0;
    }

    private static boolean isHalving(long bottom) {
        return bottom <= FINEST_HALVING && Long.bitCount(bottom) == 1;
    }

    private static boolean isDecimal(long bottom) {
        return bottom == 10 || bottom == 20 || bottom == 50 || bottom == 100 || bottom == 1000;
    }
}
