/** Typed answers to verdicts: what, put into the working, would give this answer? Knows no storage. */
package soapstone.mark;
