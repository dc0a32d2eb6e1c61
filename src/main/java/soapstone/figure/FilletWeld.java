package soapstone.figure;

import java.util.List;

/**
 * A fillet weld in section with its legs and its throat, its symbol, and below the seam in its length. An answer shows as
 * the length of seam that it welds.
 */
final class FilletWeld extends NamedDrawer {

    private static final double LEG = 54;
    private static final double PLATE = 30;
    private static final double ARM = 118;
    private static final double BETWEEN = 40;
    private static final double SEAM = 14;

    FilletWeld() {
        super("fillet-weld", FigureArgument.length("leg"), FigureArgument.length("throat").maybe(), FigureArgument.length("seam").maybe(),
                FigureArgument.length("welded").maybe());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at("leg") > 0 && (!v.has("throat") || v.at("throat") > 0) && (!v.has("seam") || v.at("seam") > 0)
                && (!v.has("welded") || v.at("welded") >= 0);
    }

    @Override
    public boolean prints(String argument) {
        return !argument.equals("welded");
    }

    @Override
    public boolean printsOfYours(String argument) {
        return true;
    }

    @Override
    String miss(Brief brief) {
        double off = brief.differs("welded") ? brief.yours().at("welded") - brief.right().at("welded") : 0;
        return off == 0 ? "" : brief.say(word(off < 0 ? "open" : "over"));
    }

    @Override
    public List<Label> notes(Brief brief) {
        return miss(brief).isEmpty() ? List.of() : List.of(Label.text(miss(brief)));
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        Sheet section = new Sheet();
        section(v, section);
        Box b = section.bounds();
        if (!v.has("seam")) {
            sheet.add(section, 0, 0);
            return;
        }
        Sheet seam = new Sheet();
        seam(brief, seam, Math.max(60, room));
        Box s = seam.bounds();
        sheet.add(section, s.left() + (s.width() - b.width()) / 2 - b.left(), 0);
        sheet.add(seam, 0, b.bottom() + BETWEEN - s.top());
    }

    private static void section(Values v, Sheet sheet) {
        Box base = new Box(-PLATE - 50, 0, LEG + 60, PLATE);
        Box upright = new Box(-PLATE, -ARM, 0, 0);
        Hatch.fill(sheet, Pen.HATCH, base);
        Hatch.fill(sheet, Pen.HATCH, List.of(new Pt(-PLATE, -ARM), new Pt(0, -ARM), new Pt(0, 0), new Pt(-PLATE, 0)), true);
        sheet.plate(Pen.VISIBLE, base, "plate");
        sheet.plate(Pen.VISIBLE, upright, "plate");
        sheet.path(Pen.SECTION, Path.polygon(List.of(new Pt(0, 0), new Pt(LEG, 0), new Pt(0, -LEG))), "weld");
        new Across(sheet, PLATE, false, Ink.RIGHT, LEG / 2).add(0, LEG, v.label("leg"));
        new Upright(sheet, LEG + 36, false, Ink.RIGHT).add(0, -LEG, 0, v.label("leg"));
        WeldSymbol.draw(sheet, new Pt(LEG * 0.42, -LEG * 0.6), new Pt(LEG * 0.8, -ARM - 24), false, v.label("leg"), Label.NONE);
        if (v.has("throat")) {
            throat(v, sheet);
        }
    }

    /** The shortest way from the root to the face, dimensioned out past the face. */
    private static void throat(Values v, Sheet sheet) {
        double across = v.at("throat") / v.at("leg") * LEG;
        Pt face = new Pt(0, 0).polar(Math.min(across, LEG), 45);
        sheet.path(Pen.GAP, Path.polygon(Strip.between(new Pt(0, 0), face, 1.5)), "throat");
        Leader.to(sheet, Ink.RIGHT, face, 0, v.label("throat"), 20, 30, 10, 60);
    }

    private void seam(Brief brief, Sheet sheet, double length) {
        Values v = brief.right();
        sheet.line(Pen.VISIBLE, 0, -SEAM, length, -SEAM);
        sheet.line(Pen.VISIBLE, 0, 2 * SEAM, length, 2 * SEAM);
        sheet.path(Pen.VISIBLE, Path.line(0, -SEAM, 0, 2 * SEAM).moveTo(new Pt(length, -SEAM)).lineTo(new Pt(length, 2 * SEAM)), "seam");
        Bead.draw(sheet, new Box(0, 0, length, SEAM));
        new Across(sheet, -SEAM, true, Ink.RIGHT, length / 2).add(0, length, v.label("seam"));
        if (!miss(brief).isEmpty()) {
            double end = brief.yours().at("welded") / v.at("seam") * length;
            Reach reach = Reach.of(length, 0, end);
            YoursBar.draw(sheet, reach, end, 2 * SEAM + 8);
            double clipped = reach.clip(end);
            if (Math.abs(clipped - length) >= 1.5) {
                Hatch.fill(sheet, Pen.YOURS_HATCH, new Box(Math.min(length, clipped), -SEAM, Math.max(length, clipped), 2 * SEAM));
            }
            new Across(sheet, 2 * SEAM + 12, false, Ink.YOURS, length / 2).add(0, clipped, brief.yoursLabel("welded"));
        }
    }
}
