package soapstone.web;

import java.util.Optional;
import soapstone.school.SignedIn;

/** Whom a page is for. */
enum Who {
    ANYONE, SIGNED_IN, STUDENT, INSTRUCTOR, KEEPER;

    boolean lets(Optional<SignedIn> signedIn) {
        if (this == ANYONE) {
            return true;
        }
        if (signedIn.isEmpty()) {
            return false;
        }
        return switch (this) {
            case STUDENT -> signedIn.get().person().isStudent();
            case INSTRUCTOR -> signedIn.get().person().isInstructor();
            case KEEPER -> signedIn.get().person().isKeeper();
            default -> true;
        };
    }
}
