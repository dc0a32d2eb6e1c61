/** Texts with places, and what is wrong in them. Knows nothing of what the texts say. */
package soapstone.source;
