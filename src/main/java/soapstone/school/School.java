package soapstone.school;

/** Everything that is kept, in one hand. */
public record School(People people, Sessions sessions, Throttles throttles, Codes codes, Classes classes, Assignments assignments, Sheets sheets,
        Attempts attempts, Audit audit, Privacy privacy, MarkBook book, Signoffs signoffs, Notes notes, Charters charters, Retentions retentions,
        Practices practices, Spares spares, Prints prints) {

    /** The same with another book of changes. */
    public School withAudit(Audit other) {
        return new School(people, sessions, throttles, codes, classes, assignments, sheets, attempts, other, privacy, book, signoffs, notes, charters, retentions,
                practices, spares, prints);
    }
}
