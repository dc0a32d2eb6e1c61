package soapstone.figure;

import java.util.List;

/**
 * A finished drawing, laid out twice. Each SVG carries title and desc itself.
 *
 * @param wide   SVG for 720 units of width
 * @param narrow SVG for 340 units of width
 * @param title  a short name of the drawing
 * @param desc   all that the drawing tells, in sentences: every number that stands in it, and no asked one
 * @param flags  the names of the sizes that have a flag, in the order of their numbers
 */
public record Figure(String wide, String narrow, String title, String desc, List<String> flags) {

    public Figure {
        flags = List.copyOf(flags);
    }
}
