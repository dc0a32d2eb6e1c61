package soapstone.figure;

import java.util.List;
import soapstone.quantity.Dimension;
import soapstone.quantity.Units;

/** A torch on its way along a seam: what the arc runs at, which way and how fast it goes, and the bead behind it. */
final class TorchRun extends NamedDrawer {

    private static final double HEIGHT = 22;
    private static final double BEAD = 9;
    private static final double LEAN = 112;
    private static final double HALF = 11;

    TorchRun() {
        super("torch-run", new FigureArgument("travel", Dimension.LENGTH.over(Dimension.TIME), false, false),
                new FigureArgument("volts", Units.named("V").orElseThrow().dimension(), false, true),
                new FigureArgument("amps", Dimension.CURRENT, false, true));
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at("travel") > 0;
    }

    @Override
    public List<Label> notes(Brief brief) {
        return List.of(Label.text(brief.say("no.scale")));
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double length = Math.max(120, Math.min(room, 460));
        double at = length * 0.6;
        Box plate = new Box(0, 0, length, HEIGHT);
        Hatch.fill(sheet, Pen.HATCH, plate);
        sheet.plate(Pen.VISIBLE, plate, "part");
        sheet.path(Pen.SECTION, Path.from(new Pt(0, 0)).lineTo(new Pt(0, -BEAD)).lineTo(new Pt(at - 14, -BEAD))
                .lineTo(new Pt(at, 0)).close(), "bead");
        Pt tip = new Pt(at + 1, -14);
        torch(sheet, tip);
        sheet.line(Pen.BEND, at, -1, at + 1, -13);
        Pt arrow = new Pt(length - 6, -32);
        sheet.line(Pen.THIN, at + 44, -32, arrow.x(), arrow.y());
        sheet.arrow(Pen.ARROW, arrow, 0);
        sheet.letterFree(v.label("travel"), Lettering.TEXT, List.of(new Sheet.Spot((at + 44 + length) / 2, -40, Anchor.MIDDLE),
                new Sheet.Spot(at + 44, -42, Anchor.START), new Sheet.Spot(at + 44, -52, Anchor.START)));
        Label arc = v.has("volts") ? v.label("volts") : Label.NONE;
        Label amps = v.has("amps") ? v.label("amps") : Label.NONE;
        Label both = arc.isEmpty() || amps.isEmpty() ? arc.then(amps) : arc.then(", ").then(amps);
        Leader.to(sheet, Ink.RIGHT, tip.polar(52, LEAN).polar(HALF, LEAN + 90), 0, both.isEmpty() ? Label.NONE : both, 160, 180, 145, 120);
    }

    /** The nozzle, leaning back over the bead. */
    private static void torch(Sheet sheet, Pt tip) {
        Pt back = tip.polar(80, LEAN);
        List<Pt> nozzle = List.of(tip.polar(5, LEAN - 90), tip.polar(24, LEAN).polar(HALF, LEAN - 90), back.polar(HALF, LEAN - 90),
                back.polar(HALF, LEAN + 90), tip.polar(24, LEAN).polar(HALF, LEAN + 90), tip.polar(5, LEAN + 90));
        sheet.path(Pen.VISIBLE, Path.polygon(nozzle), "torch");
    }
}
