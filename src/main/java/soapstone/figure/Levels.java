package soapstone.figure;

/** What is said about the level in a tank when an answer has another one. */
final class Levels {

    private Levels() {}

    static double miss(Brief brief) {
        return brief.differs("level") ? brief.yours().at("level") - brief.right().at("level") : 0;
    }

    static String text(Brief brief) {
        return brief.say(miss(brief) < 0 ? "miss.low" : "miss.high", brief.size(miss(brief)));
    }

    /** The level kept inside the vessel, so that a wild one still gives a drawing. */
    static double within(Values v, double height) {
        return within(v, "level", height);
    }

    /** The same for a size of another name. */
    static double within(Values v, String name, double height) {
        return Math.max(0, Math.min(height, v.at(name)));
    }

    /** A level must not be under the bottom. */
    static boolean isSound(Values v) {
        return !v.has("level") || v.at("level") >= 0;
    }

    /** Says by how much a level stands over the rim, where it cannot be drawn. */
    static Label over(Brief brief, Values v, double height) {
        if (v == null || !v.has("level") || v.at("level") <= height * (1 + 1e-9)) {
            return Label.NONE;
        }
        return Label.text(brief.say("level.over", brief.size(v.at("level") - height)));
    }
}
