package soapstone.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A cell of the title block.
 *
 * @param label   what it is
 * @param text    what stands in it
 * @param sources what the text is a list of, where it is one; else empty
 * @param wide    takes the whole row
 * @param bank    whether the text is the bank's own words
 */
public record BlockCell(String label, String text, List<CheckSource> sources, boolean wide, boolean bank) {

    private static final char NO_BREAK = '\u00A0';
    private static final int FINGERPRINT = 4;

    /** The cells of a sheet: skill, units, tolerance, sheet number, checks. A cell with nothing in it is left out. */
    static List<BlockCell> of(Words words, SheetView sheet) {
        List<String> sources = sheet.sources().stream().map(s -> words.say("check." + Words.key(s.kind()), List.of(s.text()))).toList();
        String print = sheet.key().fingerprint();
        boolean several = sheet.boxes().stream().map(AnswerBox::within).distinct().count() > 1;
        List<BlockCell> cells = new ArrayList<>();
        cells.add(bank(words, "block.skill", sheet.exercise().skill()));
        cells.add(cell(words, "block.within", tolerance(words, sheet.boxes()), several));
        cells.add(cell(words, "block.units", words.say("units." + Words.key(sheet.key().units()), List.of()), false));
        cells.add(cell(words, "block.level", words.say("block.level-of", List.of(String.valueOf(sheet.exercise().level()))), false));
        cells.add(cell(words, "block.sheet", words.say("block.number",
                List.of(String.valueOf(sheet.key().seed()), print.substring(0, Math.min(FINGERPRINT, print.length())))), false));
        cells.add(bank(words, "block.unit", sheet.unit().title()));
        cells.add(new BlockCell(words.say("block.checks", List.of()), String.join("; ", sources), sheet.sources(), true, false));
        cells.removeIf(c -> c.text.isBlank());
        return inRows(cells);
    }

    /**
     * The cells of a problem on a student's sheet: the seed of the draw and what it is checked against stand in none of them.
     *
     * @param place of the problem among all of the sheet
     */
    public static List<BlockCell> of(Words words, SheetView sheet, WorkHead head, String place) {
        boolean several = sheet.boxes().stream().map(AnswerBox::within).distinct().count() > 1;
        List<BlockCell> cells = new ArrayList<>();
        cells.add(bank(words, "block.skill", sheet.exercise().skill()));
        cells.add(cell(words, "block.within", tolerance(words, sheet.boxes()), several));
        cells.add(cell(words, "block.units", words.say("units." + Words.key(sheet.key().units()), List.of()), false));
        cells.add(cell(words, "work.shop", String.join("; ", sheet.shop()), true));
        cells.add(cell(words, "block.sheet", head.number(), false));
        cells.add(cell(words, "work.problem", place, false));
        cells.add(cell(words, "work.class", head.className(), true));
        cells.add(cell(words, "work.due", words.say(head.due()), true));
        cells.removeIf(c -> c.text.isBlank());
        return inRows(cells);
    }

    private static BlockCell cell(Words words, String label, String text, boolean wide) {
        return new BlockCell(words.say(label, List.of()), text, List.of(), wide, false);
    }

    /** What the bank says takes a whole row. */
    private static BlockCell bank(Words words, String label, String text) {
        return new BlockCell(words.say(label, List.of()), text, List.of(), true, true);
    }

    /** Two cells a row; one that would stand alone takes the whole row. */
    private static List<BlockCell> inRows(List<BlockCell> cells) {
        List<BlockCell> rows = new ArrayList<>();
        boolean left = false;
        for (int i = 0; i < cells.size(); i++) {
            BlockCell c = cells.get(i);
            boolean alone = !left && (i + 1 == cells.size() || cells.get(i + 1).wide);
            boolean wide = c.wide || alone;
            rows.add(wide == c.wide ? c : new BlockCell(c.label, c.text, c.sources, true, c.bank));
            left = !wide && !left;
        }
        return rows;
    }

    /** "±1/32 in", or by letters where boxes differ: "a, b ±1/32 in · c exact". */
    private static String tolerance(Words words, List<AnswerBox> boxes) {
        List<String> limits = boxes.stream().map(AnswerBox::within).distinct().toList();
        if (limits.size() == 1) {
            return limit(words, limits.get(0));
        }
        return limits.stream().map(w -> boxes.stream().filter(b -> b.within().equals(w)).map(AnswerBox::letter).collect(Collectors.joining(", "))
                + NO_BREAK + limit(words, w)).collect(Collectors.joining(" · "));
    }

    private static String limit(Words words, String within) {
        return within.isEmpty() ? words.say("block.exact", List.of()) : "±" + within;
    }
}
