package soapstone.figure;

/**
 * The largest miss of a folded part: the leg whose size is furthest off, or, when the legs agree, the turn.
 *
 * @param leg  the leg, or -1
 * @param turn the turn, or -1
 * @param size how much more the answer's is, in base units or degrees
 */
record FoldMiss(int leg, int turn, double size) {

    private static final double LEAST_WIDE = 10;

    /** Both sections as they lie on the sheet. */
    record Drawn(FoldLine right, FoldLine yours, Placing placing) {}

    static FoldMiss of(Brief brief) {
        int leg = furthest(brief.right().all("legs"), brief.yours().all("legs"));
        double[] r = brief.right().all("legs");
        double[] y = brief.yours().all("legs");
        if (leg >= 0) {
            return new FoldMiss(leg, -1, y[leg] - r[leg]);
        }
        int turn = furthest(brief.right().all("turns"), brief.yours().all("turns"));
        return turn < 0 ? new FoldMiss(-1, -1, 0)
                : new FoldMiss(-1, turn, brief.yours().all("turns")[turn] - brief.right().all("turns")[turn]);
    }

    private static int furthest(double[] right, double[] yours) {
        int worst = -1;
        double most = 1e-6;
        for (int i = 0; i < Math.min(right.length, yours.length); i++) {
            if (Math.abs(yours[i] - right[i]) > most) {
                most = Math.abs(yours[i] - right[i]);
                worst = i;
            }
        }
        return worst;
    }

    boolean isNothing() {
        return leg < 0 && turn < 0;
    }

    String text(Brief brief) {
        return turn >= 0 ? brief.say("miss.off", Sizes.degrees(size))
                : brief.say(size < 0 ? "miss.short" : "miss.long", brief.size(size));
    }

    void draw(Brief brief, Sheet sheet, Drawn drawn) {
        if (isNothing()) {
            return;
        }
        Pt from;
        Pt to;
        if (leg >= 0) {
            FoldLine.Leg own = drawn.right.legs().get(leg);
            from = drawn.placing.point(own.outer1());
            to = from.polar(size * drawn.placing.scale(), drawn.placing.direction(own.heading()));
        } else {
            from = drawn.placing.point(drawn.right.legs().get(turn + 1).to());
            to = drawn.placing.point(drawn.yours.legs().get(Math.min(turn + 1, drawn.yours.legs().size() - 1)).to());
        }
        if (from.distance(to) >= 1.5) {
            Strip.miss(sheet, from, to, Math.max(LEAST_WIDE, drawn.right.thickness() * drawn.placing.scale() + 6));
        }
        yoursSize(brief, sheet, drawn);
        double away = from.degreesTo(to);
        Leader.to(sheet, Ink.YOURS, from.towards(to, 0.5), 0, Label.text(text(brief)), away + 90, away - 90, away + 60, away - 60,
                away + 120, away - 120, away, away + 180);
    }

    private void yoursSize(Brief brief, Sheet sheet, Drawn drawn) {
        if (turn >= 0 && turn < drawn.yours.bends().size()) {
            FoldLine.Leg before = drawn.yours.legs().get(turn);
            double from = drawn.placing.direction(before.heading());
            double to = from + drawn.placing.turned(drawn.yours.bends().get(turn).turn());
            AngleMark.draw(sheet, Ink.YOURS, drawn.placing.point(before.outer1()), 56, new double[] {from, to}, 0,
                    brief.yoursLabel("turns", turn));
        }
        if (leg < 0 || leg >= drawn.yours.legs().size()) {
            return;
        }
        FoldLine.Leg own = drawn.yours.legs().get(leg);
        Aligned.add(sheet, Ink.YOURS, drawn.placing.point(own.outer0()), drawn.placing.point(own.outer1()),
                -FoldView.outside(drawn.yours, drawn.placing, leg), drawn.yours.thickness() * drawn.placing.scale() / 2,
                brief.yoursLabel("legs", leg));
    }
}
