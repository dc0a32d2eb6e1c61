package soapstone.figure;

/** The line over all spaces of a row: how many times the pitch, and what that makes. */
final class RowTelling {

    private RowTelling() {}

    /** Such as "8 × 4 1/4 = 34"; empty when pitch or count is asked or not printed. */
    static Label spanLabel(Brief brief, boolean yours) {
        Values v = yours ? brief.yours() : brief.right();
        int spaces = v.count("count") - 1;
        if (spaces < 2 || v.isAsked("pitch") || v.isAsked("count") || !v.isTold("pitch") || !v.isTold("count")) {
            return Label.NONE;
        }
        double pitch = v.at("pitch");
        String total = brief.size(spaces * pitch);
        String equal = Sizes.isExact(spaces * pitch, brief.system()) ? " = " : " ≈ ";
        String text = v.isPrintedWhole("pitch")
                ? spaces + " × " + v.label("pitch").spoken() + equal + total
                : brief.say("row.spaces", spaces) + equal + total;
        return Label.text(yours ? brief.say("yours") + " " + text : text);
    }

    static void span(Brief brief, Telling t, boolean yours) {
        Label label = spanLabel(brief, yours);
        if (!label.isEmpty()) {
            t.sentence(brief.say("row.all", label.spoken()));
        }
    }
}
