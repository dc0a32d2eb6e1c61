package soapstone.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import soapstone.page.FrontView;
import soapstone.page.UnitView;

/** Requests that get no page, many of them such as only a raw socket sends. All end on our own small page. */
class RefusalsTest {

    private static final String HEAD = "Host: localhost\r\nConnection: close\r\n";
    private static final String FORM = HEAD + "Content-Type: application/x-www-form-urlencoded\r\n";
    private static SiteUnderTest site;

    @BeforeAll
    static void start() throws Exception {
        Settings quick = Settings.on(0).withTimes(Duration.ofMillis(700), Duration.ofMillis(1500));
        site = SiteUnderTest.start(quick, new SampleDesk() {
            @Override
            public Optional<UnitView> unit(String unit) {
                if (unit.equals("broken")) {
                    throw new IllegalStateException("secret inner matter");
                }
                if (unit.equals("deep")) {
                    return unit("deep");
                }
                return super.unit(unit);
            }
        });
    }

    @AfterAll
    static void stop() throws Exception {
        site.close();
    }

    private static RawHttp.Answer raw(String request) throws Exception {
        return RawHttp.send(site.port(), request);
    }

    /** Our page, with every header, and not a word about what is inside. */
    private static void isOurPage(RawHttp.Answer answer, int status) {
        assertThat(answer.status()).isEqualTo(status);
        SafeHeaders.ALL.forEach((name, value) -> assertThat(answer.headers()).containsEntry(name.toLowerCase(java.util.Locale.ROOT), value));
        assertThat(answer.headers()).containsEntry("content-type", "text/html;charset=utf-8").containsEntry("cache-control", "no-store");
        assertThat(answer.headers()).doesNotContainKeys("server", "x-powered-by", "set-cookie", "access-control-allow-origin");
        assertThat(answer.body()).startsWith("<!DOCTYPE html>").contains("<main").doesNotContainIgnoringCase("jetty").doesNotContain("Exception", "at soapstone");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/..;/", "/%2e%2e/", "/%2e%2e/etc", "/units/..%2fetc", "/units/%00", "/units/%ff", "/%zz", "/a%2fb", "//evil.example/",
            "/units//x", "/\\evil", "http://evil.example/units", "/units?x=%ff", "/units?x=%zz", "/units?x=%", "/units?a=1&a=2", "/units?a=%00"})
    void oddAddressesAreBad(String path) throws Exception {
        isOurPage(raw(RawHttp.get(path)), 400);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/.git/HEAD", "/WEB-INF/web.xml", "/actuator", "/units;jsessionid=1", "/units/spac%69ng", "/site/x/site.css", "/site",
            "/units/nothing-like-it", "/exercises/spacing", "/exercises/spacing/nothing?seed=1&units=us", "/bench/spacing/nothing", "/lessons/nothing",
            "/formulas/nothing", "/tables/nothing", "/bench/formula/nothing"})
    void unknownAddressesAreNotFound(String path) throws Exception {
        isOurPage(raw(RawHttp.get(path)), 404);
    }

    @ParameterizedTest
    @ValueSource(strings = {"seed=0", "seed=-1", "seed=1.5", "seed=x", "seed=", "seed=99999999999999999999", "seed=1&units=ells", "seed=1&bank=%3Cb%3E", "units=ells"})
    void oddSheetsAreBad(String query) throws Exception {
        isOurPage(raw(RawHttp.get("/exercises/spacing/bolt-holes?" + query)), 400);
    }

    @Test
    void aSeedThatNothingComesFromSaysSo() throws Exception {
        RawHttp.Answer answer = raw(RawHttp.get("/exercises/spacing/bolt-holes?seed=13&units=us"));
        isOurPage(answer, 404);
        assertThat(answer.body()).contains("No fair numbers come from this sheet number.");
    }

    @ParameterizedTest
    @CsvSource({"/units/spacng,/units/spacing", "/formulas/bend-allowanc,/formulas/bend_allowance", "/lessons/holes,/lessons/holes-and-spaces",
            "/exercises/spacing/bolt-hole,/exercises/spacing/bolt-holes"})
    void nearNamesAreOffered(String path, String near) throws Exception {
        assertThat(raw(RawHttp.get(path)).body()).contains("Perhaps you meant", "href=\"" + near + "\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"OPTIONS", "PUT", "DELETE", "TRACE", "PATCH", "POST", "FOO", "get"})
    void onlyKnownMethodsPass(String method) throws Exception {
        RawHttp.Answer answer = raw(method + " /about HTTP/1.1\r\n" + HEAD + "Content-Length: 0\r\n\r\n");
        isOurPage(answer, 405);
        assertThat(answer.headers()).containsEntry("allow", "GET, HEAD");
    }

    @Test
    void formsAreNotReadByGet() throws Exception {
        RawHttp.Answer answer = raw(RawHttp.get("/read-answer"));
        isOurPage(answer, 405);
        assertThat(answer.headers()).containsEntry("allow", "POST");
    }

    @Test
    void headHasTheHeadersOfGetAndNoBody() throws Exception {
        RawHttp.Answer head = raw("HEAD /about HTTP/1.1\r\n" + HEAD + "\r\n");
        assertThat(head.status()).isEqualTo(200);
        assertThat(head.body()).isEmpty();
        assertThat(head.headers().get("content-length")).isEqualTo(raw(RawHttp.get("/about")).headers().get("content-length"));
    }

    @ParameterizedTest
    @CsvSource({"GET / HTTP/1.1,400", "GET / HTTP/3.0,505", "GET /a b HTTP/1.1,400", "CONNECT evil.example:80 HTTP/1.1,400", "\u0001\u0002,400",
            "PRI * HTTP/2.0,426"})
    void brokenFirstLinesGetOurPage(String line, int status) throws Exception {
        isOurPage(raw(line + "\r\n\r\n"), status);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Host: a\r\nHost: b", "Host: a b", "Host: a\r\nNo colon here", "Host: a\r\nX : 1", "Host: a\r\nX: 1\r\n folded",
            "Host: a\r\nContent-Length: -1", "Host: a\r\nContent-Length: 5\r\nContent-Length: 6", "Host: a\r\nContent-Length: 5\r\nTransfer-Encoding: chunked"})
    void brokenHeadersGetOurPage(String headers) throws Exception {
        isOurPage(raw("GET / HTTP/1.1\r\n" + headers + "\r\n\r\n"), 400);
    }

    @Test
    void sizesAreLimited() throws Exception {
        isOurPage(raw(RawHttp.get("/" + "a".repeat(9000))), 414);
        isOurPage(raw("GET / HTTP/1.1\r\n" + HEAD + "X: " + "a".repeat(20_000) + "\r\n\r\n"), 431);
        isOurPage(raw("GET / HTTP/1.1\r\n" + HEAD + "X: a\r\n".repeat(5000) + "\r\n"), 431);
        isOurPage(raw(RawHttp.post("/answers", "typed=" + "a".repeat(70_000))), 413);
        isOurPage(raw("POST /answers HTTP/1.1\r\n" + FORM + "Transfer-Encoding: chunked\r\n\r\n11170\r\n" + "a".repeat(70_000) + "\r\n0\r\n\r\n"), 413);
        isOurPage(raw(RawHttp.post("/nowhere", "typed=" + "a".repeat(5_000_000))), 413);
        isOurPage(raw(RawHttp.post("/answers", "typed=" + "a".repeat(2001))), 413);
        isOurPage(raw(RawHttp.post("/answers", "x=&".repeat(201))), 413);
    }

    @ParameterizedTest
    @ValueSource(strings = {"way=quantity:in&typed=%00", "way=quantity:in&typed=%c3%28", "way=quantity:in&typed=%", "way=a&way=b", "way=nonsense&typed=1",
            "way=quantity:in&typed=\u00e9"})
    void brokenFormsAreBad(String form) throws Exception {
        isOurPage(raw(RawHttp.post("/answers", form)), 400);
    }

    @ParameterizedTest
    @ValueSource(strings = {"application/json", "multipart/form-data; boundary=x", "application/x-www-form-urlencoded; charset=iso-8859-1",
            "application/x-www-form-urlencoded; charset=nonsense", "text/plain", ""})
    void onlyBrowsersFormsAreRead(String type) throws Exception {
        isOurPage(raw("POST /answers HTTP/1.1\r\n" + HEAD + "Content-Type: " + type + "\r\nContent-Length: 2\r\n\r\na="), 415);
    }

    @Test
    void halfClosedConnectionsDoNoHarm() throws Exception {
        assertThat(RawHttp.send(site.port(), RawHttp.get("/about"), true).status()).isEqualTo(200);
        assertThat(RawHttp.send(site.port(), RawHttp.post("/answers", "way=quantity%3Ain&typed=20"), true).status()).isEqualTo(200);
        isOurPage(RawHttp.send(site.port(), "POST /answers HTTP/1.1\r\n" + FORM + "Content-Length: 50\r\n\r\nway=", true), 400);
        // Half a request line: whether its end is seen before the close is a matter of timing; both are clean.
        assertThat(RawHttp.send(site.port(), "GET /about HT", true).status()).isIn(0, 400);
        assertThat(RawHttp.send(site.port(), "", true).status()).isZero();
        assertThat(site.get("/about").statusCode()).isEqualTo(200);
    }

    @Test
    void silentConnectionsAreEnded() throws Exception {
        assertThat(raw("").body()).doesNotContain("still open");
        assertThat(raw("GET /about HTTP/1.1\r\nHos").body()).doesNotContain("still open");
        isOurPage(raw("POST /answers HTTP/1.1\r\n" + FORM + "Content-Length: 50\r\n\r\nway="), 408);
    }

    @Test
    void drippingFormsAndHeadsAreEnded() throws Exception {
        assertThat(drip("POST /answers HTTP/1.1\r\n" + FORM + "Content-Length: 5000\r\n\r\n")).startsWith("HTTP/1.1 408");
        assertThat(drip("GET /about HTTP/1.1\r\nX: ")).isEmpty();
    }

    /** Sends a byte every 100 ms until the server has enough, at most for ten seconds. */
    private static String drip(String begin) throws Exception {
        try (Socket socket = new Socket("127.0.0.1", site.port())) {
            socket.setSoTimeout(100);
            OutputStream out = socket.getOutputStream();
            out.write(begin.getBytes(StandardCharsets.US_ASCII));
            for (int i = 0; i < 100; i++) {
                try {
                    out.write('a');
                    int first = socket.getInputStream().read();
                    return first < 0 ? "" : (char) first + RawHttp.readAll(socket.getInputStream());
                } catch (java.net.SocketTimeoutException e) {
                    // Not yet.
                } catch (java.io.IOException e) {
                    return "";
                }
            }
        }
        return "never ended";
    }

    @Test
    void whatBreaksInsideStaysInside() throws Exception {
        RawHttp.Answer broken = raw(RawHttp.get("/units/broken"));
        isOurPage(broken, 500);
        assertThat(broken.body()).doesNotContain("secret");
        isOurPage(raw(RawHttp.get("/units/deep")), 500);
    }

    @Test
    void aTrailingSlashIsTakenOffAndNothingLeadsAway() throws Exception {
        RawHttp.Answer answer = raw(RawHttp.get("/units/"));
        assertThat(answer.status()).isEqualTo(301);
        assertThat(answer.headers()).containsEntry("location", "/units");
        assertThat(raw("GET /exercises/spacing/bolt-holes HTTP/1.1\r\nHost: evil.example\r\nX-Forwarded-Host: evil.example\r\nConnection: close\r\n\r\n")
                .headers().get("location")).startsWith("/exercises/spacing/bolt-holes?seed=");
    }

    @Test
    void aCrowdIsToldToWait() throws Exception {
        CountDownLatch release = new CountDownLatch(1);
        SampleDesk slow = new SampleDesk() {
            @Override
            public FrontView front() {
                try {
                    release.await(20, TimeUnit.SECONDS);
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                }
                return super.front();
            }
        };
        ExecutorService guests = Executors.newFixedThreadPool(6);
        try (SiteUnderTest busy = SiteUnderTest.start(Settings.on(0).withCrowd(2, 2, Duration.ofMillis(500)), slow)) {
            List<Future<RawHttp.Answer>> answers = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                answers.add(guests.submit(() -> RawHttp.send(busy.port(), RawHttp.get("/"))));
            }
            Thread.sleep(1500);
            release.countDown();
            List<Integer> seen = new ArrayList<>();
            for (Future<RawHttp.Answer> answer : answers) {
                RawHttp.Answer got = answer.get(20, TimeUnit.SECONDS);
                seen.add(got.status());
                if (got.status() == 503) {
                    isOurPage(got, 503);
                    assertThat(got.headers()).containsEntry("retry-after", "5");
                }
            }
            assertThat(seen).containsOnly(200, 503).contains(200, 503);
            assertThat(busy.get("/about").statusCode()).isEqualTo(200);
        } finally {
            guests.shutdownNow();
        }
    }
}
