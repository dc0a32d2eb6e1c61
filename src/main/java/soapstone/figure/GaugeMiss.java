package soapstone.figure;

/**
 * Which of stop and blank an answer has further off.
 *
 * @param name the argument; empty when neither differs
 * @param off  how much more the answer's is, in base units
 */
record GaugeMiss(String name, double off) {

    static GaugeMiss of(Brief brief) {
        GaugeMiss worst = new GaugeMiss("", 0);
        for (String name : new String[] {"stop", "blank"}) {
            if (brief.isAsCut() && brief.differs(name)) {
                double off = brief.yours().at(name) - brief.right().at(name);
                worst = Math.abs(off) > Math.abs(worst.off) ? new GaugeMiss(name, off) : worst;
            }
        }
        return worst;
    }

    boolean is(String wanted) {
        return name.equals(wanted);
    }

    String text(Brief brief) {
        String key = is("stop") ? off < 0 ? "miss.near" : "miss.far" : off < 0 ? "miss.short" : "miss.long";
        return brief.say(key, brief.size(off));
    }

    /** Whether the answer's blank would reach far out of the drawing. */
    boolean isOffSheet(Brief brief) {
        return Math.abs(off) > 0.8 * brief.right().at("blank");
    }
}
