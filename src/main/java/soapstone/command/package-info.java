/** The command line: words typed in a shell go in, printed data and an exit code come out. */
package soapstone.command;
