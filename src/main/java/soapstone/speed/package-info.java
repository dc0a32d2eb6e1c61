/** How fast the house is, measured on this machine: against Java written out for one exercise, and against a bare web server. */
package soapstone.speed;
