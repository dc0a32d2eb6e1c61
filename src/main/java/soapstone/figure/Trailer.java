package soapstone.figure;

import java.util.ArrayList;
import java.util.List;
import soapstone.quantity.Dimension;

/**
 * A trailer from the side with its ball, its axle and the balance point of all that it carries. Center and axle are
 * measured from the front of the bed; without a bed's front they are measured from the ball.
 */
final class Trailer extends NamedDrawer {

    private static final double WHEEL = 0.11;
    private static final double TANK = 74;
    private static final double BED = 8;
    private static final double ARROW = 46;

    Trailer() {
        super("trailer", FigureArgument.length("bed").maybe(), FigureArgument.length("axle"), FigureArgument.length("center"),
                FigureArgument.length("place").maybe(), new FigureArgument("tongue", Dimension.MASS, false, true));
    }

    @Override
    public boolean asCut() {
        return true;
    }

    private static double bed(Values v) {
        return v.has("bed") ? v.at("bed") : 0;
    }

    @Override
    public boolean canDraw(Values v) {
        double reach = bed(v) + v.at("axle");
        return bed(v) >= 0 && v.at("axle") > 0 && v.at("center") > 0 && v.at("center") < 1.4 * reach && bed(v) < 4 * v.at("axle");
    }

    @Override
    public boolean prints(String argument) {
        return !argument.equals("place");
    }

    @Override
    String miss(Brief brief) {
        double off = brief.differs("place") ? brief.yours().at("place") - brief.right().at("place") : 0;
        if (off == 0) {
            return "";
        }
        return brief.say(word(isOffSheet(brief) ? "off" : off < 0 ? "ahead" : "behind"), brief.size(off));
    }

    private static boolean isOffSheet(Brief brief) {
        Values r = brief.right();
        double x = bed(r) + brief.yours().at("place");
        double reach = bed(r) + r.at("axle");
        return x < 0 || x > 1.3 * reach;
    }

    @Override
    public List<Label> notes(Brief brief) {
        List<Label> notes = new ArrayList<>();
        if (brief.isAsCut() && !miss(brief).isEmpty()) {
            notes.add(Label.text(miss(brief)));
        }
        notes.add(Label.text(brief.say(word("sketch"))));
        return notes;
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double datum = bed(v);
        double axle = datum + v.at("axle");
        double front = datum > 0 ? datum : 0.32 * axle;
        double rear = axle + 0.32 * axle;
        double scale = room / rear;
        Side side = new Side(front * scale, axle * scale, rear * scale, Math.min(30, WHEEL * room));
        side.draw(sheet);
        double top = -side.wheel() - BED - TANK;
        double center = (datum + v.at("center")) * scale;
        sheet.line(Pen.CENTER, center, top - 14, center, 8 + side.wheel());
        Force.draw(sheet, Ink.RIGHT, new Pt(center, -side.wheel() - BED - 2), 270, TANK - 8, "weight");
        boolean yours = !miss(brief).isEmpty() && !isOffSheet(brief);
        if (v.has("tongue")) {
            Force.draw(sheet, Ink.RIGHT, new Pt(0, -side.wheel() - 8), 270, ARROW, "tongue");
        }
        if (yours) {
            yours(brief, sheet, new double[] {center, (datum + brief.yours().at("place")) * scale, top, -side.wheel() - BED});
        }
        dimensions(v, sheet, side, center, datum * scale);
        Leader.to(sheet, Ink.RIGHT, new Pt(0, -side.wheel() - ARROW), 0, v.label("tongue"), 120, 60, 90, 150, 180, 20);
        if (brief.differs("tongue")) {
            Leader.to(sheet, Ink.YOURS, new Pt(0, -side.wheel() + 4), 0, brief.yoursLabel("tongue"), 300, 270, 240, 320);
        }
        if (yours) {
            double place = (datum + brief.yours().at("place")) * scale;
            Across below = new Across(sheet, side.wheel() + 8, false, Ink.YOURS, room / 2);
            below.add(center, place, -side.wheel() - BED, Label.text(brief.size(brief.yours().at("place") - brief.right().at("place"))));
        }
    }

    private static void dimensions(Values v, Sheet sheet, Side side, double center, double datum) {
        double top = sheet.bounds().top();
        Across above = new Across(sheet, top, true, Ink.RIGHT, side.rear() / 2);
        double from = -side.wheel() - BED - TANK;
        above.add(datum, center, from, v.label("center"));
        above.add(datum, side.axle(), from, v.label("axle"));
        if (datum > 0) {
            above.add(0, datum, from, v.label("bed"));
        }
    }

    /** Where the answer's weight on the ball would put the balance point. */
    private static void yours(Brief brief, Sheet sheet, double[] at) {
        if (Math.abs(at[1] - at[0]) >= 1.5) {
            Hatch.fill(sheet, Pen.YOURS_HATCH, new Box(Math.min(at[0], at[1]), at[3] - TANK * 0.3, Math.max(at[0], at[1]), at[3] - TANK * 0.05));
        }
        Force.draw(sheet, Ink.YOURS, new Pt(at[1], at[3] - 2), 270, TANK - 8, "yours-weight");
    }

    /**
     * The trailer in SVG units: ball at x = 0, axle at y = 0.
     *
     * @param wheel radius of the wheel
     */
    private record Side(double front, double axle, double rear, double wheel) {

        void draw(Sheet sheet) {
            double bed = -wheel - BED;
            sheet.plate(Pen.VISIBLE, new Box(front, bed, rear, bed + BED), "bed");
            sheet.path(Pen.VISIBLE, Path.line(front, bed + BED / 2, 8, bed + BED / 2).lineTo(new Pt(5, bed + BED)), "tongue-bar");
            sheet.circle(Pen.VISIBLE, new Pt(0, bed + BED + 3), 5, "ball");
            sheet.line(Pen.VISIBLE, 0, bed + BED + 8, 0, bed + BED + 18);
            sheet.circle(Pen.VISIBLE, new Pt(axle, 0), wheel, "wheel");
            sheet.circle(Pen.VISIBLE, new Pt(axle, 0), 4, "axle");
            sheet.path(Pen.THIN, Path.line(-14, wheel, rear + 10, wheel), "ground");
            sheet.plate(Pen.BEND, new Box(front + 8, bed - TANK, rear - 10, bed), "load");
        }
    }
}
