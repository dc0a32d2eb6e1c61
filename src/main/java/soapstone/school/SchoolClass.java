package soapstone.school;

import java.time.Instant;
import java.util.Optional;

/**
 * A class.
 *
 * @param code     what a student types to ask for a place in it
 * @param archived since when it is put away: it can be read and nothing in it changes
 */
public record SchoolClass(long id, String name, String term, String code, ClassSettings settings, Instant created, Optional<Instant> archived) {}
