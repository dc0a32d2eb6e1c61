package soapstone.page;

/** One student's competency record, for the class's instructors and for whoever audits it. */
public record CompetencyRecordView(CompetencyRecord record, String printed) {}
