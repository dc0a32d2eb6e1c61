package soapstone.figure;

import java.util.Arrays;
import java.util.List;

/** Layers that lie on each other, in section, with the line of a bolt through them. */
final class Stack implements Drawer {

    private static final double LEAST_THICK = 3;
    private static final double LETTERING = 20;
    private static final int MOST = 40;
    private static final double HEAD = 13;
    private static final double SHANK = 10;
    private static final double FURTHEST = 2;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("layers").many(), FigureArgument.length("grip").maybe(),
                FigureArgument.length("bolt").maybe());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        double[] layers = v.all("layers");
        for (double d : layers) {
            if (!(d > 0)) {
                return false;
            }
        }
        double whole = Arrays.stream(layers).sum();
        return layers.length <= MOST && (!v.has("grip") || v.at("grip") > 0)
                && (!v.has("bolt") || v.at("bolt") > 0 && v.at("bolt") < 6 * whole);
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "stack.title.yours" : "stack.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("stack.is").values(brief.right(), "layers", "stack.layers");
        tellBolt(brief.right(), t);
        if (brief.isAsCut()) {
            t.say("triangle.yours");
            tellBolt(brief.yours(), t);
            off(brief).tell(brief, t);
        }
    }

    private static void tellBolt(Values v, Telling t) {
        t.value(v, "grip", "stack.grip").value(v, "bolt", "stack.bolt");
    }

    /** The bolt first: it is what gets bought. */
    private static Off off(Brief brief) {
        Off bolt = brief.right().has("bolt") ? Off.furthest(brief, "bolt") : Off.NOTHING;
        return bolt.isNothing() && brief.right().has("grip") ? Off.furthest(brief, "grip") : bolt;
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double[] layers = v.all("layers");
        double sum = Arrays.stream(layers).sum();
        double scale = Math.max(150, Math.min(340, layers.length * 34)) / sum;
        double width = Math.min(room * 0.5, 220);
        double y = 0;
        double lettered = -1e9;
        for (int i = 0; i < layers.length; i++) {
            double thick = Math.max(LEAST_THICK, layers[i] * scale);
            Box layer = new Box(0, y, width, y + thick);
            if (v.has("bolt")) {
                section(sheet, new Box(0, y, width / 2 - SHANK, y + thick), i);
                section(sheet, new Box(width / 2 + SHANK, y, width, y + thick), i);
            } else {
                section(sheet, layer, i);
            }
            if (!v.isAsked("layers") && !v.label("layers", i).isEmpty()) {
                lettered = Math.max((layer.top() + layer.bottom()) / 2, lettered + LETTERING);
                name(sheet, layer, lettered, v.label("layers", i));
            }
            y += thick;
        }
        double end = v.has("bolt") ? v.at("bolt") * scale : y;
        if (v.has("bolt")) {
            bolt(sheet, width / 2, end);
        }
        sheet.line(Pen.CENTER, width / 2, -14 - (v.has("bolt") ? HEAD : 0), width / 2, Math.max(y, end) + 14);
        Upright left = new Upright(sheet, 0, true, Ink.RIGHT);
        if (v.has("grip")) {
            left.add(0, y, v.label("grip"));
        }
        if (v.has("bolt")) {
            left.add(0, end, width / 2 - SHANK, v.label("bolt"));
        }
        yours(brief, sheet, new double[] {width, y, end}, scale);
        if (v.isAsked("layers")) {
            new Upright(sheet, width, false, Ink.RIGHT).add(0, y, v.label("layers"));
        }
    }

    /** A bolt from its head down to the end of its shank; a nut is not drawn. */
    private static void bolt(Sheet sheet, double x, double end) {
        sheet.plate(Pen.BEND, new Box(x - SHANK, 0, x + SHANK, end), "bolt");
        sheet.plate(Pen.BEND, new Box(x - 2 * SHANK, -HEAD, x + 2 * SHANK, 0), "head");
    }

    /** Where the answer's bolt ends, or how far its grip reaches. */
    private static void yours(Brief brief, Sheet sheet, double[] at, double scale) {
        Off off = off(brief);
        if (off.isNothing()) {
            return;
        }
        double x = at[0] / 2;
        double right = off.is("bolt") ? at[2] : at[1];
        double half = off.is("bolt") ? SHANK : x;
        double yours = Math.min(brief.yours().at(off.name()) * scale, FURTHEST * at[1]);
        sheet.path(Pen.PHANTOM, Path.line(x - half - 6, yours, x + half + 6, yours), "yours-end");
        if (Math.abs(yours - right) >= 1.5) {
            Hatch.fill(sheet, Pen.YOURS_HATCH, new Box(x - half, Math.min(right, yours), x + half, Math.max(right, yours)));
        }
        Label own = Off.label(brief, off.name());
        Label said = own.isEmpty() ? Label.text(off.text(brief)) : own.then(", " + off.text(brief));
        sheet.letter(said, Lettering.YOURS_TEXT, x, sheet.bounds().bottom() + 20, Anchor.MIDDLE);
    }

    private static void section(Sheet sheet, Box layer, int i) {
        if (layer.height() <= 5) {
            sheet.plate(Pen.SECTION, layer, "layer");
            return;
        }
        List<Pt> corners = List.of(new Pt(layer.left(), layer.top()), new Pt(layer.right(), layer.top()),
                new Pt(layer.right(), layer.bottom()), new Pt(layer.left(), layer.bottom()));
        Hatch.fill(sheet, Pen.HATCH, corners, i % 2 == 1);
        sheet.plate(Pen.VISIBLE, layer, "layer");
    }

    private static void name(Sheet sheet, Box layer, double y, Label label) {
        double middle = (layer.top() + layer.bottom()) / 2;
        double x = layer.right();
        sheet.path(Pen.THIN, Path.line(x - 8, middle, x + 8, middle).lineTo(new Pt(x + 28, y)).lineTo(new Pt(x + 36, y)));
        sheet.circle(Pen.ARROW, new Pt(x - 8, middle), 2, "");
        sheet.letter(label, Lettering.TEXT, x + 40, y + 5, Anchor.START);
    }
}
