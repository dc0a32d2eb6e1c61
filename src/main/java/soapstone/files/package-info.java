/** Folders and the program's own jar, as texts by path. */
package soapstone.files;
