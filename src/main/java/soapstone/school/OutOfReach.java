package soapstone.school;

/**
 * The records cannot be reached at the moment: the database is away, or cannot write. What was to be kept has not been
 * acknowledged; it may be tried again when the database is back.
 */
public final class OutOfReach extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public OutOfReach(Throwable cause) {
        super("the school's database cannot be reached", cause);
    }
}
