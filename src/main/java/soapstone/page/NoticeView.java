package soapstone.page;

/** The notice about what is kept of students. */
public record NoticeView(String yearEnds) {}
