package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.htmlunit.WebClient;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import soapstone.school.Assignment;
import soapstone.school.Member;
import soapstone.school.Person;
import soapstone.school.Problem;
import soapstone.school.Sheet;
import soapstone.web.PlainHttp;
import soapstone.web.SchoolUnderTest;

/**
 * Rows of OWASP ASVS 5.0.0 about pages and what is sent to them, by plain HTTP: a method a row. The rows about accounts,
 * sessions, headers and the log are in {@code soapstone.web.SecurityOfAccountsTest}.
 *
 * <p>What no row here asks, because there is nothing of the kind yet:
 * <ul>
 * <li>28, PDF: no paper is printed by the site.
 * <li>32, uploads that are served again: rosters are the only files taken; their text goes into a field (ClassRoomTest,
 *     MultipartTest), no file is kept or given out.
 * <li>33: no page reads XML or an archive; a backup is one, see BackupTest.
 * <li>35, the certificate of the proxy: a program of its own tries that, by hand; what we answer over TLS is in CertificateTest.
 * <li>40, list of libraries: LibrariesListTest.
 * </ul>
 */
class SecurityOfPagesTest {

    private static final String PASSWORD = SchoolUnderTest.PASSWORD;
    private static final String CANARY = "\"><svg onload=x>'{{7*7}}${7*7}";

    private static SchoolUnderTest site;
    private static Person keeper;
    private RealSchool own;
    private RealSchool others;
    private Assignment week;
    private Sheet sheet;
    private long attempt;
    private PlainHttp instructor;
    private PlainHttp other;
    private PlainHttp ada;
    private PlainHttp bo;
    private PlainHttp alder;

    @BeforeAll
    static void open() throws Exception {
        site = RealSchool.open();
        keeper = site.add(Person.Kind.KEEPER, "J. Alder", "alder");
    }

    @AfterAll
    static void close() {
        site.close();
    }

    @BeforeEach
    void start() throws Exception {
        own = new RealSchool(site);
        others = new RealSchool(site);
        week = own.give(Assignment.Shows.NOTHING);
        try (WebClient browser = site.browser(own.ada.person())) {
            own.begin(browser, week);
            sheet = own.sheet(week, own.ada);
            own.handIn(browser, sheet, 1, RealSchool.right(sheet.problems().get(0)));
        }
        attempt = site.school.attempts().of(sheet.problems().get(0).id()).get(0).id();
        instructor = in(own.instructor);
        other = in(others.instructor);
        ada = in(own.ada.person());
        bo = in(own.bo.person());
        alder = in(keeper);
    }

    private static PlainHttp in(Person person) throws Exception {
        return new PlainHttp(site).signIn(person.login(), PASSWORD);
    }

    /** An address with everything that has a number named as it is in the class. */
    private String filled(String pattern) {
        return pattern.replace("{class}", String.valueOf(own.in.id())).replace("{assignment}", String.valueOf(week.id()))
                .replace("{person}", String.valueOf(own.ada.person().id())).replace("{sheet}", String.valueOf(sheet.id())).replace("{place}", "1")
                .replace("{attempt}", String.valueOf(attempt)).replace("{unit}", "spacing").replace("{id}", "bolt-holes").replace("{name}", "gauge").replaceAll("\\{[a-z-]+}", "1");
    }

    private record Door(String method, String path, String who, String pattern) {}

    private List<Door> doors() {
        return site.doors().entrySet().stream().map(e -> {
            String[] words = e.getKey().split(" ");
            return new Door(words[0], filled(words[1]), e.getValue(), words[1]);
        }).toList();
    }

    private static HttpResponse<String> knock(PlainHttp who, Door door) throws Exception {
        return door.method().equals("POST") ? who.post(door.path()) : who.get(door.path());
    }

    /** All that is kept about the class and that a stranger could have changed. */
    private List<Object> kept() {
        return List.of(site.school.audit().latest(10_000), site.school.classes().members(own.in.id()), site.school.classes().find(own.in.id()),
                site.school.assignments().of(own.in.id()), site.school.sheets().all(week.id()), site.school.attempts().of(sheet.problems().get(0).id()),
                site.school.attempts().remarks(attempt), site.school.people().find(own.ada.person().id()), site.school.people().all(Person.Kind.INSTRUCTOR));
    }

    private static boolean lets(String who, String kind) {
        return who.equals("ANYONE") || who.equals("SIGNED_IN") || who.equals(kind);
    }

    @Test
    @DisplayName("18: ASVS 8.2.1: every door tried by nobody, a student, an instructor of another class and a keeper")
    void row18() throws Exception {
        Map<String, PlainHttp> people = new LinkedHashMap<>();
        people.put("STUDENT", bo);
        people.put("INSTRUCTOR", other);
        people.put("KEEPER", alder);
        List<Object> before = kept();
        List<String> wrong = new ArrayList<>();
        int tried = 0;
        for (Door door : doors()) {
            if (!door.who().equals("ANYONE")) {
                HttpResponse<String> nobody = knock(new PlainHttp(site), door);
                tried++;
                if (nobody.statusCode() != 302 || !nobody.headers().firstValue("Location").orElse("").startsWith("/sign-in")) {
                    wrong.add("nobody " + door + " " + nobody.statusCode());
                }
            }
            for (Map.Entry<String, PlainHttp> person : people.entrySet()) {
                boolean named = door.pattern().contains("{") && person.getKey().equals("INSTRUCTOR") && door.who().equals("INSTRUCTOR");
                if (!lets(door.who(), person.getKey()) || named) {
                    int status = knock(person.getValue(), door).statusCode();
                    tried++;
                    if (status != 404) {
                        wrong.add(person.getKey() + " " + door + " " + status);
                    }
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(tried).isGreaterThan(200);
        assertThat(kept()).isEqualTo(before);
    }

    @Test
    @DisplayName("19: ASVS 8.2.2, 8.4.1: what belongs to somebody else is not there")
    void row19() throws Exception {
        List<Object> before = kept();
        for (Door door : doors()) {
            if (door.pattern().startsWith("/sheets/{sheet}")) {
                assertThat(knock(bo, door).statusCode()).as(door.toString()).isEqualTo(404);
            }
        }
        String others = "/classes/" + this.others.in.id();
        for (String path : List.of("", "/roster", "/marks", "/marks/one-roster", "/mistakes", "/settings", "/students/" + own.ada.person().id())) {
            assertThat(instructor.get(others + path).statusCode()).as(path).isEqualTo(404);
        }
        // A person of another class under the own class.
        assertThat(instructor.get("/classes/" + own.in.id() + "/students/" + this.others.ada.person().id()).statusCode()).isEqualTo(404);
        assertThat(instructor.get("/classes/" + own.in.id() + "/roster/" + this.others.ada.person().id()).statusCode()).isEqualTo(404);
        assertThat(kept()).isEqualTo(before);
    }

    @Test
    @DisplayName("20: ASVS 8.2.3, 15.3.1: before it may be seen, no page holds an answer, a seed, or a mistake")
    void row20() throws Exception {
        Problem problem = sheet.problems().get(0);
        String right = RealSchool.right(problem).values().iterator().next();
        String path = "/sheets/" + sheet.id() + "/1";
        for (String page : List.of("/work", "/sheets/" + sheet.id(), path, path + "/review", "/sheets/history")) {
            assertThat(bare(ada.get(page).body())).as(page).doesNotContain(String.valueOf(problem.seed())).doesNotContain(problem.fingerprint()).doesNotContain("fence-post")
                    .doesNotContain("shared-over").doesNotContain(">" + right + "<");
        }
        for (String page : List.of("/accounts", "/accounts/students", "/accounts/" + own.ada.person().id())) {
            assertThat(alder.get(page).body()).as(page).doesNotContain(own.in.name()).doesNotContain(week.title()).doesNotContain("points");
        }
    }

    private static String bare(String html) {
        return html.replaceAll("value=\"[^\"]*\"", "");
    }

    @Test
    @DisplayName("21: ASVS 15.3.3: fields that a form does not have do nothing")
    void row21() throws Exception {
        String[] more = {"kind", "KEEPER", "role", "teacher", "person", "1", "userId", "1", "points", "100", "score", "100", "disabled", "no", "must_change", "no", "id", "1"};
        List<Object> before = kept();
        ada.post("/account/language", with(more, "language", "en"));
        assertThat(ada.post("/account/password", with(more, "current", PASSWORD, "fresh", "tall fences hum at dusk", "again", "tall fences hum at dusk")).statusCode()).isEqualTo(302);
        Person after = site.school.people().find(own.ada.person().id()).orElseThrow();
        assertThat(after).isEqualTo(own.ada.person());
        List<Object> now = kept();
        assertThat(now.subList(1, now.size())).isEqualTo(before.subList(1, before.size()));
    }

    private static String[] with(String[] more, String... fields) {
        List<String> all = new ArrayList<>(List.of(fields));
        all.addAll(List.of(more));
        return all.toArray(String[]::new);
    }

    @Test
    @DisplayName("22: ASVS 8.3.1, 2.2.2, 2.3.1: the server keeps the order and the times")
    void row22() throws Exception {
        String path = "/sheets/" + sheet.id() + "/1";
        // Handing in without the page that makes the receipt.
        assertThat(ada.post(path + "/review", "box-a", "1", "receipt", "made-up").statusCode()).isEqualTo(400);
        // A draw of the student's own choice.
        assertThat(ada.get(path + "?seed=1&units=us").body()).isEqualTo(ada.get(path).body());
        site.wait(Duration.ofDays(3));
        PlainHttp late = in(own.ada.person());
        PlainHttp later = in(own.bo.person());
        assertThat(later.post("/sheets/open/" + week.id()).statusCode()).isEqualTo(409);
        assertThat(late.post(path, "action", "review", "box-a", "1").statusCode()).isIn(400, 409);
        assertThat(site.school.attempts().of(sheet.problems().get(0).id())).hasSize(1);
    }

    @Test
    @DisplayName("23: ASVS 2.3.3, 2.3.4: twenty times the same form at the same moment counts once")
    void row23() throws Exception {
        Map<String, String> form;
        String path = "/sheets/" + sheet.id() + "/1/review";
        try (WebClient browser = site.browser(own.ada.person())) {
            form = RealSchool.hidden(RealSchool.form(own.review(browser, sheet, 1, RealSchool.right(sheet.problems().get(0))), path));
        }
        form.remove("form-key");
        String[] fields = form.entrySet().stream().flatMap(e -> java.util.stream.Stream.of(e.getKey(), e.getValue())).toArray(String[]::new);
        ExecutorService many = Executors.newFixedThreadPool(20);
        List<Callable<Integer>> tries = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            PlainHttp same = new PlainHttp(site).withCookie(ada.cookie());
            same.get("/account");
            tries.add(() -> same.post(path, fields).statusCode());
        }
        for (Future<Integer> answer : many.invokeAll(tries)) {
            assertThat(answer.get()).isIn(200, 302, 303);
        }
        many.shutdown();
        assertThat(site.school.attempts().of(sheet.problems().get(0).id())).hasSize(2);
    }

    @Test
    @DisplayName("24: ASVS 2.2.1, 15.3.5, 15.3.7: odd numbers, and a field that comes twice, get a clean answer")
    void row24() throws Exception {
        for (String odd : List.of("NaN", "1e999", "-Infinity", "½", "1,5", "9".repeat(1900), "\u0661\u0662", "0x1F")) {
            assertThat(ada.post("/read-answer", "reads", "length in", "typed", odd).statusCode()).as(odd).isIn(200, 400);
        }
        assertThat(ada.post("/read-answer", "reads", "length in", "typed", "9".repeat(10_000)).statusCode()).isEqualTo(413);
        assertThat(ada.send("POST", "/sign-in", "login=a&login=b&password=c&form-key=" + ada.key()).statusCode()).isEqualTo(400);
        for (String number : List.of("0", "-1", "1.5", "99999999999999999999", "1e3", "01", "%31%00")) {
            assertThat(instructor.get("/classes/" + number).statusCode()).as(number).isIn(400, 404);
        }
    }

    @Test
    @DisplayName("25: ASVS 3.5.1: no form without its session's key, none with another's, none from another site")
    void row25() throws Exception {
        Map<String, PlainHttp> people = Map.of("STUDENT", ada, "INSTRUCTOR", instructor, "KEEPER", alder, "SIGNED_IN", ada, "ANYONE", ada);
        List<Object> before = kept();
        int tried = 0;
        for (Door door : doors()) {
            if (!door.method().equals("POST")) {
                continue;
            }
            PlainHttp person = people.get(door.who());
            assertThat(from(person, "Origin", "https://evil.example", door)).as("evil " + door).isEqualTo(403);
            assertThat(from(person, "Sec-Fetch-Site", "cross-site", door)).as("cross-site " + door).isEqualTo(403);
            if (!door.who().equals("ANYONE")) {
                assertThat(person.bare(door.path()).statusCode()).as("no key " + door).isEqualTo(403);
                assertThat(person.bare(door.path(), "form-key", bo.key()).statusCode()).as("bo's key " + door).isEqualTo(403);
            }
            tried++;
        }
        assertThat(tried).isGreaterThan(40);
        assertThat(kept()).isEqualTo(before);
    }

    private static int from(PlainHttp person, String header, String value, Door door) throws Exception {
        PlainHttp elsewhere = new PlainHttp(site).withCookie(person.cookie()).with(header, value);
        return elsewhere.bare(door.path(), "form-key", person.key()).statusCode();
    }

    @Test
    @DisplayName("26: ASVS 3.5.3, 4.1.4: nothing changes by GET, and other methods are refused")
    void row26() throws Exception {
        List<Object> before = kept();
        List<String> gets = doors().stream().filter(d -> d.method().equals("GET")).map(Door::pattern).toList();
        for (Door door : doors()) {
            if (door.method().equals("POST") && !gets.contains(door.pattern())) {
                for (PlainHttp person : List.of(instructor, ada, alder)) {
                    assertThat(person.get(door.path()).statusCode()).as(door.toString()).isIn(404, 405);
                }
            }
            for (String method : List.of("PUT", "DELETE", "PATCH", "TRACE", "OPTIONS")) {
                assertThat(instructor.send(method, door.path(), "").statusCode()).as(method + " " + door).isEqualTo(405);
            }
        }
        for (Door door : doors()) {
            if (door.method().equals("GET") && !door.pattern().contains("{attempt}")) {
                (door.who().equals("STUDENT") ? ada : door.who().equals("KEEPER") ? alder : instructor).get(door.path());
            }
        }
        assertThat(kept()).isEqualTo(before);
    }

    @Test
    @DisplayName("27: ASVS 3.4.2: no other site is let in to read")
    void row27() throws Exception {
        for (String path : List.of("/", "/sign-in", "/stay", "/account", "/read-answer", "/no-such-page")) {
            HttpResponse<String> answer = new PlainHttp(site).with("Origin", "https://evil.example").get(path);
            assertThat(answer.headers().map().keySet()).as(path).noneMatch(name -> name.toLowerCase(java.util.Locale.ROOT).startsWith("access-control-"));
        }
    }

    @Test
    @DisplayName("28: ASVS 1.2.1, 1.2.3, 3.2.2: names and titles stand in pages as text, whatever is in them")
    void row28() throws Exception {
        site.school.classes().change(own.in.id(), CANARY, CANARY, own.in.settings());
        site.school.people().rename(own.ada.person().id(), CANARY);
        site.school.people().rename(own.instructor.id(), CANARY);
        Assignment marked = own.add(new Assignment(0, own.in.id(), CANARY, Assignment.State.GIVEN, week.opens(), week.due(), Assignment.Late.TAKEN, 2, Assignment.Shows.LINES, true,
                own.instructor.id(), site.now(), java.util.Optional.empty(), List.of(RealSchool.HOLES_TASK)), List.of());
        int seen = 0;
        List<Door> pages = new ArrayList<>(doors().stream().filter(d -> d.method().equals("GET") && !d.pattern().startsWith("/site/")).toList());
        pages.add(new Door("GET", "/assignments/" + marked.id(), "INSTRUCTOR", ""));
        pages.add(new Door("GET", "/sheets/open/" + marked.id(), "STUDENT", ""));
        for (Door door : pages) {
            PlainHttp person = door.who().equals("STUDENT") ? ada : door.who().equals("KEEPER") ? alder : instructor;
            String body = person.get(door.path()).body();
            assertThat(body).as(door.toString()).doesNotContain("<svg onload").doesNotContain("{49}").doesNotContain("49$");
            seen += body.contains("&lt;svg onload=x&gt;") ? 1 : 0;
        }
        assertThat(seen).isGreaterThan(15);
        String typed = new PlainHttp(site).post("/sign-in", "login", CANARY, "password", "x").body();
        assertThat(typed).contains("&lt;svg onload=x&gt;").doesNotContain("<svg onload");
        assertThat(instructor.get("/work?x=" + java.net.URLEncoder.encode(CANARY, java.nio.charset.StandardCharsets.UTF_8)).body()).doesNotContain("<svg onload");
    }

    @Test
    @DisplayName("29: ASVS 1.2.2, 3.7.2: nobody is led to another site")
    void row29() throws Exception {
        for (String then : List.of("//evil.example", "/\\evil.example", "https://evil.example", "javascript:alert(1)", "\\\\evil.example", "/\t/evil.example", "/ /evil", "evil")) {
            HttpResponse<String> in = new PlainHttp(site).post("/sign-in", "login", own.bo.person().login(), "password", PASSWORD, "then", then);
            assertThat(in.headers().firstValue("Location")).as(then).contains("/work");
        }
        HttpResponse<String> in = new PlainHttp(site).post("/sign-in", "login", own.bo.person().login(), "password", PASSWORD, "then", "/sheets/history");
        assertThat(in.headers().firstValue("Location")).contains("/sheets/history");
    }

    @Test
    @DisplayName("30: ASVS 1.2.4, 1.2.5, 5.3.2: signs that mean something to a database, a shell or a folder mean nothing here")
    void row30() throws Exception {
        int plain = new PlainHttp(site).post("/sign-in", "login", "harmless", "password", "harmless").statusCode();
        for (String odd : List.of("' or '1'='1", "'; drop table person; --", "a; ls", "$(id)", "../../etc/passwd", "%", "_", "\\")) {
            assertThat(new PlainHttp(site).post("/sign-in", "login", odd, "password", odd).statusCode()).as(odd).isEqualTo(plain);
            HttpResponse<String> found = alder.post("/accounts/students", "find", odd);
            assertThat(found.statusCode()).as(odd).isEqualTo(200);
            assertThat(found.body()).as(odd).doesNotContain(own.ada.person().login());
            assertThat(new PlainHttp(site).post("/join", "code", odd, "name", "N").statusCode()).as(odd).isEqualTo(422);
        }
        for (String path : List.of("/units/..%2f..%2fetc", "/units/%2e%2e/x", "/tables/gauge%00", "/site/x/..%5csite.css", "/units/a'b", "/sheets/1;2")) {
            assertThat(ada.get(path).statusCode()).as(path).isIn(400, 404);
        }
        assertThat(ada.send("POST", "/accounts/students", "find=%00").statusCode()).isEqualTo(404);
        assertThat(alder.send("POST", "/accounts/students", "find=%00&form-key=" + alder.key()).statusCode()).isEqualTo(400);
    }

    @Test
    @DisplayName("31: ASVS 1.3.2, 1.3.7, 15.2.2: what is typed as an answer is read, and never run")
    void row31() throws Exception {
        for (String odd : List.of("Runtime.getRuntime()", "${7*7}", "9^9^9^9", "(".repeat(1990), "1/0", "sqrt(-1)", "#{1}", "T(java.lang.Runtime)")) {
            HttpResponse<String> read = ada.post("/read-answer", "reads", "length in", "typed", odd);
            assertThat(read.statusCode()).as(odd).isIn(200, 400);
            assertThat(read.body()).as(odd).doesNotContain("49").doesNotContain("java.");
        }
        assertThat(ada.post("/read-answer", "reads", "length in", "typed", "(".repeat(10_000)).statusCode()).isEqualTo(413);
        assertThat(ada.send("POST", "/read-answer", "typed=" + "x".repeat(100_000)).statusCode()).isEqualTo(413);
    }

    @Test
    @DisplayName("32: ASVS 5.2.1, 5.2.2: no form but a roster's takes files, and none takes large ones")
    void row32() throws Exception {
        PlainHttp files = new PlainHttp(site).withCookie(instructor.cookie());
        assertThat(files.sendAs("multipart/form-data; boundary=xx", "/account/password", "--xx\r\nContent-Disposition: form-data; name=\"a\"\r\n\r\nb\r\n--xx--\r\n").statusCode())
                .isEqualTo(415);
        assertThat(files.sendAs("multipart/form-data; boundary=xx", "/classes/" + own.in.id() + "/roster", "x".repeat(70_000)).statusCode()).isEqualTo(413);
    }

    @Test
    @DisplayName("34: ASVS 1.2.10: a name is no formula in a spreadsheet")
    void row34() throws Exception {
        List<String> names = List.of("=1+1", "@x", "+1", "-1");
        List<Member> members = new ArrayList<>();
        for (String name : names) {
            members.add(site.enrol(own.in, name, "formula" + own.in.id() + "." + members.size(), ""));
        }
        String csv = instructor.post("/classes/" + own.in.id() + "/marks/plain").body();
        for (String name : names) {
            assertThat(csv).as(name).contains("'" + name).doesNotContain("," + name).doesNotContain("\"" + name);
        }
    }

    @Test
    @DisplayName("38: ASVS 2.4.1: two hundred exports in a minute are too many, and it is said when to go on")
    void row38() throws Exception {
        int taken = 0;
        HttpResponse<String> last = instructor.post("/classes/" + own.in.id() + "/marks/plain");
        for (int i = 1; i < 200 && last.statusCode() == 200; i++) {
            taken++;
            last = instructor.post("/classes/" + own.in.id() + "/marks/plain");
        }
        assertThat(taken).isBetween(50, 100);
        assertThat(last.statusCode()).isEqualTo(429);
        assertThat(last.headers().firstValue("Retry-After").map(Integer::parseInt)).hasValueSatisfying(s -> assertThat(s).isBetween(1, 60));
        assertThat(instructor.post("/classes/" + own.in.id() + "/students/" + own.ada.person().id() + "/data/export").statusCode()).as("whatever is taken").isEqualTo(429);
        assertThat(other.post("/classes/" + others.in.id() + "/marks/plain").statusCode()).as("somebody else").isEqualTo(200);
        assertThat(instructor.get("/classes/" + own.in.id() + "/marks").statusCode()).as("pages go on").isEqualTo(200);
    }
}
