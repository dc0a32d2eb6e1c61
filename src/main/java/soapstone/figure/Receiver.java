package soapstone.figure;

import java.util.List;

/** A standing pressure tank in section: a rolled shell between two dished heads, twice as wide as they are high. */
final class Receiver extends NamedDrawer {

    private static final double LEAST_WALL = 3;
    private static final int ARROWS = 4;

    Receiver() {
        super("receiver", FigureArgument.length("diameter"), FigureArgument.length("thickness"),
                FigureArgument.pressure("pressure").maybe());
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at("diameter") > 0 && v.at("thickness") > 0 && v.at("thickness") < v.at("diameter");
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double half = Math.max(40, Math.min(room, brief.isNarrow() ? 150 : 180) / 2);
        double wall = Math.max(LEAST_WALL, v.at("thickness") / v.at("diameter") * 2 * half);
        double height = half * 1.5;
        sheet.plate(Pen.SECTION, new Box(-half - wall, 0, -half, height), "wall");
        sheet.plate(Pen.SECTION, new Box(half, 0, half + wall, height), "wall");
        head(sheet, half, wall, 0, true);
        head(sheet, half, wall, height, false);
        sheet.line(Pen.CENTER, 0, -half / 2 - wall - 8, 0, height + half / 2 + wall + 8);
        Break.level(sheet, height * 0.78, -half - wall, half + wall);
        across(sheet, half, height * 0.45, v);
        Label thick = v.label("thickness");
        Leader.to(sheet, Ink.RIGHT, new Pt(half + wall, height * 0.2), 0,
                thick.isEmpty() || thick.isFramed() ? thick : Label.text(brief.say("fold.thick", thick.spoken())), 20, 0, 45, -20);
        if (v.has("pressure")) {
            pressure(sheet, half, v.label("pressure"));
        }
    }

    private static void head(Sheet sheet, double half, double wall, double y, boolean top) {
        double out = half + wall;
        sheet.path(Pen.SECTION, Path.from(new Pt(-out, y)).halfEllipse(new Pt(out, y), out, half / 2 + wall, top)
                .lineTo(new Pt(half, y)).halfEllipse(new Pt(-half, y), half, half / 2, !top).close(), "head");
    }

    /** The diameter between the walls, inside, where no extension line crosses a head. */
    private static void across(Sheet sheet, double half, double y, Values v) {
        Label label = Labels.diameter(v.label("diameter"));
        if (label.isEmpty()) {
            return;
        }
        sheet.line(Pen.THIN, -half, y, half, y);
        sheet.arrow(Pen.ARROW, new Pt(-half, y), 180);
        sheet.arrow(Pen.ARROW, new Pt(half, y), 0);
        sheet.keep(new Box(-half, y - 2, half, y + 2));
        sheet.letterFree(label, Lettering.TEXT, List.of(new Sheet.Spot(0, y - 6 - (label.isFramed() ? 7 : 0), Anchor.MIDDLE),
                new Sheet.Spot(0, y + 20, Anchor.MIDDLE), new Sheet.Spot(half + 30, y + 20, Anchor.START)));
    }

    /** Even pressure on the head from inside. */
    private static void pressure(Sheet sheet, double half, Label label) {
        for (int i = 0; i <= ARROWS; i++) {
            double x = half * 0.84 * (2.0 * i / ARROWS - 1);
            double y = -half / 2 * Math.sqrt(1 - x * x / half / half);
            sheet.line(Pen.THIN, x, y + 1, x, y + 22);
            sheet.arrow(Pen.ARROW, new Pt(x, y + 1), 90);
        }
        sheet.letterFree(label, Lettering.TEXT, List.of(new Sheet.Spot(0, 4, Anchor.MIDDLE), new Sheet.Spot(half + 30, -half / 2, Anchor.START)));
    }
}
