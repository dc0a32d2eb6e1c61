package soapstone.web;

import java.time.InstantSource;
import java.util.function.Supplier;
import soapstone.school.School;

/**
 * What a site needs to keep a school.
 *
 * @param school opened while the site starts already: the first one who needs it waits
 * @param clock  what time it is
 * @param secure whether browsers reach the site over TLS only, through a proxy in front of it; then cookies are bound to that
 */
public record SchoolOffice(Supplier<School> school, InstantSource clock, boolean secure) {}
