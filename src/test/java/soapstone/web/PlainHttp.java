package soapstone.web;

import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A client that follows nothing and sends what it is told, with a cookie and a form's key of its own. */
public final class PlainHttp {

    private static final HttpClient HTTP = HttpClient.newBuilder().followRedirects(HttpClient.Redirect.NEVER).build();
    private static final Pattern KEY = Pattern.compile("name=\"form-key\" value=\"([^\"]+)\"");
    private static final Pattern STEP = Pattern.compile("name=\"step\" value=\"([^\"]+)\"");

    private final SchoolUnderTest site;
    private final Map<String, String> headers = new TreeMap<>();
    private String cookie = "";
    private String key = "";

    public PlainHttp(SchoolUnderTest site) {
        this.site = site;
    }

    /** A header that goes with every request. */
    public PlainHttp with(String name, String value) {
        headers.put(name, value);
        return this;
    }

    public PlainHttp withCookie(String value) {
        cookie = value;
        return this;
    }

    public String cookie() {
        return cookie;
    }

    public String key() {
        return key;
    }

    /** Signs in, and takes cookie and key along from then on. */
    public PlainHttp signIn(String login, String password) throws Exception {
        post("/sign-in", "login", login, "password", password);
        get("/account");
        return this;
    }

    public HttpResponse<String> get(String path) throws Exception {
        return send("GET", path, "");
    }

    public HttpResponse<String> post(String path, String... fields) throws Exception {
        List<String> all = new ArrayList<>(List.of(fields));
        if (!key.isEmpty() && !all.contains("form-key")) {
            all.addAll(List.of("form-key", key));
        }
        return send("POST", path, form(all));
    }

    /** Without the key that the client has. */
    public HttpResponse<String> bare(String path, String... fields) throws Exception {
        return send("POST", path, form(List.of(fields)));
    }

    static String form(List<String> fields) {
        return java.util.stream.IntStream.range(0, fields.size() / 2)
                .mapToObj(i -> URLEncoder.encode(fields.get(2 * i), StandardCharsets.UTF_8) + "=" + URLEncoder.encode(fields.get(2 * i + 1), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }

    public HttpResponse<String> send(String method, String path, String body) throws Exception {
        return send(method, "application/x-www-form-urlencoded", path, body);
    }

    /** A form of another content type. */
    public HttpResponse<String> sendAs(String type, String path, String body) throws Exception {
        return send("POST", type, path, body);
    }

    private HttpResponse<String> send(String method, String type, String path, String body) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(site.address(path)));
        headers.forEach(request::header);
        if (!cookie.isEmpty()) {
            request.header("Cookie", cookie);
        }
        if (method.equals("POST")) {
            request.header("Content-Type", type);
        }
        request.method(method, body.isEmpty() && !method.equals("POST") ? HttpRequest.BodyPublishers.noBody() : HttpRequest.BodyPublishers.ofString(body));
        HttpResponse<String> answer = HTTP.send(request.build(), HttpResponse.BodyHandlers.ofString());
        answer.headers().firstValue("Set-Cookie").ifPresent(set -> cookie = set.substring(0, set.indexOf(';')));
        Matcher found = KEY.matcher(answer.body());
        if (found.find()) {
            key = found.group(1);
        }
        return answer;
    }

    /** The secret of the second form of signing in. */
    static String step(HttpResponse<String> page) {
        Matcher found = STEP.matcher(page.body());
        return found.find() ? found.group(1) : "";
    }
}
