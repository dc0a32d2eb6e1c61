package soapstone.web;

import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.LongSupplier;

/**
 * How the site is served.
 *
 * @param host     address to listen on, such as {@code 127.0.0.1}, or empty for all
 * @param port     0 for any free one
 * @param idle     how long a connection may be silent
 * @param whole    how long a request's form may take to arrive, however steadily it drips
 * @param atOnce   requests worked on at the same time
 * @param waiting  further requests that wait for their turn; beyond these the page says "busy"
 * @param patience how long a waiting request waits
 * @param seeds    fresh sheet numbers, each at least 1
 * @param proxies  addresses of the proxies in front of it, besides this machine, when browsers reach it over TLS only
 * @param certificate of the site itself, when it speaks TLS without a proxy
 * @param plain    beside it, a port where whoever asks by plain http is sent to https, and nothing else is answered
 */
public record Settings(String host, int port, Duration idle, Duration whole, int atOnce, int waiting, Duration patience,
        LongSupplier seeds, Optional<Set<String>> proxies, Optional<Certificate> certificate, Optional<Integer> plain) {

    public Settings {
        proxies = proxies.map(Set::copyOf);
    }

    /** Largest sheet number that is given out; short enough to be read aloud. */
    static final long LAST_SEED = 99_999;

    /** The usual settings on that port of this machine only. */
    public static Settings on(int port) {
        return new Settings("127.0.0.1", port, Duration.ofSeconds(20), Duration.ofSeconds(30), 16, 256,
                Duration.ofSeconds(5), () -> ThreadLocalRandom.current().nextLong(1, LAST_SEED + 1), Optional.empty(), Optional.empty(), Optional.empty());
    }

    public Settings withHost(String newHost) {
        return new Settings(newHost, port, idle, whole, atOnce, waiting, patience, seeds, proxies, certificate, plain);
    }

    public Settings withTimes(Duration newIdle, Duration newWhole) {
        return new Settings(host, port, newIdle, newWhole, atOnce, waiting, patience, seeds, proxies, certificate, plain);
    }

    public Settings withCrowd(int newAtOnce, int newWaiting, Duration newPatience) {
        return new Settings(host, port, idle, whole, newAtOnce, newWaiting, newPatience, seeds, proxies, certificate, plain);
    }

    public Settings withSeeds(LongSupplier newSeeds) {
        return new Settings(host, port, idle, whole, atOnce, waiting, patience, newSeeds, proxies, certificate, plain);
    }

    /** Behind a proxy that speaks TLS. */
    public Settings withProxies(Set<String> newProxies) {
        return new Settings(host, port, idle, whole, atOnce, waiting, patience, seeds, Optional.of(newProxies), certificate, plain);
    }

    /** Speaking TLS itself. */
    public Settings withCertificate(Certificate own) {
        return new Settings(host, port, idle, whole, atOnce, waiting, patience, seeds, proxies, Optional.of(own), plain);
    }

    /** Sending whoever asks by plain http at that port to https; for a site that speaks TLS itself. */
    public Settings withPlainPort(int newPlain) {
        return new Settings(host, port, idle, whole, atOnce, waiting, patience, seeds, proxies, certificate, Optional.of(newPlain));
    }

    /** Whether browsers reach it over TLS only. */
    public boolean isSecure() {
        return proxies.isPresent() || certificate.isPresent();
    }
}
