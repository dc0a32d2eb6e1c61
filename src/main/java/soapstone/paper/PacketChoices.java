package soapstone.paper;

/**
 * How a packet is printed.
 *
 * @param half     each problem on half a page, to be cut
 * @param large    18 points, for those who need it
 * @param names    names stand on the sheets; else a line to write one on
 * @param formulas the formulas that a problem uses stand beside it
 */
public record PacketChoices(PaperSize size, boolean half, boolean large, boolean names, boolean formulas) {

    /** Letter, whole pages, with names and without formulas. */
    public static final PacketChoices USUAL = new PacketChoices(PaperSize.LETTER, false, false, true, false);
}
