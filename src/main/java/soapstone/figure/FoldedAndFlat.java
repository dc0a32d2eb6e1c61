package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/** The section of a folded part and its flat pattern: side by side, or one over the other on a narrow sheet. */
final class FoldedAndFlat implements Drawer {

    private static final double BETWEEN = 36;

    @Override
    public List<FigureArgument> arguments() {
        List<FigureArgument> all = new ArrayList<>(FoldView.arguments());
        all.add(FigureArgument.length("width"));
        all.add(FigureArgument.length("bends").many());
        return all;
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        return FoldView.canDraw(v) && FlatView.canDraw(v);
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "folded-and-flat.title.yours" : "folded-and-flat.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("folded.is");
        FoldView.tell(brief, t);
        t.say("flat-strip.is");
        FlatView.tellValues(brief.right(), t);
        if (brief.isAsCut()) {
            FoldView.tellYours(brief, t);
            FlatView.tellYours(brief, t);
        }
    }

    @Override
    public List<Label> notes(Brief brief) {
        return FoldView.notes(brief);
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        double half = brief.isNarrow() ? room : (room - BETWEEN) / 2;
        Sheet section = new Sheet();
        FoldView.draw(brief, section, half * (brief.isNarrow() ? 0.8 : 1), brief.isNarrow() ? 150 : 150, true);
        Sheet flat = new Sheet();
        FlatView.draw(brief, flat, half);
        Box a = section.bounds();
        Box b = flat.bounds();
        if (brief.isNarrow()) {
            double top = a.height() + BETWEEN;
            sheet.add(section, -a.left() + (Math.max(a.width(), b.width()) - a.width()) / 2, -a.top());
            caption(sheet, brief, "flat.section", Math.max(a.width(), b.width()) / 2, a.height() + 19);
            sheet.add(flat, -b.left() + (Math.max(a.width(), b.width()) - b.width()) / 2, top + 8 - b.top());
            caption(sheet, brief, "flat.pattern", Math.max(a.width(), b.width()) / 2, top + 8 + b.height() + 19);
            return;
        }
        double height = Math.max(a.height(), b.height());
        sheet.add(section, -a.left(), height - a.bottom());
        sheet.add(flat, a.width() + BETWEEN - b.left(), height - b.bottom());
        caption(sheet, brief, "flat.section", a.width() / 2, height + 24);
        caption(sheet, brief, "flat.pattern", a.width() + BETWEEN + b.width() / 2, height + 24);
    }

    private static void caption(Sheet sheet, Brief brief, String key, double x, double y) {
        sheet.letter(Label.text(brief.say(key)), Lettering.NOTE, x, y, Anchor.MIDDLE);
    }
}
