package soapstone.figure;

/** Sensible inputs for blanks, lids, pipes, elbows and cones. */
final class RandomBlanks {

    private final RandomInputs random;

    RandomBlanks(RandomInputs random) {
        this.random = random;
    }

    void draw(Inputs in, String kind) {
        switch (kind) {
            case "pan" -> pan(in);
            case "notched-edge" -> notched(in);
            case "lid-over-box" -> lid(in);
            case "rolled-pipe" -> pipe(in);
            case "elbow" -> elbow(in);
            case "square-to-round" -> squareToRound(in);
            case "cone-and-flat" -> cone(in);
            default -> throw new AssertionError("no inputs for " + kind);
        }
    }

    private void pan(Inputs in) {
        double side = random.size(0.75, 4);
        double length = random.size(12, 36);
        double width = random.size(6, 24);
        in.length("length", length + 2 * side).length("width", width + 2 * side).length("bottom_length", length)
                .length("bottom_width", width);
        if (random.yes()) {
            in.length("side", side);
        }
    }

    private void notched(Inputs in) {
        double side = random.size(2, 6);
        double hem = random.size(0.375, 0.625);
        double notch = side + hem;
        double between = random.size(5, 24);
        in.length("length", between + 2 * notch).length("notch", notch).length("between", between);
        if (random.yes()) {
            in.length("hem", hem);
        }
        if (random.yes()) {
            in.length("side", side);
        }
    }

    private void lid(Inputs in) {
        double wall = random.size(0.12, 0.25);
        double gap = random.size(0.06, 0.19);
        double length = random.size(6, 24);
        double width = random.size(3, 12);
        double lid = length + 2 * (wall + gap);
        in.length("length", length).length("width", width).length("wall", wall).length("gap", gap).length("lid_length", lid)
                .length("lid_width", width + 2 * (wall + gap));
        if (random.yes()) {
            in.length("over_all", lid + 2 * wall);
        }
    }

    private void pipe(Inputs in) {
        double inside = random.size(4, 14);
        double thickness = random.size(0.03, 0.06);
        double lap = random.yes() ? random.size(0.375, 1) : 0;
        in.length("inside", inside).length("thickness", thickness).length("blank", Math.PI * (inside + thickness) + lap);
        if (lap > 0) {
            in.length("lap", lap);
        }
        if (random.yes()) {
            in.length("made", inside);
        }
    }

    private void elbow(Inputs in) {
        double across = random.size(8, 16);
        double bend = across * random.between(4, 8) / 4;
        int pieces = random.between(2, 6);
        int turn = random.between(9, 18) * 5;
        double cut = turn / 2.0 / (pieces - 1);
        double rise = Math.tan(Math.toRadians(cut));
        in.length("across", across).number("pieces", pieces).length("throat", (bend - across / 2) * rise)
                .length("heel", (bend + across / 2) * rise);
        if (random.yes()) {
            in.angle("cut", cut).angle("turn", turn).length("bend", bend);
        }
    }

    private void squareToRound(Inputs in) {
        double round = random.size(6, 16);
        double side = round + random.size(6, 24);
        double height = random.size(8, 24);
        double middle = (side - round) / 2;
        double corner = side * Math.sqrt(0.5) - round / 2;
        in.length("side", side).length("round", round).length("height", height).length("middle_plan", middle)
                .length("corner_plan", corner).length("middle_line", Math.hypot(middle, height))
                .length("corner_line", Math.hypot(corner, height));
    }

    private void cone(Inputs in) {
        double across = random.size(10, 36);
        double whole = across * random.between(2, 8) / 10;
        double outer = Math.hypot(across / 2, whole);
        in.length("across", across).length("outer", outer).angle("angle", 180 * across / outer);
        double share = random.between(3, 7) / 10.0;
        if (random.yes()) {
            in.length("top", across * share).length("inner", outer * share).length("height", whole * (1 - share));
        } else {
            in.length("height", whole);
        }
        if (random.yes()) {
            in.length("made_across", across).length("made_height", in.amounts("height"));
        }
    }
}
