package soapstone.school;

import java.util.List;

/**
 * What may be signed off in a class.
 *
 * @param skills of the course that train it; the evidence is gathered from these. May be empty: then nothing is gathered
 */
public record Competency(long id, long schoolClass, TradeCode code, List<String> skills) {

    public Competency {
        skills = List.copyOf(skills);
    }
}
