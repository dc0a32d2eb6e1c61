package soapstone.files;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a guard writes down: one line an event, such as
 * {@code 2027-03-16T07:00:00Z sign-in-failed address=192.0.2.7 about=12}. Times are in UTC. People are numbers; no name,
 * no secret and nothing that anybody typed is handed in here, and a value cannot break out of its line all the same
 * (ASVS 5.0, 16.2 to 16.4).
 *
 * <p>Addresses of machines are told nowhere else, so that lines go after 30 days.
 */
public final class SecurityLog {

    public static final String FILE = "security.log";

    private static final Duration KEPT = Duration.ofDays(30);
    private static final int LONGEST = 120;
    private static final int MOST_CAUSES = 6;
    private static final int MOST_PLACES = 40;
    private static final String ODD = "[^!-<>-~]";

    private final Optional<Path> file;
    private final PrintStream otherwise;
    private Instant tidied = Instant.MIN;

    private SecurityLog(Optional<Path> file, PrintStream otherwise) {
        this.file = file;
        this.otherwise = otherwise;
    }

    /** Into {@value #FILE} of a folder that only this program writes into. */
    public static SecurityLog in(Path folder) {
        return new SecurityLog(Optional.of(folder.resolve(FILE)), System.err);
    }

    /** To a stream, such as that of a service whose lines are collected elsewhere. */
    public static SecurityLog to(PrintStream out) {
        return new SecurityLog(Optional.empty(), out);
    }

    /**
     * Writes one line.
     *
     * @param event of our own words, such as {@code sign-in-failed}
     * @param facts names and values in turn; a value of no signs is left out
     */
    public synchronized void note(Instant at, String event, String... facts) {
        write(at, line(at, event, facts) + "\n");
    }

    /**
     * Writes one line with all the places that a fault went through, the innermost first, and those of its causes: without
     * their words, which may be somebody's.
     */
    public synchronized void fault(Instant at, String event, Throwable fault, String... facts) {
        write(at, line(at, event, facts) + " trace=" + trace(fault) + "\n");
    }

    /** Such as {@code java.lang.IllegalStateException@soapstone.web.Site.front:40<soapstone.web.…}. */
    private static String trace(Throwable fault) {
        List<String> all = new ArrayList<>();
        for (Throwable one = fault; one != null && all.size() < MOST_CAUSES; one = one.getCause()) {
            all.add(one.getClass().getName() + "@" + Arrays.stream(one.getStackTrace()).limit(MOST_PLACES)
                    .map(e -> e.getClassName() + "." + e.getMethodName() + ":" + e.getLineNumber()).collect(Collectors.joining("<")));
        }
        return String.join(";because:", all).replaceAll(ODD, "?");
    }

    private static String line(Instant at, String event, String... facts) {
        StringBuilder line = new StringBuilder(at.truncatedTo(ChronoUnit.SECONDS).toString()).append(' ').append(harmless(event));
        for (int i = 0; i + 1 < facts.length; i += 2) {
            if (!facts[i + 1].isEmpty()) {
                line.append(' ').append(harmless(facts[i])).append('=').append(harmless(facts[i + 1]));
            }
        }
        return line.toString();
    }

    /** Signs that could end a line, a value or a terminal's patience. */
    private static String harmless(String text) {
        String plain = text.replaceAll(ODD, "?");
        return plain.length() <= LONGEST ? plain : plain.substring(0, LONGEST);
    }

    /** A log that cannot be written stops nobody at the door; the line then goes where the program's faults go. */
    private void write(Instant at, String line) {
        try {
            if (file.isPresent()) {
                tidy(file.get(), at);
                Files.writeString(file.get(), line, StandardOpenOption.APPEND);
                return;
            }
        } catch (IOException e) {
            otherwise.println("The security log cannot be written: " + e.getClass().getSimpleName());
        }
        otherwise.print(line);
        otherwise.flush();
    }

    /** Leaves out what is old, also where nothing new is written for weeks. */
    public synchronized void tidy(Instant now) {
        try {
            if (file.isPresent() && Files.exists(file.get())) {
                tidy(file.get(), now);
            }
        } catch (IOException e) {
            otherwise.println("The security log cannot be written: " + e.getClass().getSimpleName());
        }
    }

    /** Once a day, and at the first line, what is old is left out. */
    private void tidy(Path log, Instant at) throws IOException {
        Instant day = at.truncatedTo(ChronoUnit.DAYS);
        if (!Files.exists(log)) {
            Files.createFile(log, own(log));
        } else if (!day.equals(tidied)) {
            String oldest = at.minus(KEPT).truncatedTo(ChronoUnit.SECONDS).toString();
            Path fresh = log.resolveSibling(FILE + ".new");
            Files.deleteIfExists(fresh);
            Files.createFile(fresh, own(log));
            Files.write(fresh, since(log, oldest), StandardOpenOption.APPEND);
            Files.move(fresh, log, StandardCopyOption.REPLACE_EXISTING);
        }
        tidied = day;
    }

    /** Times of one form stand in the order of their signs. */
    private static List<String> since(Path log, String oldest) throws IOException {
        try (Stream<String> lines = Files.lines(log, StandardCharsets.UTF_8)) {
            return lines.filter(line -> line.compareTo(oldest) >= 0).toList();
        }
    }

    /** For nobody else to read, where the file system knows of such a thing. */
    private static FileAttribute<?>[] own(Path log) {
        boolean posix = log.getFileSystem().supportedFileAttributeViews().contains("posix");
        return posix ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))} : new FileAttribute<?>[0];
    }
}
