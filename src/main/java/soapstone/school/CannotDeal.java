package soapstone.school;

/** There is nothing to put on a sheet: the message says which exercise, and why. */
public final class CannotDeal extends RuntimeException {

    private static final long serialVersionUID = 1L;

    CannotDeal(String message) {
        super(message);
    }
}
