package soapstone.desk;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import soapstone.bank.Bank;
import soapstone.bank.KeptReader;
import soapstone.exercise.Exercise;
import soapstone.school.Sheets;
import soapstone.school.Shelf;

/** Exercises as they were when they were dealt, out of the texts that the school keeps. Each is read once. Not for several threads. */
final class KeptExercises implements Shelf {

    private final Sheets kept;
    private final Bank bank;
    private final Map<String, Optional<Exercise>> read = new HashMap<>();

    KeptExercises(Sheets kept, Bank bank) {
        this.kept = kept;
        this.bank = bank;
    }

    @Override
    public Optional<Exercise> exercise(String id, String fingerprint) {
        return read.computeIfAbsent(id + " " + fingerprint, k -> kept.whole(fingerprint).flatMap(whole -> KeptReader.read(bank, id, fingerprint, whole)));
    }
}
