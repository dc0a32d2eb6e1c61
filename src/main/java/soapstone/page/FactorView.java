package soapstone.page;

/**
 * Turning a second factor on or off.
 *
 * @param on     whether there is one
 * @param secret a fresh one, as it goes back with the form
 * @param apart  the same in groups, to be typed
 * @param link   the same for an app on this machine
 */
public record FactorView(FormView form, boolean on, String secret, String apart, String link) {}
