package soapstone.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Marks along a bar, each measured from the left end. */
final class MarkRow implements Drawer {

    private static final double HEIGHT = 26;
    private static final int MOST = 200;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("length"), FigureArgument.length("marks").many());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at("length") > 0 && v.all("marks").length <= MOST;
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "mark-row.title.yours" : "mark-row.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("mark-row.is");
        t.value(brief.right(), "length", "length").values(brief.right(), "marks", "mark-row.marks");
        if (brief.isAsCut()) {
            t.say("yours.below").value(brief.yours(), "length", "length").values(brief.yours(), "marks", "mark-row.marks");
            int worst = worst(brief);
            if (worst >= 0) {
                t.say("mark-row.worst", worst + 1, missText(brief, worst));
            }
            lengths(brief, t);
        }
    }

    private static void lengths(Brief brief, Telling t) {
        int difference = brief.yours().all("marks").length - brief.right().all("marks").length;
        if (difference != 0) {
            t.sentence(countNote(brief, difference) + ".");
        }
    }

    private static String countNote(Brief brief, int difference) {
        return brief.say(difference > 0 ? "mark-row.more" : "mark-row.fewer", Math.abs(difference));
    }

    /** The mark that is furthest off its place, or -1. */
    private static int worst(Brief brief) {
        double[] right = brief.right().all("marks");
        double[] yours = brief.yours().all("marks");
        int worst = -1;
        double most = 1e-6 * brief.right().at("length");
        for (int i = 0; i < Math.min(right.length, yours.length); i++) {
            if (Math.abs(yours[i] - right[i]) > most) {
                most = Math.abs(yours[i] - right[i]);
                worst = i;
            }
        }
        return worst;
    }

    private static String missText(Brief brief, int i) {
        double off = brief.yours().all("marks")[i] - brief.right().all("marks")[i];
        return brief.say(off < 0 ? "miss.short" : "miss.long", brief.size(off));
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double scale = room / v.at("length");
        Box bar = new Box(0, 0, room, HEIGHT);
        sheet.plate(Pen.VISIBLE, bar, "part");
        for (double m : v.all("marks")) {
            if (m >= 0 && m <= v.at("length")) {
                sheet.path(Pen.BEND, Path.line(m * scale, 0, m * scale, HEIGHT * 0.65), "mark");
            }
        }
        double top = dimensions(brief, sheet, scale);
        Across above = new Across(sheet, top, true, Ink.RIGHT, room / 2);
        above.add(0, room, 0, v.label("length"));
        if (brief.isAsCut()) {
            drawYours(brief, sheet, bar, scale);
        }
        if (!v.isAsked("marks") && v.isTold("marks") && !ordinates(v, scale).isReadable() && !inOrder(v).isEmpty()) {
            Table.draw(sheet, table(v), room, sheet.bounds().bottom() + 16);
        }
    }

    /** Draws what the marks are called; gives the top of it. */
    private static double dimensions(Brief brief, Sheet sheet, double scale) {
        Values v = brief.right();
        if (v.isAsked("marks")) {
            number(sheet, v.all("marks"), scale, Lettering.NUMBER, -8);
            double[] inside = Arrays.stream(v.all("marks")).filter(m -> m > 0 && m <= v.at("length"))
                    .map(m -> m * scale).toArray();
            return Running.draw(sheet, inside, -24, -40, v.label("marks"));
        }
        Ordinates ordinates = ordinates(v, scale);
        if (!brief.isAsCut() && ordinates.isReadable()) {
            sheet.letterFree(Label.text("0"), Lettering.NUMBER, List.of(new Sheet.Spot(0, -8, Anchor.MIDDLE)));
            return ordinates.draw(sheet, 0, 0);
        }
        number(sheet, v.all("marks"), scale, Lettering.NUMBER, -8);
        return ordinates.isReadable() ? ordinates.draw(sheet, -22, -20) : -20;
    }

    private static Ordinates ordinates(Values v, double scale) {
        List<Integer> order = inOrder(v);
        return new Ordinates(order.stream().map(i -> v.all("marks")[i] * scale).toList(),
                order.stream().map(i -> v.label("marks", i)).toList());
    }

    /** The marks that get a dimension of their own, from left to right: not the ends of the bar, and each place once. */
    private static List<Integer> inOrder(Values v) {
        double[] marks = v.all("marks");
        double same = 1e-6 * v.at("length");
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < marks.length; i++) {
            boolean atEnd = Math.abs(marks[i] - v.at("length")) < same && v.isTold("length");
            if (marks[i] > same && marks[i] <= v.at("length") + same && !atEnd && !v.label("marks", i).isEmpty()) {
                order.add(i);
            }
        }
        order.sort((a, b) -> Double.compare(marks[a], marks[b]));
        for (int i = order.size() - 1; i > 0; i--) {
            if (marks[order.get(i)] - marks[order.get(i - 1)] < same) {
                order.remove(i);
            }
        }
        return order;
    }

    private static void number(Sheet sheet, double[] marks, double scale, Lettering lettering, double baseline) {
        for (int i = 0; i < marks.length; i++) {
            sheet.letterFree(Label.text(Integer.toString(i + 1)), lettering,
                    List.of(new Sheet.Spot(marks[i] * scale, baseline, Anchor.MIDDLE)));
        }
    }

    @Override
    public List<Label> notes(Brief brief) {
        List<Label> notes = new ArrayList<>();
        if (brief.isAsCut()) {
            int difference = brief.yours().all("marks").length - brief.right().all("marks").length;
            if (difference != 0) {
                notes.add(Label.text(countNote(brief, difference)));
            }
        }
        return notes;
    }

    private static List<Label> table(Values v) {
        List<Label> all = new ArrayList<>();
        for (int i = 0; i < v.all("marks").length; i++) {
            all.add(v.label("marks", i));
        }
        return all;
    }

    private static void drawYours(Brief brief, Sheet sheet, Box bar, double scale) {
        Values v = brief.yours();
        double[] marks = v.all("marks");
        double far = v.at("length");
        double near = 0;
        for (double m : marks) {
            far = Math.max(far, m);
            near = Math.min(near, m);
        }
        Reach reach = Reach.of(bar.width(), near * scale, far * scale);
        double low = bar.bottom() + 5;
        YoursBar.draw(sheet, reach, v.at("length") * scale, low);
        for (int i = 0; i < marks.length; i++) {
            double x = marks[i] * scale;
            if (reach.holds(x)) {
                sheet.path(Pen.YOURS_MARK, Path.line(x, bar.bottom() * 0.5, x, low + 4), "yours-mark");
                sheet.letterFree(Label.text(Integer.toString(i + 1)), Lettering.YOURS_NUMBER,
                        List.of(new Sheet.Spot(x, low + 21, Anchor.MIDDLE)));
            }
        }
        Across below = new Across(sheet, low + 22, false, Ink.YOURS, bar.right() / 2);
        int worst = worst(brief);
        if (worst >= 0) {
            double right = brief.right().all("marks")[worst] * scale;
            double yours = marks[worst] * scale;
            Miss.along(sheet, new Miss(reach.clip(right), reach.clip(yours)), bar, below, missText(brief, worst));
            if (reach.holds(yours)) {
                below.add(0, yours, brief.yoursLabel("marks", worst));
            }
        }
    }
}
