package soapstone.page;

/**
 * A kind of drawing in the list of all.
 *
 * @param name  as bank files write it
 * @param title of its drawings, in the reader's language where there are words for it
 * @param asCut whether an answer's part can be laid over the right one
 * @param uses  how many exercises of the bank have such a drawing
 */
public record FigureKindLink(String name, String title, boolean asCut, int uses) {}
