package soapstone.figure;

/** A blank on the die of a press brake, its end against the stop; the bend line at x = 0, the top of the die at y = 0. */
final class GaugeView {

    private static final double LEAST_THICK = 3;
    private static final double STOP = 14;
    private static final double STOP_OVER = 16;
    private static final double PUNCH = 52;
    private static final double LIFT = 7;

    private final Brief brief;
    private final Values v;
    private final GaugeMiss miss;
    private final double scale;
    private final double thick;
    private final BrakeTools tools;

    GaugeView(Brief brief, double room) {
        this.brief = brief;
        this.v = brief.right();
        this.miss = GaugeMiss.of(brief);
        double low = v.at("stop") - v.at("blank");
        double high = v.at("stop");
        if (hasYours()) {
            low = Math.min(low, brief.yours().at("stop") - brief.yours().at("blank"));
            high = Math.max(high, brief.yours().at("stop"));
        }
        this.scale = Math.min(Math.max(20, room - STOP) / (Math.max(0, high) - Math.min(0, low)), (brief.isNarrow() ? 46 : 64) / v.at("opening"));
        this.thick = Math.max(LEAST_THICK, v.at("thickness") * scale);
        this.tools = new BrakeTools(v.at("opening") * scale);
    }

    private boolean hasYours() {
        return !miss.is("") && !miss.isOffSheet(brief);
    }

    void draw(Sheet sheet) {
        double stop = v.at("stop") * scale;
        double end = (v.at("stop") - v.at("blank")) * scale;
        double top = -thick - PUNCH;
        tools.die(sheet);
        tools.punch(sheet, -thick, v.at("radius") * scale, top);
        sheet.plate(Pen.SECTION, new Box(end, -thick, stop, 0), "blank");
        sheet.plate(Pen.VISIBLE, new Box(stop, -thick - STOP_OVER, stop + STOP, STOP_OVER / 2), "stop");
        sheet.line(Pen.CENTER, 0, top - 8, 0, tools.bottom() + 8);
        if (hasYours()) {
            drawYours(sheet);
        }
        Leader.to(sheet, Ink.RIGHT, new Pt(stop + STOP / 2, -thick - STOP_OVER), 0, Label.text(brief.say("back-gauge.the.stop")), 120, 90, 60, 150);
        double half = Math.max(0.3 * v.at("opening"), v.at("radius") * 1.2) * scale;
        Leader.to(sheet, Ink.RIGHT, new Pt(-half, top + 10), 0, Label.text(brief.say("brake.punch")), 180, 165);
        Leader.to(sheet, Ink.RIGHT, new Pt(-tools.side(), tools.bottom() - 8), 0, Label.text(brief.say("brake.die")), 180, 195);
        Across below = new Across(sheet, tools.bottom(), false, Ink.RIGHT, (stop + end) / 2);
        below.add(0, stop, STOP_OVER / 2, v.label("stop"));
        below.add(end, stop, STOP_OVER / 2, v.label("blank"));
        if (hasYours()) {
            yoursSizes(sheet);
        }
    }

    /** The answer's blank over the right one, from the answer's stop. */
    private void drawYours(Sheet sheet) {
        double stop = brief.yours().at("stop") * scale;
        double end = stop - brief.yours().at("blank") * scale;
        double y = -thick - LIFT;
        sheet.path(Pen.PHANTOM, Path.line(end, y, stop, y), "yours-blank");
        sheet.path(Pen.PHANTOM, Path.line(stop, y - STOP_OVER, stop, STOP_OVER / 2), "yours-stop");
    }

    private void yoursSizes(Sheet sheet) {
        Values theirs = brief.yours();
        double stop = theirs.at("stop") * scale;
        double end = stop - theirs.at("blank") * scale;
        Miss at = miss.is("stop") ? new Miss(v.at("stop") * scale, stop) : new Miss(stop - v.at("blank") * scale, end);
        Across below = new Across(sheet, sheet.bounds().bottom() - 2, false, Ink.YOURS, (stop + end) / 2);
        Miss.along(sheet, at, new Box(0, -thick - STOP_OVER, 0, 0), below, miss.text(brief));
        if (brief.differs("stop")) {
            below.add(0, stop, brief.yoursLabel("stop"));
        }
        if (brief.differs("blank")) {
            below.add(end, stop, brief.yoursLabel("blank"));
        }
    }
}
