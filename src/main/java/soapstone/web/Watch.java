package soapstone.web;

import java.time.InstantSource;
import java.util.Optional;
import soapstone.files.SecurityLog;

/** Writes down who came, who was turned away and what broke: people as numbers, addresses as patterns. */
final class Watch {

    private final SecurityLog log;
    private final InstantSource clock;

    Watch(SchoolOffice office) {
        this(office.log(), office.clock());
    }

    private Watch(SecurityLog log, InstantSource clock) {
        this.log = log;
        this.clock = clock;
    }

    /** A site without a school tells only what broke. */
    static Watch of(Optional<SchoolOffice> office) {
        return office.map(Watch::new).orElseGet(() -> new Watch(SecurityLog.to(System.err), InstantSource.system()));
    }

    /**
     * Something that has to do with an account.
     *
     * @param about whose account; empty when there is no such account
     */
    void note(String event, Visit v, Optional<Long> about) {
        log.note(clock.instant(), event, "address", v.caller().address(), "about", number(about));
    }

    /** Somebody asked for what is not theirs, or sent what no page of theirs holds. */
    void refused(int status, String address, Optional<Long> by, String method, String pattern) {
        log.note(clock.instant(), "refused", "status", String.valueOf(status), "address", address, "by", number(by), "method", method, "at", pattern);
    }

    /** A fault of our own: its kind and all its places, without its words, which may be somebody's. */
    void broke(String reference, Throwable fault, String pattern) {
        StackTraceElement[] trace = fault.getStackTrace();
        String place = trace.length == 0 ? "" : trace[0].getClassName() + ":" + trace[0].getLineNumber();
        log.fault(clock.instant(), "broke", fault, "reference", reference, "fault", fault.getClass().getName(), "cause", cause(fault), "place", place, "at", pattern);
    }

    /** The database was away. */
    void outOfReach(Throwable fault, String pattern) {
        log.note(clock.instant(), "out-of-reach", "cause", cause(fault), "at", pattern);
    }

    /** The kind of the innermost cause; empty where there is none. */
    private static String cause(Throwable fault) {
        Throwable cause = fault;
        while (cause.getCause() != null && cause.getCause() != cause) {
            cause = cause.getCause();
        }
        return cause == fault ? "" : cause.getClass().getName();
    }

    private static String number(Optional<Long> id) {
        return id.map(String::valueOf).orElse("");
    }
}
