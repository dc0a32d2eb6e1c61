package soapstone.page;

import java.util.List;
import java.util.Optional;
import soapstone.source.Message;

/**
 * The page on which a roster is put in.
 *
 * @param seen names the text that the preview shows; empty when there is none
 */
public record RosterView(long inClass, String className, int sitting, FormView form, Optional<Preview> preview, String seen) {

    /**
     * What the text says, row by row.
     *
     * @param whole what is wrong with the text as a whole
     * @param right whether it can be saved as it is
     */
    public record Preview(List<Row> rows, List<Fault> whole, boolean right, int faulty) {

        public Preview {
            rows = List.copyOf(rows);
            whole = List.copyOf(whole);
        }
    }

    /**
     * One student to be.
     *
     * @param sourcedId in the school's own system; empty where it is not known
     */
    public record Row(int line, String seat, String name, String login, int extraTime, String sourcedId, List<Fault> faults) {

        public Row {
            faults = List.copyOf(faults);
        }
    }

    /**
     * @param weighs whether nothing is saved until it is put right
     * @param where  it stands
     */
    public record Fault(boolean weighs, Message where, Message says, Message fits) {}
}
