package soapstone.page;

import java.util.List;

/**
 * What is kept about one student, and what an instructor may do with it.
 *
 * @param whole       whether the instructor teaches every class that the student has a place in
 * @param kept        how much there is, by kind
 * @param corrections that were asked for
 * @param form        of an answer that comes back
 */
public record StudentDataView(ClassHead in, Student student, boolean whole, List<Count> kept, List<OwnRecordView.Correction> corrections, FormView form) {

    public StudentDataView {
        kept = List.copyOf(kept);
        corrections = List.copyOf(corrections);
    }

    /** Whose it is. */
    public record Student(long person, String seat, String shown, String login) {}

    /**
     * So many of a kind.
     *
     * @param kind a key under {@code privacy.kind-}
     */
    public record Count(String kind, long many) {}
}
