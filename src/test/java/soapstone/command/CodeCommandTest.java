package soapstone.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.htmlunit.WebClient;
import org.htmlunit.html.HtmlForm;
import org.htmlunit.html.HtmlPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soapstone.desk.EngineDesk;
import soapstone.desk.Library;
import soapstone.files.SecurityLog;
import soapstone.record.Database;
import soapstone.record.Databases;
import soapstone.record.SqlSchool;
import soapstone.school.Audit;
import soapstone.school.Codes;
import soapstone.school.People;
import soapstone.school.Person;
import soapstone.school.School;
import soapstone.school.SecretCodes;
import soapstone.web.SchoolOffice;
import soapstone.web.Settings;
import soapstone.web.SiteServer;

/** Whoever keeps the machine lets a keeper in again whose password is lost. */
class CodeCommandTest {

    private static final Pattern CODE = Pattern.compile("Code for ([^:]+): ([0-9A-Z]{4}(?:-[0-9A-Z]{4}){3})");

    @TempDir
    private Path folder;

    private static void fill(School school) {
        add(school, Person.Kind.KEEPER, "Kit B.", "kit");
        add(school, Person.Kind.INSTRUCTOR, "Wren K.", "wren");
        add(school, Person.Kind.STUDENT, "Ada Q.", "ada");
    }

    private static void add(School school, Person.Kind kind, String shown, String login) {
        school.people().add(new People.NewPerson(kind, shown, login, "encoded", false, "en"), Instant.EPOCH);
    }

    private Path school() {
        Path data = folder.resolve("data");
        try (Database database = Databases.h2(data)) {
            fill(SqlSchool.of(database));
        }
        return data;
    }

    private static String code(Shell.Result result, String login) {
        assertThat(result.code()).as(result.err()).isZero();
        Matcher found = CODE.matcher(result.out());
        assertThat(found.find()).as(result.out()).isTrue();
        assertThat(found.group(1)).isEqualTo(login);
        return found.group(2);
    }

    @Test
    void theOldPasswordAndTheSecondFactorEndAndTheCodeWorksOnce() throws Exception {
        Path data = school();
        try (Database database = Databases.h2(data)) {
            SqlSchool.of(database).people().setFactor(1, "GEZDGNBVGY3TQOJQ");
        }
        String code = code(Shell.run("code", "--data", data.toString(), "--login", "KIT"), "kit");
        try (Database database = Databases.h2(data)) {
            School school = SqlSchool.of(database);
            assertThat(school.people().password(1)).isEmpty();
            assertThat(school.people().factor(1)).isEmpty();
            Audit.Entry entry = school.audit().about(1).get(0);
            assertThat(List.of(entry.act(), entry.by(), entry.detail())).containsExactly("account.code", Optional.empty(), "At the console");
            assertThat(school.codes().take(SecretCodes.hash(code), Codes.Purpose.NEW_PASSWORD, Instant.now()).flatMap(Codes.Taken::person)).contains(1L);
            assertThat(school.codes().take(SecretCodes.hash(code), Codes.Purpose.NEW_PASSWORD, Instant.now())).isEmpty();
        }
        assertThat(Files.readString(data.resolve(SecurityLog.FILE))).contains(" account.code about=1").doesNotContain(code);
    }

    @Test
    void aFolderThatTheSiteHasOpenSaysWhatToDo() {
        Path data = school();
        try (Database open = Databases.h2(data)) {
            Shell.Result refused = inAnotherProcess("code", "--data", data.toString(), "--login", "kit");
            assertThat(refused.code()).isEqualTo(1);
            assertThat(refused.err()).contains("Most likely that is the running site.", "end the other one and do this again").doesNotContain("Exception");
            assertThat(SqlSchool.of(open).people().password(1)).as("nothing happened").contains("encoded");
        }
    }

    /** H2 shares a file within one process, so that the second has to be another one. */
    private static Shell.Result inAnotherProcess(String... args) {
        try {
            List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp",
                    System.getProperty("java.class.path"), "soapstone.Main"));
            command.addAll(List.of(args));
            Path out = Files.createTempFile("code", ".out");
            Path err = Files.createTempFile("code", ".err");
            Process process = new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile()).start();
            return new Shell.Result(process.waitFor(), Files.readString(out), Files.readString(err));
        } catch (IOException | InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void nobodyElseGetsOne() {
        String data = school().toString();
        assertThat(Shell.run("code", "--data", data, "--login", "wrn").err()).contains("Nobody has the login 'wrn'", "wren");
        assertThat(Shell.run("code", "--data", data, "--login", "ada").err()).contains("is a student", "new slip");
        try (Database database = Databases.h2(Path.of(data))) {
            SqlSchool.of(database).people().setDisabled(2, true);
        }
        Shell.Result disabled = Shell.run("code", "--data", data, "--login", "wren");
        assertThat(disabled.code()).isEqualTo(1);
        assertThat(disabled.err()).contains("is disabled");
        assertThat(Shell.run("code", "--login", "kit").err()).contains("--data DIR or --database URL");
        assertThat(Shell.run("code", "--data", data).err()).contains("Missing: --login LOGIN");
        try (Database database = Databases.h2(Path.of(data))) {
            assertThat(SqlSchool.of(database).people().password(3)).as("nothing happened").contains("encoded");
            assertThat(SqlSchool.of(database).audit().latest(9)).isEmpty();
        }
    }

    @Test
    void onPostgresTheSiteRunsAndTheCodeSetsAPasswordOnItsPage() throws Exception {
        String url = Databases.postgresUrl();
        Library library = Library.read(Shell.SMALL, Path.of("src/test/resources/small/lessons")).library().orElseThrow();
        try (Database database = Database.at(url, "postgres", "")) {
            School school = SqlSchool.of(database);
            fill(school);
            SchoolOffice office = new SchoolOffice(() -> school, Clock.systemUTC(), false, SecurityLog.to(new PrintStream(OutputStream.nullOutputStream())));
            try (SiteServer site = SiteServer.start(Settings.on(0), new EngineDesk(() -> library), Optional.of(office)); WebClient browser = new WebClient()) {
                String code = code(Shell.run("code", "--database", url, "--login", "kit"), "kit");
                browser.getOptions().setJavaScriptEnabled(false);
                browser.getOptions().setCssEnabled(false);
                browser.getOptions().setThrowExceptionOnFailingStatusCode(false);
                HtmlPage page = browser.getPage("http://127.0.0.1:" + site.port() + "/new-password");
                HtmlForm form = page.getForms().stream().filter(f -> f.getActionAttribute().equals("/new-password")).findFirst().orElseThrow();
                form.getInputByName("login").setValue("kit");
                form.getInputByName("code").setValue(code);
                form.getInputByName("fresh").setValue("a long enough sentence");
                form.getInputByName("again").setValue("a long enough sentence");
                HtmlPage in = form.getElementsByTagName("button").get(0).click();
                assertThat(in.getUrl().getPath()).as(in.asNormalizedText()).isEqualTo("/accounts");
            }
        }
    }
}
