package soapstone.figure;

import java.util.List;

/** Parts laid out on a sheet of metal, in rows from its upper left corner. */
final class Nest implements Drawer {

    private static final int MOST = 600;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("sheet_length"), FigureArgument.length("sheet_width"),
                FigureArgument.length("part_length"), FigureArgument.length("part_width"), FigureArgument.number("along"),
                FigureArgument.number("across"));
    }

    @Override
    public boolean canDraw(Values v) {
        double length = v.at("sheet_length");
        double width = v.at("sheet_width");
        return length > 0 && width > 0 && v.at("part_length") > 0 && v.at("part_width") > 0 && length < 60 * width
                && width < 60 * length;
    }

    @Override
    public String title(Brief brief) {
        return brief.say("nest.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        Values v = brief.right();
        t.say("nest.is").value(v, "sheet_length", "nest.sheet_length").value(v, "sheet_width", "nest.sheet_width")
                .value(v, "part_length", "nest.part_length").value(v, "part_width", "nest.part_width");
        if (!one(v).isEmpty()) {
            t.value(v, "along", "nest.along").value(v, "across", "nest.across");
        }
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
        Label one = one(brief.right());
        return one.isEmpty() ? List.of() : List.of(one);
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
        for (int i = 0; i < along; i++) {
            for (int j = 0; j < across; j++) {
                Box part = new Box(i * length, j * width, (i + 1) * length, (j + 1) * width);
                if (part.right() <= plate.right() + 0.05 && part.bottom() <= plate.bottom() + 0.05) {
                    sheet.plate(Pen.BEND, part, "blank");
                }
            }
        }
        sheet.plate(Pen.VISIBLE, plate, "part");
        Across above = new Across(sheet, 0, true, Ink.RIGHT, plate.right() / 2);
        above.add(0, Math.min(length, plate.right()), v.label("part_length"));
        above.add(0, plate.right(), v.label("sheet_length"));
        Upright left = new Upright(sheet, 0, true, Ink.RIGHT);
        left.add(0, Math.min(width, plate.bottom()), v.label("part_width"));
        left.add(0, plate.bottom(), v.label("sheet_width"));
    }
}
