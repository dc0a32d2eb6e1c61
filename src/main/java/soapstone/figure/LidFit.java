package soapstone.figure;

import java.util.List;

/** A lid that slips over a box, cut through the long way and through the wide way, with the air between their walls. */
final class LidFit implements Drawer {

    private static final double MOST_RATIO = 400;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("length"), FigureArgument.length("width"), FigureArgument.length("wall"),
                FigureArgument.length("gap"), FigureArgument.length("lid_length"), FigureArgument.length("lid_width"),
                FigureArgument.length("over_all").maybe());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        double wall = v.at("wall");
        return v.at("length") > 0 && v.at("width") > 0 && wall > 0 && v.at("gap") > 0 && v.at("gap") < 8 * wall
                && v.at("lid_length") > 0 && v.at("lid_width") > 0 && v.at("length") < MOST_RATIO * wall
                && v.at("width") < MOST_RATIO * wall && wall < v.at("length") && wall < v.at("width")
                && (!v.has("over_all") || v.at("over_all") > 0);
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "lid-over-box.title.yours" : "lid-over-box.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("lid-over-box.is");
        tellValues(brief.right(), t);
        if (brief.isAsCut()) {
            t.say("lid-over-box.yours");
            tellValues(brief.yours(), t);
            off(brief).tell(brief, t);
        }
        notes(brief).forEach(n -> t.sentence(n.spoken()));
    }

    private static void tellValues(Values v, Telling t) {
        t.value(v, "length", "lid-over-box.length").value(v, "width", "lid-over-box.width").value(v, "wall", "lid-over-box.wall")
                .value(v, "gap", "lid-over-box.gap").value(v, "lid_length", "lid-over-box.lid.length")
                .value(v, "lid_width", "lid-over-box.lid.width").value(v, "over_all", "lid-over-box.over.all");
    }

    private static Off off(Brief brief) {
        Off inside = Off.furthest(brief, "lid_length", "lid_width");
        return inside.isNothing() && brief.right().has("over_all") ? Off.furthest(brief, "over_all") : inside;
    }

    @Override
    public List<Label> notes(Brief brief) {
        return List.of(Label.text(brief.say("lid-over-box.heights")));
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Off off = off(brief);
        Sheet along = new Sheet();
        new LidSection(brief, off, new LidSection.Names("length", "lid_length", "over_all")).draw(along, room);
        Sheet across = new Sheet();
        new LidSection(brief, off, new LidSection.Names("width", "lid_width", "")).draw(across, room);
        Views.under(sheet).add(along, brief.say("lid-over-box.long.way")).add(across, brief.say("lid-over-box.wide.way"));
    }
}
