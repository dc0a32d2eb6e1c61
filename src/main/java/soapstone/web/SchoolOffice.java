package soapstone.web;

import java.time.InstantSource;
import java.util.function.Supplier;
import soapstone.files.SecurityLog;
import soapstone.school.School;

/**
 * What a site needs to keep a school.
 *
 * @param school opened while the site starts already: the first one who needs it waits
 * @param clock  what time it is
 * @param secure whether browsers reach the site over TLS only; then cookies are bound to that
 * @param log    who came in, who did not, and what was changed
 */
public record SchoolOffice(Supplier<School> school, InstantSource clock, boolean secure, SecurityLog log) {

    /** With a log on standard error. */
    public SchoolOffice(Supplier<School> school, InstantSource clock, boolean secure) {
        this(school, clock, secure, SecurityLog.to(System.err));
    }

    /** The same, with every change that goes into the school's audit also in the log. */
    public SchoolOffice withAuditLogged() {
        return new SchoolOffice(() -> {
            School kept = school.get();
            return kept.withAudit(new LoggedAudit(kept.audit(), log));
        }, clock, secure, log);
    }
}
