package soapstone.figure;

/** Three lengths end to end, each told in a large and a small unit, and the length of all. */
final class ButtedBars extends NamedDrawer {

    private static final double HEIGHT = 26;
    private static final String[] PARTS = {"first", "second", "third"};

    ButtedBars() {
        super("butted-bars", FigureArgument.length("first"), FigureArgument.length("first_rest").maybe(), FigureArgument.length("second"),
                FigureArgument.length("second_rest").maybe(), FigureArgument.length("third"), FigureArgument.length("third_rest").maybe(),
                FigureArgument.length("total"));
    }

    @Override
    public boolean asCut() {
        return true;
    }

    private static double length(Values v, String part) {
        return v.at(part) + (v.has(part + "_rest") ? v.at(part + "_rest") : 0);
    }

    private static double all(Values v) {
        double all = 0;
        for (String part : PARTS) {
            all += length(v, part);
        }
        return all;
    }

    @Override
    public boolean canDraw(Values v) {
        boolean sound = v.at("total") > 0;
        for (String part : PARTS) {
            sound &= v.at(part) >= 0 && length(v, part) > 0;
        }
        return sound;
    }

    @Override
    String miss(Brief brief) {
        return YoursLength.miss(brief, "total");
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double scale = room / all(v);
        double x = 0;
        Across above = new Across(sheet, 0, true, Ink.RIGHT, room / 2);
        for (String part : PARTS) {
            sheet.plate(Pen.VISIBLE, new Box(x, 0, x + length(v, part) * scale, HEIGHT), "bar");
            x += length(v, part) * scale;
        }
        x = 0;
        for (String part : PARTS) {
            above.add(x, x + length(v, part) * scale, printed(v, part));
            x += length(v, part) * scale;
        }
        above.add(0, room, v.label("total"));
        YoursLength.draw(brief, sheet, new Box(0, 0, room, HEIGHT), scale, "total");
    }

    private static Label printed(Values v, String part) {
        Label rest = v.has(part + "_rest") ? v.label(part + "_rest") : Label.NONE;
        Label large = v.label(part);
        return large.isEmpty() || rest.isEmpty() ? large.then(rest) : large.then(large.isFramed() || rest.isFramed() ? "" : " ").then(rest);
    }
}
