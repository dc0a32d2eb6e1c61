package soapstone.command;

import java.io.PrintWriter;
import java.net.BindException;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import soapstone.desk.EngineDesk;
import soapstone.desk.Library;
import soapstone.web.Settings;
import soapstone.web.SiteServer;

/** Runs the site until the process is ended. */
@Command(name = "serve", description = "Run the site.", mixinStandardHelpOptions = true)
final class Serve implements Callable<Integer> {

    private static final int LAST_PORT = 65_535;

    @Spec
    private CommandSpec spec;

    @Mixin
    private BankOptions bank;

    @Option(names = "--port", paramLabel = "N", defaultValue = "8080", description = "Port to listen on; 0 takes a free one. Without it: 8080.")
    private int port;

    @Option(names = "--host", paramLabel = "ADDRESS", defaultValue = "127.0.0.1",
            description = "Address to listen on: 127.0.0.1 (the default) for this machine only, 0.0.0.0 for all that can reach it.")
    private String host;

    @Override
    public Integer call() throws Exception {
        if (port < 0 || port > LAST_PORT) {
            throw Refusal.usage("A port is from 0 to " + LAST_PORT + ", not " + port + ".");
        }
        Supplier<Library> library = LiveLibrary.of(bank, spec.commandLine().getErr());
        try (SiteServer site = start(library)) {
            PrintWriter out = spec.commandLine().getOut();
            out.println("Soapstone is at http://" + shown(host) + ":" + site.port() + "/");
            out.flush();
            site.join();
        } catch (InterruptedException e) {
            // Whoever runs the site inside of another program ends it like this.
            Thread.currentThread().interrupt();
        }
        return 0;
    }

    private SiteServer start(Supplier<Library> library) throws Exception {
        try {
            return SiteServer.start(Settings.on(port).withHost(host), new EngineDesk(library));
        } catch (Exception e) {
            if (e instanceof BindException || e.getCause() instanceof BindException) {
                throw Refusal.failed("Port " + port + " of " + host + " cannot be had; name another with --port N, or 0 for any free one.");
            }
            if (e instanceof java.net.SocketException || e instanceof java.net.UnknownHostException
                    || e instanceof java.nio.channels.UnresolvedAddressException) {
                throw Refusal.usage("'" + host + "' is no address of this machine; such as 127.0.0.1 or 0.0.0.0.");
            }
            throw e;
        }
    }

    private static String shown(String host) {
        return host.equals("0.0.0.0") || host.equals("::") ? "localhost" : host.indexOf(':') >= 0 ? "[" + host + "]" : host;
    }
}
