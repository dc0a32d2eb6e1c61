package soapstone.school;

import java.util.Optional;

/** Where it is kept what the school is called: once, or not yet before the first run. */
public interface Charters {

    Optional<Charter> find();

    /** Writes it, or writes it anew; when the school began stays. */
    void write(Charter charter);
}
