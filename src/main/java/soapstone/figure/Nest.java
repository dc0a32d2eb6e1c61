package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/** Parts laid out on a sheet of metal, in rows from its upper left corner. */
final class Nest implements Drawer {

    private static final int MOST = 600;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("sheet_length"), FigureArgument.length("sheet_width"),
                FigureArgument.length("part_length"), FigureArgument.length("part_width"), FigureArgument.number("along"),
                FigureArgument.number("across"), FigureArgument.length("kerf").maybe());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        double length = v.at("sheet_length");
        double width = v.at("sheet_width");
        return length > 0 && width > 0 && v.at("part_length") > 0 && v.at("part_width") > 0 && length < 60 * width
                && width < 60 * length && (!v.has("kerf") || v.at("kerf") >= 0);
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "nest.title.yours" : "nest.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        Values v = brief.right();
        t.say("nest.is");
        tellSizes(v, t);
        if (!one(v).isEmpty()) {
            t.value(v, "along", "nest.along").value(v, "across", "nest.across");
        }
        if (brief.isAsCut()) {
            t.say("triangle.yours");
            tellSizes(brief.yours(), t);
            t.value(brief.yours(), "along", "nest.along").value(brief.yours(), "across", "nest.across");
            NestMiss.notes(brief).forEach(n -> t.sentence(n.spoken() + "."));
        }
    }

    private static void tellSizes(Values v, Telling t) {
        t.value(v, "sheet_length", "nest.sheet_length").value(v, "sheet_width", "nest.sheet_width")
                .value(v, "part_length", "nest.part_length").value(v, "part_width", "nest.part_width").value(v, "kerf", "nest.kerf");
    }

    /** How many along and across, where more than the one part is drawn that shows its size. */
    private static Label one(Values v) {
        boolean single = v.count("along") <= 1 && v.count("across") <= 1;
        if (single && !v.isAsked("along") && !v.isAsked("across") || !v.isTold("along") || !v.isTold("across")) {
            return Label.NONE;
        }
        Label along = v.label("along");
        return along.then(along.isFramed() ? "×" : " ×" + (v.isAsked("across") ? "" : " ")).then(v.label("across"));
    }

    @Override
    public List<Label> notes(Brief brief) {
        List<Label> notes = new ArrayList<>();
        notes.add(one(brief.right()));
        notes.add(Labels.named(brief.say("nest.kerf") + " ", brief.right().label("kerf")));
        notes.addAll(NestMiss.notes(brief));
        notes.removeIf(Label::isEmpty);
        return notes;
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double scale = Math.min(room / v.at("sheet_length"), (brief.isNarrow() ? 240 : 260) / v.at("sheet_width"));
        Box plate = new Box(0, 0, v.at("sheet_length") * scale, v.at("sheet_width") * scale);
        double length = v.at("part_length") * scale;
        double width = v.at("part_width") * scale;
        int along = v.isHidden("along") ? 1 : v.count("along");
        int across = v.isHidden("across") ? 1 : v.count("across");
        if ((long) along * across > MOST) {
            along = 1;
            across = 1;
        }
        double kerf = v.has("kerf") ? v.at("kerf") * scale : 0;
        for (int i = 0; i < along; i++) {
            for (int j = 0; j < across; j++) {
                Box part = new Box(0, 0, length, width).moved(i * (length + kerf), j * (width + kerf));
                if (part.right() <= plate.right() + 0.05 && part.bottom() <= plate.bottom() + 0.05) {
                    sheet.plate(Pen.BEND, part, "blank");
                }
            }
        }
        sheet.plate(Pen.VISIBLE, plate, "part");
        if (brief.isAsCut()) {
            NestMiss.draw(brief, sheet, scale);
        }
        Across above = new Across(sheet, 0, true, Ink.RIGHT, plate.right() / 2);
        above.add(0, Math.min(length, plate.right()), v.label("part_length"));
        above.add(0, plate.right(), v.label("sheet_length"));
        Upright left = new Upright(sheet, 0, true, Ink.RIGHT);
        left.add(0, Math.min(width, plate.bottom()), v.label("part_width"));
        left.add(0, plate.bottom(), v.label("sheet_width"));
    }
}
