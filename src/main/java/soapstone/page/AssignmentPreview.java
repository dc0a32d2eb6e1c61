package soapstone.page;

/**
 * One problem of an assignment as a student will see it, with numbers that nobody gets.
 *
 * @param place       of the problem, from 1
 * @param problems    how many there are
 * @param oneOf       whether it comes out of a pool
 * @param conventions of the class
 */
public record AssignmentPreview(long id, String title, int place, int problems, boolean oneOf, String due, int tries, String points, String conventions, SheetView sheet) {}
