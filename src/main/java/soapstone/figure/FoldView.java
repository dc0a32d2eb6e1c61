package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/** The section of a folded sheet with its legs and turns, and over it the section that an answer makes. */
final class FoldView {

    private static final double LEAST_THICK = 3;
    private static final int MOST_LEGS = 40;
    private static final double MOST_LONGER = 2.2;

    private FoldView() {}

    static List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("thickness"), FigureArgument.length("radius"),
                FigureArgument.length("legs").many(), FigureArgument.angle("turns").many());
    }

    static boolean canDraw(Values v) {
        double[] legs = v.all("legs");
        double[] turns = v.all("turns");
        if (v.at("thickness") <= 0 || v.at("radius") < 0 || turns.length != legs.length - 1 || legs.length > MOST_LEGS) {
            return false;
        }
        double sum = 0;
        for (double leg : legs) {
            if (leg <= 0) {
                return false;
            }
            sum += leg;
        }
        for (double turn : turns) {
            if (Math.abs(turn) > 270) {
                return false;
            }
        }
        return v.at("thickness") + v.at("radius") < sum;
    }

    static void tell(Brief brief, Telling t) {
        tellValues(brief.right(), t);
    }

    static void tellValues(Values v, Telling t) {
        t.value(v, "thickness", "fold.thickness").value(v, "radius", "fold.radius").values(v, "legs", "fold.legs");
        if (v.isTold("turns")) {
            if (v.isAsked("turns")) {
                t.value(v, "turns", "fold.turns");
            } else {
                t.say("tell", t.words().say("fold.turns"), turns(v, t.words()));
            }
        }
    }

    static void tellYours(Brief brief, Telling t) {
        t.say("fold.yours");
        tellValues(brief.yours(), t);
        FoldMiss miss = FoldMiss.of(brief);
        if (!miss.isNothing()) {
            t.sentence(miss.text(brief) + ".");
        }
        if (isOffSheet(brief)) {
            t.say("fold.off.sheet", brief.size(sum(brief.yours()) - sum(brief.right())));
        }
    }

    private static String turns(Values v, Words words) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < v.all("turns").length; i++) {
            String one = words.say(v.all("turns")[i] < 0 ? "fold.down" : "fold.up", size(v, i));
            out.append(out.length() == 0 ? "" : "; ").append(one);
        }
        return out.toString();
    }

    /** The printed turn without its sign: up and down say that. */
    private static String size(Values v, int i) {
        return v.label("turns", i).spoken().replaceFirst("^[-−]", "");
    }

    /** Notes: thickness and radius, and the turns when they are all alike. */
    static List<Label> notes(Brief brief) {
        Values v = brief.right();
        Label note = Label.NONE;
        note = join(note, named(brief, v.label("thickness"), "fold.thick"));
        note = join(note, named(brief, v.label("radius"), "fold.inside.radius"));
        if (allAlike(v) && !v.isAsked("turns")) {
            note = join(note, Label.text(brief.say(v.all("turns").length == 1 ? "fold.bend" : "fold.bends", size(v, 0))));
        }
        List<Label> notes = new ArrayList<>();
        if (!note.isEmpty()) {
            notes.add(note);
        }
        if (brief.isAsCut() && isOffSheet(brief)) {
            notes.add(Label.text(brief.say("fold.off.sheet", brief.size(sum(brief.yours()) - sum(brief.right())))));
        }
        return notes;
    }

    private static Label named(Brief brief, Label value, String key) {
        return value.isEmpty() ? value : value.isFramed() ? value.then(brief.say(key, "").trim())
                : Label.text(brief.say(key, value.spoken()));
    }

    private static Label join(Label a, Label b) {
        return a.isEmpty() || b.isEmpty() ? a.isEmpty() ? b : a : a.then("  ·  ").then(b);
    }

    private static boolean allAlike(Values v) {
        double[] turns = v.all("turns");
        for (int i = 0; i < turns.length; i++) {
            if (!(Math.abs(Math.abs(turns[i]) - Math.abs(turns[0])) < 1e-6) || v.label("turns", i).isEmpty()) {
                return false;
            }
        }
        return Math.abs(Math.abs(turns[0]) - 90) < 1e-6;
    }

    private static double sum(Values v) {
        double sum = 0;
        for (double d : v.all("legs")) {
            sum += d;
        }
        return sum;
    }

    private static boolean isOffSheet(Brief brief) {
        return sum(brief.yours()) > MOST_LONGER * sum(brief.right());
    }

    /** Draws the section into that room; numbers the bends when asked for. */
    static void draw(Brief brief, Sheet sheet, double room, double height, boolean numbered) {
        Values v = brief.right();
        FoldLine real = line(v, v.at("thickness"));
        Placing upright = Placing.of(real);
        Box bounds = upright.bounds(real);
        if (brief.isAsCut() && !isOffSheet(brief)) {
            bounds = bounds.union(upright.bounds(line(brief.yours(), v.at("thickness"))));
        }
        double scale = Math.min(room / Math.max(bounds.width(), v.at("thickness")),
                height / Math.max(bounds.height(), v.at("thickness")));
        FoldLine line = line(v, Math.max(v.at("thickness"), LEAST_THICK / scale));
        Placing placing = upright.scaled(scale);
        sheet.path(Pen.SECTION, placing.outline(line), "section-outline");
        FoldLine yours = null;
        if (brief.isAsCut() && !isOffSheet(brief)) {
            yours = line(brief.yours(), line.thickness());
            sheet.path(Pen.PHANTOM, placing.middle(yours), "yours-section");
        }
        dimensions(v, sheet, line, placing, numbered);
        if (yours != null) {
            FoldMiss.of(brief).draw(brief, sheet, new FoldMiss.Drawn(line, yours, placing));
        }
    }

    private static FoldLine line(Values v, double thickness) {
        return new FoldLine(thickness, v.at("radius"), v.all("legs"), v.all("turns"));
    }

    private static void dimensions(Values v, Sheet sheet, FoldLine line, Placing placing, boolean numbered) {
        if (numbered) {
            for (int i = 0; i < line.bends().size(); i++) {
                numberBend(sheet, line, placing, i);
            }
        }
        if (!allAlike(v)) {
            for (int i = 0; i < line.bends().size() && (i == 0 || !v.isAsked("turns")); i++) {
                turn(v, sheet, line, placing, i);
            }
        }
        double half = line.thickness() * placing.scale() / 2;
        for (int i = 0; i < line.legs().size(); i++) {
            if (i == 0 || !v.isAsked("legs")) {
                FoldLine.Leg leg = line.legs().get(i);
                Aligned.add(sheet, Ink.RIGHT, placing.point(leg.outer0()), placing.point(leg.outer1()), outside(line, placing, i),
                        half, v.label("legs", i));
            }
        }
    }

    /** The side away from the bends of a leg, as seen along it on the sheet. */
    static int outside(FoldLine line, Placing placing, int leg) {
        double turns = 0;
        if (leg > 0) {
            turns += line.bends().get(leg - 1).turn();
        }
        if (leg < line.bends().size()) {
            turns += line.bends().get(leg).turn();
        }
        return placing.turned(turns) >= 0 ? -1 : 1;
    }

    private static void numberBend(Sheet sheet, FoldLine line, Placing placing, int i) {
        FoldLine.Bend b = line.bends().get(i);
        Pt center = placing.point(b.center());
        double inward = placing.direction(b.startDirection()) + placing.turned(b.turn()) / 2 + 180;
        for (double out : new double[] {8, 12, 16, 20, 26, 32}) {
            if (Balloon.tryAt(sheet, center.polar(out, inward), i + 1)) {
                return;
            }
        }
        for (double out : new double[] {20, 26, 32, 40}) {
            if (Balloon.tryAt(sheet, center.polar(out + line.radius() * placing.scale(), inward + 180), i + 1)) {
                return;
            }
        }
    }

    /** The angle turned through: between the leg before, carried on, and the leg behind. */
    private static void turn(Values v, Sheet sheet, FoldLine line, Placing placing, int i) {
        Label label = v.isAsked("turns") ? v.label("turns") : Label.text(size(v, i)).sized(v.label("turns", i).sizes());
        if (label.isEmpty()) {
            return;
        }
        FoldLine.Leg before = line.legs().get(i);
        double from = placing.direction(before.heading());
        double to = from + placing.turned(line.bends().get(i).turn());
        Pt corner = placing.point(before.outer1());
        sheet.line(Pen.THIN, corner, corner.polar(44, from));
        AngleMark.draw(sheet, Ink.RIGHT, corner, 34, new double[] {from, to}, 0, label);
    }
}
