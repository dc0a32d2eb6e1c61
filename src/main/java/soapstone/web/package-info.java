/**
 * HTTP in, HTTP out. The only package that knows Jetty and servlets. {@link soapstone.web.SiteServer} starts the site;
 * {@link soapstone.web.Routes} is the table of all addresses; what a page shows comes from a {@link soapstone.web.Desk}.
 *
 * <p>For guests nothing is kept: no session, no cookie, so a form carries no secret and needs none. Everything that goes
 * wrong ends on one small page ({@link soapstone.web.TroublePages}), with the same headers as every other answer.
 */
package soapstone.web;
