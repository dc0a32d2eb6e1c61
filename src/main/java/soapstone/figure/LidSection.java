package soapstone.figure;

import java.util.List;

/**
 * One section through a box and the lid over it, with its middle at x = 0. Walls and air are to one scale; where the box is
 * long for its walls the middle is broken out. Heights are none of the part's.
 */
final class LidSection {

    private static final double TALL = 84;
    private static final double SKIRT = 52;
    /** So many walls of the inside are shown at each end. */
    private static final double WALLS_SHOWN = 9;
    private static final double THICKEST = 24;

    private final Brief brief;
    private final Off off;
    private final Names names;

    /** The arguments of one way through; {@code over} is empty where the outside of the lid is not told. */
    record Names(String inside, String lid, String over) {}

    LidSection(Brief brief, Off off, Names names) {
        this.brief = brief;
        this.off = off;
        this.names = names;
    }

    /**
     * From real half widths to the sheet.
     *
     * @param real  half of the inside of the box
     * @param shown half of it on the sheet
     */
    private record Ends(double real, double shown, double scale) {

        /** Where a plane at half of that width stands, right of the middle. */
        double x(double width) {
            return shown + (width / 2 - real) * scale;
        }

        boolean isBroken() {
            return shown < real * scale - 0.5;
        }

        boolean holds(double width) {
            return x(width) > 12 && x(width) < shown * 1.9 + 20;
        }
    }

    void draw(Sheet sheet, double room) {
        Values v = brief.right();
        Ends ends = ends(v, room);
        double wall = v.at("wall") * ends.scale;
        double in = v.at(names.inside);
        box(sheet, ends.x(in), ends.x(in) + wall, wall);
        double lid = ends.x(v.at(names.lid));
        lid(sheet, Pen.VISIBLE, lid, lid + wall, wall, "lid");
        boolean mine = !off.isNothing() && (off.is(names.lid) || hasOver() && off.is(names.over) || brief.differs(names.lid));
        if (!mine) {
            lidHatch(sheet, lid, wall);
        }
        if (ends.isBroken()) {
            Break.plumb(sheet, 0, -TALL - wall, 0);
        }
        if (mine && ends.holds(brief.yours().at(names.lid))) {
            double left = ends.x(brief.yours().at(names.lid));
            double out = !hasOver() ? left + wall : ends.x(brief.yours().at(names.over));
            lid(sheet, Pen.PHANTOM, left, Math.max(left + 1, out), wall, "yours-lid");
        }
        dimensions(v, sheet, ends, wall);
        if (mine) {
            miss(sheet, ends, wall);
        }
    }

    private boolean hasOver() {
        return !names.over.isEmpty() && brief.right().has(names.over);
    }

    private Ends ends(Values v, double room) {
        double real = v.at(names.inside) / 2;
        double shown = Math.min(real, WALLS_SHOWN * v.at("wall"));
        double beyond = 2 * v.at("wall") + v.at("gap");
        // Both ways through are to one scale: walls that are alike have to look alike.
        double widest = Math.min(Math.max(v.at("length"), v.at("width")) / 2, WALLS_SHOWN * v.at("wall"));
        double scale = Math.min(room / 2 / (widest + beyond), THICKEST / v.at("wall"));
        return new Ends(real, shown * scale, scale);
    }

    private static void box(Sheet sheet, double in, double out, double wall) {
        for (int side : new int[] {-1, 1}) {
            Box upright = Box.around(new Pt(side * in, -TALL), new Pt(side * out, -wall));
            hatch(sheet, upright, true);
        }
        hatch(sheet, new Box(-out, -wall, out, 0), true);
        sheet.path(Pen.VISIBLE, Path.polygon(List.of(new Pt(-out, 0), new Pt(-out, -TALL), new Pt(-in, -TALL), new Pt(-in, -wall),
                new Pt(in, -wall), new Pt(in, -TALL), new Pt(out, -TALL), new Pt(out, 0))), "box");
    }

    private static void lid(Sheet sheet, Pen pen, double in, double out, double wall, String role) {
        double foot = -TALL + SKIRT;
        sheet.path(pen, Path.polygon(List.of(new Pt(-out, foot), new Pt(-out, -TALL - wall), new Pt(out, -TALL - wall), new Pt(out, foot),
                new Pt(in, foot), new Pt(in, -TALL), new Pt(-in, -TALL), new Pt(-in, foot))), role);
    }

    private static void lidHatch(Sheet sheet, double in, double wall) {
        double foot = -TALL + SKIRT;
        hatch(sheet, new Box(-in - wall, -TALL - wall, in + wall, -TALL), false);
        hatch(sheet, new Box(-in - wall, -TALL, -in, foot), false);
        hatch(sheet, new Box(in, -TALL, in + wall, foot), false);
    }

    /** Box and lid are hatched in different directions. */
    private static void hatch(Sheet sheet, Box b, boolean turned) {
        Hatch.fill(sheet, Pen.HATCH, List.of(new Pt(b.left(), b.top()), new Pt(b.right(), b.top()), new Pt(b.right(), b.bottom()),
                new Pt(b.left(), b.bottom())), turned);
    }

    private void dimensions(Values v, Sheet sheet, Ends ends, double wall) {
        double in = ends.x(v.at(names.inside));
        double lid = ends.x(v.at(names.lid));
        Across above = new Across(sheet, -TALL - wall, true, Ink.RIGHT, 0);
        above.add(-lid, lid, v.label(names.lid));
        if (hasOver()) {
            above.add(-lid - wall, lid + wall, v.label(names.over));
        }
        Across below = new Across(sheet, 0, false, Ink.RIGHT, 0);
        below.add(-in, in, v.label(names.inside));
        below.add(in, in + wall, v.label("wall"));
        below.add(-lid, -in - wall, -TALL + SKIRT, v.label("gap"));
    }

    private void miss(Sheet sheet, Ends ends, double wall) {
        Values y = brief.yours();
        Across below = new Across(sheet, sheet.bounds().bottom(), false, Ink.YOURS, 0);
        Label size = Label.text(off.is(names.lid) || off.is(names.over) ? off.text(brief) : "");
        String name = hasOver() && off.is(names.over) ? names.over : names.lid;
        double right = ends.x(brief.right().at(name));
        double yours = ends.x(y.at(name));
        if (!ends.holds(y.at(name))) {
            below.add(-right, right, size);
            return;
        }
        if (Math.abs(yours - right) >= 1.5) {
            for (int side : new int[] {-1, 1}) {
                Hatch.fill(sheet, Pen.YOURS_HATCH, Box.around(new Pt(side * right, -TALL), new Pt(side * yours, -TALL + SKIRT)));
            }
        }
        below.add(-yours, yours, -TALL + SKIRT, Off.label(brief, name).then(size.isEmpty() ? "" : ", " + size.spoken()));
    }
}
