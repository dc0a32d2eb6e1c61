package soapstone.figure;

import java.util.List;

/** A flat pattern with its bend lines. */
final class FlatStrip implements Drawer {

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("width"), FigureArgument.length("bends").many(),
                FigureArgument.length("zone").maybe());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        return FlatView.canDraw(v);
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "flat-strip.title.yours" : "flat-strip.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("flat-strip.is");
        FlatView.tellValues(brief.right(), t);
        if (brief.isAsCut()) {
            FlatView.tellYours(brief, t);
        }
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        FlatView.draw(brief, sheet, room);
    }
}
