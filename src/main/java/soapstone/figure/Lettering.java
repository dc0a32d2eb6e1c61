package soapstone.figure;

/** A size and color of lettering, and how much room it takes. */
enum Lettering {
    TEXT(Pen.TEXT, 14),
    NOTE(Pen.NOTE, 13),
    NUMBER(Pen.NUMBER, 13),
    YOURS_TEXT(Pen.YOURS_TEXT, 14),
    YOURS_NOTE(Pen.YOURS_NOTE, 13),
    YOURS_NUMBER(Pen.YOURS_NUMBER, 13);

    private static final double RISE = 0.78;
    private static final double DROP = 0.22;

    private final Pen pen;
    private final int size;

    Lettering(Pen pen, int size) {
        this.pen = pen;
        this.size = size;
    }

    Pen pen() {
        return pen;
    }

    /** Whether it says something of an answer's part. */
    boolean isYours() {
        return this == YOURS_TEXT || this == YOURS_NOTE || this == YOURS_NUMBER;
    }

    int size() {
        return size;
    }

    /** Height of capitals and digits over the baseline, with a little air. */
    double rise() {
        return RISE * size;
    }

    /** Depth of descenders under the baseline. */
    double drop() {
        return DROP * size;
    }
}
