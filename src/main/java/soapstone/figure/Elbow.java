package soapstone.figure;

import java.util.List;

/** An elbow in pieces from the side, and the pattern of its end piece, which throat and heel alone decide. */
final class Elbow implements Drawer {

    private static final int MOST_PIECES = 24;
    private static final double MOST_RATIO = 12;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("across"), FigureArgument.number("pieces"), FigureArgument.length("throat"),
                FigureArgument.length("heel"), FigureArgument.angle("cut").maybe(), FigureArgument.angle("turn").maybe(),
                FigureArgument.length("bend").maybe());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        double across = v.at("across");
        int pieces = v.count("pieces");
        double leaned = Math.abs(v.at("heel") - v.at("throat")) / across;
        return across > 0 && pieces >= 2 && pieces <= MOST_PIECES && v.at("throat") >= 0 && v.at("heel") > 0
                && v.at("heel") < MOST_RATIO * across && v.at("throat") < MOST_RATIO * across
                && v.at("throat") + v.at("heel") > across / 50
                && 2 * (pieces - 1) * Math.toDegrees(StrictMath.atan(leaned)) < 300
                && (!v.has("cut") || Math.abs(v.at("cut")) < 85) && (!v.has("bend") || v.at("bend") > 0);
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "elbow.title.yours" : "elbow.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("elbow.is");
        tellValues(brief.right(), t);
        if (brief.isAsCut()) {
            t.say("elbow.yours");
            tellValues(brief.yours(), t);
            off(brief).tell(brief, t);
        }
    }

    private static void tellValues(Values v, Telling t) {
        t.value(v, "across", "elbow.across").value(v, "pieces", "elbow.pieces").value(v, "turn", "elbow.turn")
                .value(v, "bend", "elbow.bend").value(v, "cut", "elbow.cut").value(v, "throat", "elbow.throat")
                .value(v, "heel", "elbow.heel");
    }

    /** A length decides the piece; the angle of the cut is drawn for itself where both lengths are right. */
    private static Off off(Brief brief) {
        Off length = Off.furthest(brief, "heel", "throat");
        return length.isNothing() && brief.right().has("cut") ? Off.furthest(brief, "cut") : length;
    }

    /** The heel of an answer's end piece: its own, or what its angle makes of the right throat. */
    static double heel(Brief brief) {
        Values y = brief.yours();
        return off(brief).is("cut") ? y.at("throat") + y.at("across") * StrictMath.tan(Math.toRadians(y.at("cut"))) : y.at("heel");
    }

    @Override
    public List<Label> notes(Brief brief) {
        Label pieces = brief.right().label("pieces");
        return pieces.isEmpty() ? List.of() : List.of(pieces.then(" " + brief.say("elbow.count")));
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Off off = off(brief);
        Values v = brief.right();
        ElbowSide side = ElbowSide.of(v, v.at("heel"));
        Box real = side.bounds();
        double round = Math.PI * v.at("across");
        double scale = brief.isNarrow() ? Math.min(room / Math.max(round, real.width()), 300 / real.height())
                : Math.min((room - Views.between()) / (round + real.width()), 320 / real.height());
        Sheet view = new Sheet();
        side.draw(brief, off, view, scale);
        Sheet flat = new Sheet();
        EndPiece.draw(brief, off, flat, scale);
        (brief.isNarrow() ? Views.under(sheet) : Views.beside(sheet)).add(view, brief.say("elbow.side"))
                .add(flat, brief.say("elbow.pattern"));
    }
}
