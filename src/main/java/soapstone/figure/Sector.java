package soapstone.figure;

import java.util.List;

/** A sector of a circle or of a ring, such as the flat blank of a cone or of a frustum. */
final class Sector implements Drawer {

    /** More than a full turn is drawn as a full one, and said. */
    private static final double MOST_TURN = 4 * 360;
    /** A wider sector is drawn with a gap that can be seen. */
    private static final double WIDEST = 359.5;
    /** Beyond this angle no dimension has room between the straight edges. */
    private static final double NO_ROOM_BESIDE = 285;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("outer"), FigureArgument.length("inner").maybe(), FigureArgument.angle("angle"));
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        return isSector(v);
    }

    static boolean isSector(Values v) {
        return v.at("outer") > 0 && v.at("angle") > 0 && v.at("angle") <= MOST_TURN
                && (!v.has("inner") || v.at("inner") >= 0 && v.at("inner") < v.at("outer"));
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "sector.title.yours" : "sector.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("sector.is");
        tellValues(brief.right(), t);
        tellYours(brief, t);
    }

    static void tellValues(Values v, Telling t) {
        t.value(v, "outer", "sector.outer").value(v, "inner", "sector.inner").value(v, "angle", "sector.angle");
    }

    static void tellYours(Brief brief, Telling t) {
        if (brief.isAsCut()) {
            t.say("sector.yours");
            tellValues(brief.yours(), t);
            SectorMiss.off(brief).tell(brief, t);
            SectorMiss.notes(brief).forEach(n -> t.sentence(n.spoken() + "."));
        }
    }

    @Override
    public List<Label> notes(Brief brief) {
        return SectorMiss.notes(brief);
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Box all = bounds(brief.right());
        drawTo(brief, sheet, Math.min(room / all.width(), (brief.isNarrow() ? 230 : 270) / all.height()));
    }

    /** The room of a sector in its own units, its point at 0, 0 and its middle pointing up. */
    static Box bounds(Values v) {
        double half = Math.min(v.at("angle"), WIDEST) / 2;
        double across = half >= 90 ? 1 : StrictMath.sin(Math.toRadians(half));
        double under = Math.max(0, -StrictMath.cos(Math.toRadians(half)));
        double outer = v.at("outer");
        return new Box(-across * outer, -outer, across * outer, under * outer);
    }

    static void drawTo(Brief brief, Sheet sheet, double scale) {
        Values v = brief.right();
        double outer = Math.max(10, v.at("outer") * scale);
        double inner = v.has("inner") ? outer * v.at("inner") / v.at("outer") : 0;
        double half = half(v);
        Pt apex = new Pt(0, 0);
        sheet.path(Pen.VISIBLE, outline(outer, inner, 90 - half, 90 + half), "part");
        if (inner > 0) {
            sheet.line(Pen.CENTER, apex, apex.polar(inner, 90 - half));
            sheet.line(Pen.CENTER, apex, apex.polar(inner, 90 + half));
        }
        sheet.line(Pen.CENTER, -6, 0, 6, 0);
        sheet.line(Pen.CENTER, 0, -6, 0, 6);
        SectorMiss.draw(brief, sheet, outer / v.at("outer"));
        dimensions(v, sheet, new double[] {outer, inner, 90 - half, 90 + half});
        SectorMiss.size(brief, sheet);
    }

    /** A sector with its point at 0, 0, from one direction counterclockwise to the other. */
    static Path outline(double outer, double inner, double from, double to) {
        Pt apex = new Pt(0, 0);
        Path path = Path.from(apex.polar(inner, from)).lineTo(apex.polar(outer, from)).arcAround(apex, outer, from, to)
                .lineTo(apex.polar(inner, to));
        if (inner > 0) {
            path.arcAround(apex, inner, to, from);
        }
        return path.close();
    }

    /** Half the angle, in degrees. */
    static double half(Values v) {
        return Math.min(v.at("angle"), WIDEST) / 2;
    }

    private static void dimensions(Values v, Sheet sheet, double[] at) {
        Pt apex = new Pt(0, 0);
        double arc = at[1] > 60 ? at[1] * 0.6 : at[1] > 0 ? at[1] + (at[0] - at[1]) * 0.3 : at[0] * 0.35;
        AngleMark.draw(sheet, Ink.RIGHT, apex, arc, new double[] {at[2], at[3]}, 0, v.label("angle"));
        if (at[3] - at[2] > NO_ROOM_BESIDE) {
            Leader.to(sheet, Ink.RIGHT, apex, at[0], Labels.radius(v.label("outer")), 25, 40, 10, 55, 140, 155, 125);
        } else {
            Aligned.add(sheet, Ink.RIGHT, apex, apex.polar(at[0], at[2]), -1, 0, Labels.radius(v.label("outer")));
        }
        if (at[1] > 0) {
            Aligned.add(sheet, Ink.RIGHT, apex, apex.polar(at[1], at[3]), 1, 0, Labels.radius(v.label("inner")));
        }
    }
}
