package soapstone.expression;

/**
 * An expression whose dimensions fit, ready to run in one unit system.
 *
 * @param type  what it gives
 * @param code  how; null after a fault
 * @param reads which named slots it reads, a bit each
 */
record Planned(Type type, Code code, long reads) {

    static final Planned UNKNOWN = new Planned(Type.UNKNOWN, null, 0);

    boolean failed() {
        return type.isUnknown();
    }
}
