package soapstone.figure;

/**
 * Which size of a bend an answer has different: the first of setback, K, deduction and allowance.
 *
 * @param name the argument; empty when nothing differs
 * @param off  how much more the answer's is, a length in base units; for K how much deeper its line lies
 */
record BendMiss(String name, double off) {

    static BendMiss of(Brief brief) {
        for (String name : new String[] {"setback", "k", "deduction", "allowance"}) {
            if (brief.isAsCut() && brief.differs(name)) {
                double off = brief.yours().at(name) - brief.right().at(name);
                return new BendMiss(name, name.equals("k") ? off * brief.right().at("thickness") : off);
            }
        }
        return new BendMiss("", 0);
    }

    boolean is(String wanted) {
        return name.equals(wanted);
    }

    String text(Brief brief) {
        String key = switch (name) {
            case "k" -> off < 0 ? "miss.shallow" : "miss.deep";
            case "deduction" -> off < 0 ? "miss.little" : "miss.much";
            default -> off < 0 ? "miss.short" : "miss.long";
        };
        return brief.say(key, Sizes.fine(off, brief.system()));
    }
}
