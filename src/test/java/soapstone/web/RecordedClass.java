package soapstone.web;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.htmlunit.HttpMethod;
import org.htmlunit.Page;
import org.htmlunit.WebClient;
import org.htmlunit.WebRequest;
import org.htmlunit.html.HtmlForm;
import org.htmlunit.html.HtmlHiddenInput;
import org.htmlunit.html.HtmlPage;
import org.htmlunit.util.NameValuePair;
import soapstone.mark.Verdict;
import soapstone.quantity.UnitSystem;
import soapstone.record.Database;
import soapstone.school.AnswerMark;
import soapstone.school.Assignment;
import soapstone.school.Attempt;
import soapstone.school.Attempts;
import soapstone.school.Member;
import soapstone.school.Person;
import soapstone.school.Remark;
import soapstone.school.School;
import soapstone.school.SchoolClass;
import soapstone.school.Sheet;
import soapstone.school.Sheets;
import soapstone.school.Signoffs;
import soapstone.school.TradeCode;

/** A class with two students, of whom one was right on two days with different numbers, and a list of two competencies. */
final class RecordedClass implements AutoCloseable {

    static final TradeCode LAYOUT = new TradeCode("Sheet Metal Worker (Red Seal)", "current web edition", "B-6.01", "Simple and straight line layout");
    static final String WRONG = "7-5/16\" <b>";

    final SchoolUnderTest site;
    final School school;
    final Person wren;
    final Person rook;
    final Person keeper;
    final SchoolClass in;
    final Person ada;
    final Person bram;

    RecordedClass() throws IOException {
        this(SchoolUnderTest.start(new SampleDesk()));
    }

    RecordedClass(Desk desk, Database database) throws IOException {
        this(SchoolUnderTest.start(desk, database, false));
    }

    private RecordedClass(SchoolUnderTest site) {
        this.site = site;
        school = site.school;
        wren = site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
        rook = site.add(Person.Kind.INSTRUCTOR, "Rook T.", "rook");
        keeper = site.add(Person.Kind.KEEPER, "Kestrel", "kestrel");
        in = site.addClass("Sheet metal 1", wren);
        ada = enrol("Ada Q.", "ada", "7");
        bram = enrol("Bram O.", "bram", "8");
        school.signoffs().list(in.id(), List.of(new Signoffs.NewCompetency(LAYOUT, List.of("equal-spacing"))));
        school.signoffs().add(in.id(), new Signoffs.NewCompetency(TradeCode.own("S1", "Sets up the brake"), List.of()));
        day(1, Verdict.RIGHT, Assignment.Shows.MISTAKE);
        day(2, Verdict.RIGHT, Assignment.Shows.MISTAKE);
    }

    Person enrol(String shown, String login, String seat) {
        return site.enrol(in, shown, login, seat).person();
    }

    /** An assignment of its own, which Ada does so and Bram does wrong. */
    void day(int day, Verdict ada, Assignment.Shows shows) {
        Instant at = site.now().minus(Duration.ofDays(10L - day));
        Assignment a = school.assignments().add(new Assignment(0, in.id(), "Holes " + day, Assignment.State.GIVEN, at, Optional.of(at.plus(Duration.ofDays(30))),
                Assignment.Late.HALF, 3, shows, false, wren.id(), at, Optional.empty(), List.of(new Assignment.Task(0, 1, List.of("spacing/bolt-holes"), 1, 2.5))), List.of());
        hand(a, this.ada, 40 + day, ada, at);
        hand(a, bram, 60 + day, Verdict.SLIP, at);
    }

    private void hand(Assignment a, Person student, long seed, Verdict verdict, Instant at) {
        Assignment.Task task = a.tasks().get(0);
        Sheet sheet = school.sheets().deal(a.id(), student.id(), "K" + a.id() + "-" + student.id(),
                List.of(new Sheets.Dealt(task.id(), 1, "spacing/bolt-holes", seed, UnitSystem.US, "print1", task.points())), at);
        AnswerMark mark = new AnswerMark(0, "pitch", "a", verdict == Verdict.RIGHT ? "8 1/16" : WRONG, "read", verdict, "", List.of(), "said so",
                verdict == Verdict.RIGHT ? 2.5 : 0, 2.5, 0);
        school.attempts().hand(new Attempts.Handed(sheet.problems().get(0).id(), "r" + sheet.id(), at, false, Attempt.Way.SCREEN, "0.2.0", "print1", List.of(mark)), 3);
    }

    /** An instructor's word on the newest of Bram's marks. */
    void overrule(String reason) {
        Assignment newest = school.assignments().of(in.id()).get(0);
        Attempt attempt = school.attempts().ofAssignment(newest.id()).stream().filter(a -> a.points() == 0).findFirst().orElseThrow();
        school.attempts().remark(List.of(new Remark(0, attempt.id(), 0, site.now(), Optional.of(wren.id()), Remark.Cause.OVERRULED, Verdict.NEAR, 1.25, reason)));
    }

    String path(String rest) {
        return "/classes/" + in.id() + rest;
    }

    String data(Person student) {
        return path("/students/" + student.id() + "/data");
    }

    Member member(Person student) {
        return school.classes().member(in.id(), student.id()).orElseThrow();
    }

    /** The form that goes to that path. */
    static HtmlForm form(HtmlPage page, String path) {
        return page.getForms().stream().filter(f -> f.getActionAttribute().equals(path)).findFirst().orElseThrow(() -> new AssertionError("no form to " + path + " on " + page.getUrl()));
    }

    static HtmlPage send(HtmlForm form) throws IOException {
        return form.getElementsByTagName("button").get(0).click();
    }

    /** Sends a form that stands on no page, with the key of the browser's own session. */
    Page post(WebClient browser, String path, Map<String, String> fields) throws IOException {
        WebRequest request = new WebRequest(URI.create(site.address(path)).toURL(), HttpMethod.POST);
        List<NameValuePair> pairs = new ArrayList<>();
        HtmlPage any = site.open(browser, "/units");
        any.<HtmlHiddenInput>getByXPath("//input[@name='form-key']").stream().findFirst().ifPresent(k -> pairs.add(new NameValuePair("form-key", k.getValue())));
        fields.forEach((name, value) -> pairs.add(new NameValuePair(name, value)));
        request.setRequestParameters(pairs);
        return browser.getPage(request);
    }

    /** The files of a zip, as texts. */
    static Map<String, String> unzip(Page download) throws IOException {
        Map<String, String> files = new LinkedHashMap<>();
        try (InputStream in = download.getWebResponse().getContentAsStream(); ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(in.readAllBytes()))) {
            for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
                files.put(e.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return files;
    }

    @Override
    public void close() {
        site.close();
    }
}
