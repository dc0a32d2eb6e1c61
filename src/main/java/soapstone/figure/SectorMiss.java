package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/** A sector as an answer swings it, over the right one with the same point and first edge, and where it is most off. */
final class SectorMiss {

    private static final double MOST = 1.5;
    private static final int POINTS = 24;

    private SectorMiss() {}

    static Off off(Brief brief) {
        return brief.right().has("inner") ? Off.furthest(brief, "angle", "outer", "inner") : Off.furthest(brief, "angle", "outer");
    }

    private static boolean isOffSheet(Brief brief) {
        return brief.yours().at("outer") > MOST * brief.right().at("outer");
    }

    static List<Label> notes(Brief brief) {
        List<Label> notes = new ArrayList<>();
        if (brief.right().at("angle") > 360) {
            notes.add(Label.text(brief.say("sector.over")));
        }
        if (brief.isAsCut() && brief.yours().at("angle") > 360) {
            notes.add(Label.text(brief.say("yours") + ": " + brief.say("sector.over")));
        }
        if (brief.isAsCut() && isOffSheet(brief)) {
            notes.add(Label.text(brief.say("tank.off.sheet", off(brief).text(brief))));
        }
        return notes;
    }

    static void draw(Brief brief, Sheet sheet, double scale) {
        Off off = off(brief);
        if (off.isNothing() || isOffSheet(brief)) {
            return;
        }
        Values y = brief.yours();
        Values v = brief.right();
        double first = 90 - Sector.half(v);
        double inner = y.has("inner") ? y.at("inner") * scale : 0;
        sheet.path(Pen.PHANTOM, Sector.outline(y.at("outer") * scale, inner, first, first + 2 * Sector.half(y)), "yours-part");
        double low = v.has("inner") ? v.at("inner") * scale : 0;
        double high = v.at("outer") * scale;
        if (off.is("angle")) {
            double rim = Math.min(high, y.at("outer") * scale);
            between(sheet, new double[] {Math.min(low, rim), rim, 90 + Sector.half(v), first + 2 * Sector.half(y)});
        } else {
            double to = y.at(off.name()) * scale;
            double from = off.is("outer") ? high : low;
            between(sheet, new double[] {from, to, first, 90 + Sector.half(v)});
        }
    }

    /** Hatches a piece of a ring between two radii and two directions. */
    private static void between(Sheet sheet, double[] at) {
        double turn = Math.toRadians(Math.abs(at[3] - at[2])) * Math.max(at[0], at[1]);
        if (Math.abs(at[1] - at[0]) < 1.5 || turn < 1.5) {
            return;
        }
        List<Pt> corners = new ArrayList<>();
        Pt apex = new Pt(0, 0);
        for (int i = 0; i <= POINTS; i++) {
            corners.add(apex.polar(at[1], at[2] + (at[3] - at[2]) * i / POINTS));
        }
        for (int i = POINTS; i >= 0; i--) {
            corners.add(apex.polar(at[0], at[2] + (at[3] - at[2]) * i / POINTS));
        }
        Hatch.fill(sheet, Pen.YOURS_HATCH, corners);
    }

    private static Label radius(Brief brief, String name) {
        Label own = brief.differs(name) ? brief.yours().label(name) : Label.NONE;
        return own.isEmpty() ? own : Label.text(brief.say("yours") + " ").then(Labels.radius(own));
    }

    /** The answer's sizes in words under the pattern: arcs upon arcs could not be told apart. */
    static void size(Brief brief, Sheet sheet) {
        if (!brief.isAsCut() || isOffSheet(brief)) {
            return;
        }
        double y = sheet.bounds().bottom() + 18;
        for (String name : new String[] {"outer", "inner", "angle"}) {
            Label own = name.equals("angle") ? Off.label(brief, name) : radius(brief, name);
            if (!own.isEmpty()) {
                Label said = off(brief).is(name) ? own.then(", " + off(brief).text(brief)) : own;
                sheet.letter(said, Lettering.YOURS_TEXT, (sheet.bounds().left() + sheet.bounds().right()) / 2, y, Anchor.MIDDLE);
                y += 20;
            }
        }
    }
}
