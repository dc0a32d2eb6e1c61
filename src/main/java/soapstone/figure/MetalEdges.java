package soapstone.figure;

import java.util.ArrayList;
import java.util.List;
import soapstone.quantity.UnitSystem;

/**
 * Four offcuts on their edges, each of another metal with the gauge that is written on it. To one scale where their thicknesses are
 * told; else all alike, since the eye would read the answer off them.
 */
final class MetalEdges extends NamedDrawer {

    private static final String[] METALS = {"aluminum", "carbon", "galvanized", "stainless"};
    private static final String PICKED = "picked";
    /** In SVG units for an inch, unless the thickest would be too thick to draw. */
    private static final double USUAL = 240;
    private static final double THICKEST = 60;
    private static final double LEAST = 3;
    private static final double ALIKE = 12;
    private static final double INCH = 25.4;
    private static final double ROW = 30;
    private static final double OVER = 15;
    private static final double BETWEEN = 14;
    private static final double AROUND = 5;
    private static final double BESIDE = 10;

    MetalEdges() {
        super("metal-edges", arguments(METALS));
    }

    private static FigureArgument[] arguments(String[] metals) {
        List<FigureArgument> all = new ArrayList<>();
        for (String metal : metals) {
            all.add(FigureArgument.number(number(metal)));
            all.add(FigureArgument.length(metal));
        }
        all.add(FigureArgument.length(PICKED));
        return all.toArray(FigureArgument[]::new);
    }

    private static String number(String metal) {
        return metal + "_number";
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean prints(String argument) {
        return !argument.equals(PICKED);
    }

    @Override
    public boolean canDraw(Values v) {
        for (String metal : METALS) {
            if (!(v.at(metal) > 0)) {
                return false;
            }
        }
        return v.at(PICKED) > 0;
    }

    private static boolean isTold(Values v) {
        for (String metal : METALS) {
            if (v.isHidden(metal)) {
                return false;
            }
        }
        return true;
    }

    /** The metal that is as thick as the picked one, or null when none is. */
    private static String picked(Values v) {
        for (String metal : METALS) {
            if (Math.abs(v.at(metal) - v.at(PICKED)) <= 1e-9 * v.at(PICKED)) {
                return metal;
            }
        }
        return null;
    }

    @Override
    String miss(Brief brief) {
        if (!brief.isAsCut() || !brief.differs(PICKED)) {
            return "";
        }
        double off = brief.yours().at(PICKED) - brief.right().at(PICKED);
        return brief.say(word("yours"), brief.say(off < 0 ? "miss.thin" : "miss.thick", Sizes.finest(off, brief.system())));
    }

    /** The four are the same by any answer; of the answer's part only the pick is told. */
    @Override
    public void tell(Brief brief, Telling t) {
        super.tell(new Brief(brief.right(), null, brief.words(), brief.width()), t);
        String miss = miss(brief);
        String picked = miss.isEmpty() ? null : picked(brief.yours());
        if (picked != null) {
            t.sentence(brief.say(word("picked"), row(brief, picked).spoken()));
        }
        t.sentence(miss.isEmpty() ? miss : miss + ".");
    }

    @Override
    public List<Label> notes(Brief brief) {
        List<Label> notes = new ArrayList<>();
        String miss = miss(brief);
        if (!miss.isEmpty()) {
            notes.add(Label.text(miss));
        }
        notes.add(Label.text(brief.say(word(isTold(brief.right()) ? "scale" : "alike"))));
        return notes;
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double length = Math.min(room, brief.isNarrow() ? 170 : 320);
        String right = picked(v);
        String yours = brief.isAsCut() && brief.differs(PICKED) ? picked(brief.yours()) : null;
        Upright beside = new Upright(sheet, -4, true, Ink.RIGHT);
        double top = 0;
        for (String metal : METALS) {
            Box edge = new Box(0, top + ROW, length, top + ROW + thick(brief, metal));
            edge(sheet, edge, metal);
            if (!v.label(number(metal)).isEmpty()) {
                sheet.letter(row(brief, metal), Ink.RIGHT.lettering(), 0, top + ROW - OVER, Anchor.START);
            }
            beside.add(edge.top(), edge.bottom(), 0, v.label(metal));
            boolean isRight = metal.equals(right) && isTold(v);
            mark(sheet, edge, isRight ? Label.text(brief.say(word("right"))) : Label.NONE, Ink.RIGHT);
            if (metal.equals(yours)) {
                around(sheet, edge);
                mark(sheet, edge, Label.text(brief.say("yours")), Ink.YOURS);
            }
            top = edge.bottom() + BETWEEN;
        }
    }

    private static double thick(Brief brief, String metal) {
        Values v = brief.right();
        if (!isTold(v)) {
            return ALIKE;
        }
        double most = 0;
        for (String each : METALS) {
            most = Math.max(most, v.at(each));
        }
        double scale = Math.min(brief.system() == UnitSystem.US ? USUAL : USUAL / INCH, THICKEST / most);
        return Math.max(LEAST, v.at(metal) * scale);
    }

    private Label row(Brief brief, String metal) {
        return Label.text(brief.say(word(metal + ".row"), brief.right().label(number(metal)).spoken())).sized(List.of(number(metal)));
    }

    private static void edge(Sheet sheet, Box edge, String metal) {
        sheet.plate(Pen.WATER, edge, metal);
        sheet.path(Pen.VISIBLE, Path.line(edge.left(), edge.top(), edge.right(), edge.top()), "upper");
        sheet.path(Pen.VISIBLE, Path.line(edge.left(), edge.bottom(), edge.right(), edge.bottom()), "lower");
        Break.end(sheet, Pen.BREAK, edge.left(), edge.top(), edge.bottom());
        Break.end(sheet, Pen.BREAK, edge.right(), edge.top(), edge.bottom());
    }

    /** The picked one in dashes, so far outside that both can be told apart. */
    private static void around(Sheet sheet, Box edge) {
        for (double y : new double[] {edge.top() - AROUND, edge.bottom() + AROUND}) {
            sheet.path(Pen.PHANTOM, Path.line(edge.left(), y, edge.right(), y), "yours-edge");
        }
    }

    private static void mark(Sheet sheet, Box edge, Label label, Ink ink) {
        if (!label.isEmpty()) {
            sheet.letter(label, ink.lettering(), edge.right() + BESIDE, (edge.top() + edge.bottom()) / 2 + ink.lettering().size() * 0.35, Anchor.START);
        }
    }
}
