package soapstone.figure;

import java.util.List;

/** Parts that an answer lays on a sheet beyond those that fit, or leaves out. */
final class NestMiss {

    private static final double MOST = 1.5;
    private static final int MOST_PARTS = 300;

    private NestMiss() {}

    private static boolean isOffSheet(Brief brief) {
        Values v = brief.right();
        Values y = brief.yours();
        return y.count("along") * v.at("part_length") > MOST * v.at("sheet_length")
                || y.count("across") * v.at("part_width") > MOST * v.at("sheet_width")
                || (long) y.count("along") * y.count("across") > MOST_PARTS || parts(v) > MOST_PARTS;
    }

    private static long parts(Values v) {
        return (long) v.count("along") * v.count("across");
    }

    /** How many more or fewer, and whether they can be seen. */
    static List<Label> notes(Brief brief) {
        if (!brief.isAsCut() || !brief.differs("along") && !brief.differs("across")) {
            return List.of();
        }
        long more = parts(brief.yours()) - parts(brief.right());
        Label size = more == 0 ? Label.NONE
                : Label.text(brief.say("yours") + ": " + brief.say(more > 0 ? "nest.miss.over" : "nest.miss.under", Math.abs(more)));
        Label gone = isOffSheet(brief) ? Label.text(brief.say("nest.off.sheet")) : Label.NONE;
        return List.of(size, gone).stream().filter(l -> !l.isEmpty()).toList();
    }

    /** Those that are too many in phantom lines and hatched; those that are left out hatched. */
    static void draw(Brief brief, Sheet sheet, double scale) {
        if (isOffSheet(brief)) {
            return;
        }
        Values v = brief.right();
        Values y = brief.yours();
        double kerf = v.has("kerf") ? v.at("kerf") * scale : 0;
        Box part = new Box(0, 0, v.at("part_length") * scale, v.at("part_width") * scale);
        for (int i = 0; i < Math.max(v.count("along"), y.count("along")); i++) {
            for (int j = 0; j < Math.max(v.count("across"), y.count("across")); j++) {
                boolean right = i < v.count("along") && j < v.count("across");
                boolean theirs = i < y.count("along") && j < y.count("across");
                if (right != theirs) {
                    part(sheet, part.moved(i * (part.width() + kerf), j * (part.height() + kerf)), theirs);
                }
            }
        }
    }

    private static void part(Sheet sheet, Box box, boolean theirs) {
        if (Math.min(box.width(), box.height()) >= 1.5) {
            Hatch.fill(sheet, Pen.YOURS_HATCH, box);
        }
        if (theirs) {
            sheet.plate(Pen.PHANTOM, box, "yours-part");
        }
    }
}
