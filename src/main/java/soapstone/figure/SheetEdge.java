package soapstone.figure;

import java.util.ArrayList;
import java.util.List;
import soapstone.quantity.UnitSystem;

/** A piece of thin sheet on its edge, much larger than it is, with its thickness; all sheets to one scale. */
final class SheetEdge implements Drawer {

    /** Scale in SVG units for an inch, unless the sheet would be too thick to draw. */
    private static final double USUAL = 480;
    private static final double THICKEST = 110;
    private static final double MOST_THICKER = 4;
    private static final double LEAST_THICK = 3;
    private static final double INCH = 25.4;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("thickness"));
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at("thickness") > 0;
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "sheet-edge.title.yours" : "sheet-edge.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("sheet-edge.is").value(brief.right(), "thickness", "fold.thickness");
        if (brief.isAsCut()) {
            t.say("tank.yours").value(brief.yours(), "thickness", "fold.thickness");
            t.sentence(brief.differs("thickness") ? miss(brief) + "." : "");
        }
        notes(brief).forEach(n -> t.sentence(n.spoken() + "."));
    }

    private static String miss(Brief brief) {
        double off = brief.yours().at("thickness") - brief.right().at("thickness");
        return brief.say(off < 0 ? "miss.thin" : "miss.thick", Sizes.finest(off, brief.system()));
    }

    private static boolean isOffSheet(Brief brief) {
        return brief.isAsCut() && brief.yours().at("thickness") > MOST_THICKER * brief.right().at("thickness");
    }

    @Override
    public List<Label> notes(Brief brief) {
        List<Label> notes = new ArrayList<>();
        notes.add(Label.text(brief.say("sheet-edge.scale")));
        if (isOffSheet(brief)) {
            notes.add(Label.text(brief.say("tank.off.sheet", miss(brief))));
        }
        return notes;
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        double right = brief.right().at("thickness");
        boolean withYours = brief.isAsCut() && brief.differs("thickness") && !isOffSheet(brief);
        double most = withYours ? Math.max(right, brief.yours().at("thickness")) : right;
        double usual = brief.system() == UnitSystem.US ? USUAL : USUAL / INCH;
        double scale = Math.min(usual, THICKEST / most);
        double thick = Math.max(LEAST_THICK, right * scale);
        double length = Math.min(room, brief.isNarrow() ? 170 : 320);
        sheet.plate(Pen.WATER, new Box(0, -thick, length, 0), "");
        sheet.path(Pen.VISIBLE, Path.line(0, -thick, length, -thick), "upper");
        sheet.path(Pen.VISIBLE, Path.line(0, 0, length, 0), "lower");
        Break.end(sheet, Pen.BREAK, 0, -thick, 0);
        Break.end(sheet, Pen.BREAK, length, -thick, 0);
        double yours = withYours ? Math.max(1, brief.yours().at("thickness") * scale) : 0;
        if (withYours) {
            sheet.path(Pen.PHANTOM, Path.line(0, -yours, length, -yours), "yours-upper");
        }
        new Upright(sheet, -4, true, Ink.RIGHT).add(-thick, 0, brief.right().label("thickness"));
        if (withYours) {
            drawMiss(brief, sheet, new Box(0, -yours, length, -thick));
        }
    }

    /** @param between the upper faces: top at the answer's, bottom at the right one */
    private static void drawMiss(Brief brief, Sheet sheet, Box between) {
        double low = Math.max(between.top(), between.bottom());
        double high = Math.min(between.top(), between.bottom());
        if (low - high >= 1.5) {
            Hatch.fill(sheet, Pen.YOURS_HATCH, new Box(0, high, between.right(), low));
        }
        new Upright(sheet, between.right() + 4, false, Ink.YOURS).add(between.top(), 0, brief.yoursLabel("thickness"));
        Leader.to(sheet, Ink.YOURS, new Pt(between.right() * 0.5, (high + low) / 2), 0, Label.text(miss(brief)), 60, 120, -60, -120, 90, -90);
    }
}
