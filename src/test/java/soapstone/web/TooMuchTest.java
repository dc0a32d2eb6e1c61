package soapstone.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.htmlunit.WebClient;
import org.htmlunit.html.HtmlFileInput;
import org.htmlunit.html.HtmlForm;
import org.htmlunit.html.HtmlPage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soapstone.school.Person;
import soapstone.school.SchoolClass;

/** Whoever sends more than the site takes gets a page that says so, and never a broken connection. */
class TooMuchTest {

    private static final String SAYS = "A form with its files may have up to 64 kB";

    @TempDir
    private Path folder;

    private SchoolUnderTest site;
    private Person wren;
    private String roster;

    @BeforeEach
    void start() throws Exception {
        site = SchoolUnderTest.start(new SampleDesk());
        wren = site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
        SchoolClass in = site.addClass("Sheet metal 1", wren);
        roster = "/classes/" + in.id() + "/roster";
    }

    @AfterEach
    void stop() {
        site.close();
    }

    private static void refused(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).isEqualTo(413);
        assertThat(answer.body()).startsWith("<!DOCTYPE html>").contains("Too much at once").contains(SAYS);
    }

    private HttpRequest.Builder to(String path) {
        return HttpRequest.newBuilder(URI.create(site.address(path))).header("Content-Type", "application/x-www-form-urlencoded");
    }

    @ParameterizedTest(name = "{0} bytes")
    @ValueSource(ints = {FormDoor.LARGEST + 1, 200_000, 5_000_000})
    void aLargeForm(int bytes) throws Exception {
        refused(new PlainHttp(site).signIn("wren", SchoolUnderTest.PASSWORD).send("POST", roster, "pasted=" + "a".repeat(bytes - "pasted=".length())));
    }

    @ParameterizedTest(name = "{0} bytes without a length")
    @ValueSource(ints = {FormDoor.LARGEST + 1, 200_000, 5_000_000})
    void aLargeFormThatDoesNotSayHowLarge(int bytes) throws Exception {
        byte[] form = "a".repeat(bytes).getBytes(StandardCharsets.US_ASCII);
        HttpClient http = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
        refused(http.send(to(roster).POST(HttpRequest.BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(form))).build(), HttpResponse.BodyHandlers.ofString()));
    }

    @ParameterizedTest(name = "a file of {0} bytes")
    @ValueSource(ints = {200_000, 5_000_000})
    void aLargeFileInABrowser(int bytes) throws Exception {
        Path file = Files.writeString(folder.resolve("list.csv"), "seat,name\n" + "1,Ada Q.\n".repeat(bytes / 9));
        try (WebClient browser = site.browser(wren)) {
            HtmlForm form = RecordedClass.form(site.open(browser, roster), roster);
            form.<HtmlFileInput>getInputByName("list").setFiles(file.toFile());
            HtmlPage page = RecordedClass.send(form);
            assertThat(page.getWebResponse().getStatusCode()).isEqualTo(413);
            assertThat(page.getVisibleText()).contains("Too much at once").contains(SAYS);
            assertThat(site.open(browser, roster).getWebResponse().getStatusCode()).as("and the site goes on").isEqualTo(200);
        }
        assertThat(site.school.people().all(Person.Kind.STUDENT)).isEmpty();
    }

    @ParameterizedTest(name = "{0} parts")
    @ValueSource(ints = {1000, 20_000})
    void aFormOfThousandsOfParts(int parts) throws Exception {
        StringBuilder form = new StringBuilder();
        for (int i = 0; i < parts; i++) {
            form.append("--x\r\nContent-Disposition: form-data; name=\"").append(i).append("\"\r\n\r\n\r\n");
        }
        PlainHttp http = new PlainHttp(site).signIn("wren", SchoolUnderTest.PASSWORD);
        refused(http.sendAs("multipart/form-data; boundary=x", roster, form.append("--x--\r\n").toString()));
    }

    @Test
    void aFormOfExactlyTheMostIsTaken() throws Exception {
        PlainHttp http = new PlainHttp(site).signIn("wren", SchoolUnderTest.PASSWORD);
        String head = "--x\r\nContent-Disposition: form-data; name=\"form-key\"\r\n\r\n" + http.key()
                + "\r\n--x\r\nContent-Disposition: form-data; name=\"list\"; filename=\"list.csv\"\r\n\r\nseat,name\n7,Ada Q.\n";
        String end = "\r\n--x--\r\n";
        String file = "\n".repeat(FormDoor.LARGEST - head.length() - end.length());
        HttpResponse<String> taken = http.sendAs("multipart/form-data; boundary=x", roster, head + file + end);
        assertThat(taken.statusCode()).isEqualTo(200);
        assertThat(taken.body()).contains("Ada Q.");
        refused(http.sendAs("multipart/form-data; boundary=x", roster, head + file + "\n" + end));
    }

    @Test
    void whoAsksBeforeSendingIsToldAtOnce() throws Exception {
        RawHttp.Answer answer = RawHttp.send(site.port(), "POST " + roster + " HTTP/1.1\r\nHost: localhost\r\nExpect: 100-continue\r\n"
                + "Content-Type: application/x-www-form-urlencoded\r\nContent-Length: 5000000\r\n\r\n");
        assertThat(answer.status()).isEqualTo(413);
        assertThat(answer.body()).contains(SAYS).doesNotContain("still open");
    }

    @Test
    void whatNobodySendsByMistakeIsNotWaitedFor() throws Exception {
        RawHttp.Answer answer = RawHttp.send(site.port(), "POST " + roster + " HTTP/1.1\r\nHost: localhost\r\n"
                + "Content-Type: application/x-www-form-urlencoded\r\nContent-Length: " + (FormDoor.THROWN_AWAY + 1) + "\r\n\r\na=1");
        assertThat(answer.status()).isEqualTo(413);
    }
}
