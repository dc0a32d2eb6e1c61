/** The course and its lessons, checked against the bank. */
package soapstone.lesson;
