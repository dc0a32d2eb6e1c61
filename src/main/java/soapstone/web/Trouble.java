package soapstone.web;

import java.util.List;
import soapstone.source.Message;

/** Why a request gets no page: a status, and what the page about it says. */
final class Trouble extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final int status;
    private final transient List<Message> says;
    private final String allow;
    private final long seconds;

    private Trouble(int status, String allow, long seconds, Message... says) {
        super("status " + status, null, false, false);
        this.status = status;
        this.allow = allow;
        this.seconds = seconds;
        this.says = List.of(says);
    }

    static Trouble of(int status) {
        return new Trouble(status, "", 0, usual(status));
    }

    /** The address is known, the method is not one of these. */
    static Trouble method(String allow) {
        return new Trouble(405, allow, 0, usual(405));
    }

    /** It comes too often. */
    static Trouble tooSoon(long seconds) {
        return new Trouble(429, "", seconds, usual(429));
    }

    static Message usual(int status) {
        return Message.of("trouble." + status + "-says");
    }

    int status() {
        return status;
    }

    List<Message> says() {
        return says;
    }

    /** For a header; empty unless the method was wrong. */
    String allow() {
        return allow;
    }

    /** After which it may be tried again; 0 where that is not known. */
    long seconds() {
        return seconds;
    }
}
