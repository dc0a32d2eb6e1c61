package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * One bend, large, in section: inside radius, thickness, the angle turned through, the neutral line, the setback. Below it,
 * where the allowance or the deduction is given, the bend laid flat.
 */
final class Bend implements Drawer {

    private static final double BETWEEN = 22;
    private static final double MOST = 30;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("thickness"), FigureArgument.length("radius"), FigureArgument.angle("angle"),
                FigureArgument.number("k").maybe(), FigureArgument.length("setback").maybe(),
                FigureArgument.length("allowance").maybe(), FigureArgument.length("deduction").maybe(),
                FigureArgument.length("first").maybe(), FigureArgument.length("second").maybe());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        double thickness = v.at("thickness");
        double outer = v.at("radius") + thickness;
        boolean bend = thickness > 0 && v.at("radius") >= 0 && outer < MOST * thickness && v.at("angle") >= 5 && v.at("angle") <= 165;
        if (!bend) {
            return false;
        }
        double neutral = v.has("k") ? v.at("radius") + v.at("k") * thickness : outer;
        return neutral > 0 && neutral < 3 * outer && isBetween(v, "setback", 0, MOST * outer) && isBetween(v, "allowance", 0, MOST * outer)
                && isBetween(v, "deduction", -MOST * outer, MOST * outer) && (!v.has("deduction") || v.has("setback")) && BendView.hasRoom(v);
    }

    private static boolean isBetween(Values v, String name, double low, double high) {
        return !v.has(name) || v.at(name) > low && v.at(name) < high;
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "bend.title.yours" : "bend.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("bend.is");
        if (BendFlat.has(brief.right())) {
            t.say(brief.right().has("deduction") ? "bend.is.deduction" : "bend.is.allowance");
        }
        tellValues(brief.right(), t);
        BendMiss miss = BendMiss.of(brief);
        if (brief.isAsCut()) {
            t.say("tank.yours");
            tellValues(brief.yours(), t);
            t.sentence(miss.is("") ? "" : miss.text(brief) + ".");
        }
        notes(brief).forEach(n -> t.sentence(n.spoken() + "."));
    }

    private static void tellValues(Values v, Telling t) {
        t.value(v, "thickness", "fold.thickness").value(v, "radius", "fold.radius").value(v, "angle", "bend.angle").value(v, "k", "bend.k")
                .value(v, "setback", "bend.setback").value(v, "allowance", "bend.allowance").value(v, "deduction", "bend.deduction")
                .value(v, "first", "bend.first").value(v, "second", "bend.second");
    }

    @Override
    public List<Label> notes(Brief brief) {
        List<Label> notes = new ArrayList<>();
        if (BendView.isMissBelow(brief)) {
            notes.add(Label.text(BendMiss.of(brief).text(brief)));
        }
        if (BendView.isOffSheet(brief)) {
            notes.add(Label.text(brief.say("tank.off.sheet", BendMiss.of(brief).text(brief))));
        }
        return notes;
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        BendView view = new BendView(brief, room);
        view.draw(sheet);
        if (BendFlat.has(brief.right())) {
            Sheet flat = new Sheet();
            new BendFlat(brief, view.scale()).draw(flat);
            Box a = sheet.bounds();
            Box b = flat.bounds();
            sheet.add(flat, (a.left() + a.right() - b.left() - b.right()) / 2, a.bottom() + BETWEEN - b.top());
        }
    }
}
