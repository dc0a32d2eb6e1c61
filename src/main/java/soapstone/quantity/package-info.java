/** Shop notation and quantities: units, dimensions, rounding, tolerance, what people type and what is printed. */
package soapstone.quantity;
