package soapstone.figure;

import java.util.List;

/** Layers that lie on each other, in section, with the line of a bolt through them. */
final class Stack implements Drawer {

    private static final double LEAST_THICK = 3;
    private static final double LETTERING = 20;
    private static final int MOST = 40;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("layers").many());
    }

    @Override
    public boolean canDraw(Values v) {
        double[] layers = v.all("layers");
        for (double d : layers) {
            if (!(d > 0)) {
                return false;
            }
        }
        return layers.length <= MOST;
    }

    @Override
    public String title(Brief brief) {
        return brief.say("stack.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("stack.is").values(brief.right(), "layers", "stack.layers");
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double[] layers = v.all("layers");
        double sum = 0;
        for (double d : layers) {
            sum += d;
        }
        double scale = Math.max(150, Math.min(340, layers.length * 34)) / sum;
        double width = Math.min(room * 0.5, 220);
        double y = 0;
        double lettered = -1e9;
        for (int i = 0; i < layers.length; i++) {
            double thick = Math.max(LEAST_THICK, layers[i] * scale);
            Box layer = new Box(0, y, width, y + thick);
            section(sheet, layer, i);
            if (!v.isAsked("layers") && !v.label("layers", i).isEmpty()) {
                lettered = Math.max((layer.top() + layer.bottom()) / 2, lettered + LETTERING);
                name(sheet, layer, lettered, v.label("layers", i));
            }
            y += thick;
        }
        sheet.line(Pen.CENTER, width / 2, -14, width / 2, y + 14);
        if (v.isAsked("layers")) {
            new Upright(sheet, width, false, Ink.RIGHT).add(0, y, v.label("layers"));
        }
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
