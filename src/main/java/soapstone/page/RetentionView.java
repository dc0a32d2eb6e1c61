package soapstone.page;

import java.util.List;

/**
 * Whose record has been kept as long as the rule allows, and what the rule is.
 *
 * @param lastDay  work up to and on this day is over
 * @param byItself whether it is done each day without anybody's hand
 * @param people   whom the rule would erase
 * @param seen     says which list was looked at
 * @param past     what was erased, the newest first
 * @param months   to choose from
 * @param done     what was done just now
 */
public record RetentionView(String lastDay, boolean byItself, List<Row> people, String seen, List<Past> past, List<Month> months, Done done, FormView form) {

    public RetentionView {
        people = List.copyOf(people);
        past = List.copyOf(past);
        months = List.copyOf(months);
    }

    /** One of them. */
    public record Row(String shown, String login, String since) {}

    /** @param by a keeper's name; empty for the program */
    public record Past(String at, String by, String count) {}

    /** @param value 1 to 12 */
    public record Month(String value, String text) {}

    /**
     * For the sentence above the list.
     *
     * @param erased  how many; -1 when that was not it
     * @param written whether the rule was
     */
    public record Done(int erased, boolean written) {}
}
