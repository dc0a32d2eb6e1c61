package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.htmlunit.WebClient;
import org.htmlunit.html.DomElement;
import org.htmlunit.html.HtmlPage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import soapstone.quantity.UnitSystem;
import soapstone.school.Assignment;
import soapstone.school.ClassSettings;
import soapstone.school.Problem;
import soapstone.school.Sheet;
import soapstone.web.SchoolUnderTest;

/** The site in Spanish: a class whose students read in it, and a guest. The bank stays English and says so. */
class SpanishWayTest {

    private static SchoolUnderTest site;

    @BeforeAll
    static void start() throws Exception {
        site = RealSchool.open();
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    private static RealSchool spanish() {
        RealSchool s = new RealSchool(site);
        ClassSettings u = RealSchool.units(UnitSystem.US);
        s.settings(new ClassSettings(u.units(), "es", u.decimalMark(), u.carriedEarns(), u.coarseEarns(), u.nearEarns(), u.bareAllowed(), u.conventions()));
        return s;
    }

    private static void isIn(HtmlPage page, String language) {
        assertThat(page.getDocumentElement().getAttribute("lang")).isEqualTo(language);
    }

    /** What the nearest element around, or the element itself, says of the language. */
    private static String tongue(HtmlPage page, String xpath) {
        DomElement found = page.getFirstByXPath(xpath);
        assertThat(found).as(xpath).isNotNull();
        return found.<DomElement>getFirstByXPath("ancestor-or-self::*[@lang][1]").getAttribute("lang");
    }

    @Test
    void aStudentOfASpanishClassReadsSpanishAroundTheEnglishOfTheBank() throws Exception {
        RealSchool s = spanish();
        Assignment week = s.give(Assignment.Shows.LINES);
        try (WebClient ada = site.browser(s.ada.person())) {
            HtmlPage work = site.open(ada, "/work");
            isIn(work, "es");
            assertThat(work.asNormalizedText()).contains("Mi trabajo", "Vence en 2 días, el jueves 18 de marzo de 2027", "Todavía sin abrir").doesNotContain("Due");
            s.begin(ada, week);
            Sheet sheet = s.sheet(week, s.ada);
            HtmlPage problem = site.open(ada, RealSchool.path(sheet, 1));
            assertThat(problem.asNormalizedText()).contains("Sus respuestas", "Leer mis respuestas", "Destreza", "En este taller");
            assertThat(List.of("//p[@class='story']", "//label[@for='answer-a']", "//ol[@class='notes']", "//h1/span/span")).allSatisfy(x -> assertThat(tongue(problem, x)).as(x)
                    .isEqualTo("en"));
            assertThat(List.of("//h1", "//figure", "//p[@id='hint-a']", "//p[@class='kept-lines']", "//button")).allSatisfy(x -> assertThat(tongue(problem, x)).as(x).isEqualTo("es"));
        }
    }

    @Test
    void aMistakeIsExplainedInSpanish() throws Exception {
        RealSchool s = spanish();
        Assignment week = s.give(Assignment.Shows.LINES);
        try (WebClient ada = site.browser(s.ada.person())) {
            s.begin(ada, week);
            Sheet sheet = s.sheet(week, s.ada);
            Problem holes = sheet.problems().get(0);
            HtmlPage marked = s.handIn(ada, sheet, 1, RealSchool.slip(holes));
            isIn(marked, "es");
            assertThat(marked.asNormalizedText()).contains("Entregado el martes 16 de marzo de 2027", "No es correcto.", "Esta respuesta coincide con:", "El cálculo línea por línea",
                    "Una respuesta equivocada no prueba nada.");
            assertThat(tongue(marked, "//div[@class='part explained']//h2")).isEqualTo("en");
            assertThat(tongue(marked, "//p[@class='line-says']")).isEqualTo("en");
            assertThat(tongue(marked, "//div[@class='part explained']//p[@class='second']")).isEqualTo("es");
            assertThat(site.school.attempts().of(holes.id()).get(0).marks().get(0).says()).startsWith("No es correcto.");
        }
    }

    @Test
    void aNumberOfAnotherUnitIsSaidInSpanish() throws Exception {
        RealSchool s = spanish();
        Assignment week = s.give(Assignment.Shows.MISTAKE);
        try (WebClient bo = site.browser(s.bo.person())) {
            s.begin(bo, week);
            Sheet sheet = s.sheet(week, s.bo);
            HtmlPage again = s.review(bo, sheet, 1, java.util.Map.of("a", "31/2"));
            assertThat(again.asNormalizedText()).contains("Escríbalo otra vez, por favor.", "No se gastó ningún intento.");
            HtmlPage marked = s.handIn(bo, sheet, 1, java.util.Map.of("a", "999 in"));
            assertThat(marked.asNormalizedText()).contains("Ningún error conocido da este valor.", "Queda un intento.");
        }
    }

    @Test
    void aStudentWhoChoseEnglishKeepsIt() throws Exception {
        RealSchool s = spanish();
        try (WebClient bo = site.browser(s.bo.person())) {
            HtmlPage account = site.open(bo, "/account");
            isIn(account, "es");
            var form = RealSchool.form(account, "/account/language");
            form.getSelectByName("language").setSelectedAttribute("en", true);
            HtmlPage after = form.getElementsByTagName("button").get(0).click();
            isIn(after, "en");
            isIn(site.open(bo, "/es/work"), "en");
            assertThat(tongue(after, "//footer//a[@href='/tables']")).isEqualTo("en");
            assertThat(after.<DomElement>getByXPath("//footer//a[@hreflang]")).isEmpty();
        }
    }

    @Test
    void aGuestChoosesByTheFootOfThePageAndKeepsItWithoutACookie() throws Exception {
        try (WebClient guest = site.browser()) {
            HtmlPage unit = site.open(guest, "/units/spacing");
            isIn(unit, "en");
            HtmlPage there = unit.getAnchorByText("Español").click();
            isIn(there, "es");
            assertThat(there.getUrl().getPath()).isEqualTo("/es/units/spacing");
            assertThat(there.<DomElement>getByXPath("//a[starts-with(@href, '/') and not(starts-with(@href, '/es/')) and not(@hreflang)]")).isEmpty();
            HtmlPage asked = there.getFirstByXPath("//table//th/a") instanceof org.htmlunit.html.HtmlAnchor a ? a.click() : null;
            assertThat(asked.getUrl().getPath()).startsWith("/es/exercises/spacing/");
            HtmlPage read = RealSchool.press(asked.getForms().stream().filter(f -> f.getActionAttribute().startsWith("/es/exercises/")).findFirst().orElseThrow(), "read");
            isIn(read, "es");
            assertThat(read.getUrl().getPath()).startsWith("/es/");
            HtmlPage back = read.getAnchorByText("English").click();
            isIn(back, "en");
            assertThat(back.getUrl().getFile()).isEqualTo(asked.getUrl().getFile().replaceFirst("/es/", "/en/"));
            assertThat(guest.getCookieManager().getCookies()).isEmpty();
        }
    }

    @Test
    void aKeptSheetHasNothingOfAnotherGuestsAddress() throws Exception {
        try (WebClient guest = site.browser()) {
            HtmlPage asked = site.open(guest, "/es/exercises/spacing/bolt-holes");
            String sheet = asked.getUrl().getFile();
            site.open(guest, sheet + "&note=mine");
            assertThat(site.open(guest, sheet).getWebResponse().getContentAsString()).doesNotContain("mine");
            assertThat(site.open(guest, sheet.substring(3)).getWebResponse().getContentAsString()).doesNotContain("href=\"/es/about\"");
        }
    }

    @Test
    void aGuestsBrowserSaysTheLanguageWhereTheAddressDoesNot() throws Exception {
        try (WebClient guest = site.browser()) {
            guest.addRequestHeader("Accept-Language", "es-MX,es;q=0.9");
            HtmlPage front = site.open(guest, "/");
            isIn(front, "es");
            assertThat(front.<DomElement>getFirstByXPath("//a[@href='/units']")).isNotNull();
            isIn(site.open(guest, "/en/about"), "en");
            assertThat(site.open(guest, "/nowhere").asNormalizedText()).contains("Esa página no existe");
            assertThat(site.open(guest, "/es//nowhere").getWebResponse().getStatusCode()).isEqualTo(404);
            assertThat(site.open(guest, "/es/units/").getUrl().getPath()).isEqualTo("/es/units");
        }
    }

    @Test
    void whoSignsInFromASpanishPageComesToTheirOwnLanguage() throws Exception {
        RealSchool s = new RealSchool(site);
        try (WebClient ada = site.browser()) {
            HtmlPage turned = site.open(ada, "/es/work");
            assertThat(turned.getUrl().getFile()).isEqualTo("/es/sign-in?then=%2Fwork");
            var form = RealSchool.form(turned, "/es/sign-in");
            form.getInputByName("login").setValue(s.ada.person().login());
            form.getInputByName("password").setValue("wrong wrong wrong");
            HtmlPage again = form.getButtonsByName("").get(0).click();
            assertThat(again.asNormalizedText()).contains("El usuario y la contraseña no corresponden.");
            var second = RealSchool.form(again, "/es/sign-in");
            second.getInputByName("password").setValue(SchoolUnderTest.PASSWORD);
            HtmlPage work = second.getButtonsByName("").get(0).click();
            assertThat(work.getUrl().getPath()).isEqualTo("/work");
            isIn(work, "en");
        }
    }

    @Test
    void anInstructorInSpanishReadsTheMorningInIt() throws Exception {
        RealSchool s = spanish();
        site.school.people().setLanguage(s.instructor.id(), "es");
        Assignment week = s.give(Assignment.Shows.LINES, Assignment.Late.HALF, 2, Optional.of(site.now().plusSeconds(3600)), RealSchool.HOLES_TASK);
        for (var student : List.of(s.ada, s.bo)) {
            try (WebClient browser = site.browser(student.person())) {
                s.begin(browser, week);
                Sheet sheet = s.sheet(week, student);
                s.handIn(browser, sheet, 1, RealSchool.slip(sheet.problems().get(0)));
            }
        }
        try (WebClient wren = site.browser(s.instructor)) {
            HtmlPage morning = site.open(wren, "/assignments/" + week.id() + "/morning");
            isIn(morning, "es");
            assertThat(morning.asNormalizedText()).contains("Esta mañana", "Sus respuestas coinciden", "estudiantes coinciden con esto.", "Dar el repaso");
            assertThat(tongue(morning, "//section//h2/span")).isEqualTo("en");
            assertThat(site.open(wren, "/assignments/" + week.id() + "/marks").asNormalizedText()).contains("Calificaciones: Week 9", "coincide con un error conocido");
        }
    }
}
