package soapstone.page;

import java.util.List;

/**
 * The keeper's list of students.
 *
 * @param rows the first of them
 * @param find what was looked for; empty for all
 * @param all  how many were found
 */
public record StudentAccountsView(List<AccountsView.Row> rows, String find, int all) {

    public StudentAccountsView {
        rows = List.copyOf(rows);
    }
}
