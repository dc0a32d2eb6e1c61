/**
 * People, classes, assignments, sheets, attempts, marks and what they say about a class: the rules, in plain values.
 *
 * <p>Nothing here knows HTTP or SQL. What has to be kept is asked of interfaces, which {@link soapstone.record} answers
 * out of a database. Time comes in as an {@link java.time.Instant}; chance as a {@link java.util.random.RandomGenerator}.
 */
package soapstone.school;
