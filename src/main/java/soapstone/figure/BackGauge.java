package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/** A folded part in section, and below it its blank in the press brake against the stop of the back gauge. */
final class BackGauge implements Drawer {

    private static final double BETWEEN = 26;
    private static final double LONGEST = 40;

    @Override
    public List<FigureArgument> arguments() {
        List<FigureArgument> all = new ArrayList<>(FoldView.arguments());
        all.add(FigureArgument.length("opening"));
        all.add(FigureArgument.length("blank"));
        all.add(FigureArgument.length("stop"));
        return all;
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        double blank = v.at("blank");
        boolean tools = v.at("opening") > v.at("thickness") && v.at("opening") < 2 * blank && v.at("radius") <= v.at("opening") / 2;
        return FoldView.canDraw(v) && tools && v.at("stop") > 0 && v.at("stop") < LONGEST * blank && blank < LONGEST * v.at("stop");
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "back-gauge.title.yours" : "back-gauge.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("folded.is");
        FoldView.tell(brief, t);
        t.say("back-gauge.is");
        tellValues(brief.right(), t);
        if (brief.isAsCut()) {
            t.say("tank.yours");
            tellValues(brief.yours(), t);
            GaugeMiss miss = GaugeMiss.of(brief);
            t.sentence(miss.is("") ? "" : miss.text(brief) + ".");
        }
    }

    private static void tellValues(Values v, Telling t) {
        t.value(v, "opening", "brake.opening").value(v, "blank", "back-gauge.blank").value(v, "stop", "back-gauge.stop");
    }

    @Override
    public List<Label> notes(Brief brief) {
        List<Label> notes = new ArrayList<>(FoldView.notes(part(brief)));
        if (GaugeMiss.of(brief).isOffSheet(brief)) {
            notes.add(Label.text(brief.say("tank.off.sheet", GaugeMiss.of(brief).text(brief))));
        }
        return notes;
    }

    /** The part itself is drawn as it should be: what an answer moves is blank and stop. */
    private static Brief part(Brief brief) {
        return new Brief(brief.right(), null, brief.words(), brief.width());
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Sheet section = new Sheet();
        FoldView.draw(part(brief), section, room * 0.6, brief.isNarrow() ? 90 : 110, false);
        new GaugeView(brief, room).draw(sheet);
        Box a = section.bounds();
        Box b = sheet.bounds();
        sheet.add(section, (b.left() + b.right() - a.left() - a.right()) / 2, b.top() - BETWEEN - a.bottom());
    }
}
