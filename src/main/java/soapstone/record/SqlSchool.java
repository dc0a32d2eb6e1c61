package soapstone.record;

import soapstone.school.School;

/** The school out of a database. */
public final class SqlSchool {

    private SqlSchool() {}

    public static School of(Database d) {
        return new School(new SqlPeople(d), new SqlSessions(d), new SqlThrottles(d), new SqlCodes(d), new SqlClasses(d), new SqlAssignments(d), new SqlSheets(d),
                new SqlAttempts(d), new SqlAudit(d), new SqlPrivacy(d), new SqlMarkBook(d), new SqlSignoffs(d), new SqlNotes(d), new SqlCharters(d), new SqlRetentions(d),
                new SqlPractices(d), new SqlSpares(d), new SqlPrints(d));
    }
}
