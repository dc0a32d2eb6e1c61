package soapstone.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * A table of addresses. A pattern is a path whose parts are fixed words or names in braces:
 * {@code /exercises/{unit}/{id}}. HEAD goes where GET goes.
 */
final class Routes {

    /** What is done for a visit. */
    interface Action extends Function<Visit, Reply> {}

    /**
     * A route that fits a path.
     *
     * @param who     whom it is for
     * @param changes whether it changes something, so that its form has to carry the session's key
     * @param limit   how much its form may hold
     * @param pattern of the address, for those who write down where something happened
     * @param action  what to do
     * @param parts   what stands at the names of the pattern
     */
    record Match(Who who, boolean changes, Fields.Limit limit, Action action, Map<String, String> parts, String pattern) {}

    private record Route(String method, Who who, boolean changes, Fields.Limit limit, List<String> pattern, Action action) {

        String shown() {
            return "/" + String.join("/", pattern);
        }

        Optional<Map<String, String>> parts(List<String> path) {
            if (path.size() != pattern.size()) {
                return Optional.empty();
            }
            Map<String, String> parts = new LinkedHashMap<>();
            for (int i = 0; i < path.size(); i++) {
                String word = pattern.get(i);
                if (word.startsWith("{")) {
                    parts.put(word.substring(1, word.length() - 1), path.get(i));
                } else if (!word.equals(path.get(i))) {
                    return Optional.empty();
                }
            }
            return Optional.of(parts);
        }
    }

    private final List<Route> routes = new ArrayList<>();

    Routes get(String pattern, Action action) {
        return get(Who.ANYONE, pattern, action);
    }

    Routes get(Who who, String pattern, Action action) {
        routes.add(new Route("GET", who, false, Fields.Limit.USUAL, split(pattern), action));
        return this;
    }

    /** A form of anybody's that changes nothing: it is only too long for an address. */
    Routes ask(String pattern, Action action) {
        routes.add(new Route("POST", Who.ANYONE, false, Fields.Limit.USUAL, split(pattern), action));
        return this;
    }

    /** A form that changes something. */
    Routes post(Who who, String pattern, Action action) {
        return post(who, pattern, Fields.Limit.USUAL, action);
    }

    /** A form that changes something and holds more than a usual one. */
    Routes post(Who who, String pattern, Fields.Limit limit, Action action) {
        routes.add(new Route("POST", who, true, limit, split(pattern), action));
        return this;
    }

    /**
     * The first route that fits.
     *
     * @throws Trouble 404 when no pattern fits, 405 when none of those that fit takes the method
     */
    Match find(String method, String path) {
        List<String> words = split(path);
        Set<String> allowed = new LinkedHashSet<>();
        for (Route route : routes) {
            Optional<Map<String, String>> parts = route.parts(words);
            if (parts.isPresent() && route.method().equals(method.equals("HEAD") ? "GET" : method)) {
                return new Match(route.who(), route.changes(), route.limit(), route.action(), parts.get(), route.shown());
            }
            parts.ifPresent(p -> allow(allowed, route.method()));
        }
        throw allowed.isEmpty() ? Trouble.of(404) : Trouble.method(String.join(", ", allowed));
    }

    /** Whether there is a page at the path, so that one can go there. */
    boolean hasPage(String path) {
        List<String> words = split(path);
        return routes.stream().anyMatch(r -> r.method().equals("GET") && r.parts(words).isPresent());
    }

    private static void allow(Set<String> allowed, String method) {
        allowed.add(method);
        if (method.equals("GET")) {
            allowed.add("HEAD");
        }
    }

    /** Each address with whom it is for, for a test that tries each door as everybody. */
    Map<String, Who> doors() {
        Map<String, Who> doors = new LinkedHashMap<>();
        routes.forEach(r -> doors.put(r.method() + " " + r.shown(), r.who()));
        return doors;
    }

    /** Each address with its methods, for a test that walks through all of them. */
    List<String> all() {
        return routes.stream().map(r -> r.method() + " " + r.shown()).toList();
    }

    private static List<String> split(String path) {
        return path.equals("/") ? List.of() : List.of(path.substring(1).split("/", -1));
    }
}
