package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/** A drum on its side: the end as a circle with the level, and beside or under it the length. */
final class LyingDrum implements Drawer {

    private static final double BETWEEN = 26;
    private static final double LONGEST = 2.6;
    private static final double LONG = 56;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("diameter"), FigureArgument.length("length"),
                FigureArgument.length("level").maybe());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at("diameter") > 0 && v.at("length") > 0 && Levels.isSound(v);
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "lying-drum.title.yours" : "lying-drum.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("lying-drum.is");
        tellValues(brief.right(), t);
        if (brief.isAsCut()) {
            t.say("tank.yours");
            tellValues(brief.yours(), t);
            String miss = DrumMiss.of(brief).text(brief);
            t.sentence(miss.isEmpty() ? miss : miss + ".");
        }
        notes(brief).forEach(n -> t.sentence(n.spoken() + "."));
    }

    private static void tellValues(Values v, Telling t) {
        t.value(v, "diameter", "diameter").value(v, "length", "length").value(v, "level", "level");
    }

    @Override
    public List<Label> notes(Brief brief) {
        List<Label> notes = new ArrayList<>();
        notes.add(Levels.over(brief, brief.right(), brief.right().at("diameter")));
        if (brief.isAsCut()) {
            Label over = Levels.over(brief, brief.yours(), brief.yours().at("diameter"));
            notes.add(over.isEmpty() ? over : Label.text(brief.say("yours") + ": ").then(over));
            if (DrumMiss.of(brief).isOffSheet(brief)) {
                notes.add(Label.text(brief.say("tank.off.sheet", DrumMiss.of(brief).text(brief))));
            }
        }
        notes.removeIf(Label::isEmpty);
        return notes;
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        boolean stacked = brief.isNarrow() && (brief.isAsCut() || isLong(v.label("level")) || isLong(v.label("diameter")));
        double diameter = v.at("diameter");
        double drawn = Math.min(v.at("length"), LONGEST * diameter);
        double across = stacked ? Math.max(diameter, drawn) : diameter + drawn;
        double scale = Math.min(Math.max(20, room - (stacked ? 0 : BETWEEN)) / across, (brief.isNarrow() ? 130 : 190) / diameter);
        Sheet end = new Sheet();
        new DrumEnd(brief, scale).draw(end);
        Sheet side = new Sheet();
        new DrumSide(brief, scale, drawn).draw(side);
        Box a = end.bounds();
        Box b = side.bounds();
        sheet.add(end, 0, 0);
        if (stacked) {
            sheet.add(side, a.left() + (a.width() - b.width()) / 2 - b.left(), a.bottom() + BETWEEN - b.top());
        } else {
            sheet.add(side, a.right() + BETWEEN - b.left(), 0);
        }
    }

    private static boolean isLong(Label label) {
        return label.width(Lettering.TEXT) > LONG;
    }
}
