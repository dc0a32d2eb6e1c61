/** Fair numbers for an exercise, and the working written out with them. Knows no marks and no HTML. */
package soapstone.variant;
