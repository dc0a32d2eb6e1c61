package soapstone.school;

import java.time.Instant;

/**
 * What the school itself is.
 *
 * @param name as it stands over the door
 * @param demo an invented school to look at
 */
public record Charter(String name, boolean demo, Instant since) {}
