package soapstone.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.htmlunit.WebClient;
import org.htmlunit.html.HtmlForm;
import org.htmlunit.html.HtmlPage;
import soapstone.files.SecurityLog;
import soapstone.record.Database;
import soapstone.record.Databases;
import soapstone.record.SqlSchool;
import soapstone.school.ClassSettings;
import soapstone.school.Classes;
import soapstone.school.Member;
import soapstone.school.PasswordHash;
import soapstone.school.People;
import soapstone.school.Person;
import soapstone.school.School;
import soapstone.school.SchoolClass;

/**
 * A real site with a school on a fresh database, a clock that stands until it is moved, and browsers without scripts for as
 * many people as are wanted.
 */
public final class SchoolUnderTest implements AutoCloseable {

    public static final String PASSWORD = "a long enough sentence";
    private static final String ENCODED = PasswordHash.hash(PASSWORD);

    private final Database database;
    private final SiteServer server;
    private Instant now = Instant.parse("2027-03-16T07:00:00Z");
    public final School school;

    private final ByteArrayOutputStream log = new ByteArrayOutputStream();

    private SchoolUnderTest(Database database, Desk desk, boolean secure, Settings settings) throws IOException {
        this.database = database;
        this.school = SqlSchool.of(database);
        SecurityLog written = SecurityLog.to(new PrintStream(log, true, StandardCharsets.UTF_8));
        this.server = SiteServer.start(settings, desk, Optional.of(new SchoolOffice(() -> school, () -> now, secure, written)));
    }

    /** On the embedded database. */
    public static SchoolUnderTest start(Desk desk) throws IOException {
        return new SchoolUnderTest(Databases.h2(), desk, false, Settings.on(0));
    }

    /** On a given database. */
    public static SchoolUnderTest start(Desk desk, Database database, boolean secure) throws IOException {
        return new SchoolUnderTest(database, desk, secure, Settings.on(0));
    }

    /** Served in some other way. */
    static SchoolUnderTest start(Desk desk, Settings settings) throws IOException {
        return new SchoolUnderTest(Databases.h2(), desk, settings.isSecure(), settings);
    }

    /** Every address with whom it is for. */
    public Map<String, String> doors() {
        Map<String, String> doors = new LinkedHashMap<>();
        server.routes().doors().forEach((door, who) -> doors.put(door, who.name()));
        return doors;
    }

    /** What stands in the security log. */
    public String log() {
        return log.toString(StandardCharsets.UTF_8);
    }

    public Instant now() {
        return now;
    }

    public void wait(Duration time) {
        now = now.plus(time);
    }

    public int port() {
        return server.port();
    }

    public String address(String path) {
        return "http://127.0.0.1:" + server.port() + path;
    }

    /** Somebody with the usual password, which need not be changed. */
    public Person add(Person.Kind kind, String shown, String login) {
        return school.people().add(new People.NewPerson(kind, shown, login, ENCODED, false, "en"), now);
    }

    public SchoolClass addClass(String name, Person instructor) {
        return school.classes().add(name, "Spring", "K" + name.hashCode() % 10_000, ClassSettings.USUAL, instructor.id(), now);
    }

    /** A student with a seat in a class. */
    public Member enrol(SchoolClass in, String shown, String login, String seat) {
        return school.classes().enrol(in.id(), List.of(new Classes.NewMember(new People.NewPerson(Person.Kind.STUDENT, shown, login, ENCODED, false, "en"), seat, 0)), now)
                .get(0);
    }

    /** A browser of somebody who is not signed in. */
    public WebClient browser() {
        WebClient browser = new WebClient();
        browser.getOptions().setJavaScriptEnabled(false);
        browser.getOptions().setCssEnabled(false);
        browser.getOptions().setThrowExceptionOnFailingStatusCode(false);
        return browser;
    }

    /** A browser of somebody who has signed in through the page. */
    public WebClient browser(Person person) throws IOException {
        WebClient browser = browser();
        signIn(browser, person.login(), PASSWORD);
        return browser;
    }

    public HtmlPage signIn(WebClient browser, String login, String password) throws IOException {
        HtmlPage page = browser.getPage(address("/sign-in"));
        HtmlForm form = page.getForms().stream().filter(f -> f.getActionAttribute().equals("/sign-in")).findFirst().orElseThrow();
        form.getInputByName("login").setValue(login);
        form.getInputByName("password").setValue(password);
        return form.getButtonsByName("").get(0).click();
    }

    public HtmlPage open(WebClient browser, String path) throws IOException {
        return browser.getPage(URI.create(address(path)).toURL());
    }

    @Override
    public void close() {
        server.close();
        database.close();
    }
}
