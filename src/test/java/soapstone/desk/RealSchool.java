package soapstone.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.htmlunit.WebClient;
import org.htmlunit.html.DomElement;
import org.htmlunit.html.HtmlForm;
import org.htmlunit.html.HtmlInput;
import org.htmlunit.html.HtmlPage;
import org.htmlunit.html.HtmlTextArea;
import soapstone.expression.Frame;
import soapstone.quantity.UnitSystem;
import soapstone.school.Assignment;
import soapstone.school.Assignments;
import soapstone.school.ClassSettings;
import soapstone.school.Member;
import soapstone.school.Person;
import soapstone.school.Problem;
import soapstone.school.School;
import soapstone.school.SchoolClass;
import soapstone.school.Sheet;
import soapstone.variant.Variant;
import soapstone.web.SchoolUnderTest;

/** A new class in a school on the real site with the real bank: its instructor, and two students who sit beside each other. */
final class RealSchool {

    private static final AtomicInteger COUNT = new AtomicInteger();
    static final String HOLES = "spacing/bolt-holes";
    static final Assignment.Task HOLES_TASK = new Assignment.Task(0, 1, List.of(HOLES), 1, 4);

    final SchoolUnderTest site;
    final School school;
    final Person instructor;
    final Member ada;
    final Member bo;
    SchoolClass in;

    /** On the real bank. */
    static SchoolUnderTest open() throws Exception {
        return SchoolUnderTest.start(new EngineDesk(RealSite::library));
    }

    RealSchool(SchoolUnderTest site) {
        int number = COUNT.incrementAndGet();
        this.site = site;
        school = site.school;
        instructor = site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren" + number);
        in = school.classes().add("Sheet metal " + number, "Spring", "CODE" + number, ClassSettings.USUAL, instructor.id(), site.now());
        ada = site.enrol(in, "Ada", "ada" + number, "1");
        bo = site.enrol(in, "Bo", "bo" + number, "2");
    }

    /** What holds in the class from now on. */
    void settings(ClassSettings settings) {
        school.classes().change(in.id(), in.name(), in.term(), settings);
        in = school.classes().find(in.id()).orElseThrow();
    }

    static ClassSettings units(UnitSystem units) {
        return settings(units, '.', true);
    }

    static ClassSettings settings(UnitSystem units, char decimalMark, boolean bareAllowed) {
        ClassSettings u = ClassSettings.USUAL;
        return new ClassSettings(units, u.language(), decimalMark, u.carriedEarns(), u.coarseEarns(), u.nearEarns(), bareAllowed, "Chart B hangs by the brake.");
    }

    /** Given an hour ago and due in two days; two tries at bolt holes, and what is shown after each. */
    Assignment give(Assignment.Shows shows) {
        return give(shows, Assignment.Late.REFUSED, 2, Optional.of(site.now().plus(Duration.ofDays(2))), HOLES_TASK);
    }

    Assignment give(Assignment.Shows shows, Assignment.Late late, int tries, Optional<Instant> due, Assignment.Task... tasks) {
        Instant opens = site.now().minus(Duration.ofHours(1));
        return add(new Assignment(0, in.id(), "Week 9", Assignment.State.GIVEN, opens, due, late, tries, shows, true, instructor.id(), opens, Optional.empty(),
                List.of(tasks)), List.of());
    }

    Assignment add(Assignment assignment, List<Assignments.GivenTo> given) {
        return school.assignments().add(assignment, given);
    }

    /** Opens an assignment through its page and comes to the sheet. */
    HtmlPage begin(WebClient browser, Assignment assignment) throws Exception {
        HtmlPage page = site.open(browser, "/sheets/open/" + assignment.id());
        Optional<HtmlForm> form = page.getForms().stream().filter(f -> f.getActionAttribute().startsWith("/sheets/open/")).findFirst();
        return form.isEmpty() ? page : form.get().getElementsByTagName("button").get(0).click();
    }

    Sheet sheet(Assignment assignment, Member of) {
        return school.sheets().of(assignment.id(), of.person().id()).orElseThrow();
    }

    static String path(Sheet sheet, int place) {
        return "/sheets/" + sheet.id() + "/" + place;
    }

    static Variant variant(Problem problem) {
        return problem.drawn(RealSite.library().bank().exercise(problem.exercise()).orElseThrow()).orElseThrow();
    }

    static Map<String, String> right(Problem problem) {
        return RealSite.key(variant(problem));
    }

    /** What the first slip gives that shows in these numbers. */
    static Map<String, String> slip(Problem problem) {
        Variant v = variant(problem);
        Frame theirs = v.outcomes().stream().filter(o -> o.effect() == soapstone.variant.Effect.SEEN).findFirst().orElseThrow().theirs();
        return RealSite.answers(v, theirs);
    }

    static HtmlForm form(HtmlPage page, String path) {
        return page.getForms().stream().filter(f -> f.getActionAttribute().equals(path)).findFirst().orElseThrow(() -> new AssertionError("no form to " + path + " in\n" + page.asNormalizedText()));
    }

    static boolean hasForm(HtmlPage page, String path) {
        return page.getForms().stream().anyMatch(f -> f.getActionAttribute().equals(path));
    }

    /** Fills boxes in on a problem's page. */
    static HtmlForm fill(HtmlPage page, String path, Map<String, String> typed) {
        HtmlForm form = form(page, path);
        typed.forEach((letter, text) -> {
            form.getInputsByName("box-" + letter).forEach(e -> put(e, text));
            form.getTextAreasByName("box-" + letter).forEach(e -> put(e, text));
        });
        return form;
    }

    private static void put(DomElement field, String text) {
        if (field instanceof HtmlTextArea area) {
            area.setText(text);
        } else if (field.getAttribute("type").equals("radio")) {
            ((HtmlInput) field).setChecked(field.getAttribute("value").equals(text));
        } else {
            ((HtmlInput) field).setValue(text);
        }
    }

    static HtmlPage press(HtmlForm form, String action) throws Exception {
        return form.getElementsByTagName("button").stream().filter(b -> b.getAttribute("value").equals(action)).findFirst().orElseThrow().click();
    }

    /** From the problem's page to the page to look over. */
    HtmlPage review(WebClient browser, Sheet sheet, int place, Map<String, String> typed) throws Exception {
        String path = path(sheet, place);
        return press(fill(site.open(browser, path), path, typed), "review");
    }

    /** The whole way to the page about what was handed in. */
    HtmlPage handIn(WebClient browser, Sheet sheet, int place, Map<String, String> typed) throws Exception {
        return confirm(review(browser, sheet, place, typed), sheet, place);
    }

    static HtmlPage confirm(HtmlPage review, Sheet sheet, int place) throws Exception {
        return form(review, path(sheet, place) + "/review").getElementsByTagName("button").get(0).click();
    }

    static Map<String, String> hidden(HtmlForm form) {
        Map<String, String> fields = new LinkedHashMap<>();
        form.getElementsByTagName("input").forEach(i -> fields.put(i.getAttribute("name"), ((HtmlInput) i).getValue()));
        form.getElementsByTagName("textarea").forEach(t -> fields.put(t.getAttribute("name"), ((HtmlTextArea) t).getText()));
        return fields;
    }

    /** A form as a browser would send it, from whoever the browser is. */
    HtmlPage send(WebClient browser, String path, Map<String, String> fields) throws Exception {
        org.htmlunit.WebRequest request = new org.htmlunit.WebRequest(java.net.URI.create(site.address(path)).toURL(), org.htmlunit.HttpMethod.POST);
        request.setRequestParameters(fields.entrySet().stream().map(e -> new org.htmlunit.util.NameValuePair(e.getKey(), e.getValue())).toList());
        return browser.getPage(request);
    }
}
