package soapstone.figure;

import java.util.List;
import soapstone.quantity.Dimension;

/** A skid from the side with loads on it, each as an arrow to the scale of the weights, and the point where it balances. */
final class LoadedSkid extends NamedDrawer {

    private static final double SKID = 10;
    private static final double MOST_ARROW = 64;
    private static final int MOST = 12;

    LoadedSkid() {
        super("loaded-skid", FigureArgument.length("length"), FigureArgument.length("places").many(),
                new FigureArgument("weights", Dimension.MASS, true, false), FigureArgument.length("balance"));
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        double[] weights = v.all("weights");
        double[] places = v.all("places");
        double length = v.at("length");
        for (int i = 0; i < places.length; i++) {
            if (places.length != weights.length || places.length > MOST || !(weights[i] > 0) || places[i] < 0 || places[i] > length) {
                return false;
            }
        }
        return length > 0;
    }

    @Override
    String miss(Brief brief) {
        double off = brief.yours().at("balance") - brief.right().at("balance");
        return brief.differs("balance") ? brief.say(word(off < 0 ? "left" : "right"), brief.size(off)) : "";
    }

    @Override
    public List<Label> notes(Brief brief) {
        return brief.isAsCut() && !miss(brief).isEmpty() ? List.of(Label.text(miss(brief))) : List.of();
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double scale = room / v.at("length");
        Box skid = new Box(0, 0, room, SKID);
        sheet.plate(Pen.VISIBLE, skid, "part");
        double most = 0;
        for (double w : v.all("weights")) {
            most = Math.max(most, w);
        }
        double[] places = v.all("places");
        for (int i = 0; i < places.length; i++) {
            load(sheet, places[i] * scale, v.all("weights")[i] / most);
        }
        double balance = v.at("balance") * scale;
        if (balance >= 0 && balance <= room) {
            sheet.path(Pen.VISIBLE, support(balance), "balance");
        }
        boolean yours = brief.isAsCut() && brief.differs("balance");
        Reach reach = Reach.of(room, 0, yours ? brief.yours().at("balance") * scale : 0);
        double own = yours ? brief.yours().at("balance") * scale : 0;
        if (yours && own >= 0) {
            if (reach.holds(own)) {
                sheet.path(Pen.PHANTOM, support(own), "yours-balance");
            }
            Hatch.fill(sheet, Pen.YOURS_HATCH, new Box(Math.min(balance, reach.clip(own)), 0, Math.max(balance, reach.clip(own)), SKID));
        }
        for (int i = 0; i < places.length; i++) {
            weight(sheet, v, i, places[i] * scale, MOST_ARROW * v.all("weights")[i] / most);
        }
        dimensions(v, sheet, scale, room);
        if (yours && reach.holds(own) && own > 0) {
            new Across(sheet, SKID + 22, false, Ink.YOURS, room / 2).add(0, own, SKID, brief.yoursLabel("balance"));
        }
    }

    private static void load(Sheet sheet, double x, double share) {
        double side = Math.max(14, 40 * Math.sqrt(share));
        sheet.plate(Pen.BEND, new Box(x - side / 2, -side, x + side / 2, 0), "load");
        Force.draw(sheet, Ink.RIGHT, new Pt(x, -1), 270, MOST_ARROW * share, "weight");
    }

    private static void weight(Sheet sheet, Values v, int i, double x, double reach) {
        Leader.to(sheet, Ink.RIGHT, new Pt(x, -Math.max(13, reach)), 0, v.label("weights", i), 45, 135, 20, 160, 60, 120, 0, 180, 80, 100);
    }

    private static Path support(double x) {
        return Path.polygon(List.of(new Pt(x, SKID), new Pt(x - 10, SKID + 18), new Pt(x + 10, SKID + 18)));
    }

    private static void dimensions(Values v, Sheet sheet, double scale, double room) {
        Across above = new Across(sheet, sheet.bounds().top(), true, Ink.RIGHT, room / 2);
        double[] places = v.all("places");
        for (int i = 0; i < places.length; i++) {
            above.add(0, places[i] * scale, -2, v.label("places", i));
        }
        above.add(0, room, -2, v.label("length"));
        double balance = v.at("balance") * scale;
        if (balance > 0 && balance <= room) {
            new Across(sheet, SKID + 22, false, Ink.RIGHT, room / 2).add(0, balance, SKID, v.label("balance"));
        }
    }
}
