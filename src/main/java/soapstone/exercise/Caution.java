package soapstone.exercise;

/** A safety caution, shown on page and paper wherever an exercise names it. */
public record Caution(String name, String title, String says) {}
