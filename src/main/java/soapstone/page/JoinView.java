package soapstone.page;

import java.util.Optional;

/**
 * The page on which a student asks for a place in a class.
 *
 * @param student whether somebody with an account asks
 * @param asked   the class in which a place was asked for
 * @param slip    of the account that was made, shown once
 */
public record JoinView(FormView form, boolean student, String asked, String address, Optional<SlipsView.Slip> slip) {}
