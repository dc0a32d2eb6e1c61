package soapstone.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.net.BindException;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.nio.channels.UnresolvedAddressException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import soapstone.demo.DemoSchool;
import soapstone.desk.EngineDesk;
import soapstone.desk.Library;
import soapstone.web.Certificate;
import soapstone.web.Settings;
import soapstone.web.SiteServer;

/** Runs the site until the process is ended. */
@Command(name = "serve", description = "Run the site.", mixinStandardHelpOptions = true)
final class Serve implements Callable<Integer> {

    private static final int LAST_PORT = 65_535;
    private static final long MEGABYTE = 1024 * 1024;
    /** With less than this a school would soon stop in the middle of a lesson. */
    private static final long LEAST_ROOM = 32 * MEGABYTE;
    private static final int TRIED = 4096;

    @Spec
    private CommandSpec spec;

    @Mixin
    private BankOptions bank;

    @Option(names = "--port", paramLabel = "N", defaultValue = "8080", description = "Port to listen on; 0 takes a free one. Without it: 8080.")
    private int port;

    @Option(names = "--host", paramLabel = "ADDRESS", defaultValue = "127.0.0.1",
            description = "Address to listen on: 127.0.0.1 (the default) for this machine only, 0.0.0.0 for all that can reach it.")
    private String host;

    @Option(names = "--data", paramLabel = "DIR",
            description = "Folder for what the school keeps; made when it is not there. Without it the site is for guests, and keeps nothing.")
    private Path data;

    @Option(names = "--database", paramLabel = "URL",
            description = "PostgreSQL in place of the data folder, such as jdbc:postgresql://localhost/school. User and password are taken from the "
                    + "environment: SOAPSTONE_DATABASE_USER and SOAPSTONE_DATABASE_PASSWORD.")
    private String databaseUrl;

    @Option(names = "--backups", paramLabel = "DIR", description = "Where the backup of each day goes; without it into 'backups' in the data folder. Sealed with the "
            + "passphrase in the environment variable SOAPSTONE_BACKUP_PASSPHRASE, if it is set.")
    private Path backups;

    @Option(names = "--demo", description = "An invented school with four weeks of work, in a data folder of its own that is made anew and thrown away.")
    private boolean demo;

    @Option(names = "--behind-tls", description = "Browsers reach the site over https only, through a proxy in front of it, which passes on the header Host and names "
            + "the client in X-Forwarded-For or Forwarded.")
    private boolean secure;

    @Option(names = "--proxy", paramLabel = "ADDRESS", description = "With --behind-tls: where the proxy speaks from, if not from this machine. May be given several times.")
    private List<String> proxies = new ArrayList<>();

    @Option(names = "--certificate", paramLabel = "FILE", description = "Speak https without a proxy, with this PKCS #12 file. Its password is taken from the environment: "
            + "SOAPSTONE_CERTIFICATE_PASSWORD.")
    private Path certificate;

    @Option(names = "--http-port", paramLabel = "N", description = "With --certificate: a port, usually 80, where whoever asks by plain http is sent to https.")
    private Integer plainPort;

    private final CompletableFuture<Supplier<Library>> library = new CompletableFuture<>();
    private final Optional<CompletableFuture<Library.Result>> ahead;

    /** @param ahead the bank that comes with the program, which is being read already */
    Serve(Optional<CompletableFuture<Library.Result>> ahead) {
        this.ahead = ahead;
    }

    @Override
    public Integer call() throws Exception {
        if (port < 0 || port > LAST_PORT) {
            throw Refusal.usage("A port is from 0 to " + LAST_PORT + ", not " + port + ".");
        }
        if (data != null && databaseUrl != null) {
            throw Refusal.usage("The school is kept in a data folder or in PostgreSQL: take --data or --database, not both.");
        }
        if (demo && (data != null || databaseUrl != null)) {
            throw Refusal.usage("The invented school has a data folder of its own: take --demo without --data and --database.");
        }
        if (certificate != null && secure || !proxies.isEmpty() && !secure) {
            throw Refusal.usage("Https comes from a proxy or from the site itself: take --behind-tls, with or without --proxy, or --certificate.");
        }
        if (plainPort != null && (certificate == null || plainPort < 1 || plainPort > LAST_PORT || plainPort == port)) {
            throw Refusal.usage("--http-port goes with --certificate: a port from 1 to " + LAST_PORT + ", another one than --port.");
        }
        if (data != null) {
            prepare(data);
        }
        try (Ending ending = Ending.ofThis()) {
            serve();
        }
        return 0;
    }

    private void serve() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        try (OpenSchool school = demo ? OpenSchool.demo() : OpenSchool.begin(data, databaseUrl, backups); SiteServer site = start(school)) {
            school.await(spec.commandLine().getErr());
            if (demo) {
                school.fillDemo(library.join().get().bank());
                out.println("An invented school. Instructor: sorrel or tansy. Student: maple2-1 to maple2-24, tanks5-1 to tanks5-24. Keeper: keeper. Passphrase of all: "
                        + DemoSchool.PASSPHRASE);
            }
            school.tidy(spec.commandLine().getErr());
            String address = (certificate == null ? "http://" : "https://") + shown(host) + ":" + site.port() + "/";
            out.println("Soapstone is at " + address);
            school.firstCode().ifPresent(code -> out.println("Nobody is in charge of this school yet. Make the first account at " + address + "start within 24 hours, with the code "
                    + code));
            out.flush();
            site.join();
        } catch (InterruptedException e) {
            // Whoever runs the site inside of another program ends it like this.
            Thread.currentThread().interrupt();
        }
    }

    /** Found out before the site starts, not when there is something to keep. */
    private static void prepare(Path folder) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw Refusal.usage("The data folder '" + folder + "' cannot be made; name a folder, or a place where one can be made.");
        }
        try {
            // What the rights say is not all: a disk may be full, or there for reading only.
            Path tried = Files.createTempFile(folder, "try", ".tmp");
            Files.write(tried, new byte[TRIED]);
            Files.delete(tried);
            checkRoom(folder, Files.getFileStore(folder).getUsableSpace());
        } catch (IOException e) {
            throw Refusal.usage("Nothing can be written into the data folder '" + folder + "'. It may belong to somebody else, be there for reading only, or stand on a disk "
                    + "that is full; name one of your own.");
        }
    }

    /** @param free bytes */
    static void checkRoom(Path folder, long free) {
        if (free < LEAST_ROOM) {
            throw Refusal.failed("There is too little room on the disk of the data folder '" + folder + "': " + free / MEGABYTE + " MB are free, and a school needs at least "
                    + LEAST_ROOM / MEGABYTE + " MB. Make room, or name a folder on another disk.");
        }
    }

    /** The web server starts while the bank is read: each takes about as long as the other. */
    private SiteServer start(OpenSchool school) throws Exception {
        Settings settings = settings();
        FutureTask<SiteServer> starting = new FutureTask<>(
                () -> SiteServer.start(settings, new EngineDesk(() -> library.join().get()), school.office(settings.isSecure())));
        new Thread(starting, "start").start();
        try {
            bank.ahead(ahead);
            library.complete(LiveLibrary.of(bank, spec.commandLine().getErr()));
        } catch (RuntimeException e) {
            library.completeExceptionally(e);
            close(starting);
            throw e;
        }
        try {
            return starting.get();
        } catch (ExecutionException e) {
            throw told(e.getCause());
        }
    }

    private Settings settings() {
        Settings plain = Settings.on(port).withHost(host);
        if (secure) {
            return plain.withProxies(Set.copyOf(proxies));
        }
        if (certificate == null) {
            return plain;
        }
        try {
            Settings own = plain.withCertificate(Certificate.read(certificate, System.getenv().getOrDefault("SOAPSTONE_CERTIFICATE_PASSWORD", "")));
            return plainPort == null ? own : own.withPlainPort(plainPort);
        } catch (IOException e) {
            throw Refusal.usage("The certificate '" + certificate + "' cannot be opened; name a PKCS #12 file with its key, and set its password in "
                    + "SOAPSTONE_CERTIFICATE_PASSWORD.");
        }
    }

    private static void close(FutureTask<SiteServer> starting) throws Exception {
        try {
            starting.get().close();
        } catch (ExecutionException e) {
            // It has not started: then there is nothing to close, and what is wrong with the bank is told.
            return;
        }
    }

    private Exception told(Throwable e) {
        if (e instanceof BindException || e.getCause() instanceof BindException) {
            return Refusal.failed("Port " + port + " of " + host + " cannot be had; name another with --port N, or 0 for any free one.");
        }
        if (e instanceof SocketException || e instanceof UnknownHostException || e instanceof UnresolvedAddressException) {
            return Refusal.usage("'" + host + "' is no address of this machine; such as 127.0.0.1 or 0.0.0.0.");
        }
        return e instanceof Exception exception ? exception : new IllegalStateException(e);
    }

    private static String shown(String host) {
        return host.equals("0.0.0.0") || host.equals("::") ? "localhost" : host.indexOf(':') >= 0 ? "[" + host + "]" : host;
    }
}
