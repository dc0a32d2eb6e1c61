package soapstone.web;

import jakarta.servlet.http.HttpServlet;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.Map;
import java.util.regex.Pattern;
import soapstone.page.Words;

/** Takes a request apart, asks the routes, sends the reply. */
final class SiteServlet extends HttpServlet {

    private static final long serialVersionUID = 1L;

    private static final Pattern PATH = Pattern.compile("(/[A-Za-z0-9_-][A-Za-z0-9_.-]*)+|/");
    private static final String FORM = "application/x-www-form-urlencoded";

    private final transient Routes routes;
    private final transient TroublePages troubles;
    private final transient Languages languages;

    SiteServlet(Routes routes, TroublePages troubles, Languages languages) {
        this.routes = routes;
        this.troubles = troubles;
        this.languages = languages;
    }

    @Override
    protected void service(HttpServletRequest request, HttpServletResponse response) throws IOException {
        Words words = languages.of(Collections.list(request.getHeaders("Accept-Language")));
        Reply reply;
        try {
            reply = reply(request, words);
        } catch (RuntimeException | StackOverflowError e) {
            if (e instanceof Trouble trouble && !trouble.allow().isEmpty()) {
                response.setHeader("Allow", trouble.allow());
            }
            reply = troubles.of(e, request.getRequestURI(), words);
        }
        send(response, reply);
    }

    private Reply reply(HttpServletRequest request, Words words) {
        String path = request.getRequestURI();
        if (path.length() > 1 && path.endsWith("/") && PATH.matcher(path.substring(0, path.length() - 1)).matches()) {
            return Reply.movedFor(path.substring(0, path.length() - 1));
        }
        if (!PATH.matcher(path).matches()) {
            throw Trouble.of(404);
        }
        Routes.Match match = routes.find(request.getMethod(), path);
        Fields query = Fields.parse(request.getQueryString());
        Fields form = request.getMethod().equals("POST") ? form(request) : Fields.parse(null);
        return match.action().apply(new Visit(Map.copyOf(match.parts()), query, form, words));
    }

    private static Fields form(HttpServletRequest request) {
        String type = String.valueOf(request.getHeader("Content-Type")).replace(" ", "");
        if (!type.equalsIgnoreCase(FORM) && !type.equalsIgnoreCase(FORM + ";charset=utf-8")) {
            throw Trouble.of(415);
        }
        byte[] form = (byte[]) request.getAttribute(FormDoor.FORM);
        return Fields.parse(new String(form, StandardCharsets.ISO_8859_1));
    }

    private static void send(HttpServletResponse response, Reply reply) throws IOException {
        response.setStatus(reply.status());
        response.setContentType(reply.type());
        response.setHeader("Cache-Control", reply.cache());
        if (!reply.location().isEmpty()) {
            response.setHeader("Location", reply.location());
        }
        response.setContentLength(reply.body().length);
        response.getOutputStream().write(reply.body());
    }
}
