package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipInputStream;
import org.htmlunit.Page;
import org.htmlunit.WebClient;
import org.htmlunit.html.HtmlAnchor;
import org.htmlunit.html.HtmlForm;
import org.htmlunit.html.HtmlPage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import soapstone.mark.Verdict;
import soapstone.page.Address;
import soapstone.page.SheetKey;
import soapstone.quantity.UnitSystem;
import soapstone.school.AnswerMark;
import soapstone.school.Practice;
import soapstone.school.Signoffs;
import soapstone.school.TradeCode;
import soapstone.variant.Variant;
import soapstone.web.SchoolUnderTest;

/** What a student worked as a guest goes into the student's own record when the student says so. */
class KeptPracticeTest {

    private static final Variant HOLES = RealSite.variant(RealSchool.HOLES, UnitSystem.US);
    private static final String KEEP = Address.practice("spacing", "bolt-holes", new SheetKey(RealSite.SEED, UnitSystem.US, HOLES.exercise().fingerprint()));
    private static final String RIGHT = RealSite.key(HOLES).get("a");

    private SchoolUnderTest site;
    private RealSchool room;

    @BeforeEach
    void open() throws Exception {
        site = RealSchool.open();
        room = new RealSchool(site);
    }

    @AfterEach
    void close() {
        site.close();
    }

    private List<Practice> kept() {
        return site.school.practices().of(room.ada.person().id());
    }

    /** The marked page, the way that a guest comes to it. */
    private HtmlPage marked(WebClient browser, String typed) throws Exception {
        HtmlPage page = site.open(browser, RealSite.path(HOLES));
        for (String action : List.of("read", "mark")) {
            HtmlForm form = page.getForms().stream().filter(f -> f.getActionAttribute().startsWith("/exercises/")).findFirst().orElseThrow();
            form.getInputByName("box-a").setValue(typed);
            page = RealSchool.press(form, action);
        }
        return page;
    }

    private HtmlPage send(WebClient browser, String path, String key, Map<String, String> more) throws Exception {
        Map<String, String> fields = new HashMap<>(more);
        fields.put("form-key", key);
        return room.send(browser, path, fields);
    }

    private String key(WebClient browser) throws Exception {
        return RealSchool.hidden(RealSchool.form(site.open(browser, "/work"), "/sign-out")).get("form-key");
    }

    @Test
    void aGuestSignsInOnTheWayAndKeepsIt() throws Exception {
        try (WebClient browser = site.browser()) {
            HtmlPage page = marked(browser, RIGHT);
            assertThat(browser.getCookieManager().getCookies()).as("a guest has no cookie").isEmpty();
            HtmlAnchor link = page.getAnchorByText("Sign in and keep this practice");
            HtmlPage door = link.click();
            HtmlForm form = RealSchool.form(door, "/sign-in");
            form.getInputByName("login").setValue(room.ada.person().login());
            form.getInputByName("password").setValue(SchoolUnderTest.PASSWORD);
            HtmlPage look = form.getElementsByTagName("button").get(0).click();
            assertThat(look.asNormalizedText()).contains("Keep this practice", "Bolt holes along an angle", "1 of 1 right", RIGHT);
            assertThat(kept()).as("nothing is kept by looking").isEmpty();
            HtmlPage history = RealSchool.form(look, KEEP).getElementsByTagName("button").get(0).click();
            assertThat(history.getUrl().getPath()).isEqualTo("/sheets/history");
            assertThat(history.asNormalizedText()).contains("Practice that was kept", "Bolt holes along an angle", "1 of 1 right", RIGHT);
        }
        Practice one = kept().get(0);
        assertThat(List.of(one.exercise(), one.seed(), one.units(), one.fingerprint(), one.at()))
                .containsExactly(RealSchool.HOLES, RealSite.SEED, UnitSystem.US, HOLES.exercise().fingerprint(), site.now());
        assertThat(one.marks()).extracting(AnswerMark::typed).containsExactly(RIGHT);
        assertThat(site.school.sheets().whole(one.fingerprint())).as("what the mark can be computed from again").isPresent();
    }

    @Test
    void whoeverIsSignedInKeepsItAtOnceAndTwiceIsOnce() throws Exception {
        try (WebClient browser = site.browser(room.ada.person()); WebClient beside = site.browser(room.bo.person())) {
            HtmlPage page = marked(browser, "8-5/16\"");
            HtmlForm form = RealSchool.form(page, KEEP);
            form.getElementsByTagName("button").get(0).click();
            form.getElementsByTagName("button").get(0).click();
            assertThat(kept()).hasSize(1);
            assertThat(kept().get(0).marks()).extracting(AnswerMark::typed).containsExactly("8-5/16\"");
            RealSchool.form(marked(browser, RIGHT), KEEP).getElementsByTagName("button").get(0).click();
            assertThat(kept()).as("other answers are another practice").hasSize(2);
            RealSchool.form(marked(beside, RIGHT), KEEP).getElementsByTagName("button").get(0).click();
            assertThat(site.school.practices().of(room.bo.person().id())).as("and somebody else's is somebody else's").hasSize(1);
        }
    }

    @Test
    void marksAreTheSitesOwnWhateverTheFormSays() throws Exception {
        try (WebClient browser = site.browser(room.ada.person())) {
            String key = key(browser);
            send(browser, KEEP, key, Map.of("box-a", "1 in", "verdict", "RIGHT", "points", "100", "person", String.valueOf(room.bo.person().id()), "box-zz", "2 in"));
            assertThat(kept()).hasSize(1);
            assertThat(kept().get(0).marks()).hasSize(1).noneMatch(m -> m.verdict() == Verdict.RIGHT);
            assertThat(site.school.practices().of(room.bo.person().id())).isEmpty();
        }
    }

    @Test
    void whatCannotBeMarkedIsNotKept() throws Exception {
        try (WebClient browser = site.browser(room.ada.person()); WebClient guest = site.browser(); WebClient instructor = site.browser(room.instructor)) {
            String key = key(browser);
            String other = KEEP.replaceFirst("bank=.*", "bank=0123456789abcdef");
            assertThat(send(browser, other, key, Map.of("box-a", RIGHT)).asNormalizedText()).contains("The exercise was mended meanwhile");
            assertThat(send(browser, KEEP, key, Map.of("box-a", "31/2")).asNormalizedText()).contains("An answer cannot be read");
            HtmlPage blank = send(browser, KEEP, key, Map.of("box-a", " "));
            assertThat(blank.asNormalizedText()).contains("There is no answer here to keep");
            assertThat(blank.getWebResponse().getStatusCode()).isEqualTo(422);
            assertThat(send(browser, KEEP.replace("bolt-holes", "no-holes"), key, Map.of("box-a", RIGHT)).getWebResponse().getStatusCode()).isEqualTo(404);
            assertThat(send(browser, KEEP.replaceFirst("&bank=.*", ""), key, Map.of("box-a", RIGHT)).getWebResponse().getStatusCode()).isEqualTo(400);
            assertThat(send(browser, KEEP, "other", Map.of("box-a", RIGHT)).getWebResponse().getStatusCode()).isEqualTo(403);
            assertThat(send(guest, KEEP, "", Map.of("box-a", RIGHT)).getUrl().getPath()).isEqualTo("/sign-in");
            assertThat(site.open(instructor, KEEP).getWebResponse().getStatusCode()).isEqualTo(404);
            assertThat(marked(instructor, RIGHT).asNormalizedText()).doesNotContain("Keep this practice");
            assertThat(kept()).isEmpty();
        }
    }

    private static String zipped(Page file) throws Exception {
        StringBuilder all = new StringBuilder();
        try (ZipInputStream zip = new ZipInputStream(file.getWebResponse().getContentAsStream())) {
            while (zip.getNextEntry() != null) {
                all.append(new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return all.toString();
    }

    @Test
    void itStandsInTheRecordAndCountsForNothing() throws Exception {
        String skill = HOLES.exercise().skill();
        site.school.signoffs().add(room.in.id(), new Signoffs.NewCompetency(TradeCode.own("S1", "Lays out holes"), List.of(skill)));
        String in = "/classes/" + room.in.id();
        String ada = in + "/students/" + room.ada.person().id();
        try (WebClient browser = site.browser(room.ada.person()); WebClient instructor = site.browser(room.instructor)) {
            RealSchool.form(marked(browser, RIGHT), KEEP).getElementsByTagName("button").get(0).click();
            assertThat(site.open(browser, "/sheets/record").asNormalizedText()).contains("Practice that was kept", RIGHT);
            assertThat(site.open(instructor, ada).asNormalizedText()).contains("Practice that was kept", "1 of 1 right", RIGHT);
            assertThat(site.open(instructor, in + "/marks").asNormalizedText()).doesNotContain("Bolt holes");
            assertThat(site.open(instructor, in + "/competencies/" + room.ada.person().id()).asNormalizedText())
                    .contains("Right, but with the formula book open or after something was shown, and so not counted: 1.");
            HtmlPage data = site.open(instructor, ada + "/data");
            String zipped = zipped(RealSchool.form(data, ada + "/data/export").getElementsByTagName("button").get(0).click());
            assertThat(zipped).contains("Practice that was kept", "1 of 1 right", "practice_mark");
            assertThat(site.school.privacy().everything(room.ada.person().id()).get("practice_mark")).hasSize(1);
            assertThat(site.school.privacy().everything(room.bo.person().id()).get("practice")).isEmpty();
        }
    }
}
