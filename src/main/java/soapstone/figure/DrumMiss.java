package soapstone.figure;

/**
 * Which size of a lying drum an answer has different: the first of level, diameter and length.
 *
 * @param name the argument; empty when nothing differs
 */
record DrumMiss(String name) {

    private static final double MOST = 2.05;

    static DrumMiss of(Brief brief) {
        for (String name : new String[] {"level", "diameter", "length"}) {
            if (brief.isAsCut() && brief.differs(name)) {
                return new DrumMiss(name);
            }
        }
        return new DrumMiss("");
    }

    boolean is(String wanted) {
        return name.equals(wanted);
    }

    String text(Brief brief) {
        if (name.isEmpty()) {
            return "";
        }
        double off = brief.yours().at(name) - brief.right().at(name);
        return is("level") ? Levels.text(brief) : brief.say(off < 0 ? "miss.short" : "miss.long", brief.size(off));
    }

    boolean isOffSheet(Brief brief) {
        return brief.yours().at("diameter") > MOST * brief.right().at("diameter")
                || brief.yours().at("length") > MOST * brief.right().at("length");
    }
}
