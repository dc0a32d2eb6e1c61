package soapstone.web;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.concurrent.atomic.AtomicLong;
import org.htmlunit.WebClient;
import org.htmlunit.html.HtmlPage;

/** The real server on a free port, and a browser without scripts in front of it. Closes both. */
final class SiteUnderTest implements AutoCloseable {

    private final SiteServer server;
    private final WebClient browser = new WebClient();
    private final HttpClient http = HttpClient.newBuilder().followRedirects(HttpClient.Redirect.NEVER).build();

    private SiteUnderTest(SiteServer server) {
        this.server = server;
        browser.getOptions().setJavaScriptEnabled(false);
        browser.getOptions().setCssEnabled(false);
        browser.getOptions().setThrowExceptionOnFailingStatusCode(false);
    }

    /** With the sample desk; fresh sheets are numbered 101, 102, … */
    static SiteUnderTest start() throws Exception {
        return start(Settings.on(0), new SampleDesk());
    }

    static SiteUnderTest start(Settings settings, Desk desk) throws Exception {
        AtomicLong next = new AtomicLong(100);
        return new SiteUnderTest(SiteServer.start(settings.withSeeds(next::incrementAndGet), desk));
    }

    int port() {
        return server.port();
    }

    String address(String path) {
        return "http://127.0.0.1:" + server.port() + path;
    }

    HtmlPage open(String path) throws IOException {
        return browser.getPage(address(path));
    }

    WebClient browser() {
        return browser;
    }

    HttpResponse<String> get(String path) throws Exception {
        return http.send(HttpRequest.newBuilder(URI.create(address(path))).build(), HttpResponse.BodyHandlers.ofString());
    }

    HttpResponse<String> post(String path, String form) throws Exception {
        return http.send(HttpRequest.newBuilder(URI.create(address(path))).header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form)).build(), HttpResponse.BodyHandlers.ofString());
    }

    @Override
    public void close() {
        browser.close();
        server.close();
    }
}
