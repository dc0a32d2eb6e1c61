/**
 * View models go in, HTML comes out. A view model is a plain record of texts, lists and closed lists of words: it says
 * what a page shows, and nothing here knows where it came from. {@link soapstone.page.Pages} turns one into a page with
 * the templates under {@code soapstone/templates}; {@link soapstone.page.Words} holds every sentence that a page says
 * by itself. No servlet, no file but the resources, no clock.
 *
 * <p>Three kinds of text meet in a view model:
 * <ul>
 * <li>{@code String}: plain text of the bank or a quantity in shop notation, never markup; the templates escape it and
 * keep fractions and their units on one line;
 * <li>{@link soapstone.source.Message}: a sentence of the engine, as a key into the words of the reader's language;
 * <li>{@link soapstone.page.Html}: markup that was made and escaped by our own code (a drawing, a lesson).
 * </ul>
 */
package soapstone.page;
