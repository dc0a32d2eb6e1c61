package soapstone.web;

import java.util.List;
import java.util.Optional;
import soapstone.files.SecurityLog;
import soapstone.school.Audit;

/** The audit, with a line in the security log for each entry: marks that change, accounts, records that leave. */
final class LoggedAudit implements Audit {

    private final Audit kept;
    private final SecurityLog log;

    LoggedAudit(Audit kept, SecurityLog log) {
        this.kept = kept;
        this.log = log;
    }

    /** Details may hold what people typed, and stay in the database. */
    @Override
    public void note(Entry e) {
        kept.note(e);
        log.note(e.at(), e.act(), "by", number(e.by()), "about", number(e.aboutPerson()), "class", number(e.aboutClass()), "left", e.leftSchool() ? "yes" : "");
    }

    private static String number(Optional<Long> id) {
        return id.map(String::valueOf).orElse("");
    }

    @Override
    public List<Entry> about(long person) {
        return kept.about(person);
    }

    @Override
    public List<Entry> aboutClass(long schoolClass) {
        return kept.aboutClass(schoolClass);
    }

    @Override
    public List<Entry> latest(int most) {
        return kept.latest(most);
    }

    @Override
    public List<Entry> latest(String act, int most) {
        return kept.latest(act, most);
    }
}
