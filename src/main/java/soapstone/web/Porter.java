package soapstone.web;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.net.URISyntaxException;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import soapstone.page.Reader;
import soapstone.page.Words;
import soapstone.school.School;
import soapstone.school.SessionRule;
import soapstone.school.SignedIn;

/** Stands at the door: who comes in, and whether a form comes from a page of ours. */
final class Porter {

    /** So seldom is it written down that a session was used. */
    private static final Duration SEEN_EVERY = Duration.ofMinutes(1);
    /** Asks how long the session lasts, without making it longer. */
    static final String STAY = "/stay";
    private static final Set<String> OWN_FETCHES = Set.of("same-origin", "none");
    static final String FORM_KEY = "form-key";

    private final Optional<SchoolOffice> office;

    Porter(Optional<SchoolOffice> office) {
        this.office = office;
    }

    /** The cookie's name; the prefix binds it to this host and to TLS. */
    String cookie() {
        return office.map(SchoolOffice::secure).orElse(false) ? "__Host-soapstone" : "soapstone";
    }

    /** The header that sets the cookie of a session, or takes it away when the token is empty. */
    String cookie(String token) {
        String safe = office.map(SchoolOffice::secure).orElse(false) ? "; Secure" : "";
        return cookie() + "=" + token + "; Path=/; HttpOnly; SameSite=Lax" + safe + (token.isEmpty() ? "; Max-Age=0" : "");
    }

    /** Who is signed in with the request's cookie; a session that is over ends here. */
    Optional<SignedIn> who(HttpServletRequest request) {
        if (office.isEmpty() || request.getCookies() == null) {
            return Optional.empty();
        }
        for (Cookie cookie : request.getCookies()) {
            if (cookie.getName().equals(cookie()) && SessionRule.isToken(cookie.getValue())) {
                boolean looks = request.getMethod().equals("GET") && request.getRequestURI().equals(STAY);
                return who(SessionRule.hash(cookie.getValue()), !looks);
            }
        }
        return Optional.empty();
    }

    private Optional<SignedIn> who(String token, boolean acts) {
        School school = office.orElseThrow().school().get();
        Instant now = office.get().clock().instant();
        Optional<SignedIn> found = school.sessions().find(token);
        if (found.isPresent() && SessionRule.isOver(found.get(), now)) {
            school.sessions().end(token);
            return Optional.empty();
        }
        if (acts && found.isPresent() && found.get().seen().plus(SEEN_EVERY).isBefore(now)) {
            school.sessions().seen(token, now);
            return found.map(s -> new SignedIn(s.person(), s.token(), s.formKey(), s.tablet(), s.begun(), now));
        }
        return found;
    }

    Reader reader(Words words, Optional<SignedIn> signedIn, Reader.Place place) {
        return new Reader(words, office.isPresent(), signedIn.map(this::signed), place);
    }

    private Reader.Signed signed(SignedIn s) {
        return new Reader.Signed(s.person().shown(), Words.key(s.person().kind()), s.formKey(), left(SessionRule.warns(s)), left(SessionRule.ends(s)), s.tablet());
    }

    /** Seconds from now. */
    long left(Instant then) {
        return Math.max(0, Duration.between(office.orElseThrow().clock().instant(), then).toSeconds());
    }

    /**
     * Lets a form in that was sent from a page of this site.
     *
     * @throws Trouble 403 when a browser says that another site sent it
     */
    static void checkOrigin(HttpServletRequest request) {
        String origin = request.getHeader("Origin");
        String fetched = request.getHeader("Sec-Fetch-Site");
        boolean foreign = fetched != null && !OWN_FETCHES.contains(fetched);
        // Told to name no page that they come from, browsers send "null": then the session's key has to do.
        boolean named = origin != null && !origin.equals("null");
        if (foreign || named && !isOwn(origin, request.getHeader("Host"))) {
            throw Trouble.of(403);
        }
    }

    private static boolean isOwn(String origin, String host) {
        try {
            return host != null && host.equalsIgnoreCase(new URI(origin).getRawAuthority());
        } catch (URISyntaxException e) {
            return false;
        }
    }

    /**
     * Lets a form in that carries the key of the session that sends it.
     *
     * @throws Trouble 403 when it does not
     */
    static void checkKey(Optional<SignedIn> signedIn, Fields form) {
        if (signedIn.isPresent() && !SessionRule.same(signedIn.get().formKey(), form.text(FORM_KEY))) {
            throw Trouble.of(403);
        }
    }
}
