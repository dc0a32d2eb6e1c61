/**
 * An invented school to look at: people, classes and four weeks of work, with answers that the slips of the bank give.
 * Nothing in it is of anybody real.
 */
package soapstone.demo;
