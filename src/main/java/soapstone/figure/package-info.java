/**
 * Takes the named amounts of a part and draws it as a shop drawing: real sizes go in, two SVG drawings come out, one laid
 * out for a wide page and one for a phone. Entry class: {@link soapstone.figure.FigureKinds}.
 *
 * <p>The way of a drawing: a {@link soapstone.figure.FigureInput} is read through {@code Values}; a kind (a
 * {@code Drawer}) puts shapes and dimensions on a {@code Sheet}; {@code Layout} shrinks the part until part and lettering
 * fit the width, and sets notes and legend below; {@code Svg} writes it. The part is always to scale, lettering never
 * shrinks, and no lettering stands on other lettering.
 *
 * <p>An asked quantity is drawn to scale like any other, but only its letter is printed. A second input, the part as an
 * answer would make it, is laid over the first in phantom lines, with its dimensions below and the largest miss hatched.
 * Amounts that nothing can be drawn from give no drawing, never an error.
 */
package soapstone.figure;
