package soapstone.page;

/**
 * One student's place in a class.
 *
 * @param state a key: {@code asked}, {@code in}, {@code left}
 * @param open  whether anything in the class may change
 */
public record PlaceView(long inClass, String className, long person, String shown, String login, String state, boolean open, FormView form) {}
