package soapstone.figure;

/** Which part of a lettering stands at its x. */
enum Anchor {
    START("start", 0), MIDDLE("middle", 0.5), END("end", 1);

    private final String word;
    private final double share;

    Anchor(String word, double share) {
        this.word = word;
        this.share = share;
    }

    String word() {
        return word;
    }

    /** The left edge of lettering of that width. */
    double left(double x, double width) {
        return x - share * width;
    }
}
