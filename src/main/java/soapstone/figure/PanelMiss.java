package soapstone.figure;

/**
 * Which size of a panel an answer has different, the first of center, height, top and width; and by how much.
 *
 * @param name the argument; empty when nothing differs
 * @param off  how much more the answer's is, in base units
 */
record PanelMiss(String name, double off) {

    private static final double MOST_DEEPER = 1.4;
    private static final double MOST_WIDER = 1.3;

    static PanelMiss of(Brief brief) {
        for (String name : new String[] {"center", "height", "top", "width"}) {
            if (brief.isAsCut() && brief.differs(name)) {
                return new PanelMiss(name, brief.yours().at(name) - brief.right().at(name));
            }
        }
        return new PanelMiss("", 0);
    }

    boolean is(String wanted) {
        return name.equals(wanted);
    }

    String text(Brief brief) {
        String key = switch (name) {
            case "center", "top" -> off < 0 ? "miss.high" : "miss.low";
            case "width" -> off < 0 ? "miss.narrow" : "miss.wide";
            default -> off < 0 ? "miss.short" : "miss.long";
        };
        return brief.say(key, brief.size(off));
    }

    /** Whether the answer's panel or its center of pressure is too far out to be drawn. */
    boolean isOffSheet(Brief brief) {
        Values r = brief.right();
        Values y = brief.yours();
        double most = MOST_DEEPER * (r.at("top") + r.at("height"));
        if (name.isEmpty()) {
            return false;
        }
        return is("center") ? y.at("center") > most
                : y.at("top") + y.at("height") > most || y.at("width") > MOST_WIDER * r.at("width");
    }
}
