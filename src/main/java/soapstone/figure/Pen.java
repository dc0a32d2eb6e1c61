package soapstone.figure;

/**
 * What a shape is drawn with, in the order in which layers are laid down. The attributes let a drawing stand alone; the
 * style sheet of the site says the same with its own colors, and print and forced colors override it there.
 */
enum Pen {
    WATER("water", "fill=\"#F1F4F3\" stroke=\"none\""),
    HATCH("hatch", thin("#4A555B", 1, "")),
    YOURS_HATCH("yours-hatch", thin("#0B5577", 1, "")),
    HIDDEN("hidden", thin("#667278", 1, "6 3")),
    CENTER("center", thin("#667278", 1, "14 3 3 3")),
    ZONE("zone", thin("#667278", 1, "3 3")),
    THIN("thin", thin("#4A555B", 1, "")),
    ARROW("arrow", "fill=\"#4A555B\" stroke=\"none\""),
    BEND("bend", thin("#1B2226", 1.25, "")),
    VISIBLE("visible", thin("#1B2226", 2, "")),
    SECTION("section", "fill=\"#1B2226\" stroke=\"none\""),
    GAP("gap", "fill=\"#FFFFFF\" stroke=\"none\""),
    BREAK("break", thin("#4A555B", 1, "")),
    PHANTOM("phantom", thin("#0B5577", 2.5, "16 3 4 3 4 3")),
    YOURS_THIN("yours-thin", thin("#0B5577", 1, "")),
    YOURS_ARROW("yours-arrow", "fill=\"#0B5577\" stroke=\"none\""),
    YOURS_MARK("yours-mark", thin("#0B5577", 2, "")),
    MASK("mask", "fill=\"#FFFFFF\" stroke=\"none\""),
    FLAG("flag", "fill=\"#FFFFFF\" stroke=\"#1B2226\" stroke-width=\"1.25\""),
    FRAME("frame", thin("#1B2226", 1.25, "")),
    TEXT("text", lettering("#1B2226", 14, "400")),
    LETTER("letter", lettering("#1B2226", 14, "700")),
    NOTE("note", lettering("#1B2226", 13, "400")),
    NUMBER("number", lettering("#1B2226", 13, "400")),
    YOURS_TEXT("yours-text", lettering("#0B5577", 14, "700")),
    YOURS_NOTE("yours-note", lettering("#0B5577", 13, "700")),
    YOURS_NUMBER("yours-number", lettering("#0B5577", 13, "700"));

    /** The site's own classes begin with no such word: its styles do not reach into drawings. */
    private static final String PREFIX = "pen-";

    private final String name;
    private final String attributes;

    Pen(String name, String attributes) {
        this.name = name;
        this.attributes = attributes;
    }

    private static String thin(String color, double width, String dash) {
        return "fill=\"none\" stroke=\"" + color + "\" stroke-width=\"" + Svg.number(width) + "\""
                + (dash.isEmpty() ? "" : " stroke-dasharray=\"" + dash + "\"");
    }

    private static String lettering(String color, int size, String weight) {
        return "fill=\"" + color + "\" font-size=\"" + size + "\" font-weight=\"" + weight + "\"";
    }

    /** The class in the drawing and in the style sheet. */
    String styleName() {
        return PREFIX + name;
    }

    String attributes() {
        return attributes;
    }

    boolean isLettering() {
        return ordinal() >= TEXT.ordinal();
    }

    /** Lettering must not cross lines of these pens. */
    boolean isThick() {
        return this == BEND || this == VISIBLE || this == SECTION || this == PHANTOM || this == YOURS_MARK;
    }
}
