package soapstone.web;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.concurrent.atomic.AtomicLong;
import org.htmlunit.HttpMethod;
import org.htmlunit.WebClient;
import org.htmlunit.WebRequest;
import org.htmlunit.html.HtmlPage;

/** The real server on a free port, and a browser without scripts in front of it. Closes both. */
public final class SiteUnderTest implements AutoCloseable {

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

    public static SiteUnderTest start(Settings settings, Desk desk) throws Exception {
        AtomicLong next = new AtomicLong(100);
        return new SiteUnderTest(SiteServer.start(settings.withSeeds(next::incrementAndGet), desk));
    }

    public int port() {
        return server.port();
    }

    public String address(String path) {
        return "http://127.0.0.1:" + server.port() + path;
    }

    public HtmlPage open(String path) throws IOException {
        return browser.getPage(address(path));
    }

    public WebClient browser() {
        return browser;
    }

    public HttpResponse<String> get(String path) throws Exception {
        return http.send(HttpRequest.newBuilder(URI.create(address(path))).build(), HttpResponse.BodyHandlers.ofString());
    }

    public HttpResponse<String> post(String path, String form) throws Exception {
        return http.send(HttpRequest.newBuilder(URI.create(address(path))).header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form)).build(), HttpResponse.BodyHandlers.ofString());
    }

    /** Sends a form as a browser does, and opens what comes back. */
    public HtmlPage submit(String path, String form) throws IOException {
        WebRequest request = new WebRequest(URI.create(address(path)).toURL(), HttpMethod.POST);
        request.setAdditionalHeader("Content-Type", "application/x-www-form-urlencoded");
        request.setRequestBody(form);
        return browser.getPage(request);
    }

    @Override
    public void close() {
        browser.close();
        server.close();
    }
}
