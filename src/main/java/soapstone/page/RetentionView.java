package soapstone.page;

import java.util.List;

/**
 * Whose record has been kept as long as the rule allows.
 *
 * @param lastDay work up to and on this day is over
 * @param people  whom the rule would erase
 * @param seen    says which list was looked at
 * @param done    how many were erased just now; -1 before
 */
public record RetentionView(String lastDay, List<Row> people, String seen, int done, FormView form) {

    public RetentionView {
        people = List.copyOf(people);
    }

    /** One of them. */
    public record Row(String shown, String login, String since) {}
}
