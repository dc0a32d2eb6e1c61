package soapstone.figure;

import java.util.List;

/** An upright panel under water seen from the front, and beside it from the side with the pressure that grows with depth. */
final class Panel implements Drawer {

    private static final double BETWEEN = 40;
    private static final double DIAGRAM = 90;
    private static final int ARROWS = 7;

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
                && (!v.has("center") || v.at("center") >= 0);
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
            if (!worst(brief).isEmpty()) {
                t.sentence(missText(brief) + ".");
            }
        }
    }

    private static void tellValues(Values v, Telling t) {
        t.value(v, "width", "width").value(v, "height", "height").value(v, "top", "panel.top").value(v, "center", "panel.center");
    }

    private static String worst(Brief brief) {
        for (String name : new String[] {"center", "height", "top", "width"}) {
            if (brief.differs(name)) {
                return name;
            }
        }
        return "";
    }

    private static String missText(Brief brief) {
        String name = worst(brief);
        double off = brief.yours().at(name) - brief.right().at(name);
        String key = switch (name) {
            case "center", "top" -> off < 0 ? "miss.high" : "miss.low";
            case "width" -> off < 0 ? "miss.narrow" : "miss.wide";
            default -> off < 0 ? "miss.short" : "miss.long";
        };
        return brief.say(key, brief.size(off));
    }

    /** The panel from the front, and where its side view stands. */
    private record Frame(double scale, Box front, double side, double diagram) {
        double depth() {
            return front.bottom();
        }
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double diagram = brief.isNarrow() ? DIAGRAM * 0.6 : DIAGRAM;
        double between = brief.isNarrow() ? BETWEEN * 0.6 : BETWEEN;
        double depth = v.at("top") + v.at("height");
        double scale = Math.min(Math.max(10, room - between - diagram) / v.at("width"), (brief.isNarrow() ? 190 : 230) / depth);
        double width = v.at("width") * scale;
        Frame f = new Frame(scale, new Box(0, v.at("top") * scale, width, depth * scale), width + between, diagram);
        surface(sheet, f);
        sheet.plate(Pen.VISIBLE, f.front, "part");
        pressure(sheet, f);
        if (v.has("center")) {
            center(sheet, f, v.at("center") * scale, Pen.VISIBLE, "center-of-pressure");
        }
        if (brief.isAsCut()) {
            outlineYours(brief, sheet, f);
        }
        dimensions(v, sheet, f);
        if (brief.isAsCut()) {
            drawYours(brief, sheet, f);
        }
    }

    private static void surface(Sheet sheet, Frame f) {
        sheet.plate(Pen.WATER, new Box(-10, 0, f.side, f.depth() + 8), "");
        sheet.path(Pen.THIN, Path.line(-10, 0, f.side + f.diagram + 6, 0), "surface");
        Surface.sign(sheet, Pen.THIN, f.front.width() * 0.5, 0);
    }

    private static void pressure(Sheet sheet, Frame f) {
        double top = f.front.top();
        double bottom = f.front.bottom();
        sheet.line(Pen.VISIBLE, f.side, top, f.side, bottom);
        double least = f.diagram * top / bottom;
        sheet.path(Pen.THIN, Path.polygon(List.of(new Pt(f.side, top), new Pt(f.side + least, top),
                new Pt(f.side + f.diagram, bottom), new Pt(f.side, bottom))), "pressure");
        for (int i = 0; i < ARROWS; i++) {
            double y = top + (bottom - top) * (i + 0.5) / ARROWS;
            double reach = f.diagram * y / bottom;
            if (reach > 12) {
                sheet.line(Pen.THIN, f.side + 1, y, f.side + reach, y);
                sheet.arrow(Pen.ARROW, new Pt(f.side + 1, y), 180);
            }
        }
    }

    /** The force as one arrow at the center of pressure. */
    private static void center(Sheet sheet, Frame f, double depth, Pen pen, String role) {
        if (depth > f.depth() * 1.4) {
            return;
        }
        double far = f.side + f.diagram + 4;
        sheet.path(pen, Path.line(f.side + 12, depth, far, depth), role);
        Pt tip = new Pt(f.side + 1, depth);
        sheet.path(pen == Pen.VISIBLE ? Pen.SECTION : Pen.YOURS_ARROW,
                Path.polygon(List.of(tip, tip.plus(13, -4.5), tip.plus(13, 4.5))));
    }

    private static void dimensions(Values v, Sheet sheet, Frame f) {
        Upright left = new Upright(sheet, -10, true, Ink.RIGHT);
        left.add(f.front.top(), f.front.bottom(), 0, v.label("height"));
        if (v.at("top") > 0) {
            left.add(0, f.front.top(), 0, v.label("top"));
        }
        if (v.has("center")) {
            new Upright(sheet, f.side + f.diagram + 4, false, Ink.RIGHT).add(0, v.at("center") * f.scale, v.label("center"));
        }
        new Across(sheet, f.depth() + 2, false, Ink.RIGHT, f.front.width() / 2).add(0, f.front.width(), v.label("width"));
    }

    private static boolean isOffSheet(Brief brief) {
        Values r = brief.right();
        Values y = brief.yours();
        double depth = r.at("top") + r.at("height");
        return y.has("center") && worst(brief).equals("center") ? y.at("center") > 1.4 * depth
                : y.at("width") > 1.2 * r.at("width") || y.at("top") + y.at("height") > 1.5 * depth;
    }

    @Override
    public List<Label> notes(Brief brief) {
        return brief.isAsCut() && isOffSheet(brief) ? List.of(Label.text(brief.say("tank.off.sheet", missText(brief)))) : List.of();
    }

    private static Box front(Values v, Frame f) {
        return new Box(0, v.at("top") * f.scale, v.at("width") * f.scale, (v.at("top") + v.at("height")) * f.scale);
    }

    private static boolean fits(Values v, Frame f) {
        Box box = front(v, f);
        return box.right() < f.side - 6 && box.bottom() < 1.5 * f.depth();
    }

    private static void outlineYours(Brief brief, Sheet sheet, Frame f) {
        Values v = brief.yours();
        if (worst(brief).equals("center")) {
            center(sheet, f, v.at("center") * f.scale, Pen.PHANTOM, "yours-center");
        } else if (!worst(brief).isEmpty() && fits(v, f)) {
            sheet.plate(Pen.PHANTOM, front(v, f), "yours-part");
        }
    }

    private static void drawYours(Brief brief, Sheet sheet, Frame f) {
        Values v = brief.yours();
        String worst = worst(brief);
        if (worst.isEmpty()) {
            return;
        }
        if (!worst.equals("center")) {
            panelMiss(brief, sheet, f, fits(v, f) ? front(v, f) : f.front);
            return;
        }
        double yours = v.at("center") * f.scale;
        double right = brief.right().at("center") * f.scale;
        if (yours > f.depth() * 1.4) {
            return;
        }
        if (Math.abs(yours - right) >= 1.5) {
            Hatch.fill(sheet, Pen.YOURS_HATCH, new Box(f.side, Math.min(right, yours), f.side + f.diagram, Math.max(right, yours)));
        }
        Upright beside = new Upright(sheet, f.side + f.diagram + 4, false, Ink.YOURS).compact(brief.isNarrow());
        beside.add(right, yours, Label.text(missText(brief)));
        beside.add(0, yours, brief.yoursLabel("center"));
    }

    private static void panelMiss(Brief brief, Sheet sheet, Frame f, Box yours) {
        String worst = worst(brief);
        if (worst.equals("width")) {
            Across below = new Across(sheet, f.depth() + 34, false, Ink.YOURS, f.front.width() / 2);
            Miss.along(sheet, new Miss(f.front.right(), yours.right()), f.front, below, missText(brief));
            below.add(0, yours.right(), brief.yoursLabel("width"));
            return;
        }
        double right = worst.equals("top") ? f.front.top() : f.front.bottom();
        double theirs = worst.equals("top") ? yours.top() : yours.bottom();
        if (Math.abs(theirs - right) >= 1.5) {
            Hatch.fill(sheet, Pen.YOURS_HATCH, new Box(0, Math.min(right, theirs), f.front.right(), Math.max(right, theirs)));
        }
        Upright beside = new Upright(sheet, f.side + f.diagram + 4, false, Ink.YOURS).compact(brief.isNarrow());
        beside.add(right, theirs, Label.text(missText(brief)));
        beside.add(worst.equals("top") ? 0 : yours.top(), theirs, brief.yoursLabel(worst));
    }
}
