package soapstone.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Lettering made of runs: plain text, and letters of asked quantities that stand in a frame.
 *
 * @param runs  in reading order
 * @param sizes the names of the sizes that it prints, such as {@code pitch} or {@code bends.2}; mostly one or none
 */
record Label(List<Run> runs, List<String> sizes) {

    static final Label NONE = new Label(List.of());
    /** Side of the square round a letter. */
    static final double FRAME = 18;
    private static final double AIR = 4;

    /** A piece of a label. */
    record Run(String text, boolean framed) {

        double width(Lettering lettering) {
            double plain = Glyphs.width(text, framed ? Lettering.TEXT.size() : lettering.size());
            return framed ? Math.max(FRAME, plain + 8) : plain;
        }
    }

    Label {
        runs = List.copyOf(runs);
        sizes = List.copyOf(sizes);
    }

    Label(List<Run> runs) {
        this(runs, List.of());
    }

    /** The same, known to print sizes of these names. */
    Label sized(List<String> names) {
        return isEmpty() ? this : new Label(runs, names);
    }

    static Label text(String text) {
        return text.isBlank() ? NONE : new Label(List.of(new Run(Svg.clean(text), false)));
    }

    static Label letter(String letter) {
        return new Label(List.of(new Run(Svg.clean(letter), true)));
    }

    boolean isEmpty() {
        return runs.isEmpty();
    }

    boolean isFramed() {
        for (Run r : runs) {
            if (r.framed()) {
                return true;
            }
        }
        return false;
    }

    /** This label with another behind it. */
    Label then(Label other) {
        List<Run> both = new ArrayList<>(runs);
        other.runs.forEach(r -> append(both, r));
        return new Label(both, Stream.concat(sizes.stream(), other.sizes.stream()).distinct().toList());
    }

    Label then(String text) {
        return then(new Label(List.of(new Run(Svg.clean(text), false))));
    }

    private static void append(List<Run> runs, Run next) {
        int last = runs.size() - 1;
        if (last >= 0 && !runs.get(last).framed() && !next.framed()) {
            runs.set(last, new Run(runs.get(last).text() + next.text(), false));
        } else {
            runs.add(next);
        }
    }

    /** Width in SVG units. */
    double width(Lettering lettering) {
        double w = 0;
        for (Run r : runs) {
            w += r.width(lettering);
        }
        return w + AIR * Math.max(0, runs.size() - 1);
    }

    /** The room it takes when it stands at x on a baseline. */
    Box box(Lettering lettering, double x, double baseline, Anchor anchor) {
        double w = width(lettering);
        double left = anchor.left(x, w);
        if (isFramed()) {
            double middle = baseline - lettering.size() * 0.35;
            return new Box(left, middle - FRAME / 2, left + w, middle + FRAME / 2);
        }
        return new Box(left, baseline - lettering.rise(), left + w, baseline + lettering.drop());
    }

    /** How the label reads aloud: framed letters in brackets. */
    String spoken() {
        StringBuilder out = new StringBuilder();
        for (Run r : runs) {
            out.append(out.length() == 0 || out.charAt(out.length() - 1) == ' ' ? "" : r.framed() ? " " : "");
            out.append(r.framed() ? "[" + r.text() + "]" : r.text());
        }
        return out.toString().trim();
    }

    static double air() {
        return AIR;
    }
}
