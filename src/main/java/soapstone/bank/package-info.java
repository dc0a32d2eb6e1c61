/** Bank files to a bank, or every issue. A rule on the text is a class of its own. */
package soapstone.bank;
