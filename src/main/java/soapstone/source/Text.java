package soapstone.source;

/**
 * A scalar of a bank file.
 *
 * @param exact whether an offset in the value is the same offset behind the place: true for a scalar on one line
 * @param plain whether it stands without quotes
 */
public record Text(String value, Place place, boolean exact, boolean plain) {

    /** The place of a character of the value, or of the whole scalar when it runs over lines. */
    public Place at(int offset) {
        return exact ? place.right(offset) : place;
    }

}
