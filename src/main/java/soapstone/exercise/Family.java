package soapstone.exercise;

/** The idea behind slips of many exercises, and the lesson that undoes it ({@code lesson} may be empty). */
public record Family(String name, String title, String says, String lesson) {}
