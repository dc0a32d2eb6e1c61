package soapstone.bank;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import soapstone.exercise.Caution;
import soapstone.exercise.Convention;
import soapstone.exercise.Exercise;
import soapstone.exercise.Family;
import soapstone.exercise.Formula;
import soapstone.exercise.Table;

/**
 * A whole bank, read and checked. Maps are in the order of the files.
 *
 * @param exercises   by id
 * @param formulas    by name
 * @param tables      by name
 * @param families    by name
 * @param cautions    by name
 * @param conventions by name
 * @param wholes      for each exercise id, the text of all that its fingerprint covers
 */
public record Bank(Map<String, Exercise> exercises, Map<String, Formula> formulas, Map<String, Table> tables,
        Map<String, Family> families, Map<String, Caution> cautions, Map<String, Convention> conventions, Map<String, String> wholes) {

    public Optional<Exercise> exercise(String id) {
        return Optional.ofNullable(exercises.get(id));
    }

    /** The exercises of a folder, by level and then by id. */
    public List<Exercise> unit(String folder) {
        return exercises.values().stream().filter(e -> e.unit().equals(folder))
                .sorted(java.util.Comparator.comparingInt(Exercise::level).thenComparing(Exercise::id)).toList();
    }
}
