package soapstone.school;

import java.util.List;

/** Where practice is kept: appended, never changed. */
public interface Practices {

    /** Keeps it; false when it is there already, also when it comes twice at the same moment. */
    boolean keep(Practice fresh);

    /** All of a student's, the newest first. */
    List<Practice> of(long person);
}
