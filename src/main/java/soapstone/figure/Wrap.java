package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/** Breaks a label into lines at its plain spaces; no-break spaces hold. */
final class Wrap {

    private Wrap() {}

    static List<Label> lines(Label label, Lettering lettering, double width) {
        List<Label> lines = new ArrayList<>();
        Label line = Label.NONE;
        for (Label word : words(label)) {
            Label longer = line.isEmpty() ? word : join(line, word);
            if (!line.isEmpty() && longer.width(lettering) > width) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        // Of several lines none is known to hold the size.
        return lines.size() == 1 ? List.of(lines.get(0).sized(label.sizes())) : lines;
    }

    private static Label join(Label line, Label word) {
        boolean plain = !line.runs().get(line.runs().size() - 1).framed() && !word.runs().get(0).framed();
        return plain ? line.then(" ").then(word) : line.then(word);
    }

    private static List<Label> words(Label label) {
        List<Label> words = new ArrayList<>();
        for (Label.Run run : label.runs()) {
            if (run.framed()) {
                words.add(new Label(List.of(run)));
                continue;
            }
            for (String w : run.text().trim().split(" +")) {
                if (!w.isEmpty()) {
                    words.add(Label.text(w));
                }
            }
        }
        return words;
    }
}
