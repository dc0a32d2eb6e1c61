package soapstone.figure;

/** Labels with the sign that the trade puts before them. */
final class Labels {

    private Labels() {}

    /** Ø before a diameter; an empty label stays empty. */
    static Label diameter(Label label) {
        return signed("Ø", label);
    }

    /** R before a radius. */
    static Label radius(Label label) {
        return signed("R", label);
    }

    /** Words before a label; an empty label stays empty. */
    static Label named(String words, Label label) {
        return label.isEmpty() ? label : Label.text(words).then(label);
    }

    private static Label signed(String sign, Label label) {
        return label.isEmpty() ? label : Label.text(sign + (label.isFramed() ? "" : "\u00A0")).then(label);
    }

    /** So many of a size, such as 9 × Ø 7/16; empty without the size. */
    static Label times(Label count, Label each) {
        return count.isEmpty() || each.isEmpty() ? each : count.then(count.isFramed() ? "× " : " × ").then(each);
    }
}
