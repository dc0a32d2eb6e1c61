package soapstone.figure;

/** A bar sawn into equal pieces, with the kerfs between them and, behind the last cut, the rough end that falls off. */
final class CutBar extends NamedDrawer {

    private static final double HEIGHT = 30;
    private static final double LEAST_KERF = 3;
    private static final double STUB = 18;

    CutBar() {
        super("cut-bar", FigureArgument.length("piece"), FigureArgument.length("kerf"), FigureArgument.number("count"),
                FigureArgument.number("cuts"), FigureArgument.length("length"));
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at("piece") > 0 && v.at("kerf") >= 0 && v.count("count") >= 1 && v.at("length") > 0
                && v.at("kerf") < v.at("piece") && v.at("piece") < 100 * v.at("length");
    }

    @Override
    public boolean prints(String argument) {
        return !argument.equals("cuts");
    }

    @Override
    String miss(Brief brief) {
        return YoursLength.miss(brief, "length");
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        boolean rough = v.count("cuts") >= v.count("count");
        double right = room - (rough ? STUB : 0);
        double scale = right / v.at("length");
        double step = v.at("piece") + v.at("kerf");
        Series series = Series.of(v.count("count"), step * scale, true);
        Box bar = new Box(0, 0, right, HEIGHT);
        bar(sheet, bar, rough);
        for (int i : series.indices()) {
            boolean last = i == v.count("count") - 1;
            if (!last || rough) {
                double x = Math.min(right, (i * step + v.at("piece") + v.at("kerf") / 2) * scale);
                double half = Math.max(LEAST_KERF, v.at("kerf") * scale) / 2;
                sheet.plate(Pen.SECTION, new Box(x - half, 0, x + half, HEIGHT), "kerf");
            }
        }
        if (series.isBroken()) {
            double from = (series.breakAfter() + 1) * step;
            double to = (v.count("count") - 1) * step;
            Break.plumb(sheet, Math.min(right - 8, (from + to) / 2 * scale), 0, HEIGHT);
        }
        dimensions(brief, sheet, right, scale);
        YoursLength.draw(brief, sheet, bar, scale, "length");
    }

    private static void bar(Sheet sheet, Box bar, boolean rough) {
        sheet.path(Pen.VISIBLE, Path.line(bar.right(), 0, 0, 0).lineTo(new Pt(0, HEIGHT)).lineTo(new Pt(bar.right(), HEIGHT)), "part");
        if (!rough) {
            sheet.line(Pen.VISIBLE, bar.right(), 0, bar.right(), HEIGHT);
            return;
        }
        sheet.line(Pen.THIN, bar.right(), 0, bar.right() + STUB, 0);
        sheet.line(Pen.THIN, bar.right(), HEIGHT, bar.right() + STUB, HEIGHT);
        Break.end(sheet, Pen.BREAK, bar.right() + STUB, 6, HEIGHT - 6);
    }

    private static void dimensions(Brief brief, Sheet sheet, double right, double scale) {
        Values v = brief.right();
        Across above = new Across(sheet, 0, true, Ink.RIGHT, right / 2);
        Label pieces = Labels.times(v.label("count"), v.label("piece"));
        above.add(0, Math.min(right, v.at("piece") * scale), pieces);
        above.add(0, right, v.label("length"));
        Pt kerf = new Pt((v.at("piece") + v.at("kerf") / 2) * scale, brief.isAsCut() ? 2 : HEIGHT);
        if (kerf.x() <= right) {
            Label told = v.label("kerf");
            Leader.to(sheet, Ink.RIGHT, kerf, 0, told.isEmpty() ? told : Label.text(brief.say("cut-bar.at") + " ").then(told),
                    brief.isAsCut() ? new double[] {60, 45, 120} : new double[] {310, 290, 330, 250});
        }
    }
}
