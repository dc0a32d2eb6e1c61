package soapstone.school;

/**
 * The name of a competency, as it stands on a record that somebody else reads years later.
 *
 * @param frame   the trade frame, such as {@code Sheet Metal Worker (Red Seal)}; empty for a class's own list
 * @param edition of the frame: the same code may mean something else in another; empty for a class's own list
 * @param code    such as {@code B-6.01}
 * @param title   short, never the frame's own criteria
 */
public record TradeCode(String frame, String edition, String code, String title) {

    /** One of a class's own list. */
    public static TradeCode own(String code, String title) {
        return new TradeCode("", "", code, title);
    }

    public boolean isOwn() {
        return frame.isEmpty();
    }

    /** Whether both are the same code of the same edition; titles may have been written differently. */
    public boolean isSame(TradeCode other) {
        return frame.equals(other.frame) && edition.equals(other.edition) && code.equals(other.code);
    }
}
