/**
 * View models go in, PDF comes out: sheets with everyone's own numbers, keys, strips with what was said of the answers, handouts. A
 * view model is a plain record, as in {@link soapstone.page}; the templates stand beside those of the pages and begin with
 * {@code paper-}. {@link soapstone.paper.Press} lays them out. The same view models make the same bytes. No servlet, no file
 * but the resources, no clock.
 */
package soapstone.paper;
