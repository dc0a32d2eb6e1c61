package soapstone.figure;

import java.util.List;

/** A rectangular piece of sheet or plate, with a window or without, and its edge beside it. */
final class Plate implements Drawer {

    private static final double LONGEST = 60;
    private static final double BETWEEN = 40;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("length"), FigureArgument.length("width"), FigureArgument.length("window_length").maybe(),
                FigureArgument.length("window_width").maybe(), FigureArgument.length("thickness").maybe(),
                FigureArgument.number("pieces").maybe());
    }

    @Override
    public boolean canDraw(Values v) {
        double length = v.at("length");
        double width = v.at("width");
        boolean plate = length > 0 && width > 0 && length < LONGEST * width && width < LONGEST * length;
        boolean window = v.has("window_length") == v.has("window_width") && isWithin(v, "window_length", length)
                && isWithin(v, "window_width", width);
        return plate && window && isWithin(v, "thickness", Math.min(length, width)) && (!v.has("pieces") || v.count("pieces") >= 1);
    }

    private static boolean isWithin(Values v, String name, double most) {
        return !v.has(name) || v.at(name) > 0 && v.at(name) < most;
    }

    @Override
    public String title(Brief brief) {
        return brief.say("plate.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        Values v = brief.right();
        t.say(v.has("window_length") ? "plate.is.window" : "plate.is").value(v, "length", "length").value(v, "width", "width")
                .value(v, "window_length", "plate.window_length").value(v, "window_width", "plate.window_width")
                .value(v, "thickness", "fold.thickness").value(v, "pieces", "plate.pieces");
        if (v.has("thickness")) {
            t.say("edge.scale");
        }
    }

    @Override
    public List<Label> notes(Brief brief) {
        return PlateEdge.notes(brief);
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double beside = v.has("thickness") ? BETWEEN : 0;
        double scale = Math.min(Math.max(20, room - beside) / v.at("length"), (brief.isNarrow() ? 200 : 230) / v.at("width"));
        Box plate = new Box(0, 0, v.at("length") * scale, v.at("width") * scale);
        sheet.plate(Pen.VISIBLE, plate, "part");
        new Across(sheet, 0, true, Ink.RIGHT, plate.right() / 2).add(0, plate.right(), v.label("length"));
        new Upright(sheet, 0, true, Ink.RIGHT).add(0, plate.bottom(), v.label("width"));
        if (v.has("window_length")) {
            window(v, sheet, plate, scale);
        }
        if (v.has("thickness")) {
            PlateEdge.draw(v, sheet, plate, Math.max(plate.right(), sheet.bounds().right()) + BETWEEN * 0.6, scale);
        }
    }

    private static void window(Values v, Sheet sheet, Box plate, double scale) {
        double x = plate.right() / 2;
        double y = plate.bottom() / 2;
        double length = v.at("window_length") * scale / 2;
        double width = v.at("window_width") * scale / 2;
        Box window = new Box(x - length, y - width, x + length, y + width);
        sheet.plate(Pen.VISIBLE, window, "window");
        new Across(sheet, plate.bottom(), false, Ink.RIGHT, x).add(window.left(), window.right(), window.bottom(), v.label("window_length"));
        new Upright(sheet, plate.right(), false, Ink.RIGHT).add(window.top(), window.bottom(), window.right(), v.label("window_width"));
    }
}
