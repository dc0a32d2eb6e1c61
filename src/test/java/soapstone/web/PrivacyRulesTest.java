package soapstone.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.htmlunit.HttpMethod;
import org.htmlunit.WebClient;
import org.htmlunit.WebRequest;
import org.htmlunit.html.DomElement;
import org.htmlunit.html.HtmlPage;
import org.htmlunit.util.Cookie;
import org.htmlunit.util.NameValuePair;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import soapstone.desk.EngineDesk;
import soapstone.desk.Library;
import soapstone.record.Database;
import soapstone.record.Databases;
import soapstone.record.Doctor;
import soapstone.school.Audit;
import soapstone.school.Note;
import soapstone.school.Notes;
import soapstone.school.Person;
import soapstone.school.Signoff;

/**
 * The rules on the privacy of minors that hold over all pages. Those on taking a record out (5), erasing (6), correcting (7) and keeping
 * (8) have their ways through the pages in {@link PrivacyRoomsTest}; what an account may hold (1) is held by a test of the tables.
 */
class PrivacyRulesTest {

    /** Whatever a page can fetch, go to by itself, or send to. */
    private static final Pattern ADDRESS = Pattern.compile("(?:src|href|action|data|poster|srcset|formaction)=\"([^\"]*)\"|url\\(([^)]*)\\)|@import\\s+\"([^\"]*)\"");

    private static Database database;
    private static RecordedClass c;

    @BeforeAll
    static void start() throws Exception {
        database = Databases.h2();
        Library library = Library.read(null, null).library().orElseThrow();
        c = new RecordedClass(new EngineDesk(() -> library), database);
        c.overrule("Looked at the sketch");
        c.school.signoffs().append(new Signoff(0, c.ada.id(), c.in.id(), RecordedClass.LAYOUT, Signoff.Act.SIGNED, "alone", "", c.wren.id(), "Wren K.", c.site.now()));
        c.school.notes().ask(c.bram.id(), c.in.id(), "Bram asks", c.site.now());
        c.school.audit().note(new Audit.Entry(c.site.now(), Optional.of(c.wren.id()), "mark.overruled", Optional.of(c.bram.id()),
                Optional.of(c.in.id()), "slip 0 to near 1.25", false));
    }

    @AfterAll
    static void stop() {
        c.close();
    }

    private static final List<String> ANYONES = List.of("/", "/privacy", "/sign-in", "/units", "/about");

    private static List<String> ofInstructor() {
        return List.of("/classes", c.path(""), c.path("/competencies"), c.path("/competencies/list"), c.path("/competencies/" + c.ada.id()), c.data(c.ada), c.data(c.bram) + "/erase",
                c.path("/audit"), c.path("/marks"), c.path("/students/" + c.ada.id()));
    }

    private static final List<String> STUDENTS = List.of("/work", "/sheets/record", "/privacy");

    private static void read(Person person, List<String> paths, List<HtmlPage> into) throws Exception {
        try (WebClient browser = person == null ? c.site.browser() : c.site.browser(person)) {
            for (String path : paths) {
                HtmlPage page = c.site.open(browser, path);
                assertThat(page.getWebResponse().getStatusCode()).as(path).isEqualTo(200);
                into.add(page);
            }
        }
    }

    private static List<HtmlPage> everyPage() throws Exception {
        List<HtmlPage> pages = new ArrayList<>();
        read(null, ANYONES, pages);
        read(c.wren, ofInstructor(), pages);
        read(c.ada, STUDENTS, pages);
        read(c.keeper, List.of("/retention"), pages);
        return pages;
    }

    @Test
    @DisplayName("Rule 1: no form of a student's asks for more than a name, a seat and a sign-in name")
    void noFormAsksForMore() throws Exception {
        for (HtmlPage page : everyPage()) {
            List<String> fields = page.<DomElement>getByXPath("//input | //textarea | //select").stream().map(e -> e.getAttribute("name") + " " + e.getAttribute("type")
                    + " " + e.getAttribute("autocomplete")).toList();
            assertThat(String.join("\n", fields)).as(page.getUrl().getPath()).doesNotContainPattern("(?i)birth|e-?mail|phone|tel\\b|address|gender|photo|type=file");
        }
    }

    @Test
    @DisplayName("Rule 2: no page fetches anything from, or sends anything to, another host")
    void noOtherHost() throws Exception {
        try (WebClient browser = c.site.browser()) {
            for (HtmlPage page : everyPage()) {
                String html = page.getWebResponse().getContentAsString();
                isOwn(page.getUrl().getPath(), html);
                Matcher own = Pattern.compile("(?:src|href)=\"(/site/[^\"]+\\.(?:css|js))\"").matcher(html);
                while (own.find()) {
                    isOwn(own.group(1), browser.getPage(URI.create(c.site.address(own.group(1))).toURL()).getWebResponse().getContentAsString());
                }
            }
        }
    }

    private static void isOwn(String of, String text) {
        Matcher found = ADDRESS.matcher(text);
        while (found.find()) {
            String address = found.group(1) != null ? found.group(1) : found.group(2) != null ? found.group(2) : found.group(3);
            assertThat(address).as(of).doesNotContain("//").doesNotContain(":");
        }
        assertThat(text).as(of).doesNotContainPattern("(?i)sendBeacon|navigator\\.plugins|toDataURL|http-equiv=\"refresh\"");
    }

    @Test
    @DisplayName("Rule 3: one cookie while somebody is signed in, none before")
    void oneCookie() throws Exception {
        try (WebClient guest = c.site.browser(); WebClient ada = c.site.browser(c.ada)) {
            c.site.open(guest, "/privacy");
            c.site.open(guest, "/units");
            assertThat(guest.getCookieManager().getCookies()).isEmpty();
            for (String path : STUDENTS) {
                c.site.open(ada, path);
            }
            assertThat(ada.getCookieManager().getCookies()).extracting(Cookie::getName).containsExactly("soapstone");
            assertThat(ada.getCookieManager().getCookies()).allSatisfy(k -> {
                assertThat(k.isHttpOnly()).isTrue();
                assertThat(k.getExpires()).as("goes with the browser").isNull();
            });
        }
    }

    @Test
    @DisplayName("Rule 4: no page of a student's names another student or ranks anybody")
    void noRanking() throws Exception {
        List<HtmlPage> pages = new ArrayList<>();
        read(c.ada, STUDENTS, pages);
        for (HtmlPage page : pages) {
            assertThat(page.getBody().getTextContent()).as(page.getUrl().getPath()).doesNotContain("Bram").doesNotContainPattern("(?i)\\brank(ed|ing)\\b|leader|place in class|best of");
        }
    }

    @Test
    @DisplayName("Rule 5: a record goes out as a zip, in one click")
    void theRecordGoesOut() throws Exception {
        try (WebClient wren = c.site.browser(c.wren)) {
            assertThat(RecordedClass.unzip(c.post(wren, c.data(c.bram) + "/export", Map.of()))).containsKeys("record.html", "record.json");
        }
        assertThat(c.school.audit().about(c.bram.id())).anySatisfy(e -> assertThat(e.leftSchool()).isTrue());
    }

    @Test
    @DisplayName("Rule 7: a refused request is kept with its answer")
    void refusedStays() {
        Note note = c.school.notes().of(c.bram.id()).get(0);
        c.school.notes().answer(note.id(), new Notes.Answer(Note.Outcome.REFUSED, "It stands.", c.wren.id(), "Wren K.", c.site.now()));
        assertThat(c.school.notes().of(c.bram.id())).extracting(Note::answer).containsExactly("It stands.");
    }

    @Test
    @DisplayName("Rule 9: a change of a mark stands in the class's audit with who, when and what, and the first mark stays")
    void changesOfMarksAreWrittenDown() throws Exception {
        try (WebClient wren = c.site.browser(c.wren)) {
            assertThat(c.site.open(wren, c.path("/audit?only=marks")).getVisibleText()).contains("Mark overruled").contains("Wren K.").contains("Bram O.").contains("slip 0 to near 1.25");
            assertThat(c.site.open(wren, c.path("/audit")).getForms()).as("nothing to edit it with").extracting(f -> f.getActionAttribute()).containsExactly("/sign-out");
        }
        long newest = c.school.assignments().of(c.in.id()).get(0).id();
        assertThat(c.school.attempts().ofAssignment(newest)).anySatisfy(a -> assertThat(a.marks().get(0).typed()).isEqualTo(RecordedClass.WRONG));
    }

    private static List<String> doors() {
        return List.of(c.path("/competencies"), c.path("/competencies/list"), c.path("/competencies/" + c.ada.id()), c.path("/competencies/" + c.ada.id() + "/sign?frame=&edition=&code=S1"),
                c.data(c.ada), c.data(c.ada) + "/erase", c.path("/audit"));
    }

    private static Map<String, Map<String, String>> posts() {
        Map<String, String> sign = Map.of("frame", "", "edition", "", "code", "S1", "act", "SIGNED", "conditions", "forged");
        return Map.of(c.path("/competencies/" + c.ada.id() + "/sign"), sign, c.path("/competencies/list"), Map.of(), c.path("/competencies/own"), Map.of("code", "X", "title", "Y"),
                c.path("/competencies/own/" + c.school.signoffs().listed(c.in.id()).get(1).id() + "/remove"), Map.of(), c.data(c.ada) + "/export", Map.of(),
                c.data(c.ada) + "/erase", Map.of("confirm", "7"), c.data(c.bram) + "/corrections/" + c.school.notes().of(c.bram.id()).get(0).id(), Map.of());
    }

    private static List<Object> kept() {
        return List.of(c.school.audit().latest(1000), c.school.signoffs().of(c.ada.id()), c.school.signoffs().listed(c.in.id()), c.school.notes().ofClass(c.in.id()), c.school.privacy().erased());
    }

    @Test
    @DisplayName("Rule 10: another instructor, the keeper, a student and nobody find none of a class's records, and change none")
    void leastAccess() throws Exception {
        List<Object> before = kept();
        for (Person person : List.of(c.rook, c.keeper, c.bram, c.ada)) {
            try (WebClient browser = c.site.browser(person)) {
                for (String door : doors()) {
                    assertThat(c.site.open(browser, door).getWebResponse().getStatusCode()).as(person.shown() + " " + door).isEqualTo(404);
                }
                for (Map.Entry<String, Map<String, String>> post : posts().entrySet()) {
                    assertThat(c.post(browser, post.getKey(), post.getValue()).getWebResponse().getStatusCode()).as(person.shown() + " " + post.getKey()).isEqualTo(404);
                }
            }
        }
        try (WebClient nobody = c.site.browser()) {
            for (String door : doors()) {
                assertThat(c.site.open(nobody, door).getUrl().getPath()).as(door).isEqualTo("/sign-in");
            }
            for (Map.Entry<String, Map<String, String>> post : posts().entrySet()) {
                assertThat(c.post(nobody, post.getKey(), post.getValue()).getUrl().getPath()).as(post.getKey()).isEqualTo("/sign-in");
            }
        }
        assertThat(kept()).isEqualTo(before);
    }

    @Test
    @DisplayName("Rule 10: the retention list is the keeper's, the own record a student's")
    void otherPeoplesRooms() throws Exception {
        for (Person person : List.of(c.wren, c.ada)) {
            try (WebClient browser = c.site.browser(person)) {
                assertThat(c.site.open(browser, "/retention").getWebResponse().getStatusCode()).isEqualTo(404);
                assertThat(c.post(browser, "/retention", Map.of("confirm", "2", "seen", "1")).getWebResponse().getStatusCode()).isEqualTo(404);
            }
        }
        for (Person person : List.of(c.wren, c.keeper)) {
            try (WebClient browser = c.site.browser(person)) {
                assertThat(c.site.open(browser, "/sheets/record").getWebResponse().getStatusCode()).isEqualTo(404);
            }
        }
    }

    @Test
    @DisplayName("Rule 10: without the session's key a form changes nothing, also for the class's instructor")
    void withoutTheKey() throws Exception {
        List<Object> before = kept();
        try (WebClient wren = c.site.browser(c.wren)) {
            for (Map.Entry<String, Map<String, String>> post : posts().entrySet()) {
                WebRequest request = new WebRequest(URI.create(c.site.address(post.getKey())).toURL(), HttpMethod.POST);
                request.setRequestParameters(List.of(new NameValuePair("confirm", "7")));
                assertThat(wren.getPage(request).getWebResponse().getStatusCode()).as(post.getKey()).isEqualTo(403);
            }
        }
        assertThat(kept()).isEqualTo(before);
    }

    @Test
    @DisplayName("Rule 11: one plain page of notice, a link to it at the foot of every page")
    void thePlainNotice() throws Exception {
        for (HtmlPage page : everyPage()) {
            assertThat(page.<Object>getByXPath("//footer//a[@href='/privacy']")).as(page.getUrl().getPath()).hasSize(1);
        }
        try (WebClient guest = c.site.browser()) {
            HtmlPage notice = c.site.open(guest, "/privacy");
            String text = notice.getElementsByTagName("main").get(0).getTextContent();
            assertThat(text).contains("What is kept").contains("Why").contains("How long").contains("31 July").contains("Who sees it").contains("How to ask").contains("Parents");
            for (DomElement said : notice.<DomElement>getByXPath("//main//li | //main//p")) {
                assertThat(said.getTextContent().strip().split("[.:?;]\\s")).allSatisfy(s -> assertThat(s.split("\\s+").length).as(s).isLessThanOrEqualTo(25));
            }
        }
    }

    @Test
    @DisplayName("Rule 12: who is affected comes in one list; what is sent for help names nobody")
    void affectedAndSupport() {
        assertThat(c.school.people().all(Person.Kind.STUDENT)).extracting(Person::login).containsExactlyInAnyOrder("ada", "bram");
        String told = Doctor.look(database).toString();
        assertThat(told).doesNotContain("Ada").doesNotContain("Bram").doesNotContain(RecordedClass.WRONG).doesNotContain("wren");
    }
}
