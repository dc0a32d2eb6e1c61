package soapstone.speed;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A server in a process of its own, started as from a shell. */
final class Child implements AutoCloseable {

    private static final Pattern PORT = Pattern.compile("http://[^:/]+:(\\d+)/");

    private final Process process;
    private final int port;

    private Child(Process process, int port) {
        this.process = process;
        this.port = port;
    }

    /** Starts a Java program and waits for the line with its address. */
    static Child start(List<String> options, String main, List<String> arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        command.addAll(options);
        command.addAll(List.of("-cp", classPath(), main));
        command.addAll(arguments);
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String line = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8)).readLine();
        Matcher m = PORT.matcher(line == null ? "" : line);
        if (!m.find()) {
            process.destroyForcibly();
            throw new IOException("a server did not start: " + line);
        }
        return new Child(process, Integer.parseInt(m.group(1)));
    }

    /** What this program runs from: its jar, or the folders and jars that a build tool put together. */
    static String classPath() {
        if (Child.class.getClassLoader() instanceof URLClassLoader loader) {
            return Arrays.stream(loader.getURLs()).map(Child::path).collect(Collectors.joining(System.getProperty("path.separator")));
        }
        return System.getProperty("java.class.path");
    }

    /** The jar that this program runs from, if it does. */
    static Optional<Path> jar() {
        Path own = Path.of(path(Child.class.getProtectionDomain().getCodeSource().getLocation()));
        return Files.isRegularFile(own) ? Optional.of(own) : Optional.empty();
    }

    private static String path(URL url) {
        try {
            return Path.of(url.toURI()).toString();
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    int port() {
        return port;
    }

    /** The most memory that the process has had, in megabytes; empty where the system does not tell. */
    Optional<Integer> megabytes() {
        return megabytes(process);
    }

    static Optional<Integer> megabytes(Process process) {
        try {
            return Files.readAllLines(Path.of("/proc", String.valueOf(process.pid()), "status")).stream().filter(l -> l.startsWith("VmHWM:"))
                    .map(l -> Integer.parseInt(l.replaceAll("\\D", "")) / 1024).findFirst();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    @Override
    public void close() {
        process.destroy();
        try {
            if (!process.waitFor(5, TimeUnit.SECONDS)) {
                process.destroyForcibly();
            }
        } catch (InterruptedException e) {
            process.destroyForcibly();
            Thread.currentThread().interrupt();
        }
    }
}
