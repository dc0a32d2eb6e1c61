package soapstone.figure;

import java.util.List;

/**
 * An upright panel under water from the front, and from the side with the pressure that grows with depth. The views stand
 * beside each other; one under the other on a narrow sheet.
 */
final class Panel implements Drawer {

    private static final double BETWEEN = 30;
    private static final double DIAGRAM = 90;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("width"), FigureArgument.length("height"), FigureArgument.length("top"),
                FigureArgument.length("center").maybe());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        double depth = v.at("top") + v.at("height");
        return v.at("width") > 0 && v.at("height") > 0 && v.at("top") >= 0 && v.at("height") > depth / 200
                && v.at("width") < 200 * depth && depth < 200 * v.at("width") && (!v.has("center") || v.at("center") >= 0);
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "panel.title.yours" : "panel.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say(brief.right().at("top") > 0 ? "panel.is.trapezoid" : "panel.is.triangle");
        tellValues(brief.right(), t);
        if (brief.isAsCut()) {
            t.say("tank.yours");
            tellValues(brief.yours(), t);
            PanelMiss miss = PanelMiss.of(brief);
            if (!miss.is("")) {
                t.sentence(miss.text(brief) + ".");
            }
        }
    }

    private static void tellValues(Values v, Telling t) {
        t.value(v, "width", "width").value(v, "height", "height").value(v, "top", "panel.top").value(v, "center", "panel.center");
    }

    @Override
    public List<Label> notes(Brief brief) {
        PanelMiss miss = PanelMiss.of(brief);
        return miss.isOffSheet(brief) ? List.of(Label.text(brief.say("tank.off.sheet", miss.text(brief)))) : List.of();
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        boolean stacked = brief.isNarrow();
        PanelSide side = new PanelSide(brief, DIAGRAM);
        double wide = stacked ? room : Math.max(10, room - BETWEEN - side.width());
        double most = stacked ? 160 : 230;
        double scale = Math.min(wide / v.at("width"), most / (v.at("top") + v.at("height")));
        Sheet front = new Sheet();
        new PanelFront(brief, scale).draw(front);
        Sheet beside = new Sheet();
        side.draw(beside, scale);
        Box a = front.bounds();
        Box b = beside.bounds();
        sheet.add(front, 0, 0);
        if (stacked) {
            sheet.add(beside, a.left() + (a.width() - b.width()) / 2 - b.left(), a.bottom() + BETWEEN - b.top());
        } else {
            sheet.add(beside, a.right() + BETWEEN - b.left(), 0);
        }
    }
}
