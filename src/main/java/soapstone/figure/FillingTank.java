package soapstone.figure;

import java.util.List;
import soapstone.quantity.Dimension;

/** A tank in section that a pipe fills: what it takes, what is in it, and what comes in. Levels are shares of what it takes. */
final class FillingTank extends NamedDrawer {

    private static final double MOST = 1.35;

    FillingTank() {
        super("filling-tank", new FigureArgument("capacity", Dimension.VOLUME, false, false),
                new FigureArgument("start", Dimension.VOLUME, false, false),
                new FigureArgument("flow", Dimension.VOLUME.over(Dimension.TIME), false, true),
                new FigureArgument("filled", Dimension.VOLUME, false, true));
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at("capacity") > 0 && v.at("start") >= 0 && v.at("start") <= v.at("capacity") && (!v.has("filled") || v.at("filled") >= 0);
    }

    @Override
    String miss(Brief brief) {
        if (!brief.differs("filled")) {
            return "";
        }
        boolean more = brief.yours().at("filled") > brief.right().at("filled");
        return brief.say(word(more ? "over" : "short"));
    }

    @Override
    public List<Label> notes(Brief brief) {
        return miss(brief).isEmpty() ? List.of() : List.of(Label.text(miss(brief)));
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double width = Math.max(60, Math.min(room, brief.isNarrow() ? 130 : 180));
        double height = brief.isNarrow() ? 150 : 170;
        double start = v.at("start") / v.at("capacity") * height;
        sheet.plate(Pen.WATER, new Box(0, -start, width, 0), "");
        sheet.path(Pen.THIN, Path.line(0, -start, width, -start), "start");
        sheet.path(Pen.HIDDEN, Path.line(0, -height, width, -height), "full");
        sheet.path(Pen.VISIBLE, Path.line(0, -height - 12, 0, 0).lineTo(new Pt(width, 0)).lineTo(new Pt(width, -height - 12)), "part");
        if (start > 14) {
            Surface.sign(sheet, Pen.THIN, width * 0.7, -start);
        }
        Pt mouth = pipe(sheet, width * 0.25, height);
        boolean yours = brief.differs("filled");
        if (yours) {
            yours(brief, sheet, new double[] {width, height, start});
        }
        Leader.to(sheet, Ink.RIGHT, mouth, 0, v.label("flow"), 60, 90, 45, 120);
        Upright left = new Upright(sheet, 0, true, Ink.RIGHT);
        if (start > 0) {
            left.add(0, -start, v.label("start"));
        }
        left.add(0, -height, v.label("capacity"));
        if (yours) {
            double level = level(brief, height);
            new Upright(sheet, width, false, Ink.YOURS).compact(brief.isNarrow()).add(0, -level, brief.yoursLabel("filled"));
        }
    }

    /** The pipe over the rim, with an arrow for what comes in; gives the point to letter. */
    private static Pt pipe(Sheet sheet, double x, double height) {
        double top = -height - 62;
        sheet.path(Pen.VISIBLE, Path.line(x - 44, top, x + 6, top).lineTo(new Pt(x + 6, top + 30)), "pipe");
        sheet.path(Pen.VISIBLE, Path.line(x - 44, top + 12, x - 6, top + 12).lineTo(new Pt(x - 6, top + 30)));
        sheet.line(Pen.THIN, x, top + 30, x, -height - 8);
        sheet.arrow(Pen.ARROW, new Pt(x, -height - 4), 270);
        return new Pt(x - 16, top);
    }

    /** Where the answer fills the tank to, kept on the sheet. */
    private static double level(Brief brief, double height) {
        return Math.min(MOST, brief.yours().at("filled") / brief.right().at("capacity")) * height;
    }

    private static void yours(Brief brief, Sheet sheet, double[] size) {
        double level = level(brief, size[1]);
        double right = Math.min(MOST, brief.right().at("filled") / brief.right().at("capacity")) * size[1];
        if (Math.abs(level - right) >= 1.5) {
            Hatch.fill(sheet, Pen.YOURS_HATCH, new Box(size[0] * 0.45, -Math.max(level, right), size[0], -Math.min(level, right)));
        }
        sheet.path(Pen.PHANTOM, Path.line(size[0] * 0.45, -level, size[0] + 6, -level), "yours-level");
        if (level >= MOST * size[1]) {
            sheet.arrow(Pen.YOURS_ARROW, new Pt(size[0] * 0.7, -level - 14), 90);
        }
    }
}
