package soapstone.figure;

/** The height plumb at x = 0 from y = 0 up, each line from its length as seen from above up to the top: middle left, corner right. */
final class TrueLengths {

    private static final double SQUARE = 10;
    private static final double MOST = 2.2;

    private final Brief brief;
    private final Off off;
    private final double scale;
    private final double height;

    TrueLengths(Brief brief, Off off, double scale) {
        this.brief = brief;
        this.off = off;
        this.scale = scale;
        this.height = brief.right().at("height") * scale;
    }

    void draw(Sheet sheet) {
        Values v = brief.right();
        double middle = -v.at("middle_plan") * scale;
        double corner = v.at("corner_plan") * scale;
        sheet.path(Pen.THIN, Path.line(middle, 0, corner, 0), "plan");
        sheet.path(Pen.BEND, Path.line(0, 0, 0, -height), "height");
        if (corner > 2 * SQUARE && height > 2 * SQUARE) {
            sheet.path(Pen.THIN, Path.line(SQUARE, 0, SQUARE, -SQUARE).lineTo(new Pt(0, -SQUARE)));
        }
        line(sheet, "middle", middle);
        line(sheet, "corner", corner);
        Across below = new Across(sheet, 0, false, Ink.RIGHT, 0);
        below.add(middle, 0, v.label("middle_plan"));
        below.add(0, corner, v.label("corner_plan"));
        size(sheet, "middle", new Pt(middle, 0), 1);
        size(sheet, "corner", new Pt(corner, 0), -1);
        new Upright(sheet, sheet.bounds().left(), true, Ink.RIGHT).add(0, -height, Math.min(0, middle), v.label("height"));
        yoursSizes(sheet);
    }

    private Pt top() {
        return new Pt(0, -height);
    }

    /** The right line from its foot to the top, and the answer's laid along it from the same foot. */
    private void line(Sheet sheet, String which, double foot) {
        Pt from = new Pt(foot, 0);
        sheet.path(Pen.VISIBLE, Path.line(from.x(), from.y(), 0, -height), which + "-line");
        if (brief.isAsCut() && brief.differs(which + "_line")) {
            Pt to = reach(from, which);
            sheet.path(Pen.PHANTOM, Path.line(from.x(), from.y(), to.x(), to.y()), "yours-" + which);
            if (off.is(which + "_line") && to.distance(top()) >= 1.5) {
                Strip.miss(sheet, top(), to, 11);
            }
        }
    }

    private Pt reach(Pt from, String which) {
        double own = brief.yours().at(which + "_line") / brief.right().at(which + "_line");
        return from.towards(top(), Math.min(MOST, own));
    }

    private void size(Sheet sheet, String which, Pt from, int side) {
        Aligned.add(sheet, Ink.RIGHT, from, top(), side, 0, brief.right().label(which + "_line"));
    }

    /** The answer's sizes stand under the drawing in words: two lines and what they miss leave no room at the slopes. */
    private void yoursSizes(Sheet sheet) {
        double y = sheet.bounds().bottom() + 20;
        for (String which : new String[] {"middle", "corner"}) {
            Label own = brief.isAsCut() ? Off.label(brief, which + "_line") : Label.NONE;
            if (!own.isEmpty()) {
                boolean worst = off.is(which + "_line");
                Label said = own.then(" " + brief.say("square-to-round.at." + which) + (worst ? ", " + off.text(brief) : ""));
                sheet.letter(said, Lettering.YOURS_TEXT, 0, y, Anchor.MIDDLE);
                y += 20;
            }
        }
    }
}
