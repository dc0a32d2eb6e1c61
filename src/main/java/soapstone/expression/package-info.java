/** The working language: text, parsed, checked for dimensions and planned, run. Knows no sheet metal. */
package soapstone.expression;
