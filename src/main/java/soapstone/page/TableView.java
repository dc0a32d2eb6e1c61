package soapstone.page;

import java.util.List;

/**
 * A table of the bank.
 *
 * @param name   in the bank
 * @param title  of the table
 * @param source where its values come from
 * @param notes  may be empty
 * @param heads  column heads with their units; the first column names the row
 * @param rows   cells as text, each row as long as the heads; an empty cell has no such value
 * @param usedIn exercises and formulas that look into it
 */
public record TableView(String name, String title, String source, List<String> notes, List<String> heads,
        List<List<String>> rows, List<Reference> usedIn) {

    public TableView {
        notes = List.copyOf(notes);
        heads = List.copyOf(heads);
        rows = rows.stream().map(List::copyOf).toList();
        usedIn = List.copyOf(usedIn);
        for (List<String> row : rows) {
            if (row.size() != heads.size()) {
                throw new IllegalArgumentException(name + ": a row of " + row.size() + " under " + heads.size());
            }
        }
    }
}
