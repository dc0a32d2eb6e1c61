package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/** Lays a drawing out for one width: the part shrinks until part and lettering fit, notes and legend go below. */
final class Layout {

    private static final double MARGIN = 4;
    private static final double BETWEEN = 14;
    private static final double LINE = 19;
    private static final double LEAST_ROOM = 24;
    private static final double STEP = 5;
    private static final double SLACK = 0.5;
    /** Below this share of the width a part is small, and letters are tried in place of long values. */
    private static final double SMALL = 0.5;
    private static final double WORTH_LETTERS = 1.5;
    private static final double SAMPLE = 40;

    private final Brief brief;
    private final Drawer drawer;
    private final List<Label> extra;

    /** @param extra notes that are not the drawer's own */
    Layout(Brief brief, Drawer drawer, List<Label> extra) {
        this.brief = brief;
        this.drawer = drawer;
        this.extra = extra;
    }

    /**
     * The finished sheet, with its upper left corner at 0, 0; its height is that of its bounds plus the margin. Not all of
     * it is inside the width when nothing fits.
     */
    Sheet sheet() {
        Fitted plain = body(brief);
        Tabulated apart = brief.tabulated();
        Fitted best = plain;
        List<Label> listed = List.of();
        if (plain.room < most() * SMALL && !apart.letters().isEmpty()) {
            Tabulated used = apart.usedIn(body(brief.with(apart)).sheet());
            Fitted lettered = body(brief.with(used));
            if (lettered.room > plain.room * WORTH_LETTERS || !plain.fits && lettered.fits) {
                best = lettered;
                listed = used.lines();
            }
        }
        return finished(best, listed);
    }

    private Sheet finished(Fitted body, List<Label> listed) {
        Sheet all = new Sheet();
        Box b = body.sheet.bounds();
        all.add(body.sheet, (brief.width() - b.width()) / 2 - b.left(), MARGIN - b.top());
        double y = MARGIN + b.height() + BETWEEN;
        for (Label note : listed) {
            y = note(all, note, Lettering.NOTE, y);
        }
        for (Label note : drawer.notes(brief)) {
            y = note(all, note, Lettering.NOTE, y);
        }
        for (Label note : extra) {
            y = note(all, note, Lettering.YOURS_NOTE, y);
        }
        if (!body.sheet.shapes(Pen.PHANTOM).isEmpty() || !body.sheet.shapes(Pen.YOURS_MARK).isEmpty()) {
            legend(all, y);
        }
        return all;
    }

    /** A drawing without its notes, and the room for the part that it was drawn with. */
    private record Fitted(Sheet sheet, double room, boolean fits) {}

    private double most() {
        return brief.width() - 2 * MARGIN;
    }

    /**
     * The largest drawing that fits. Mostly it is enough to take off what is too wide. Where that would cost much of the
     * part, it is shrunk in small steps: with every size lettering finds other places.
     */
    private Fitted body(Brief from) {
        Fitted full = at(from, most());
        if (full.fits) {
            return full;
        }
        double over = over(full.sheet);
        if (over < most() / 4) {
            Fitted once = at(from, most() - over);
            if (once.fits) {
                return once;
            }
        }
        double room = most() - STEP;
        while (true) {
            Fitted f = at(from, room);
            if (f.fits || !(room > LEAST_ROOM)) { // so that a drawing without a width ends it too
                return f;
            }
            room = Math.max(LEAST_ROOM, room - Math.max(STEP, over(f.sheet) / 4));
        }
    }

    private Fitted at(Brief from, double room) {
        Sheet sheet = new Sheet();
        drawer.draw(from, sheet, room);
        return new Fitted(sheet, room, over(sheet) <= SLACK);
    }

    private double over(Sheet sheet) {
        return sheet.bounds().width() - most();
    }

    /** Sets a note in as many lines as it takes; gives the y of the next line's top. */
    private double note(Sheet sheet, Label note, Lettering lettering, double top) {
        double y = top;
        for (Label line : Wrap.lines(note, lettering, brief.width() - 2 * MARGIN)) {
            double drop = line.isFramed() ? LINE + 4 : LINE;
            sheet.letter(line, lettering, brief.width() / 2.0, y + drop / 2 + 4.5, Anchor.MIDDLE);
            y += drop;
        }
        return y;
    }

    private record Entry(Pen line, Label label, Lettering lettering) {
        double width() {
            return SAMPLE + 8 + label.width(lettering);
        }
    }

    private void legend(Sheet sheet, double top) {
        String what = switch (drawer.mark()) {
            case NONE -> "";
            case HOLES -> ".holes";
            case CIRCLE -> ".circle";
        };
        List<Entry> entries = new ArrayList<>();
        entries.add(new Entry(Pen.VISIBLE, Label.text(brief.say("legend.right" + what)), Lettering.NOTE));
        entries.add(new Entry(Pen.PHANTOM, Label.text(brief.say("legend.yours" + what)), Lettering.YOURS_NOTE));
        if (!sheet.shapes(Pen.YOURS_HATCH).isEmpty()) {
            entries.add(new Entry(Pen.YOURS_HATCH, Label.text(brief.say("legend.miss")), Lettering.NOTE));
        }
        double all = entries.stream().mapToDouble(Entry::width).sum() + 24 * (entries.size() - 1);
        boolean one = all <= brief.width() - 2 * MARGIN;
        double widest = entries.stream().mapToDouble(Entry::width).max().orElse(0);
        double x = (brief.width() - (one ? all : widest)) / 2;
        double y = top + LINE / 2;
        for (Entry e : entries) {
            entry(sheet, e, x, y);
            x += one ? e.width() + 24 : 0;
            y += one ? 0 : LINE;
        }
    }

    private void entry(Sheet sheet, Entry e, double x, double y) {
        if (e.line() == Pen.YOURS_HATCH) {
            Box box = new Box(x + 4, y - 7, x + SAMPLE - 4, y + 7);
            Hatch.fill(sheet, e.line(), box);
            sheet.plate(Pen.YOURS_THIN, box, "");
        } else {
            sheet.line(e.line(), x, y, x + SAMPLE, y);
        }
        sheet.letter(e.label(), e.lettering(), x + SAMPLE + 8, y + 4.5, Anchor.START);
    }
}
