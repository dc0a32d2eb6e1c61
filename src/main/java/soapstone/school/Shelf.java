package soapstone.school;

import java.util.Optional;
import soapstone.bank.Bank;
import soapstone.exercise.Exercise;

/** Exercises as they were when they were dealt: a bank changes while sheets are out. */
@FunctionalInterface
public interface Shelf {

    /** The exercise with that fingerprint, or empty when it was not kept. */
    Optional<Exercise> exercise(String id, String fingerprint);

    /** Only what stands in a bank now. */
    static Shelf of(Bank bank) {
        return (id, fingerprint) -> bank.exercise(id).filter(e -> e.fingerprint().equals(fingerprint));
    }

    /** This one, and where it has nothing, another. */
    default Shelf or(Shelf other) {
        return (id, fingerprint) -> exercise(id, fingerprint).or(() -> other.exercise(id, fingerprint));
    }
}
