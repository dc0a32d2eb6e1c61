package soapstone.page;

import java.util.List;

/**
 * A student's own record: what is signed in each class, and what was asked to be corrected.
 *
 * @param classes to choose from for a request
 */
public record OwnRecordView(String shown, String printed, List<CompetencyRecord> records, List<Named> classes, List<Correction> corrections, FormView form) {

    public OwnRecordView {
        records = List.copyOf(records);
        classes = List.copyOf(classes);
        corrections = List.copyOf(corrections);
    }

    /** A class by name. */
    public record Named(long id, String name) {}

    /**
     * A request to correct a record, with its answer.
     *
     * @param outcome {@code open}, {@code mended} or {@code refused}
     */
    public record Correction(long id, String in, String at, String asks, String outcome, String answer, String answered, String by) {}
}
