package soapstone.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Headers of pages and of the site's own files. */
class HeadersTest {

    private static SiteUnderTest site;

    @BeforeAll
    static void start() throws Exception {
        site = SiteUnderTest.start();
    }

    @AfterAll
    static void stop() throws Exception {
        site.close();
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/units", "/exercises/spacing/bolt-holes", "/exercises/spacing/bolt-holes?seed=1&units=us", "/lessons/holes-and-spaces",
            "/formulas/bend_allowance", "/bench/spacing/bolt-holes", "/tables/gauge", "/answers", "/about"})
    void pagesCarryTheSafeHeadersAndNoCookie(String path) throws Exception {
        HttpResponse<String> page = site.get(path);
        SafeHeaders.ALL.forEach((name, value) -> assertThat(page.headers().firstValue(name)).contains(value));
        assertThat(page.headers().firstValue("Cache-Control")).contains("no-store");
        assertThat(page.headers().firstValue("Content-Type")).contains("text/html;charset=utf-8");
        assertThat(page.headers().map()).doesNotContainKeys("set-cookie", "server", "x-powered-by", "access-control-allow-origin");
    }

    @Test
    void thePolicyLetsNothingInFromOutsideAndNoInlineScript() {
        String policy = SafeHeaders.ALL.get("Content-Security-Policy");
        assertThat(policy).startsWith("default-src 'none';").contains("script-src 'self'", "frame-ancestors 'none'", "base-uri 'none'", "form-action 'self'")
                .doesNotContain("unsafe").doesNotContain("*").doesNotContain("data:").doesNotContain("http");
    }

    @Test
    void ownFilesAreKeptForGoodUnderTheirHash() throws Exception {
        Matcher links = Pattern.compile("(?:href|src)=\"(/site/[^\"]+)\"").matcher(site.get("/").body());
        int found = 0;
        while (links.find()) {
            HttpResponse<String> file = site.get(links.group(1));
            assertThat(file.statusCode()).as(links.group(1)).isEqualTo(200);
            assertThat(file.headers().firstValue("Cache-Control")).contains("public, max-age=31536000, immutable");
            assertThat(file.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
            found++;
        }
        assertThat(found).isGreaterThanOrEqualTo(3);
    }

    @Test
    void fontsOfTheStyleSheetAreThere() throws Exception {
        Matcher sheet = Pattern.compile("href=\"(/site/[^\"]+/)site.css\"").matcher(site.get("/").body());
        assertThat(sheet.find()).isTrue();
        Matcher fonts = Pattern.compile("url\\(([^)]+)\\)").matcher(site.get(sheet.group(1) + "site.css").body());
        while (fonts.find()) {
            assertThat(site.get(sheet.group(1) + fonts.group(1)).headers().firstValue("Content-Type")).contains("font/woff2");
        }
        assertThat(site.get(sheet.group(1) + "b612-OFL.txt").body()).contains("SIL OPEN FONT LICENSE Version 1.1");
    }

    @Test
    void aCookieThatComesIsNotAnswered() throws Exception {
        RawHttp.Answer answer = RawHttp.send(site.port(), "GET / HTTP/1.1\r\nHost: x\r\nCookie: JSESSIONID=1; a=b\r\nConnection: close\r\n\r\n");
        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.headers()).doesNotContainKey("set-cookie");
    }
}
