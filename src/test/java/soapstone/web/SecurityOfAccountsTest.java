package soapstone.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import soapstone.page.UnitView;
import soapstone.school.Audit;
import soapstone.school.Codes;
import soapstone.school.Person;
import soapstone.school.SecretCodes;
import soapstone.school.SessionRule;

/**
 * Rows of OWASP ASVS 5.0.0 about accounts, sessions, headers and the log, by plain HTTP: a method a row. The rows about
 * pages and what is sent to them are in {@code soapstone.desk.SecurityOfPagesTest}.
 */
class SecurityOfAccountsTest {

    private static final String PASSWORD = SchoolUnderTest.PASSWORD;
    private static final String FRESH = "copper lanterns drift north";
    private static final String CODE = "K7CW-34MR-XPN9-THQ6";

    private SchoolUnderTest site;
    private Person wren;
    private PlainHttp http;

    @BeforeEach
    void start() throws Exception {
        site = SchoolUnderTest.start(new SampleDesk() {
            @Override
            public Optional<UnitView> unit(String unit) {
                if (unit.equals("broken")) {
                    throw new IllegalStateException("the key is forty-two");
                }
                return super.unit(unit);
            }
        });
        wren = site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
        http = new PlainHttp(site);
    }

    @AfterEach
    void stop() {
        site.close();
    }

    private int signIn(String login, String password) throws Exception {
        return new PlainHttp(site).post("/sign-in", "login", login, "password", password).statusCode();
    }

    private HttpResponse<String> change(String current, String fresh) throws Exception {
        return http.post("/account/password", "current", current, "fresh", fresh, "again", fresh);
    }

    private void makeCode(Codes.Purpose purpose, Optional<Long> person) {
        site.school.codes().make(SecretCodes.hash(CODE), purpose, person, SecretCodes.ends(purpose, site.now()));
    }

    private HttpResponse<String> useCode(String fresh) throws Exception {
        return new PlainHttp(site).post("/new-password", "login", "wren", "code", CODE, "fresh", fresh, "again", fresh);
    }

    @Test
    @DisplayName("1: ASVS 6.2.1, 6.2.9: 15 signs at least, 64 and more are taken")
    void row1() throws Exception {
        http.signIn("wren", PASSWORD);
        assertThat(change(PASSWORD, "vexed lanterns").statusCode()).isEqualTo(422);
        assertThat(change(PASSWORD, "vexed lanternsq").statusCode()).isEqualTo(302);
        http.get("/account");
        String long64 = "blé café drift ".repeat(4) + "north";
        assertThat(long64.length()).isGreaterThanOrEqualTo(64);
        assertThat(change("vexed lanternsq", long64).statusCode()).isEqualTo(302);
        assertThat(signIn("wren", long64)).isEqualTo(302);
    }

    @Test
    @DisplayName("2: ASVS 6.2.4, 6.2.11, 6.2.12: what everybody takes, and names, are refused with the reason")
    void row2() throws Exception {
        http.signIn("wren", PASSWORD);
        assertThat(change(PASSWORD, "passwordpassword").body()).contains("many people use");
        assertThat(change(PASSWORD, "soapstonesoapstone").body()).contains("made of a name");
        assertThat(change(PASSWORD, "wrenwrenwrenwren").body()).contains("made of a name");
        assertThat(signIn("wren", PASSWORD)).isEqualTo(302);
    }

    @Test
    @DisplayName("3: ASVS 6.2.5, 6.2.10: small letters alone will do, and a password does not end")
    void row3() throws Exception {
        http.signIn("wren", PASSWORD);
        assertThat(change(PASSWORD, "tall fences hum at dusk").statusCode()).isEqualTo(302);
        site.wait(Duration.ofDays(400));
        assertThat(signIn("wren", "tall fences hum at dusk")).isEqualTo(302);
    }

    @Test
    @DisplayName("4: ASVS 6.2.8: a password counts to its last sign, and in its case")
    void row4() throws Exception {
        http.signIn("wren", PASSWORD);
        String seventy = "Tall fences hum at dusk when rivers turn over slowly and nobody counts";
        assertThat(seventy).hasSize(70);
        assertThat(change(PASSWORD, seventy).statusCode()).isEqualTo(302);
        assertThat(signIn("wren", seventy.substring(0, 69))).isEqualTo(403);
        assertThat(signIn("wren", seventy.toLowerCase(java.util.Locale.ROOT))).isEqualTo(403);
        assertThat(signIn("wren", seventy)).isEqualTo(302);
    }

    @Test
    @DisplayName("5: ASVS 6.2.2, 6.2.3: a change asks for the password of now")
    void row5() throws Exception {
        http.signIn("wren", PASSWORD);
        assertThat(http.post("/account/password", "fresh", FRESH, "again", FRESH).statusCode()).isEqualTo(422);
        assertThat(change("some other sentence", FRESH).statusCode()).isEqualTo(422);
        assertThat(signIn("wren", PASSWORD)).isEqualTo(302);
    }

    @Test
    @DisplayName("6: ASVS 6.2.6, 6.2.7: the field hides what is typed, and takes what is pasted or kept")
    void row6() throws Exception {
        String page = http.get("/sign-in").body();
        assertThat(page).containsPattern("<input id=\"login\"[^>]*autocomplete=\"username\"").containsPattern("<input id=\"password\"[^>]*type=\"password\"[^>]*autocomplete=\"current-password\"");
        assertThat(page).doesNotContain("onpaste").doesNotContain("autocomplete=\"off\"");
    }

    @Test
    @DisplayName("7: ASVS 6.1.1, 6.3.1: guessing gets slower; others at the same address, and the right password later, come in")
    void row7() throws Exception {
        site.add(Person.Kind.STUDENT, "Seat 1", "seat1");
        site.add(Person.Kind.STUDENT, "Seat 2", "seat2");
        HttpResponse<String> last = null;
        for (int i = 0; i < 100; i++) {
            last = http.post("/sign-in", "login", "seat1", "password", "guess number " + i);
        }
        assertThat(last.statusCode()).isEqualTo(429);
        assertThat(last.headers().firstValue("Retry-After")).contains("31");
        assertThat(last.body()).contains("Nothing is looked at before");
        assertThat(signIn("seat1", PASSWORD)).isEqualTo(429);
        assertThat(signIn("seat2", PASSWORD)).isEqualTo(302);
        for (long wait : List.of(60L, 120L, 240L)) {
            site.wait(Duration.ofSeconds(Long.parseLong(last.headers().firstValue("Retry-After").orElseThrow())));
            assertThat(signIn("seat1", "one more guess")).isEqualTo(403);
            last = http.post("/sign-in", "login", "seat1", "password", PASSWORD);
            assertThat(last.headers().firstValue("Retry-After")).contains(String.valueOf(wait + 1));
        }
        site.wait(Duration.ofSeconds(241));
        assertThat(signIn("seat1", PASSWORD)).isEqualTo(302);
        assertThat(signIn("seat1", "a new mistake today")).isEqualTo(403);
    }

    @Test
    @DisplayName("8: ASVS 6.3.2: nobody has an account that nobody made")
    void row8() throws Exception {
        for (String login : List.of("admin", "root", "teacher", "instructor", "keeper", "soapstone")) {
            assertThat(signIn(login, login)).as(login).isEqualTo(403);
            assertThat(signIn(login, "")).as(login).isEqualTo(403);
        }
    }

    @Test
    @DisplayName("9: ASVS 6.4.1: the first code works once, and not when it is over; the password is the person's own")
    void row9() throws Exception {
        try (SchoolUnderTest fresh = SchoolUnderTest.start(new SampleDesk())) {
            fresh.school.codes().make(SecretCodes.hash(CODE), Codes.Purpose.FIRST_RUN, Optional.empty(), SecretCodes.ends(Codes.Purpose.FIRST_RUN, fresh.now()));
            fresh.wait(Duration.ofHours(24));
            String[] form = {"code", CODE, "school", "Tamarack Valley Technical Center", "shown", "W. Kestrel", "login", "kestrel", "fresh", FRESH, "again", FRESH};
            assertThat(new PlainHttp(fresh).post("/start", form).statusCode()).isEqualTo(422);
            String other = CODE.replace('K', 'W');
            fresh.school.codes().make(SecretCodes.hash(other), Codes.Purpose.FIRST_RUN, Optional.empty(), SecretCodes.ends(Codes.Purpose.FIRST_RUN, fresh.now()));
            form[1] = other;
            assertThat(new PlainHttp(fresh).post("/start", form).statusCode()).isEqualTo(302);
            form[7] = "another";
            assertThat(new PlainHttp(fresh).post("/start", form).statusCode()).isEqualTo(404);
        }
    }

    @Test
    @DisplayName("10: ASVS 6.4.2, 6.4.3: a code for a password works once and for half an hour, and ends sessions; there is no hint")
    void row10() throws Exception {
        http.signIn("wren", PASSWORD);
        makeCode(Codes.Purpose.NEW_PASSWORD, Optional.of(wren.id()));
        assertThat(useCode(FRESH).statusCode()).isEqualTo(302);
        assertThat(http.get("/account").statusCode()).isEqualTo(302);
        assertThat(useCode("tall fences hum at dusk").statusCode()).isEqualTo(422);
        assertThat(signIn("wren", FRESH)).isEqualTo(302);
        String later = CODE.replace('K', 'W');
        site.school.codes().make(SecretCodes.hash(later), Codes.Purpose.NEW_PASSWORD, Optional.of(wren.id()), SecretCodes.ends(Codes.Purpose.NEW_PASSWORD, site.now()));
        site.wait(Duration.ofMinutes(30));
        assertThat(new PlainHttp(site).post("/new-password", "login", "wren", "code", later, "fresh", PASSWORD, "again", PASSWORD).statusCode()).isEqualTo(422);
        assertThat(http.get("/sign-in").body()).doesNotContainIgnoringCase("hint").doesNotContainIgnoringCase("question");
    }

    @Test
    @DisplayName("11: ASVS 6.3.3, 6.5.1, 6.5.5: a code of the second factor works once, and guessing it gets slower")
    void row11() throws Exception {
        String secret = "GEZDGNBVGY3TQOJQGEZDGNBVGY3TQOJQ";
        site.school.people().setFactor(wren.id(), secret);
        String right = Authenticator.code(secret, site.now());
        String wrong = right.equals("123456") ? "654321" : "123456";
        HttpResponse<String> page = http.post("/sign-in", "login", "wren", "password", PASSWORD);
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.headers().firstValue("Set-Cookie")).isEmpty();
        assertThat(http.post("/sign-in", "step", PlainHttp.step(page), "code", right).statusCode()).isEqualTo(302);
        page = new PlainHttp(site).post("/sign-in", "login", "wren", "password", PASSWORD);
        HttpResponse<String> again = new PlainHttp(site).post("/sign-in", "step", PlainHttp.step(page), "code", right);
        assertThat(again.statusCode()).isEqualTo(403);
        for (int i = 0; i < 3; i++) {
            again = new PlainHttp(site).post("/sign-in", "step", PlainHttp.step(again), "code", wrong);
            assertThat(again.statusCode()).isEqualTo(403);
        }
        site.wait(Duration.ofSeconds(20));
        assertThat(new PlainHttp(site).post("/sign-in", "step", PlainHttp.step(again), "code", Authenticator.code(secret, site.now())).statusCode()).isEqualTo(429);
    }

    @Test
    @DisplayName("12: ASVS 6.3.8: known and unknown, with and without a password: one answer, and the same work")
    void row12() throws Exception {
        Person disabled = site.add(Person.Kind.STUDENT, "Seat 9", "seat9");
        site.school.people().setDisabled(disabled.id(), true);
        HttpResponse<String> known = http.post("/sign-in", "login", "wren", "password", "a wrong sentence");
        for (String login : List.of("nobody", "seat9")) {
            HttpResponse<String> other = http.post("/sign-in", "login", login, "password", login.equals("seat9") ? PASSWORD : "a wrong sentence");
            assertThat(other.statusCode()).isEqualTo(known.statusCode());
            assertThat(other.body().replace(login, "X")).isEqualTo(known.body().replace("wren", "X"));
        }
        for (int i = 0; i < 5; i++) {
            signIn("wren", "a wrong sentence");
            signIn("nobody", "a wrong sentence");
        }
        HttpResponse<String> slow = http.post("/sign-in", "login", "wren", "password", "a wrong sentence");
        HttpResponse<String> unknown = http.post("/sign-in", "login", "nobody", "password", "a wrong sentence");
        assertThat(slow.statusCode()).isEqualTo(429).isEqualTo(unknown.statusCode());
        assertThat(slow.body().replace("wren", "X")).isEqualTo(unknown.body().replace("nobody", "X"));
        assertThat(slow.headers().firstValue("Retry-After")).isEqualTo(unknown.headers().firstValue("Retry-After"));
    }

    private long hashed(String login, String password) throws Exception {
        long before = Hashing.done();
        assertThat(signIn(login, password)).isEqualTo(403);
        return Hashing.done() - before;
    }

    @Test
    @DisplayName("12: ASVS 6.3.8: whether there is such a login, with a password or without one, a sign-in that fails hashes once, with the same parameters")
    void row12Work() throws Exception {
        Person disabled = site.add(Person.Kind.STUDENT, "Seat 9", "seat9");
        site.school.people().setDisabled(disabled.id(), true);
        Person fresh = site.add(Person.Kind.INSTRUCTOR, "Rook T.", "rook");
        site.school.people().setPassword(fresh.id(), null, false, "");
        assertThat(hashed("wren", "a wrong sentence")).as("known").isEqualTo(1);
        assertThat(hashed("nobody", "a wrong sentence")).as("unknown").isEqualTo(1);
        assertThat(hashed("", "")).as("empty").isEqualTo(1);
        assertThat(hashed("seat9", PASSWORD)).as("disabled").isEqualTo(1);
        assertThat(hashed("rook", PASSWORD)).as("without a password yet").isEqualTo(1);
    }

    @Test
    @DisplayName("7: ASVS 6.1.1: who fails on purpose with somebody's login keeps the owner out nowhere else; guessing stays slow from many addresses")
    void row7Owner() throws Exception {
        try (SchoolUnderTest behind = SchoolUnderTest.start(new SampleDesk(), Settings.on(0).withProxies(Set.of("192.0.2.1")))) {
            behind.add(Person.Kind.STUDENT, "Seat 1", "seat1");
            for (int i = 0; i < 5; i++) {
                assertThat(from(behind, "198.51.100.7", "guess " + i)).isEqualTo(403);
            }
            assertThat(from(behind, "198.51.100.7", PASSWORD)).as("where the guesses came from").isEqualTo(429);
            assertThat(from(behind, "198.51.100.8", PASSWORD)).as("at home").isEqualTo(302);
            assertThat(from(behind, "198.51.100.7", "one more")).as("that frees nobody else").isEqualTo(429);
            for (int i = 0; i < 21; i++) {
                assertThat(from(behind, "203.0.113." + i, "guess")).isEqualTo(403);
            }
            assertThat(from(behind, "203.0.113.99", "guess")).as("many addresses").isEqualTo(429);
            behind.wait(Duration.ofSeconds(30));
            assertThat(from(behind, "198.51.100.8", PASSWORD)).as("the owner waits half a minute then").isEqualTo(302);
        }
    }

    private static int from(SchoolUnderTest site, String address, String password) throws Exception {
        return new PlainHttp(site).with("X-Forwarded-For", address).post("/sign-in", "login", "seat1", "password", password).statusCode();
    }

    @Test
    @DisplayName("13: ASVS 7.2.3, 7.2.4: secrets of 256 bits, a new one at each sign-in")
    void row13() throws Exception {
        SecureRandom random = new SecureRandom();
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < 1000; i++) {
            seen.add(SessionRule.token(random));
        }
        assertThat(seen).hasSize(1000).allMatch(SessionRule::isToken);
        String planted = "soapstone=" + SessionRule.token(random);
        http.withCookie(planted).post("/sign-in", "login", "wren", "password", PASSWORD);
        assertThat(http.cookie()).startsWith("soapstone=").isNotEqualTo(planted);
        assertThat(new PlainHttp(site).withCookie(planted).get("/account").statusCode()).isEqualTo(302);
        String first = http.cookie();
        http.get("/account");
        http.post("/sign-in", "login", "wren", "password", PASSWORD);
        assertThat(http.cookie()).isNotEqualTo(first);
        assertThat(new PlainHttp(site).withCookie(first).get("/account").statusCode()).isEqualTo(302);
    }

    @Test
    @DisplayName("14: ASVS 7.4.1, 7.4.4: signing out ends the session here, and stands on every page")
    void row14() throws Exception {
        http.signIn("wren", PASSWORD);
        for (String path : List.of("/", "/units", "/account", "/account/password", "/classes", "/classes/new", "/no-such-page")) {
            assertThat(http.get(path).body()).as(path).contains("action=\"/sign-out\"");
        }
        String cookie = http.cookie();
        http.post("/sign-out");
        assertThat(new PlainHttp(site).withCookie(cookie).get("/account").statusCode()).isEqualTo(302);
    }

    @Test
    @DisplayName("15: ASVS 7.4.2, 7.4.3, 7.4.5: disabled, or with a new password, every other session is over at once")
    void row15() throws Exception {
        http.signIn("wren", PASSWORD);
        PlainHttp second = new PlainHttp(site).signIn("wren", PASSWORD);
        assertThat(change(PASSWORD, FRESH).statusCode()).isEqualTo(302);
        assertThat(second.get("/account").statusCode()).isEqualTo(302);
        assertThat(http.get("/account").statusCode()).isEqualTo(200);
        site.school.people().setDisabled(wren.id(), true);
        assertThat(http.get("/account").statusCode()).isEqualTo(302);
    }

    @Test
    @DisplayName("16: ASVS 7.3.1, 7.3.2: out after 30 minutes of doing nothing, 10 on a shared tablet, and after 12 hours (drafts: StudentsWorkTest)")
    void row16() throws Exception {
        http.signIn("wren", PASSWORD);
        PlainHttp tablet = new PlainHttp(site);
        tablet.post("/sign-in", "login", "wren", "password", PASSWORD, "tablet", "yes");
        site.wait(Duration.ofMinutes(11));
        assertThat(tablet.get("/account").statusCode()).isEqualTo(302);
        assertThat(http.get("/account").statusCode()).isEqualTo(200);
        site.wait(Duration.ofMinutes(31));
        assertThat(http.get("/account").statusCode()).isEqualTo(302);
        PlainHttp busy = new PlainHttp(site).signIn("wren", PASSWORD);
        for (int i = 0; i < 29; i++) {
            site.wait(Duration.ofMinutes(25));
            busy.get("/account");
        }
        assertThat(busy.get("/account").statusCode()).isEqualTo(302);
    }

    @Test
    @DisplayName("17: ASVS 3.3.1 to 3.3.4: over TLS the cookie is bound to this host and to TLS, and out of reach of scripts")
    void row17() throws Exception {
        try (SchoolUnderTest secure = SchoolUnderTest.start(new SampleDesk(), Settings.on(0).withProxies(Set.of()))) {
            secure.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
            PlainHttp there = new PlainHttp(secure);
            HttpResponse<String> in = there.post("/sign-in", "login", "wren", "password", PASSWORD);
            assertThat(in.headers().allValues("Set-Cookie")).singleElement().asString().matches("__Host-soapstone=[A-Za-z0-9_-]{43}; Path=/; HttpOnly; SameSite=Lax; Secure");
            there.get("/account");
            assertThat(there.post("/sign-out").headers().allValues("Set-Cookie")).singleElement().asString()
                    .isEqualTo("__Host-soapstone=; Path=/; HttpOnly; SameSite=Lax; Secure; Max-Age=0");
        }
        assertThat(http.post("/sign-in", "login", "wren", "password", PASSWORD).headers().allValues("Set-Cookie")).singleElement().asString()
                .matches("soapstone=[A-Za-z0-9_-]{43}; Path=/; HttpOnly; SameSite=Lax");
    }

    @Test
    @DisplayName("35: ASVS 3.4.1, 12.1.1, 12.2.1: over TLS browsers are told to stay there for a year, with every answer")
    void row35() throws Exception {
        try (SchoolUnderTest secure = SchoolUnderTest.start(new SampleDesk(), Settings.on(0).withProxies(Set.of()))) {
            for (String path : List.of("/", "/no-such-page", "/account", "/units/..;/x")) {
                assertThat(new PlainHttp(secure).get(path).headers().firstValue("Strict-Transport-Security")).as(path).contains("max-age=31536000");
            }
            assertThat(RawHttp.send(secure.port(), "nonsense\r\n\r\n").headers()).containsEntry("strict-transport-security", "max-age=31536000");
        }
        assertThat(http.get("/").headers().firstValue("Strict-Transport-Security")).isEmpty();
    }

    @Test
    @DisplayName("36: ASVS 3.4.3 to 3.4.6: every answer, whatever its status, carries the strict headers; no script stands in a page")
    void row36() throws Exception {
        http.signIn("wren", PASSWORD);
        for (HttpResponse<String> answer : List.of(http.get("/account"), http.get("/no-such-page"), http.get("/units/broken"), http.bare("/account/language"),
                http.send("PUT", "/account", ""), http.get("/home"), http.post("/account/language", "language", "xx"))) {
            SafeHeaders.ALL.forEach((name, value) -> assertThat(answer.headers().firstValue(name)).as(answer.uri() + " " + answer.statusCode()).contains(value));
            assertThat(answer.body()).doesNotContainPattern("<script(?![^>]* src=)").doesNotContainPattern("<[^>]* on[a-z]+=").doesNotContainPattern("<[^>]* style=");
        }
    }

    @Test
    @DisplayName("37: ASVS 4.1.1, 14.2.1, 14.3.2: charset said, nothing kept on the way, no name and no secret in an address")
    void row37() throws Exception {
        site.add(Person.Kind.KEEPER, "J. Alder", "alder");
        site.add(Person.Kind.STUDENT, "Heron", "heron");
        http.signIn("alder", PASSWORD);
        for (String path : List.of("/accounts", "/accounts/students", "/accounts/new", "/account", "/account/second-factor", "/sign-in", "/new-password")) {
            HttpResponse<String> page = http.get(path);
            assertThat(page.headers().firstValue("Content-Type")).as(path).contains("text/html;charset=utf-8");
            assertThat(page.headers().firstValue("Cache-Control")).as(path).contains("no-store");
            assertThat(Pattern.compile("(?:href|action|src)=\"(/[^\"]*)\"").matcher(page.body()).results().map(m -> m.group(1)))
                    .as(path).noneMatch(a -> a.matches("(?i).*(wren|heron|alder|form-key|password=).*"));
            assertThat(page.body()).doesNotContain("method=\"get\"");
        }
    }

    @Test
    @DisplayName("38: ASVS 2.4.1, 4.1.3, 15.3.4: a made-up address resets no wait; behind a proxy its word is taken, and only its own")
    void row38() throws Exception {
        try (SchoolUnderTest fresh = SchoolUnderTest.start(new SampleDesk())) {
            fillAddress(fresh, "127.0.0.1");
            assertThat(wrongFrom(fresh, "X-Forwarded-For", "198.51.100.7")).isEqualTo(429);
            assertThat(wrongFrom(fresh, "Forwarded", "for=198.51.100.7")).isEqualTo(429);
        }
        try (SchoolUnderTest behind = SchoolUnderTest.start(new SampleDesk(), Settings.on(0).withProxies(Set.of("192.0.2.1")))) {
            fillAddress(behind, "198.51.100.7");
            assertThat(wrongFrom(behind, "X-Forwarded-For", "198.51.100.8")).isEqualTo(403);
            assertThat(wrongFrom(behind, "X-Forwarded-For", "203.0.113.1, 198.51.100.7")).isEqualTo(429);
            assertThat(wrongFrom(behind, "X-Forwarded-For", "203.0.113.1, 198.51.100.7, 192.0.2.1")).isEqualTo(429);
            assertThat(wrongFrom(behind, "Forwarded", "for=203.0.113.1, for=\"198.51.100.7:4711\";proto=https")).isEqualTo(429);
            assertThat(wrongFrom(behind, "Forwarded", "for=\"[2001:db8::1]:80\"")).isEqualTo(403);
            assertThat(behind.log()).contains("address=2001:db8::1");
            fillAddress(behind, "127.0.0.1");
            assertThat(wrongFrom(behind, "X-Forwarded-For", "no address")).isEqualTo(429);
            assertThat(new PlainHttp(behind).with("X-Forwarded-For", "203.0.113.1").with("Forwarded", "for=203.0.113.2").post("/sign-in", "login", "x", "password", "y")
                    .statusCode()).isEqualTo(429);
        }
    }

    private static int wrongFrom(SchoolUnderTest site, String header, String value) throws Exception {
        return new PlainHttp(site).with(header, value).post("/sign-in", "login", "nobody " + value, "password", "guess").statusCode();
    }

    private static void fillAddress(SchoolUnderTest site, String address) {
        for (int i = 0; i < 201; i++) {
            site.school.throttles().fail(soapstone.school.Throttle.ADDRESS.subject(address), soapstone.school.Throttle.ADDRESS::freeAt, site.now());
        }
    }

    @Test
    @DisplayName("39: ASVS 16.2 to 16.5: one line in UTC an event, without secrets, names or what was typed; a fault shows a reference only")
    void row39() throws Exception {
        http.post("/sign-in", "login", "wren", "password", "guess with spaces");
        http.post("/sign-in", "login", "new\r\nline sign-in-ok about=1", "password", "secret guess");
        http.signIn("wren", PASSWORD);
        http.bare("/account/language", "language", "en");
        http.get("/accounts");
        change(PASSWORD, FRESH);
        site.school.audit().latest(1);
        HttpResponse<String> broken = http.get("/units/broken");
        assertThat(broken.statusCode()).isEqualTo(500);
        assertThat(broken.body()).doesNotContain("forty-two").doesNotContain("Exception").doesNotContain("soapstone.web");
        String reference = Pattern.compile("in the log under\\s([0-9a-f]{8})").matcher(broken.body().replace('\u00a0', ' ')).results().findFirst().orElseThrow().group(1);
        List<String> lines = site.log().lines().toList();
        assertThat(lines).allMatch(line -> line.matches("2027-03-16T07:00:00Z [a-z.-]+( [a-z]+=[!-~]+)*"));
        assertThat(lines).extracting(line -> line.split(" ")[1]).containsExactly("sign-in-failed", "sign-in-failed", "sign-in-ok", "refused", "refused", "account.password",
                "sign-in-ok", "broke");
        assertThat(site.log()).contains("reference=" + reference).contains("status=403").contains("at=/account/language").doesNotContainIgnoringCase("wren").doesNotContain("guess")
                .doesNotContain("forty-two").doesNotContain(PASSWORD).doesNotContain(FRESH);
    }

    @Test
    @DisplayName("39: a mark that was changed is a line too")
    void row39Marks() {
        java.util.List<String> lines = new java.util.ArrayList<>();
        java.io.ByteArrayOutputStream out = new java.io.ByteArrayOutputStream();
        Audit logged = new LoggedAudit(site.school.audit(), soapstone.files.SecurityLog.to(new java.io.PrintStream(out, true)));
        logged.note(new Audit.Entry(site.now(), Optional.of(wren.id()), "mark.overruled", Optional.of(7L), Optional.of(3L), "Heron: 3 of 4\nforged", false));
        out.toString().lines().forEach(lines::add);
        assertThat(lines).containsExactly("2027-03-16T07:00:00Z mark.overruled by=" + wren.id() + " about=7 class=3");
        assertThat(site.school.audit().latest(1)).extracting(Audit.Entry::act).containsExactly("mark.overruled");
    }

    @Test
    @DisplayName("40: ASVS 11.4.2, 13.x, 15.1.2: passwords are Argon2id, secrets are hashes, and nothing of the machine is to be had")
    void row40() throws Exception {
        http.signIn("wren", PASSWORD);
        assertThat(site.school.people().password(wren.id()).orElseThrow()).startsWith("$argon2id$");
        String token = http.cookie().substring(http.cookie().indexOf('=') + 1);
        assertThat(site.school.sessions().find(token)).isEmpty();
        assertThat(site.school.sessions().find(SessionRule.hash(token))).isPresent();
        for (String path : List.of("/.git/HEAD", "/WEB-INF", "/WEB-INF/web.xml", "/actuator", "/..;/", "/site", "/h2-console", "/metrics", "/security.log", "/school.mv.db")) {
            assertThat(http.get(path).statusCode()).as(path).isIn(400, 404);
        }
    }
}
