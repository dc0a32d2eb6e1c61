package soapstone.web;

import java.io.IOException;
import java.util.Optional;
import org.eclipse.jetty.ee11.servlet.ServletContextHandler;
import org.eclipse.jetty.ee11.servlet.ServletHolder;
import org.eclipse.jetty.http.HttpCompliance;
import org.eclipse.jetty.http.UriCompliance;
import org.eclipse.jetty.server.ConnectionFactory;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.NetworkConnectionLimit;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.server.handler.QoSHandler;
import org.eclipse.jetty.server.handler.SecuredRedirectHandler;
import org.eclipse.jetty.util.ssl.SslContextFactory;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import soapstone.page.Pages;
import soapstone.page.Reader;

/**
 * The running site.
 *
 * <p>A request passes three doors: one that waits for the whole form without holding a thread, one that lets only so many
 * in at once, and the servlet with the routes. Whatever is refused at a door gets the same small page.
 */
public final class SiteServer implements AutoCloseable {

    private static final int THREADS_BESIDE = 8;
    private static final int MOST_CONNECTIONS = 2000;
    private static final int HEADER_BYTES = 8 * 1024;
    private static final long STOP_MILLIS = 2000;
    private static final int MOVED_PERMANENTLY = 301;
    /** Ciphers of TLS 1.2 that tell by their timing what they decipher. */
    private static final String CHAINED_BLOCKS = ".*_CBC_.*";

    private final Server server;
    private final ServerConnector connector;
    private final Routes routes;

    private SiteServer(Server server, ServerConnector connector, Routes routes) {
        this.server = server;
        this.connector = connector;
        this.routes = routes;
    }

    /**
     * Starts the site and returns when it takes requests.
     *
     * @throws IOException if the port cannot be had
     */
    public static SiteServer start(Settings settings, Desk desk) throws IOException {
        return start(settings, desk, Optional.empty());
    }

    /**
     * The same for a site that keeps a school.
     *
     * @param office empty for guests only
     */
    public static SiteServer start(Settings settings, Desk desk, Optional<SchoolOffice> office) throws IOException {
        Server server = new Server(new QueuedThreadPool(settings.atOnce() + THREADS_BESIDE, 4));
        SafeHeaders safe = new SafeHeaders(settings.isSecure() || office.filter(SchoolOffice::secure).isPresent());
        ServerConnector connector = connector(server, settings, safe);
        server.addConnector(connector);
        server.addBean(new NetworkConnectionLimit(MOST_CONNECTIONS, server));
        server.setStopTimeout(STOP_MILLIS);

        Languages languages = new Languages();
        Assets assets = new Assets();
        Pages pages = new Pages(assets.path(), assets.has(Assets.DRAWING));
        TroublePages troubles = new TroublePages(desk, pages);
        Optional<SchoolOffice> school = office.map(SchoolOffice::withAuditLogged);
        Porter porter = new Porter(school);
        PlainErrors errors = new PlainErrors(status -> troubles.of(status, porter.reader(languages.english(), Optional.empty(), Reader.ANYWHERE)), safe);
        server.setErrorHandler(errors);
        Routes routes = new Site(desk, pages, assets, settings.seeds()).routes();
        school.ifPresent(o -> new SchoolSite(o, desk, pages, porter, languages).addTo(routes));
        SiteServlet servlet = new SiteServlet(routes, troubles, languages, porter, new ClientAddress(settings.proxies()), Watch.of(school));
        server.setHandler(new FormDoor(crowd(settings, context(servlet, errors)), settings.whole()));
        settings.plain().ifPresent(port -> sendToHttps(server, settings, safe));
        begin(server);
        return new SiteServer(server, connector, routes);
    }

    /** Who types the name of the site comes by plain http first. */
    private static void sendToHttps(Server server, Settings settings, SafeHeaders safe) {
        HttpConfiguration http = http(settings, safe);
        http.setSecureScheme("https");
        http.setSecurePort(settings.port());
        server.addConnector(listening(new ServerConnector(server, 1, 1, new HttpConnectionFactory(http)), settings, settings.plain().orElseThrow()));
        server.setHandler(new SecuredRedirectHandler(server.getHandler(), MOVED_PERMANENTLY));
    }

    private static void begin(Server server) throws IOException {
        try {
            server.start();
        } catch (IOException e) {
            stop(server);
            throw e;
        } catch (Exception e) {
            throw new IllegalStateException("the site does not start", e);
        }
    }

    private static void stop(Server server) {
        try {
            server.stop();
        } catch (Exception e) {
            throw new IllegalStateException("the site does not stop", e);
        }
    }

    private static ServerConnector connector(Server server, Settings settings, SafeHeaders safe) {
        return listening(new ServerConnector(server, 1, 1, factories(settings, http(settings, safe))), settings, settings.port());
    }

    private static HttpConfiguration http(Settings settings, SafeHeaders safe) {
        HttpConfiguration http = new HttpConfiguration();
        http.setSendServerVersion(false);
        http.setSendXPoweredBy(false);
        http.setRequestHeaderSize(HEADER_BYTES);
        // The cache of headers takes some 90 kB for each open connection: a class of phones would fill a small machine.
        http.setHeaderCacheSize(0);
        http.setHttpCompliance(HttpCompliance.RFC9110);
        http.setUriCompliance(UriCompliance.DEFAULT);
        http.setIdleTimeout(settings.idle().toMillis());
        http.addCustomizer(safe);
        return http;
    }

    private static ServerConnector listening(ServerConnector connector, Settings settings, int port) {
        connector.setHost(settings.host().isEmpty() ? null : settings.host());
        connector.setPort(port);
        connector.setIdleTimeout(settings.idle().toMillis());
        connector.setAcceptQueueSize(256);
        connector.addBean(new SlowHeads(connector.getScheduler(), settings.whole()));
        return connector;
    }

    private static ConnectionFactory[] factories(Settings settings, HttpConfiguration http) {
        HttpConnectionFactory plain = new HttpConnectionFactory(http);
        if (settings.certificate().isEmpty()) {
            return new ConnectionFactory[] {plain};
        }
        SslContextFactory.Server ssl = new SslContextFactory.Server();
        ssl.setKeyStore(settings.certificate().get().keys());
        ssl.setKeyStorePassword(settings.certificate().get().password());
        ssl.setIncludeProtocols("TLSv1.3", "TLSv1.2");
        ssl.addExcludeCipherSuites(CHAINED_BLOCKS);
        // A school's machine has several names, and none at all on the day it is set up.
        http.addCustomizer(new SecureRequestCustomizer(false));
        return new ConnectionFactory[] {new SslConnectionFactory(ssl, plain.getProtocol()), plain};
    }

    private static QoSHandler crowd(Settings settings, Handler next) {
        QoSHandler crowd = new QoSHandler(next);
        crowd.setMaxRequestCount(settings.atOnce());
        crowd.setMaxSuspendedRequestCount(settings.waiting());
        crowd.setMaxSuspend(settings.patience());
        return crowd;
    }

    private static ServletContextHandler context(SiteServlet servlet, PlainErrors errors) {
        ServletContextHandler context = new ServletContextHandler("/", ServletContextHandler.NO_SESSIONS | ServletContextHandler.NO_SECURITY);
        context.setErrorHandler(errors);
        context.addServlet(new ServletHolder(servlet), "/");
        return context;
    }

    /** All its addresses, for the tests that try each door. */
    Routes routes() {
        return routes;
    }

    /** The port that it listens on. */
    public int port() {
        return connector.getLocalPort();
    }

    /** Waits until the site is closed. */
    public void join() throws InterruptedException {
        server.join();
    }

    @Override
    public void close() {
        stop(server);
    }
}
