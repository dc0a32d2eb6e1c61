package soapstone.school;

import java.time.Instant;

/**
 * Somebody at a browser.
 *
 * @param token   the hash of the session's secret, which names the session in the database; never the secret itself
 * @param formKey stands in every form of this session, so that no other site can send one
 * @param tablet  a tablet that the class shares: it signs out by itself soon
 */
public record SignedIn(Person person, String token, String formKey, boolean tablet, Instant begun, Instant seen) {}
