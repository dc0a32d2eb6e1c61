package soapstone.figure;

import java.util.List;

/** A blank with a square notched out of each corner, broken across its width, and a side with its hem in section. */
final class NotchedEdge implements Drawer {

    private static final double INTO = 46;
    private static final double MOST = 0.6;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("length"), FigureArgument.length("notch"), FigureArgument.length("between"),
                FigureArgument.length("hem").maybe(), FigureArgument.length("side").maybe());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        double length = v.at("length");
        boolean hem = !v.has("hem") || v.at("hem") > 0 && v.at("hem") < length;
        boolean side = !v.has("side") || v.at("side") > 0 && (!v.has("hem") || v.at("hem") < 20 * v.at("side"));
        return length > 0 && v.at("notch") > 0 && v.at("between") > 0 && v.at("between") < 4 * length
                && v.at("notch") < 0.48 * length && hem && side;
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "notched-edge.title.yours" : "notched-edge.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("notched-edge.is");
        tellValues(brief.right(), t);
        if (brief.isAsCut()) {
            t.say("notched-edge.yours");
            tellValues(brief.yours(), t);
            off(brief).tell(brief, t);
        }
        t.say(brief.right().has("side") ? "notched-edge.section" : "notched-edge.broken");
    }

    private static void tellValues(Values v, Telling t) {
        t.value(v, "length", "notched-edge.length").value(v, "notch", "notched-edge.notch")
                .value(v, "between", "notched-edge.between").value(v, "hem", "notched-edge.hem").value(v, "side", "notched-edge.side");
    }

    /** The notch first: the edge between follows from it. */
    private static Off off(Brief brief) {
        Off notch = Off.furthest(brief, "notch");
        return notch.isNothing() ? Off.furthest(brief, "between") : notch;
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        boolean section = brief.right().has("side");
        Sheet flat = new Sheet();
        flat(brief, flat, brief.isNarrow() || !section ? room : room - 150);
        if (!section) {
            sheet.add(flat, 0, 0);
            return;
        }
        Sheet folded = new Sheet();
        HemSection.draw(brief.right(), folded);
        (brief.isNarrow() ? Views.under(sheet) : Views.beside(sheet)).add(flat, brief.say("flat.pattern"))
                .add(folded, brief.say("flat.section"));
    }

    /** The blank in SVG units, its upper left corner at 0, 0. */
    private record Blank(double length, double height, double notch, double hem) {}

    private static void flat(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double scale = Math.min(room / v.at("length"), 150 / v.at("notch"));
        double notch = v.at("notch") * scale;
        double most = brief.isAsCut() ? Math.max(notch, Math.min(MOST * v.at("length"), brief.yours().at("notch")) * scale) : notch;
        Blank blank = new Blank(v.at("length") * scale, notch + most + 2 * INTO, notch, v.has("hem") ? v.at("hem") * scale : 0);
        blank(sheet, blank);
        Break.level(sheet, notch + INTO, 0, blank.length);
        if (brief.isAsCut() && !off(brief).isNothing()) {
            outline(brief.yours(), sheet, blank, scale);
        }
        dimensions(v, sheet, blank);
        if (brief.isAsCut() && !off(brief).isNothing()) {
            miss(brief, sheet, blank, scale);
        }
    }

    private static void blank(Sheet sheet, Blank b) {
        double n = b.notch;
        double far = b.length - n;
        double low = b.height - n;
        sheet.plate(Pen.HIDDEN, new Box(0, 0, b.length, b.height), "");
        sheet.path(Pen.VISIBLE, Path.polygon(List.of(new Pt(n, 0), new Pt(far, 0), new Pt(far, n), new Pt(b.length, n),
                new Pt(b.length, low), new Pt(far, low), new Pt(far, b.height), new Pt(n, b.height), new Pt(n, low), new Pt(0, low),
                new Pt(0, n), new Pt(n, n))), "part");
        sheet.plate(Pen.BEND, new Box(n, n, far, low), "bend-lines");
        if (b.hem > 0) {
            sheet.path(Pen.BEND, Path.line(n, b.hem, far, b.hem), "hem-line");
            sheet.path(Pen.BEND, Path.line(n, b.height - b.hem, far, b.height - b.hem));
            sheet.path(Pen.BEND, Path.line(b.hem, n, b.hem, low));
            sheet.path(Pen.BEND, Path.line(b.length - b.hem, n, b.length - b.hem, low));
        }
    }

    private static void dimensions(Values v, Sheet sheet, Blank b) {
        Across above = new Across(sheet, 0, true, Ink.RIGHT, b.length / 2);
        above.add(0, b.notch, v.label("notch"));
        above.add(b.notch, b.length - b.notch, v.label("between"));
        above.add(0, b.length, v.label("length"));
        if (b.hem > 0 && !v.has("side")) {
            new Upright(sheet, 0, true, Ink.RIGHT).add(0, b.hem, b.notch, v.label("hem"));
        }
    }

    /** The answer's notches at the lower edge, where its dimensions stand. */
    private static void outline(Values y, Sheet sheet, Blank b, double scale) {
        double notch = y.at("notch") * scale;
        double end = Math.min(b.length, notch + y.at("between") * scale);
        double last = b.length - end;
        Path p = Path.line(0, b.height - notch, notch, b.height - notch).lineTo(new Pt(notch, b.height)).lineTo(new Pt(end, b.height));
        if (last > 0) {
            p.lineTo(new Pt(end, b.height - Math.min(last, b.height / 2))).lineTo(new Pt(b.length, b.height - Math.min(last, b.height / 2)));
        }
        sheet.path(Pen.PHANTOM, p, "yours-part");
    }

    private static void miss(Brief brief, Sheet sheet, Blank b, double scale) {
        Across below = new Across(sheet, b.height, false, Ink.YOURS, b.length / 2);
        double notch = brief.yours().at("notch") * scale;
        double end = notch + brief.yours().at("between") * scale;
        Label size = Label.text(off(brief).text(brief));
        if (off(brief).is("notch")) {
            corner(sheet, b, notch);
            below.add(b.notch, notch, size);
        } else if (end <= b.length) {
            double from = b.length - b.notch;
            if (Math.abs(end - from) >= 1.5) {
                Hatch.fill(sheet, Pen.YOURS_HATCH, new Box(Math.min(from, end), b.height - b.notch, Math.max(from, end), b.height));
            }
            below.add(from, end, size);
        } else {
            Hatch.fill(sheet, Pen.YOURS_HATCH, new Box(b.length - b.notch, b.height - b.notch, b.length, b.height));
        }
        below.add(0, notch, Off.label(brief, "notch"));
        below.add(notch, Math.min(end, b.length), end <= b.length ? Off.label(brief, "between") : Label.NONE);
        if (end > b.length) {
            below.add(notch, b.length, Label.text(off(brief).is("between") ? off(brief).text(brief) : ""));
        }
    }

    /** Hatches what lies between the right notch and the answer's. */
    private static void corner(Sheet sheet, Blank b, double notch) {
        if (Math.abs(notch - b.notch) >= 1.5) {
            Hatch.fill(sheet, Pen.YOURS_HATCH, List.of(new Pt(0, b.height - b.notch), new Pt(b.notch, b.height - b.notch),
                    new Pt(b.notch, b.height), new Pt(notch, b.height), new Pt(notch, b.height - notch), new Pt(0, b.height - notch)));
        }
    }
}
