package soapstone.page;

import java.util.List;

/**
 * What was changed in a class, and which records left it; the newest first.
 *
 * @param only  {@code all}, {@code marks} or {@code left}
 * @param page  from 1
 * @param pages at least 1
 */
public record AuditView(ClassHead in, String only, int page, int pages, long entries, List<Row> rows) {

    public AuditView {
        rows = List.copyOf(rows);
    }

    /**
     * One entry.
     *
     * @param by    empty for the program
     * @param about empty when it is about nobody in particular
     * @param left  whether a record went out
     */
    public record Row(String at, String by, String what, String about, String detail, boolean left) {}
}
