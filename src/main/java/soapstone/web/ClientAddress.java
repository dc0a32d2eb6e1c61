package soapstone.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The address of the machine that a request comes from. A proxy tells whom it speaks for; its word is taken where the site
 * was told that there is one, and from that proxy only (ASVS 5.0, 15.3.4).
 *
 * <p>Both headers grow on their right: what a client made up stands left of what the proxy saw. So the last address that is
 * not a proxy's own counts. Where {@code Forwarded} (RFC 7239) and {@code X-Forwarded-For} contradict each other, one of them
 * is made up; then the proxy's own address stands for all who try that.
 */
final class ClientAddress {

    private static final Pattern ADDRESS = Pattern.compile("[0-9A-Fa-f:.]{2,45}");
    private static final Pattern FOR = Pattern.compile("(?:^|;)\\s*for=\"?\\[?([0-9A-Fa-f:.]+?)\\]?(?::[0-9]{1,5})?\"?\\s*(?:;|$)", Pattern.CASE_INSENSITIVE);
    private static final Set<String> LOOPBACK = Set.of("127.0.0.1", "0:0:0:0:0:0:0:1", "::1");

    private final Optional<Set<String>> proxies;

    /** @param proxies whose word is taken, besides that of this machine; empty when the site stands on its own */
    ClientAddress(Optional<Set<String>> proxies) {
        this.proxies = proxies;
    }

    String of(HttpServletRequest request) {
        String seen = request.getRemoteAddr();
        if (proxies.isEmpty() || !isProxy(seen)) {
            return seen;
        }
        Optional<String> plain = last(items(request, "X-Forwarded-For").map(String::strip));
        Optional<String> forwarded = last(items(request, "Forwarded").map(ClientAddress::named));
        if (plain.isPresent() && forwarded.isPresent() && !plain.equals(forwarded)) {
            return seen;
        }
        return plain.or(() -> forwarded).orElse(seen);
    }

    private boolean isProxy(String address) {
        return LOOPBACK.contains(address) || proxies.orElseThrow().contains(address);
    }

    private static Stream<String> items(HttpServletRequest request, String header) {
        return Collections.list(request.getHeaders(header)).stream().flatMap(line -> Stream.of(line.split(",")));
    }

    private static String named(String element) {
        Matcher found = FOR.matcher(element);
        return found.find() ? found.group(1) : "";
    }

    /** From the right, the first that is no proxy; nothing when that is no address. */
    private Optional<String> last(Stream<String> addresses) {
        List<String> all = addresses.filter(a -> !isProxy(a)).toList();
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1)).filter(a -> ADDRESS.matcher(a).matches());
    }
}
