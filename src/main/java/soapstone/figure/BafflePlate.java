package soapstone.figure;

import java.util.List;

/** A baffle from the front with its round opening, and beside it in section. */
final class BafflePlate extends NamedDrawer {

    private static final double BETWEEN = 34;
    private static final double THICK = 6;
    private static final double MOST = 1.6;

    BafflePlate() {
        super("baffle-plate", FigureArgument.length("width"), FigureArgument.length("height"), FigureArgument.length("opening"));
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        double width = v.at("width");
        double height = v.at("height");
        return width > 0 && height > 0 && v.at("opening") > 0 && width < 30 * height && height < 30 * width;
    }

    @Override
    String miss(Brief brief) {
        double off = brief.yours().at("opening") - brief.right().at("opening");
        if (!brief.differs("opening")) {
            return "";
        }
        String text = brief.say(off < 0 ? "miss.narrow" : "miss.wide", brief.size(off));
        return isOffSheet(brief) ? brief.say("tank.off.sheet", text) : text;
    }

    private static boolean isOffSheet(Brief brief) {
        Values y = brief.yours();
        Values r = brief.right();
        return y.at("opening") > MOST * r.at("width") || y.at("width") > MOST * r.at("width") || y.at("height") > MOST * r.at("height");
    }

    @Override
    public List<Label> notes(Brief brief) {
        boolean yours = brief.isAsCut() && !miss(brief).isEmpty();
        return yours ? List.of(Label.text(miss(brief))) : List.of();
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double scale = Math.min(Math.max(20, room - BETWEEN - THICK) / v.at("width"), (brief.isNarrow() ? 180 : 220) / v.at("height"));
        Box plate = plate(v, scale);
        Pt center = new Pt(0, 0);
        double radius = v.at("opening") * scale / 2;
        sheet.plate(Pen.VISIBLE, plate, "part");
        sheet.circle(Pen.VISIBLE, center, radius, "opening");
        sheet.line(Pen.CENTER, -radius - 8, 0, radius + 8, 0);
        sheet.line(Pen.CENTER, 0, -radius - 8, 0, radius + 8);
        section(sheet, plate, radius);
        boolean yours = brief.isAsCut() && !isOffSheet(brief);
        if (yours) {
            yours(brief, sheet, plate, scale, radius);
        }
        double top = sheet.bounds().top();
        Across above = new Across(sheet, top, true, Ink.RIGHT, 0);
        above.add(-radius, radius, 0, Labels.diameter(v.label("opening")));
        above.add(plate.left(), plate.right(), plate.top(), v.label("width"));
        new Upright(sheet, sheet.bounds().left(), true, Ink.RIGHT).add(plate.top(), plate.bottom(), plate.left(), v.label("height"));
        if (yours && brief.differs("opening")) {
            double own = brief.yours().at("opening") * scale / 2;
            new Across(sheet, Math.max(plate.bottom(), own) + 2, false, Ink.YOURS, 0)
                    .add(-own, own, 0, Labels.diameter(brief.yours().label("opening")).isEmpty() ? Label.NONE
                            : Label.text(brief.say("yours") + " ").then(Labels.diameter(brief.yours().label("opening"))));
        }
    }

    private static Box plate(Values v, double scale) {
        double half = v.at("width") * scale / 2;
        double tall = v.at("height") * scale / 2;
        return new Box(-half, -tall, half, tall);
    }

    /** The plate cut through its middle; the opening is the gap. */
    private static void section(Sheet sheet, Box plate, double radius) {
        double x = plate.right() + BETWEEN;
        double open = Math.min(radius, plate.bottom());
        sheet.plate(Pen.SECTION, new Box(x, plate.top(), x + THICK, -open), "section");
        sheet.plate(Pen.SECTION, new Box(x, open, x + THICK, plate.bottom()), "section");
        sheet.path(Pen.THIN, Path.line(x, -open, x, open).moveTo(new Pt(x + THICK, -open)).lineTo(new Pt(x + THICK, open)));
        sheet.line(Pen.CENTER, x - 8, 0, x + THICK + 8, 0);
    }

    private static void yours(Brief brief, Sheet sheet, Box plate, double scale, double radius) {
        Values y = brief.yours();
        if (brief.differs("width") || brief.differs("height")) {
            sheet.plate(Pen.PHANTOM, plate(y, scale), "yours-part");
        }
        double own = y.at("opening") * scale / 2;
        if (Math.abs(own - radius) < 1) {
            return;
        }
        sheet.circle(Pen.PHANTOM, new Pt(0, 0), own, "yours-opening");
        for (int side : new int[] {-1, 1}) {
            Strip.miss(sheet, new Pt(side * radius, 0), new Pt(side * own, 0), 14);
        }
    }
}
