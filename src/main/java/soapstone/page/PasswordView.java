package soapstone.page;

/**
 * The form for a new password.
 *
 * @param must  the one from the slip has to be replaced before anything else
 * @param login for programs that keep passwords
 */
public record PasswordView(FormView form, boolean must, String login) {}
