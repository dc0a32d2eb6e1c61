package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/** A square bend in the die of a press brake, with the opening and what follows from it. */
final class BrakeDie implements Drawer {

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("thickness"), FigureArgument.length("opening"), FigureArgument.length("radius"),
                FigureArgument.length("flange").maybe());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        return BrakeSection.canDraw(v);
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "brake-die.title.yours" : "brake-die.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("brake.is");
        tellValues(brief.right(), t);
        if (brief.isAsCut()) {
            t.say("tank.yours");
            tellValues(brief.yours(), t);
            t.sentence(brief.differs("opening") ? BrakeSection.miss(brief) + "." : "");
        }
        notes(brief).forEach(n -> t.sentence(n.isFramed() ? "" : n.spoken() + "."));
    }

    private static void tellValues(Values v, Telling t) {
        t.value(v, "thickness", "fold.thickness").value(v, "opening", "brake.opening").value(v, "radius", "fold.radius")
                .value(v, "flange", "brake.flange.least");
    }

    @Override
    public List<Label> notes(Brief brief) {
        List<Label> notes = new ArrayList<>();
        Label radius = brief.right().label("radius");
        if (!radius.isEmpty()) {
            notes.add(radius.isFramed() ? Label.text(brief.say("fold.inside.radius", "").trim() + " ").then(radius)
                    : Label.text(brief.say("fold.inside.radius", radius.spoken())));
        }
        if (brief.isAsCut() && !BrakeSection.flange(brief).isEmpty()) {
            notes.add(BrakeSection.flange(brief));
        }
        if (BrakeSection.isOffSheet(brief)) {
            notes.add(Label.text(brief.say("tank.off.sheet", BrakeSection.miss(brief))));
        }
        return notes;
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        new BrakeSection(brief, room, brief.isNarrow() ? 230 : 280).draw(sheet);
    }
}
