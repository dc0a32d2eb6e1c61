/** What an exercise is, as data. How it was read is not known here. */
package soapstone.exercise;
