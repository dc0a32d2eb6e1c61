package soapstone.paper;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import soapstone.page.AsCut;
import soapstone.page.Feedback;
import soapstone.page.Html;
import soapstone.page.Reference;
import soapstone.page.Words;

/** Makes strips to be cut: to each student what became of the answers, why, and where to read. */
public final class Strips {

    private static final int PAIRS_AT_ONCE = 12;
    private static final int MOST_TO_READ = 3;

    private final Printing printing;
    private final PaperSize size;
    private final int toAPage;

    /** @param toAPage two strips on a page, or four */
    public Strips(Words words, PaperSize size, int toAPage) {
        if (toAPage != 2 && toAPage != 4) {
            throw new IllegalArgumentException("two or four strips to a page, not " + toAPage);
        }
        this.printing = new Printing(words);
        this.size = size;
        this.toAPage = toAPage;
    }

    record Laid(Leaf leaf, List<Row> rows, String title) {}

    /** Strips that stand beside each other. */
    record Row(List<One> strips) {}

    /** @param read what to read now, each once */
    record One(Strip strip, List<Piece> problems, List<Reference> read) {}

    /** @param figure the part as it would have been cut: of the first problem that has such a drawing, where there is room for one only */
    record Piece(Strip.Problem problem, Optional<Html> figure) {}

    /** The markup, some strips at a time. */
    public List<String> markup(String title, List<Strip> strips) {
        int beside = toAPage / 2;
        List<Row> rows = new ArrayList<>();
        for (int from = 0; from < strips.size(); from += beside) {
            rows.add(new Row(strips.subList(from, Math.min(strips.size(), from + beside)).stream().map(this::laid).toList()));
        }
        List<String> all = new ArrayList<>();
        for (int from = 0; from < rows.size(); from += PAIRS_AT_ONCE) {
            Leaf leaf = Leaf.of(size, false, "7mm 8mm 7mm 8mm", title, "strips to-" + toAPage);
            all.add(printing.markup("paper-strips", new Laid(leaf, rows.subList(from, Math.min(rows.size(), from + PAIRS_AT_ONCE)), title)));
        }
        return all;
    }

    /** The page where there is nothing to tell yet. */
    public String none(String title) {
        Leaf leaf = Leaf.of(size, false, "7mm 8mm 7mm 8mm", title, "strips to-" + toAPage);
        return printing.markup("paper-strips", new Laid(leaf, List.of(), title));
    }

    private One laid(Strip strip) {
        List<Piece> pieces = new ArrayList<>();
        Set<Reference> read = new LinkedHashSet<>();
        boolean drawn = false;
        for (Strip.Problem problem : strip.problems()) {
            Optional<Feedback> feedback = problem.sheet().feedback();
            Optional<Html> figure = drawn ? Optional.empty() : feedback.flatMap(Feedback::asCut).flatMap(AsCut::figure).map(Drawn::narrow);
            drawn |= figure.isPresent();
            pieces.add(new Piece(problem, figure));
            feedback.filter(f -> f.right() < f.asked()).ifPresent(f -> f.readNext().stream().limit(1).forEach(read::add));
        }
        return new One(strip, pieces, read.stream().limit(MOST_TO_READ).toList());
    }
}
