package soapstone.figure;

import java.util.List;

/** A folded part in section. */
final class Folded implements Drawer {

    @Override
    public List<FigureArgument> arguments() {
        return FoldView.arguments();
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values values) {
        return FoldView.canDraw(values);
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "folded.title.yours" : "folded.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("folded.is");
        FoldView.tell(brief, t);
        if (brief.isAsCut()) {
            FoldView.tellYours(brief, t);
        }
    }

    @Override
    public List<Label> notes(Brief brief) {
        return FoldView.notes(brief);
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        FoldView.draw(brief, sheet, room, brief.isNarrow() ? 170 : 200, false);
    }
}
