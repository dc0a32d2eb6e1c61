package soapstone.page;

import java.util.List;

/**
 * A student's own record: what is signed in each class, what was asked to be corrected, and what was kept as practice.
 *
 * @param classes to choose from for a request
 */
public record OwnRecordView(String shown, String printed, List<CompetencyRecord> records, List<Named> classes, List<Correction> corrections,
        List<PracticeRow> practice, FormView form) {

    public OwnRecordView {
        records = List.copyOf(records);
        classes = List.copyOf(classes);
        corrections = List.copyOf(corrections);
        practice = List.copyOf(practice);
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
