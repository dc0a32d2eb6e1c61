package soapstone.speed;

/** One ask of one exercise, marked by Java that was written out for it alone. */
public interface PlainMarking {

    /**
     * Takes the numbers of a draw over: the whole right working, and which slips make sense with it.
     *
     * @param numbers by slot, in base units
     * @param lists   by slot, in base units
     * @param sense   by slip
     */
    void take(double[] numbers, double[][] lists, boolean[] sense);

    /**
     * Marks an answer.
     *
     * @return the tier that decided, and what fitted there
     */
    PlainMark mark(PlainAnswer answer);
}
