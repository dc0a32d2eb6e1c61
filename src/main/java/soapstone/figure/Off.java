package soapstone.figure;

/**
 * The size of an answer's part that is furthest off.
 *
 * @param name of the argument; empty when none is off
 * @param size how much more the answer's is, in base units
 */
record Off(String name, double size) {

    static final Off NOTHING = new Off("", 0);

    /** The one that is most off as a share of the right one; the first of equals. */
    static Off furthest(Brief brief, String... names) {
        Off worst = NOTHING;
        double most = 0;
        for (String name : names) {
            if (brief.isAsCut() && brief.differs(name)) {
                double off = brief.yours().at(name) - brief.right().at(name);
                double share = Math.abs(off / brief.right().at(name));
                if (share > most) {
                    most = share;
                    worst = new Off(name, off);
                }
            }
        }
        return worst;
    }

    boolean isNothing() {
        return name.isEmpty();
    }

    boolean is(String wanted) {
        return name.equals(wanted);
    }

    /** Such as "2 1/2 in short" or "12.5° too much"; empty when nothing is off. */
    String text(Brief brief) {
        if (isNothing()) {
            return "";
        }
        if (brief.right().isAngle(name)) {
            return brief.say(size < 0 ? "miss.little" : "miss.much", Sizes.degrees(size));
        }
        return brief.say(size < 0 ? "miss.short" : "miss.long", brief.size(size));
    }

    /** Says the miss in the description. */
    void tell(Brief brief, Telling t) {
        if (!isNothing()) {
            t.sentence(text(brief) + ".");
        }
    }

    /** The answer's label of an argument under the word that says whose it is; empty when it is not another one. */
    static Label label(Brief brief, String name) {
        return brief.differs(name) ? brief.yoursLabel(name) : Label.NONE;
    }
}
