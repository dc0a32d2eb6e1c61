package soapstone.figure;

import java.util.ArrayList;
import java.util.List;
import soapstone.quantity.Dimension;

/**
 * Shares of a whole as a bar to scale: the weights on a trailer against its rating, the good part of an order, what a price
 * is made of. The parts stand one behind the other from the left; what is left of the whole is hatched.
 */
final class ShareBar extends NamedDrawer {

    private static final double HEIGHT = 40;
    private static final double LOW = 30;
    private static final double MOST = 1.6;
    private static final int MOST_PIECES = 60;

    private final String whole;
    private final List<String> parts;
    private final String pointed;

    /**
     * @param whole   name of the whole
     * @param pointed name of the value that an answer has wrong when the bar is; where it ends is the miss
     */
    private ShareBar(String kind, String whole, List<String> parts, String pointed, FigureArgument... arguments) {
        super(kind, arguments);
        this.whole = whole;
        this.parts = parts;
        this.pointed = pointed;
    }

    static ShareBar loads() {
        return new ShareBar("load-bar", "rating", List.of("trailer", "tank", "load"), "load", of("rating", Dimension.MASS),
                of("trailer", Dimension.MASS), of("tank", Dimension.MASS), of("load", Dimension.MASS));
    }

    static ShareBar order() {
        return new ShareBar("order-bar", "order", List.of("good"), "good", of("order", Dimension.AREA), of("good", Dimension.AREA),
                of("net", Dimension.AREA).maybe(), of("piece", Dimension.AREA).maybe());
    }

    static ShareBar price() {
        return new ShareBar("price-bar", "price", List.of("material", "labor"), "price", of("price", Dimension.MONEY),
                of("material", Dimension.MONEY), of("labor", Dimension.MONEY));
    }

    private static FigureArgument of(String name, Dimension dimension) {
        return new FigureArgument(name, dimension, false, false);
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        boolean sound = v.at(whole) > 0 && (!v.has("piece") || v.at("piece") > 0) && (!v.has("net") || v.at("net") > 0);
        for (String part : parts) {
            sound &= v.at(part) >= 0;
        }
        return sound && sum(v, parts.size()) < 20 * v.at(whole);
    }

    private double sum(Values v, int of) {
        double sum = 0;
        for (int i = 0; i < of; i++) {
            sum += v.at(parts.get(i));
        }
        return sum;
    }

    /** Where the bar of these values ends that an answer gets wrong. */
    private double end(Values v) {
        return pointed.equals(whole) ? v.at(whole) : sum(v, parts.size());
    }

    private boolean isWrong(Brief brief) {
        return brief.isAsCut() && Math.abs(end(brief.yours()) - end(brief.right())) > 1e-6 * brief.right().at(whole);
    }

    @Override
    String miss(Brief brief) {
        if (!isWrong(brief)) {
            return "";
        }
        double own = end(brief.yours());
        boolean more = own > (pointed.equals("load") ? brief.right().at(whole) : end(brief.right()));
        return more || own < end(brief.right()) ? brief.say(word(more ? "more" : "less")) : "";
    }

    @Override
    public List<Label> notes(Brief brief) {
        List<Label> notes = new ArrayList<>();
        if (brief.isAsCut() && !miss(brief).isEmpty()) {
            notes.add(Label.text(miss(brief)));
        }
        notes.add(Label.text(brief.say(word("scale"))));
        return notes;
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double most = Math.max(v.at(whole), sum(v, parts.size()));
        double clip = MOST * most;
        double all = brief.isAsCut() ? Math.max(most, Math.min(clip, Math.max(brief.yours().at(whole), sum(brief.yours(), parts.size())))) : most;
        double scale = room / all;
        bar(v, sheet, scale, new Box(0, 0, v.at(whole) * scale, HEIGHT));
        pieces(v, sheet, scale);
        Box low = new Box(0, HEIGHT + 6, 0, HEIGHT + 6 + LOW);
        if (isWrong(brief)) {
            yours(brief, sheet, scale, low, clip);
        }
        rest(brief, sheet, scale);
        Across above = new Across(sheet, 0, true, Ink.RIGHT, room / 2);
        for (int i = 0; i < parts.size(); i++) {
            above.add(sum(v, i) * scale, sum(v, i + 1) * scale, named(brief, parts.get(i), printed(v, i)));
        }
        above.add(0, v.at(whole) * scale, named(brief, whole, v.label(whole)));
        if (isWrong(brief)) {
            yoursDimensions(brief, sheet, scale, low, clip);
        }
    }

    /** A part's label; the good part of an order is told as what the job needs. */
    private Label printed(Values v, int i) {
        return v.has("net") ? v.label("net") : v.label(parts.get(i));
    }

    @Override
    public boolean prints(String argument) {
        return !argument.equals("good");
    }

    private void bar(Values v, Sheet sheet, double scale, Box all) {
        for (int i = 0; i < parts.size(); i++) {
            Box part = new Box(sum(v, i) * scale, 0, sum(v, i + 1) * scale, HEIGHT);
            sheet.plate(Pen.BEND, part, "share");
        }
        double end = sum(v, parts.size()) * scale;
        if (end < all.right() - 1.5) {
            Hatch.fill(sheet, Pen.HATCH, new Box(end, 0, all.right(), HEIGHT));
        }
        sheet.plate(Pen.VISIBLE, all, "part");
    }

    /** Where one piece that is bought ends and the next begins; while the order is asked nobody can count them. */
    private static void pieces(Values v, Sheet sheet, double scale) {
        if (!v.has("piece") || v.isHidden("order") || v.at("order") / v.at("piece") > MOST_PIECES) {
            return;
        }
        for (double x = v.at("piece"); x < v.at("order"); x += v.at("piece")) {
            sheet.path(Pen.ZONE, Path.line(x * scale, -6, x * scale, HEIGHT + 5), "piece");
        }
    }

    /** A size with its name before it: a name on its own would need a place of its own, and thin parts have none. */
    private Label named(Brief brief, String name, Label size) {
        String own = brief.say(word("name." + name));
        return size.isEmpty() ? Label.text(own) : Label.text(own + " ").then(size);
    }

    /** What is left of the whole says so itself, beside the bar where it is thin. */
    private void rest(Brief brief, Sheet sheet, double scale) {
        Values v = brief.right();
        double from = sum(v, parts.size()) * scale;
        double to = v.at(whole) * scale;
        Label name = Label.text(brief.say(word("rest")));
        double middle = (from + to) / 2;
        boolean within = name.width(Lettering.NOTE) + 8 < to - from
                && sheet.letterFree(name, Lettering.NOTE, List.of(new Sheet.Spot(middle, HEIGHT / 2 + 5, Anchor.MIDDLE)));
        if (!within && to - from > 6) {
            Leader.to(sheet, Ink.RIGHT, new Pt(middle, isWrong(brief) ? 3 : HEIGHT - 3), 0, name, isWrong(brief)
                    ? new double[] {60, 120, 45, 135} : new double[] {300, 240, 315, 225, 330, 210});
        }
    }

    private void yours(Brief brief, Sheet sheet, double scale, Box low, double clip) {
        Values y = brief.yours();
        double end = Math.min(clip, Math.max(y.at(whole), sum(y, parts.size()))) * scale;
        sheet.plate(Pen.PHANTOM, new Box(0, low.top(), end, low.bottom()), "yours-part");
        for (int i = 1; i <= parts.size(); i++) {
            double x = sum(y, i) * scale;
            if (x < end - 1) {
                sheet.line(Pen.YOURS_MARK, x, low.top(), x, low.bottom());
            }
        }
    }

    private void yoursDimensions(Brief brief, Sheet sheet, double scale, Box low, double clip) {
        Values y = brief.yours();
        double right = end(brief.right()) * scale;
        double own = Math.min(clip, end(y)) * scale;
        Across below = new Across(sheet, low.bottom(), false, Ink.YOURS, right / 2);
        if (Math.abs(own - right) >= 1.5) {
            Hatch.fill(sheet, Pen.YOURS_HATCH, new Box(Math.min(own, right), low.top(), Math.max(own, right), low.bottom()));
        }
        if (brief.differs(whole)) {
            below.add(0, Math.min(clip, y.at(whole)) * scale, brief.yoursLabel(whole));
        }
        for (int i = 0; i < parts.size(); i++) {
            if (brief.differs(parts.get(i)) && prints(parts.get(i))) {
                below.add(Math.min(clip, sum(y, i)) * scale, Math.min(clip, sum(y, i + 1)) * scale, brief.yoursLabel(parts.get(i)));
            }
        }
    }
}
