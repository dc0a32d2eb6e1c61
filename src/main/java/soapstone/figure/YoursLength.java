package soapstone.figure;

/** A bar in one length and under it the length that an answer gives it, with the miss hatched. */
final class YoursLength {

    private YoursLength() {}

    /** @param name the argument that holds the whole length */
    static void draw(Brief brief, Sheet sheet, Box bar, double scale, String name) {
        if (!brief.differs(name)) {
            return;
        }
        double end = brief.yours().at(name) * scale;
        double right = brief.right().at(name) * scale;
        Reach reach = Reach.of(right, 0, end);
        double low = bar.bottom() + 8;
        YoursBar.draw(sheet, reach, end, low);
        Across below = new Across(sheet, low + 4, false, Ink.YOURS, right / 2);
        Miss.along(sheet, new Miss(right, reach.clip(end)), bar, below, miss(brief, name));
        if (reach.holds(end)) {
            below.add(0, end, brief.yoursLabel(name));
        }
    }

    static String miss(Brief brief, String name) {
        return brief.differs(name) ? NamedDrawer.lengthMiss(brief, brief.yours().at(name) - brief.right().at(name)) : "";
    }
}
