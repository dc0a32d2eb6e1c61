package soapstone.school;

import java.util.Optional;
import java.util.function.Function;
import soapstone.bank.Bank;
import soapstone.bank.KeptWhole;
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

    /**
     * What the texts that were kept beside the marks are read back to. Reading one takes some milliseconds, so that whoever asks
     * often keeps what comes out.
     *
     * @param wholes the text that a fingerprint stands for, as {@link Sheets#whole} gives it
     */
    static Shelf of(Function<String, Optional<String>> wholes) {
        return (id, fingerprint) -> wholes.apply(fingerprint).flatMap(w -> KeptWhole.read(id, fingerprint, w));
    }

    /** This one, and where it has nothing, another. */
    default Shelf or(Shelf other) {
        return (id, fingerprint) -> exercise(id, fingerprint).or(() -> other.exercise(id, fingerprint));
    }
}
