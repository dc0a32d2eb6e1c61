package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/** The force on a long bend: the tools in section, and from the front with the length of the bend line. */
final class BrakeForce implements Drawer {

    private static final double BETWEEN = 40;
    private static final int ARROWS = 9;
    private static final double TALL = 26;
    private static final double SHEET = 5;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("thickness"), FigureArgument.length("opening"), FigureArgument.length("radius"),
                FigureArgument.length("length"), FigureArgument.force("force"), FigureArgument.force("rating").maybe());
    }

    @Override
    public boolean canDraw(Values v) {
        return BrakeSection.canDraw(v) && v.at("length") > 0;
    }

    @Override
    public String title(Brief brief) {
        return brief.say("brake-force.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        Values v = brief.right();
        t.say("brake.is").say("brake-force.front").value(v, "thickness", "fold.thickness").value(v, "opening", "brake.opening")
                .value(v, "radius", "fold.radius").value(v, "length", "brake-force.length").value(v, "force", "brake-force.force")
                .value(v, "rating", "brake-force.rating");
    }

    @Override
    public List<Label> notes(Brief brief) {
        List<Label> notes = new ArrayList<>();
        Label rating = brief.right().label("rating");
        if (!rating.isEmpty()) {
            notes.add(Label.text(brief.say("brake-force.rating") + ": ").then(rating));
        }
        Label radius = brief.right().label("radius");
        if (!radius.isEmpty()) {
            notes.add(Label.text(brief.say("fold.inside.radius", "").trim() + " ").then(radius));
        }
        return notes;
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        boolean stacked = brief.isNarrow();
        Sheet section = new Sheet();
        new BrakeSection(brief, stacked ? room : (room - BETWEEN) * 0.5, stacked ? 190 : 220).draw(section);
        Sheet front = new Sheet();
        front(brief, front, stacked ? room : (room - BETWEEN) * 0.4);
        Box a = section.bounds();
        Box b = front.bounds();
        if (stacked) {
            double middle = a.left() + a.width() / 2;
            sheet.add(section, 0, 0);
            caption(sheet, brief, "brake-force.section", middle, a.bottom() + 20);
            sheet.add(front, middle - b.left() - b.width() / 2, a.bottom() + BETWEEN - b.top());
            caption(sheet, brief, "brake-force.from.front", middle, a.bottom() + BETWEEN + b.height() + 20);
            return;
        }
        double right = a.right() + BETWEEN - b.left();
        double low = Math.max(a.bottom(), a.bottom() + b.height() - a.height()) + 20;
        sheet.add(section, 0, 0);
        sheet.add(front, right, a.bottom() - b.bottom());
        caption(sheet, brief, "brake-force.section", a.left() + a.width() / 2, low);
        caption(sheet, brief, "brake-force.from.front", right + b.left() + b.width() / 2, low);
    }

    private static void caption(Sheet sheet, Brief brief, String key, double x, double y) {
        sheet.letter(Label.text(brief.say(key)), Lettering.NOTE, x, y, Anchor.MIDDLE);
    }

    /** Punch, sheet and die from the front, to a scale of their own, with the force spread over the bend line. */
    private static void front(Brief brief, Sheet sheet, double length) {
        double over = 12;
        sheet.plate(Pen.VISIBLE, new Box(-over, -TALL - SHEET, length + over, -SHEET), "ram");
        sheet.plate(Pen.SECTION, new Box(0, -SHEET, length, 0), "line");
        sheet.plate(Pen.VISIBLE, new Box(-over, 0, length + over, TALL), "bed");
        for (int i = 0; i < ARROWS; i++) {
            double x = length * (i + 0.5) / ARROWS;
            Pt tip = new Pt(x, -TALL - SHEET - 3);
            sheet.line(Pen.THIN, x, tip.y() - 24, x, tip.y());
            sheet.arrow(Pen.ARROW, tip, -90);
        }
        sheet.line(Pen.THIN, 0, -TALL - SHEET - 27, length, -TALL - SHEET - 27);
        new Across(sheet, TALL, false, Ink.RIGHT, length / 2).add(0, length, 0, brief.right().label("length"));
    }
}
