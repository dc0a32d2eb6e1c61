package soapstone.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.htmlunit.WebClient;
import org.htmlunit.html.HtmlForm;
import org.htmlunit.html.HtmlPage;
import org.junit.jupiter.api.Test;
import soapstone.school.Person;

/** Signing in and out, through the pages. */
class SignInTest {

    @Test
    void withLoginAndPasswordOneIsInAndThePageSaysWho() throws Exception {
        try (SchoolUnderTest site = SchoolUnderTest.start(new SampleDesk()); WebClient browser = site.browser()) {
            site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
            site.signIn(browser, " Wren ", SchoolUnderTest.PASSWORD);
            assertThat(site.open(browser, "/units").getVisibleText()).contains("Wren K.").contains("Sign out").doesNotContain("Sign in");
        }
    }

    @Test
    void aWrongPasswordAndAnUnknownLoginSayTheSame() throws Exception {
        try (SchoolUnderTest site = SchoolUnderTest.start(new SampleDesk()); WebClient browser = site.browser()) {
            site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
            HtmlPage wrong = site.signIn(browser, "wren", "some other sentence");
            HtmlPage unknown = site.signIn(browser, "nobody", "some other sentence");
            assertThat(wrong.getWebResponse().getStatusCode()).isEqualTo(403);
            assertThat(wrong.getVisibleText().replace("wren", "X")).isEqualTo(unknown.getVisibleText().replace("nobody", "X")).contains("do not belong together");
        }
    }

    @Test
    void signedOutTheOldCookieIsGoodForNothing() throws Exception {
        try (SchoolUnderTest site = SchoolUnderTest.start(new SampleDesk())) {
            Person wren = site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
            try (WebClient browser = site.browser(wren)) {
                String cookie = browser.getCookieManager().getCookie("soapstone").getValue();
                HtmlPage page = site.open(browser, "/units");
                HtmlForm out = page.getForms().stream().filter(f -> f.getActionAttribute().equals("/sign-out")).findFirst().orElseThrow();
                out.getButtonsByName("").get(0).click();
                browser.getCookieManager().addCookie(new org.htmlunit.util.Cookie("127.0.0.1", "soapstone", cookie));
                assertThat(site.open(browser, "/units").getVisibleText()).contains("Sign in").doesNotContain("Wren K.");
            }
        }
    }

    @Test
    void leftAloneForHalfAnHourOneIsSignedOut() throws Exception {
        try (SchoolUnderTest site = SchoolUnderTest.start(new SampleDesk())) {
            Person wren = site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
            try (WebClient browser = site.browser(wren)) {
                site.wait(Duration.ofMinutes(29));
                assertThat(site.open(browser, "/units").getVisibleText()).contains("Wren K.");
                site.wait(Duration.ofMinutes(29));
                assertThat(site.open(browser, "/units").getVisibleText()).contains("Wren K.");
                site.wait(Duration.ofMinutes(31));
                assertThat(site.open(browser, "/units").getVisibleText()).doesNotContain("Wren K.");
            }
        }
    }

    @Test
    void afterTwelveHoursOneSignsInAgainHoweverBusy() throws Exception {
        try (SchoolUnderTest site = SchoolUnderTest.start(new SampleDesk())) {
            Person wren = site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
            try (WebClient browser = site.browser(wren)) {
                for (int i = 0; i < 28; i++) {
                    site.wait(Duration.ofMinutes(25));
                    assertThat(site.open(browser, "/units").getVisibleText()).contains("Wren K.");
                }
                site.wait(Duration.ofMinutes(25));
                assertThat(site.open(browser, "/units").getVisibleText()).doesNotContain("Wren K.");
            }
        }
    }
}
