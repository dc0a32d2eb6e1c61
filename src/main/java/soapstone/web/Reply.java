package soapstone.web;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import soapstone.page.Page;

/**
 * What goes back.
 *
 * @param status   of HTTP
 * @param type     content type
 * @param cache    for the header Cache-Control
 * @param location where to go instead; empty for none
 * @param cookies  for headers Set-Cookie
 * @param file     the name of a file to be kept; empty for a page
 * @param retry    for the header Retry-After, in seconds; 0 for none
 * @param body     bytes
 */
record Reply(int status, String type, String cache, String location, List<String> cookies, String file, long retry, byte[] body) {

    private static final int TOO_SOON = 429;

    Reply(int status, String type, String cache, String location, byte[] body) {
        this(status, type, cache, location, List.of(), "", 0, body);
    }

    /** The same with a cookie set. */
    Reply with(String cookie) {
        List<String> more = new ArrayList<>(cookies);
        more.add(cookie);
        return new Reply(status, type, cache, location, List.copyOf(more), file, retry, body);
    }

    /** The same page with another status. */
    Reply as(int other) {
        return new Reply(other, type, cache, location, cookies, file, retry, body);
    }

    /** The same for somebody who has to wait. */
    Reply retryAfter(long seconds) {
        return new Reply(TOO_SOON, type, cache, location, cookies, file, seconds, body);
    }

    /** The same, going on in the language of the address that was asked for. */
    Reply behind(Languages.Asked asked) {
        return location.isEmpty() ? this : new Reply(status, type, cache, asked.behind(location), cookies, file, retry, body);
    }

    /** A file to be kept by whoever asked for it; its name is our own, never what somebody typed. */
    static Reply download(String type, String name, byte[] body) {
        return new Reply(200, type, SafeHeaders.NO_STORE, "", List.of(), name, 0, body);
    }

    static final String HTML = "text/html;charset=utf-8";

    static Reply page(Page page) {
        return new Reply(200, HTML, SafeHeaders.NO_STORE, "", page.bytes());
    }

    static Reply json(String json) {
        return new Reply(200, "application/json;charset=utf-8", SafeHeaders.NO_STORE, "",
                json.getBytes(StandardCharsets.UTF_8));
    }

    /** Always to a path of this site, so never away from it. */
    static Reply goTo(String path) {
        return moved(302, path);
    }

    static Reply movedFor(String path) {
        return moved(301, path);
    }

    private static Reply moved(int status, String path) {
        if (!path.startsWith("/") || path.startsWith("//")) {
            throw new IllegalArgumentException(path);
        }
        return new Reply(status, HTML, SafeHeaders.NO_STORE, path, new byte[0]);
    }

    static Reply asset(String type, byte[] body) {
        return new Reply(200, type, "public, max-age=31536000, immutable", "", body);
    }
}
