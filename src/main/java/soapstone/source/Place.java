package soapstone.source;

/**
 * A point in a source.
 *
 * @param source the text
 * @param line   from 1
 * @param column from 1
 */
public record Place(Source source, int line, int column) {

    public Place right(int columns) {
        return new Place(source, line, column + columns);
    }

    @Override
    public String toString() {
        return source.name() + ":" + line + ":" + column;
    }
}
