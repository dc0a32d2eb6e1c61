package soapstone.page;

import java.util.List;
import soapstone.school.Person;

/**
 * The keeper's list of instructors and keepers.
 *
 * @param over how many students there are whose records have been kept as long as the rule allows
 */
public record AccountsView(List<Row> rows, int over) {

    /**
     * One account.
     *
     * @param waits has no password yet
     */
    public record Row(long id, String shown, String login, Person.Kind kind, boolean disabled, boolean waits, boolean factor) {}

    public AccountsView {
        rows = List.copyOf(rows);
    }
}
