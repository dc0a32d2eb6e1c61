package soapstone.web;

import jakarta.servlet.http.HttpServlet;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ThreadLocalRandom;
import java.util.regex.Pattern;
import soapstone.page.Reader;
import soapstone.page.Words;
import soapstone.school.OutOfReach;
import soapstone.school.SignedIn;

/** Takes a request apart, asks the routes, sends the reply. */
final class SiteServlet extends HttpServlet {

    private static final long serialVersionUID = 1L;

    private static final Pattern PATH = Pattern.compile("(/[A-Za-z0-9_-][A-Za-z0-9_.-]*)+|/");
    private static final String PATTERN = "soapstone.pattern";
    private static final int FORBIDDEN = 403;
    private static final int NOT_FOUND = 404;
    /** What somebody with a password from a slip can do before there is an own one. */
    private static final Set<String> BEFORE_A_PASSWORD = Set.of(AccountRoom.PASSWORD, "/sign-out", Porter.STAY);
    private static final String FORM = "application/x-www-form-urlencoded";

    private final transient Routes routes;
    private final transient TroublePages troubles;
    private final transient Languages languages;
    private final transient Porter porter;
    private final transient ClientAddress clients;
    private final transient Watch watch;

    SiteServlet(Routes routes, TroublePages troubles, Languages languages, Porter porter, ClientAddress clients, Watch watch) {
        this.routes = routes;
        this.porter = porter;
        this.troubles = troubles;
        this.languages = languages;
        this.clients = clients;
        this.watch = watch;
    }

    @Override
    protected void service(HttpServletRequest request, HttpServletResponse response) throws IOException {
        Languages.Asked asked = languages.asked(request.getRequestURI());
        Words words = languages.of(asked, Collections.list(request.getHeaders("Accept-Language")));
        Reader reader = porter.reader(words, Optional.empty(), place(request, asked, words));
        Optional<SignedIn> who = Optional.empty();
        Reply reply;
        try {
            who = porter.who(request);
            if (who.isPresent()) {
                reader = porter.reader(languages.named(who.get().person().language()), who, Reader.ANYWHERE);
            }
            reply = reply(request, asked.path(), reader, who);
        } catch (Trouble trouble) {
            if (!trouble.allow().isEmpty()) {
                response.setHeader("Allow", trouble.allow());
            }
            if (trouble.status() == FORBIDDEN) {
                watch.refused(FORBIDDEN, clients.of(request), person(who), request.getMethod(), pattern(request));
            }
            reply = troubles.of(trouble, asked.path(), reader);
        } catch (Desk.NoDraw e) {
            reply = troubles.of(e, asked.path(), reader);
        } catch (OutOfReach e) {
            watch.outOfReach(e, pattern(request));
            reply = troubles.outOfReach(reader);
        } catch (RuntimeException | StackOverflowError e) {
            String reference = HexFormat.of().toHexDigits(ThreadLocalRandom.current().nextInt());
            watch.broke(reference, e, pattern(request));
            reply = troubles.broken(reader, reference);
        }
        send(response, who.isPresent() || !reply.cookies().isEmpty() ? reply : reply.behind(asked));
    }

    /** A page can be had in another language at its own address; what is no page, or only the answer to a form, leads to the front page. */
    private Reader.Place place(HttpServletRequest request, Languages.Asked asked, Words words) {
        boolean page = PATH.matcher(asked.path()).matches() && routes.hasPage(asked.path());
        String query = request.getQueryString();
        String here = !page ? "/" : query == null ? asked.path() : asked.path() + "?" + query;
        return new Reader.Place(asked.base(), here, languages.besides(words));
    }

    private static Optional<Long> person(Optional<SignedIn> who) {
        return who.map(s -> s.person().id());
    }

    private static String pattern(HttpServletRequest request) {
        return String.valueOf(request.getAttribute(PATTERN));
    }

    private Reply reply(HttpServletRequest request, String path, Reader reader, Optional<SignedIn> who) {
        if (path.length() > 1 && path.endsWith("/") && PATH.matcher(path.substring(0, path.length() - 1)).matches()) {
            return Reply.movedFor(path.substring(0, path.length() - 1));
        }
        if (!PATH.matcher(path).matches()) {
            throw Trouble.of(404);
        }
        Routes.Match match = routes.find(request.getMethod(), path);
        request.setAttribute(PATTERN, match.pattern());
        Fields query = Fields.parse(request.getQueryString());
        boolean post = request.getMethod().equals("POST");
        if (post) {
            Porter.checkOrigin(request);
        }
        if (!match.who().lets(who)) {
            return turnedAway(request, path, who);
        }
        if (match.who() != Who.ANYONE && who.orElseThrow().person().mustChange() && !BEFORE_A_PASSWORD.contains(match.pattern())) {
            return Reply.goTo(AccountRoom.PASSWORD);
        }
        Fields form = post ? form(request, match.limit()) : Fields.parse(null);
        if (match.changes()) {
            Porter.checkKey(who, form);
        }
        return match.action().apply(new Visit(Map.copyOf(match.parts()), query, form, reader, new Visit.Caller(who, clients.of(request), path, request.getServerName() + port(request))));
    }

    /** As it stands in an address: nothing where it is the usual one. */
    private static String port(HttpServletRequest request) {
        int port = request.getServerPort();
        return port == 80 || port == 443 ? "" : ":" + port;
    }

    /** A guest may sign in and goes on from there; anybody else is not told what is here. */
    private Reply turnedAway(HttpServletRequest request, String path, Optional<SignedIn> who) {
        if (who.isPresent()) {
            watch.refused(NOT_FOUND, clients.of(request), person(who), request.getMethod(), pattern(request));
            throw Trouble.of(NOT_FOUND);
        }
        boolean page = !request.getMethod().equals("POST") || routes.hasPage(path);
        String query = request.getQueryString();
        String whole = request.getMethod().equals("POST") || query == null ? path : path + "?" + query;
        String then = page ? "?then=" + URLEncoder.encode(whole, StandardCharsets.UTF_8) : "";
        return Reply.goTo("/sign-in" + then);
    }

    private static Fields form(HttpServletRequest request, Fields.Limit limit) {
        String whole = String.valueOf(request.getHeader("Content-Type"));
        String type = whole.replace(" ", "");
        byte[] form = (byte[]) request.getAttribute(FormDoor.FORM);
        Optional<String> boundary = limit.files() ? Multipart.boundary(whole) : Optional.empty();
        if (boundary.isPresent()) {
            return Fields.of(Multipart.parse(new String(form, StandardCharsets.ISO_8859_1), boundary.get(), limit.most()), limit);
        }
        if (!type.equalsIgnoreCase(FORM) && !type.equalsIgnoreCase(FORM + ";charset=utf-8")) {
            throw Trouble.of(415);
        }
        return Fields.parse(new String(form, StandardCharsets.ISO_8859_1), limit);
    }

    private static void send(HttpServletResponse response, Reply reply) throws IOException {
        response.setStatus(reply.status());
        response.setContentType(reply.type());
        response.setHeader("Cache-Control", reply.cache());
        if (!reply.location().isEmpty()) {
            response.setHeader("Location", reply.location());
        }
        if (!reply.file().isEmpty()) {
            response.setHeader("Content-Disposition", "attachment; filename=\"" + reply.file() + "\"");
        }
        if (reply.retry() > 0) {
            response.setHeader("Retry-After", String.valueOf(reply.retry()));
        }
        for (String cookie : reply.cookies()) {
            response.addHeader("Set-Cookie", cookie);
        }
        response.setContentLength(reply.body().length);
        response.getOutputStream().write(reply.body());
    }
}
