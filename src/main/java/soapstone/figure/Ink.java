package soapstone.figure;

/** Whose dimension it is: the right part's, or the one that an answer makes. */
enum Ink {
    RIGHT(Pen.THIN, Pen.ARROW, Lettering.TEXT, Lettering.NUMBER, Pen.HATCH),
    YOURS(Pen.YOURS_THIN, Pen.YOURS_ARROW, Lettering.YOURS_TEXT, Lettering.YOURS_NUMBER, Pen.YOURS_HATCH);

    private final Pen line;
    private final Pen arrow;
    private final Lettering lettering;
    private final Lettering number;
    private final Pen hatch;

    Ink(Pen line, Pen arrow, Lettering lettering, Lettering number, Pen hatch) {
        this.line = line;
        this.arrow = arrow;
        this.lettering = lettering;
        this.number = number;
        this.hatch = hatch;
    }

    Pen line() {
        return line;
    }

    Pen arrow() {
        return arrow;
    }

    Lettering lettering() {
        return lettering;
    }

    Lettering number() {
        return number;
    }

    Pen hatch() {
        return hatch;
    }
}
