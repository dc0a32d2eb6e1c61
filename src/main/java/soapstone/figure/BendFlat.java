package soapstone.figure;

/** A bend laid flat, to the scale of its section: the metal in it, and where a deduction is given what the setbacks have too much. */
final class BendFlat {

    private static final double HIGH = 16;
    private static final double LOWER = 7;
    /** Up to this many times the right bar an answer's bar is drawn in full. */
    private static final double MOST = 2.4;
    private static final double STUB = 0.15;

    private final Brief brief;
    private final double scale;
    private final BendMiss miss;

    BendFlat(Brief brief, double scale) {
        this.brief = brief;
        this.scale = scale;
        this.miss = BendMiss.of(brief);
    }

    static boolean has(Values v) {
        return v.has("allowance") || v.has("deduction");
    }

    /** The metal in the bend, never less than nothing. */
    private static double metal(Values v) {
        return Math.max(0, v.has("deduction") ? 2 * v.at("setback") - v.at("deduction") : v.at("allowance"));
    }

    private static double whole(Values v) {
        return v.has("deduction") ? Math.max(2 * v.at("setback"), metal(v)) : metal(v);
    }

    /** How long the whole bar is in base units, with what an answer adds to it as far as it is drawn. */
    static double length(Brief brief) {
        Reach reach = reach(brief);
        return reach.high();
    }

    private static Reach reach(Brief brief) {
        double whole = whole(brief.right());
        double yours = brief.isAsCut() ? metal(brief.yours()) : whole;
        boolean cutOff = yours > MOST * whole;
        return new Reach(0, cutOff ? (1 + STUB) * whole : Math.max(whole, yours), cutOff);
    }

    void draw(Sheet sheet) {
        Values v = brief.right();
        double metal = metal(v) * scale;
        Box bar = new Box(0, 0, metal, HIGH);
        sheet.plate(Pen.WATER, bar, "");
        sheet.plate(Pen.VISIBLE, bar, "flat");
        Across above = new Across(sheet, 0, true, Ink.RIGHT, metal / 2);
        if (v.has("allowance")) {
            above.add(0, metal, v.label("allowance"));
        }
        if (v.has("deduction")) {
            double setback = v.at("setback") * scale;
            sheet.path(Pen.HIDDEN, Path.line(metal, 0, 2 * setback, 0).lineTo(new Pt(2 * setback, HIGH)).lineTo(new Pt(metal, HIGH)), "deduction");
            sheet.line(Pen.ZONE, setback, -6, setback, HIGH + 6);
            above.add(metal, 2 * setback, v.label("deduction"));
            above.add(0, setback, v.label("setback"));
            above.add(setback, 2 * setback, v.label("setback"));
        }
        if (miss.is("allowance") || miss.is("deduction")) {
            drawYours(sheet, metal);
        }
        double middle = whole(v) * scale / 2;
        sheet.letter(Label.text(brief.say(v.has("deduction") ? "bend.flat.deduction" : "bend.flat.allowance")), Lettering.NOTE, middle,
                sheet.bounds().bottom() + 20, Anchor.MIDDLE);
    }

    private void drawYours(Sheet sheet, double metal) {
        Reach reach = reach(brief);
        double real = metal(brief.yours());
        double yours = reach.clip(real) * scale;
        double y = HIGH + LOWER;
        YoursBar.draw(sheet, new Reach(reach.low() * scale, reach.high() * scale, reach.cutOff()), real * scale, y);
        Across below = new Across(sheet, y + LOWER, false, Ink.YOURS, metal / 2);
        Miss.along(sheet, new Miss(metal, yours), new Box(0, 0, 0, y), below, miss.text(brief));
        if (miss.is("allowance")) {
            below.add(0, yours, brief.yoursLabel("allowance"));
        } else if (brief.yours().at("deduction") > 0 && whole(brief.right()) * scale - yours > 1) {
            below.add(yours, whole(brief.right()) * scale, brief.yoursLabel("deduction"));
        }
    }
}
