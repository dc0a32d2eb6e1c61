package soapstone.figure;

import java.util.List;

/**
 * A tank in section with a gauge below the surface: the column of liquid that stands over the gauge, and the pressure that
 * grows with depth. An answer's pressure shows as the column that it would take.
 */
final class WaterColumn extends NamedDrawer {

    private static final double MOST = 2.2;
    private static final double BELOW = 16;
    private static final double GAUGE = 15;
    private static final double PIPE = 26;
    private static final int ARROWS = 6;

    WaterColumn() {
        super("water-column", FigureArgument.length("depth"), FigureArgument.pressure("pressure").maybe(),
                FigureArgument.length("head").maybe());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at("depth") > 0 && (!v.has("head") || v.at("head") >= 0);
    }

    @Override
    public boolean prints(String argument) {
        return !argument.equals("head");
    }

    @Override
    public boolean printsOfYours(String argument) {
        return true;
    }

    @Override
    String miss(Brief brief) {
        if (!brief.differs("head")) {
            return "";
        }
        String takes = brief.say(word("takes"), head(brief));
        return isOffSheet(brief) ? brief.say("tank.off.sheet", takes) : takes;
    }

    /** The column that the answer takes, as its value is told. */
    private static String head(Brief brief) {
        Label told = brief.yours().label("head");
        return told.isEmpty() ? brief.size(brief.yours().at("head")) : told.spoken();
    }

    private static boolean isOffSheet(Brief brief) {
        return brief.differs("head") && brief.yours().at("head") > MOST * brief.right().at("depth");
    }

    @Override
    public List<Label> notes(Brief brief) {
        return miss(brief).isEmpty() ? List.of() : List.of(Label.text(miss(brief)));
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        boolean yours = brief.differs("head") && !isOffSheet(brief);
        double tallest = Math.max(v.at("depth"), yours ? brief.yours().at("head") : 0);
        double scale = (brief.isNarrow() ? 170 : 210) / tallest;
        double depth = v.at("depth") * scale;
        double width = Math.max(90, Math.min(room - PIPE - 2 * GAUGE, brief.isNarrow() ? 130 : 190));
        tank(sheet, width, depth);
        Box column = new Box(width - 40, -depth, width - 18, 0);
        sheet.plate(Pen.THIN, column, "column");
        pressure(sheet, depth);
        Pt gauge = gauge(sheet, width);
        if (yours) {
            yoursColumn(brief, sheet, column, scale);
        }
        new Upright(sheet, 0, true, Ink.RIGHT).add(0, -depth, v.label("depth"));
        Leader.to(sheet, Ink.RIGHT, gauge, GAUGE, v.label("pressure"), -30, -60, 0, 30);
        if (brief.differs("pressure")) {
            Leader.to(sheet, Ink.YOURS, gauge, GAUGE, brief.yoursLabel("pressure"), 250, 235, 260, -60);
        }
    }

    private static void tank(Sheet sheet, double width, double depth) {
        sheet.plate(Pen.WATER, new Box(0, -depth, width, BELOW), "");
        sheet.path(Pen.VISIBLE, Path.line(0, -depth - 10, 0, BELOW).lineTo(new Pt(width, BELOW)).lineTo(new Pt(width, -depth - 10)), "part");
        sheet.path(Pen.THIN, Path.line(0, -depth, width, -depth), "surface");
        Surface.sign(sheet, Pen.THIN, width * 0.45, -depth);
    }

    /** The pressure against the left wall: nothing at the surface, most at the depth of the gauge. */
    private static void pressure(Sheet sheet, double depth) {
        double most = 40;
        sheet.path(Pen.THIN, Path.polygon(List.of(new Pt(1, -depth), new Pt(most, 0), new Pt(1, 0))), "pressure");
        for (int i = 1; i <= ARROWS; i++) {
            double y = -depth + depth * i / (ARROWS + 1);
            double reach = most * i / (ARROWS + 1);
            if (reach > 12 && depth > 40) {
                sheet.line(Pen.THIN, 1, y, reach, y);
                sheet.arrow(Pen.ARROW, new Pt(1, y), 180);
            }
        }
    }

    private static Pt gauge(Sheet sheet, double width) {
        sheet.path(Pen.VISIBLE, Path.line(width, -4, width + PIPE, -4).moveTo(new Pt(width, 4)).lineTo(new Pt(width + PIPE, 4)));
        Pt center = new Pt(width + PIPE + GAUGE, 0);
        sheet.circle(Pen.VISIBLE, center, GAUGE, "gauge");
        Pt tip = center.polar(GAUGE - 5, 50);
        sheet.line(Pen.BEND, center, tip);
        return center;
    }

    private static void yoursColumn(Brief brief, Sheet sheet, Box column, double scale) {
        double head = brief.yours().at("head") * scale;
        sheet.path(Pen.PHANTOM, Path.line(column.left() - 8, -head, column.right() + 8, -head), "yours-head");
        if (Math.abs(column.top() + head) >= 1.5) {
            Hatch.fill(sheet, Pen.YOURS_HATCH, new Box(column.left(), Math.min(column.top(), -head), column.right(),
                    Math.max(column.top(), -head)));
        }
        Label told = brief.yoursLabel("head");
        Label takes = told.isEmpty() ? Label.text(brief.say("yours") + " " + head(brief)) : told;
        double beside = column.right() + 18 + PIPE + 2 * GAUGE;
        sheet.line(Pen.YOURS_THIN, column.right() + 12, -head, beside, -head);
        new Upright(sheet, beside, false, Ink.YOURS).compact(brief.isNarrow()).add(0, -head, takes);
    }
}
