package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/** The flat pattern of an elbow's end piece, its seam at the throat: square below, the curve of the cut above. */
final class EndPiece {

    private static final int POINTS = 48;
    private static final double MOST = 2.5;

    private EndPiece() {}

    static void draw(Brief brief, Off off, Sheet sheet, double scale) {
        Values v = brief.right();
        double throat = v.at("throat") * scale;
        double heel = v.at("heel") * scale;
        double round = Math.PI * v.at("across") * scale;
        sheet.path(Pen.VISIBLE, outline(round, throat, heel), "pattern");
        sheet.line(Pen.CENTER, round / 2, 8, round / 2, -heel - 8);
        boolean seen = !off.isNothing() && Elbow.heel(brief) < MOST * v.at("heel") && brief.yours().at("throat") < MOST * v.at("heel");
        if (seen) {
            double yours = Elbow.heel(brief) * scale;
            sheet.path(Pen.PHANTOM, outline(round, brief.yours().at("throat") * scale, yours), "yours-pattern");
        }
        Box all = sheet.bounds();
        Upright left = new Upright(sheet, 0, true, Ink.RIGHT);
        left.add(0, -throat, v.label("throat"));
        heel(sheet, v, round, heel);
        below(brief, sheet, round, all.bottom());
        if (!off.isNothing()) {
            miss(brief, off, sheet, new double[] {round, throat, heel});
        }
    }

    private static void below(Brief brief, Sheet sheet, double round, double y) {
        sheet.letter(Label.text(brief.say("elbow.at.throat")), Lettering.NOTE, 0, y + 14, Anchor.START);
        sheet.letterFree(Label.text(brief.say("elbow.at.heel")), Lettering.NOTE, List.of(new Sheet.Spot(round / 2, y + 14, Anchor.MIDDLE),
                new Sheet.Spot(round / 2, y + 30, Anchor.MIDDLE)));
    }

    private static void heel(Sheet sheet, Values v, double round, double heel) {
        new Upright(sheet, round, false, Ink.RIGHT).add(0, -heel, round / 2, v.label("heel"));
    }

    /** The way round from the seam is the turn of a point on the pipe; its height swings from throat to heel and back. */
    private static Path outline(double round, double throat, double heel) {
        List<Pt> corners = new ArrayList<>();
        corners.add(new Pt(0, 0));
        for (int i = 0; i <= POINTS; i++) {
            double share = (1 - StrictMath.cos(2 * Math.PI * i / POINTS)) / 2;
            corners.add(new Pt(round * i / POINTS, -throat - (heel - throat) * share));
        }
        corners.add(new Pt(round, 0));
        return Path.polygon(corners);
    }

    private static void miss(Brief brief, Off off, Sheet sheet, double[] at) {
        boolean throat = off.is("throat");
        double x = throat ? 0 : at[0] / 2;
        double right = throat ? at[1] : at[2];
        double scale = at[0] / Math.PI / brief.right().at("across");
        double yours = (throat ? brief.yours().at("throat") : Elbow.heel(brief)) * scale;
        boolean seen = yours < MOST * at[2];
        if (seen && Math.abs(yours - right) >= 1.5) {
            Strip.miss(sheet, new Pt(x, -right), new Pt(x, -yours), 12);
        }
        Label size = off.is("cut") ? Off.label(brief, "cut").then(", " + off.text(brief)) : Off.label(brief, off.name())
                .then(", " + off.text(brief));
        double up = sheet.bounds().top();
        sheet.letter(size, Lettering.YOURS_TEXT, at[0] / 2, up - 10, Anchor.MIDDLE);
    }
}
