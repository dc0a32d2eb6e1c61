package soapstone.school;

import java.util.function.Predicate;

/**
 * What the reading of a roster has to know of the class.
 *
 * @param classCode goes, shortened, into the logins that are proposed
 * @param seatWord  before a seat number where that is all the name there is, such as {@code Seat}, in the class's language
 * @param taken     whether a login in the form of {@link Logins#plain} belongs to somebody already
 */
public record RosterRules(String classCode, String seatWord, Predicate<String> taken) {}
