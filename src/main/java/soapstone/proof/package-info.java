/** A bank put to the test: published checks, many draws, simulated students. */
package soapstone.proof;
