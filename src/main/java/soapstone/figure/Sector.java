package soapstone.figure;

import java.util.List;

/** A sector of a circle or of a ring, such as the flat blank of a cone. */
final class Sector implements Drawer {

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("outer"), FigureArgument.length("inner").maybe(), FigureArgument.angle("angle"));
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at("outer") > 0 && v.at("angle") > 0 && v.at("angle") <= 360
                && (!v.has("inner") || v.at("inner") >= 0 && v.at("inner") < v.at("outer"));
    }

    @Override
    public String title(Brief brief) {
        return brief.say("sector.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        Values v = brief.right();
        t.say("sector.is").value(v, "outer", "sector.outer").value(v, "inner", "sector.inner").value(v, "angle", "sector.angle");
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double half = Math.min(v.at("angle"), 359.5) / 2;
        double across = 2 * (half >= 90 ? 1 : StrictMath.sin(Math.toRadians(half)));
        double tall = 1 + Math.max(0, -StrictMath.cos(Math.toRadians(half)));
        double outer = Math.max(10, Math.min(room / across, (brief.isNarrow() ? 230 : 270) / tall));
        double inner = v.has("inner") ? outer * v.at("inner") / v.at("outer") : 0;
        Pt apex = new Pt(0, 0);
        double from = 90 - half;
        double to = 90 + half;
        Path path = Path.from(apex.polar(inner, from)).lineTo(apex.polar(outer, from)).arcAround(apex, outer, from, to)
                .lineTo(apex.polar(inner, to));
        if (inner > 0) {
            path.arcAround(apex, inner, to, from);
        }
        sheet.path(Pen.VISIBLE, path.close(), "part");
        if (inner > 0) {
            sheet.line(Pen.CENTER, apex, apex.polar(inner, from));
            sheet.line(Pen.CENTER, apex, apex.polar(inner, to));
        }
        sheet.line(Pen.CENTER, -6, 0, 6, 0);
        sheet.line(Pen.CENTER, 0, -6, 0, 6);
        dimensions(v, sheet, new double[] {outer, inner, from, to});
    }

    private static void dimensions(Values v, Sheet sheet, double[] at) {
        Pt apex = new Pt(0, 0);
        double arc = at[1] > 60 ? at[1] * 0.6 : at[1] > 0 ? at[1] + (at[0] - at[1]) * 0.3 : at[0] * 0.35;
        AngleMark.draw(sheet, Ink.RIGHT, apex, arc, new double[] {at[2], at[3]}, 0, v.label("angle"));
        Aligned.add(sheet, Ink.RIGHT, apex, apex.polar(at[0], at[2]), -1, 0, Labels.radius(v.label("outer")));
        if (at[1] > 0) {
            Aligned.add(sheet, Ink.RIGHT, apex, apex.polar(at[1], at[3]), 1, 0, Labels.radius(v.label("inner")));
        }
    }
}
