/**
 * People, classes, assignments, sheets, attempts, marks and what they say about a class: the rules, in plain values.
 *
 * <p>Nothing here knows HTTP or SQL. What has to be kept is asked of interfaces, which {@link soapstone.record} answers
 * out of a database. Time comes in as an {@link java.time.Instant}; chance as a {@link java.util.random.RandomGenerator}.
 *
 * <p>The way of an assignment: {@link soapstone.school.Dealing} gives everybody problems with own numbers;
 * {@link soapstone.school.Marking} marks what is handed in, and {@link soapstone.school.Regrading} marks it again after a mend;
 * {@link soapstone.school.Counted} is a mark with its newest remark. Out of those come {@link soapstone.school.Scores}, what
 * the room misses ({@link soapstone.school.SlipMap}), the {@link soapstone.school.Morning}, and the
 * {@link soapstone.school.Evidence} for a competency.
 */
package soapstone.school;
