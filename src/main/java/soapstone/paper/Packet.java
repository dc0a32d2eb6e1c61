package soapstone.paper;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import soapstone.page.AnswerBox;
import soapstone.page.Caution;
import soapstone.page.Figure;
import soapstone.page.Html;
import soapstone.page.SheetView;
import soapstone.page.Words;

/** Makes the pages of a packet, sheet by sheet. */
public final class Packet {

    /** How wide a drawing is: beside the text; on half a page; and so that its lettering has 18 points. */
    private static final double DRAWING = 83;
    private static final double HALF_DRAWING = 80;
    private static final double LARGE_DRAWING = 154;
    /** What of a page's height is margins, the title and the title block. */
    private static final double ABOVE_AND_BELOW = 105;
    private static final double LINE = 4.6;
    private static final double BOX = 19;
    private static final int SIGNS_A_LINE = 58;

    private final Printing printing;
    private final PacketChoices choices;

    public Packet(Words words, PacketChoices choices) {
        this.printing = new Printing(words);
        this.choices = choices;
    }

    /**
     * A sheet as the template sees it.
     *
     * @param room whether there is room for the work on the sheet
     */
    record Laid(Leaf leaf, PacketSheet sheet, Html code, String units, String within, List<Piece> problems, boolean half, boolean large, boolean room) {}

    /**
     * A problem with its drawing in the layout that fits the paper.
     *
     * @param differs    whether the tolerance stands beside each box
     * @param cautions   that no problem before it has told
     * @param toldBefore the others
     * @param workBelow  whether the room for work is under the drawing; else it is under the boxes
     */
    record Piece(PacketSheet.Problem problem, Optional<Html> figure, boolean differs, List<Caution> cautions, List<Told> toldBefore, boolean workBelow) {}

    /** A caution that stands at an earlier problem. */
    record Told(Caution caution, int place) {}

    /**
     * Lays one sheet out and appends its pages. Where both sides are printed, it takes whole pieces of paper, the last side being room
     * for work.
     *
     * @return how many pages it took
     */
    public int add(Press press, PacketSheet sheet) {
        int pages = press.add(markup(sheet));
        if (choices.bothSides() && pages % 2 == 1) {
            pages += press.add(printing.markup("paper-back", laid(sheet, List.of())));
        }
        return pages;
    }

    /** The markup of one sheet, for a {@link Press}. */
    public String markup(PacketSheet sheet) {
        return printing.markup("paper-packet", laid(sheet, pieces(sheet)));
    }

    private Laid laid(PacketSheet sheet, List<Piece> pieces) {
        Words words = printing.words();
        String within = tolerance(sheet);
        String units = sheet.problems().isEmpty() ? "" : words.say("units." + Words.key(sheet.problems().get(0).sheet().key().units()), List.of());
        Leaf leaf = Leaf.of(choices.size(), false, margins(), sheet.title() + " " + sheet.number(), kinds());
        return new Laid(leaf, sheet, SheetCode.drawing(sheet.number(), words.say("paper.code", List.of(sheet.number()))), units,
                within.isEmpty() ? words.say("paper.within-beside", List.of()) : within, pieces, choices.half(), choices.large(), !choices.close());
    }

    /** On whole pages a caution is told in full once; each half page is cut off from the others and tells its own. */
    private List<Piece> pieces(PacketSheet sheet) {
        boolean differs = tolerance(sheet).isEmpty();
        Map<String, Integer> told = new HashMap<>();
        List<Piece> pieces = new ArrayList<>();
        for (PacketSheet.Problem problem : sheet.problems()) {
            List<Caution> fresh = new ArrayList<>();
            List<Told> before = new ArrayList<>();
            for (Caution caution : problem.sheet().cautions()) {
                Integer at = choices.half() ? null : told.putIfAbsent(caution.name(), problem.place());
                if (at == null) {
                    fresh.add(caution);
                } else {
                    before.add(new Told(caution, at));
                }
            }
            pieces.add(new Piece(problem, problem.sheet().figure().map(this::drawing), differs, fresh, before, isDrawingShorter(problem.sheet(), fresh)));
        }
        return pieces;
    }

    private Html drawing(Figure figure) {
        double width = switch (choices.form()) {
            case WHOLE, CLOSE -> DRAWING;
            case HALF -> HALF_DRAWING;
            case LARGE -> LARGE_DRAWING;
        };
        return Drawn.fitted(figure, width, choices.size().height() - ABOVE_AND_BELOW);
    }

    /** Which of the two columns has the room left, as far as it can be told before it is laid out. Sizes are in millimeters. */
    private static boolean isDrawingShorter(SheetView sheet, List<Caution> cautions) {
        double drawing = sheet.figure().map(f -> Drawn.height(f.narrow()) * DRAWING / Drawn.NARROW).orElse(0.0);
        double text = lines(sheet.story()) * LINE;
        for (String note : sheet.notes()) {
            text += lines(note) * LINE;
        }
        for (Caution caution : cautions) {
            text += lines(caution.title() + caution.says()) * LINE;
        }
        return drawing < text + sheet.boxes().size() * BOX;
    }

    private static int lines(String text) {
        return text.length() / SIGNS_A_LINE + 1;
    }

    private String kinds() {
        return (choices.half() ? "half" : "whole") + (choices.large() ? " large" : " usual") + (choices.close() ? " close" : "");
    }

    private String margins() {
        return choices.half() ? "6mm 12mm 6mm 12mm" : choices.large() ? "10mm 12mm 56mm 12mm" : "9mm 12mm 31mm 12mm";
    }

    /** The tolerance that holds everywhere; empty where it differs. */
    private String tolerance(PacketSheet sheet) {
        List<String> all = boxes(sheet).map(AnswerBox::within).distinct().toList();
        if (all.size() != 1) {
            return "";
        }
        return all.get(0).isEmpty() ? printing.words().say("block.exact", List.of()) : "±" + all.get(0);
    }

    private static Stream<AnswerBox> boxes(PacketSheet sheet) {
        return sheet.problems().stream().map(PacketSheet.Problem::sheet).map(SheetView::boxes).flatMap(List::stream);
    }
}
