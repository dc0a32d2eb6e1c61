package soapstone.page;

import java.util.List;

/**
 * What a mended bank would change in a class's marks. Nothing is kept yet.
 *
 * @param mended    exercises that have another fingerprint now, by assignment
 * @param changes   marks that would be another
 * @param unsettled attempts that a person has to look at
 * @param kept      how many marks were just changed; -1 when none were asked for
 */
public record RegradeView(ClassHead head, List<Mended> mended, List<Change> changes, List<Unsettled> unsettled, int kept) {

    /** @param attempts marked with another form of the exercise */
    public record Mended(long assignment, String title, String exercise, int attempts) {}

    /** One mark that would change. */
    public record Change(long person, String name, long assignment, String title, String exercise, int number, String letter, MarkSign.Cell before,
            MarkSign.Cell after, String pointsBefore, String pointsAfter) {}

    /** An attempt that cannot be marked again. */
    public record Unsettled(long person, String name, long assignment, String title, String exercise, int number) {}

    public RegradeView {
        mended = List.copyOf(mended);
        changes = List.copyOf(changes);
        unsettled = List.copyOf(unsettled);
    }
}
