package soapstone.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import soapstone.desk.Library;

class ServeTest {

    private static final String TITLE = "Rivets along a rail";

    @TempDir
    private Path folder;

    @Test
    @Timeout(60)
    void printsTheAddressAndACodeForTheFirstAccountAndServes() throws Exception {
        ExecutorService one = Executors.newSingleThreadExecutor();
        try (PipedInputStream printed = new PipedInputStream(); PrintStream out = new PrintStream(new PipedOutputStream(printed), true, StandardCharsets.UTF_8)) {
            Future<Integer> serving = one.submit(() -> Soapstone.run(out, out, "serve", "--port", "0", "--bank", Shell.SMALL.toString(), "--data", folder.resolve("kept").toString()));
            BufferedReader lines = new BufferedReader(new InputStreamReader(printed, StandardCharsets.UTF_8));
            String line = lines.readLine();
            String first = lines.readLine();
            assertThat(first).matches("Nobody is in charge .* at " + Pattern.quote(line.substring(line.indexOf("http"))) + "start within 24 hours, with the code (?:[0-9A-Z]{4}-){3}[0-9A-Z]{4}");
            assertThat(line).matches("Soapstone is at http://127\\.0\\.0\\.1:\\d+/");
            HttpResponse<String> page = HttpClient.newHttpClient().send(
                    HttpRequest.newBuilder(URI.create(line.substring(line.indexOf("http")))).build(), HttpResponse.BodyHandlers.ofString());
            assertThat(page.statusCode()).isEqualTo(200);
            assertThat(page.body()).contains("/units/rails");
            assertThat(folder.resolve("kept")).isDirectoryContaining("glob:**school.mv.db");
            one.shutdownNow();
            assertThat(serving.get(20, TimeUnit.SECONDS)).isZero();
            assertThat(lines.ready()).isFalse();
        } finally {
            one.shutdownNow();
        }
    }

    @Test
    void aDataFolderThatCannotBeMade() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "no folder");
        Shell.Result result = Shell.small("serve", "--port", "0", "--data", file.resolve("below").toString());
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("cannot be made; name a folder").doesNotContain("Exception");
    }

    @Test
    void aDataFolderOnADiskWithoutRoom() {
        assertThatThrownBy(() -> Serve.checkRoom(folder, 5L << 20)).isInstanceOf(Refusal.class).hasMessageContaining("5 MB are free").hasMessageContaining("Make room");
        assertThatCode(() -> Serve.checkRoom(folder, 32L << 20)).doesNotThrowAnyException();
    }

    @Test
    @Timeout(120)
    void aSecondProgramOnTheSameDataFolderIsRefused() throws Exception {
        Path data = folder.resolve("kept");
        Process first = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx256m", "-cp", System.getProperty("java.class.path"), "soapstone.Main",
                "serve", "--port", "0", "--bank", Shell.SMALL.toString(), "--data", data.toString()).redirectError(ProcessBuilder.Redirect.DISCARD).start();
        try (BufferedReader said = new BufferedReader(new InputStreamReader(first.getInputStream(), StandardCharsets.UTF_8))) {
            assertThat(said.readLine()).startsWith("Soapstone is at ");
            Shell.Result second = Shell.small("serve", "--port", "0", "--data", data.toString());
            assertThat(second.code()).isEqualTo(1);
            assertThat(second.err()).contains("Another program has the school in this data folder open.").contains("--database URL").doesNotContain("Exception").doesNotContain("\tat ");
            assertThat(first.isAlive()).isTrue();
        } finally {
            first.destroy();
            first.waitFor(20, TimeUnit.SECONDS);
            first.destroyForcibly();
        }
    }

    @Test
    void httpsComesFromOnePlaceOnly() {
        Shell.Result both = Shell.small("serve", "--port", "0", "--behind-tls", "--certificate", "site.p12");
        assertThat(both.code()).isEqualTo(2);
        assertThat(both.err()).contains("take --behind-tls, with or without --proxy, or --certificate");
        assertThat(Shell.small("serve", "--port", "0", "--proxy", "192.0.2.1").code()).isEqualTo(2);
        Shell.Result none = Shell.small("serve", "--port", "0", "--certificate", folder.resolve("none.p12").toString());
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err()).contains("cannot be opened; name a PKCS #12 file").doesNotContain("Exception");
    }

    @Test
    void aPortThatIsTaken() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            Shell.Result result = Shell.small("serve", "--port", String.valueOf(taken.getLocalPort()));
            assertThat(result.code()).isEqualTo(1);
            assertThat(result.err()).contains("cannot be had; name another with --port N").doesNotContain("Exception");
            assertThat(result.out()).isEmpty();
        }
    }

    @Test
    void aChangedFileComesInWithTheNextLook() throws IOException {
        try (Stream<Path> files = Files.walk(Shell.SMALL.getParent())) {
            for (Path file : (Iterable<Path>) files.filter(Files::isRegularFile)::iterator) {
                Path copy = folder.resolve(Shell.SMALL.getParent().relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
        BankOptions options = new BankOptions();
        new CommandLine(options).parseArgs("--bank", folder.resolve("exercise-bank").toString());
        AtomicLong clock = new AtomicLong();
        StringWriter told = new StringWriter();
        Supplier<Library> library = LiveLibrary.of(options, new PrintWriter(told), clock::get);
        Path rivets = folder.resolve("exercise-bank/rails/rivets.yaml");
        String text = Files.readString(rivets);

        write(rivets, text.replace(TITLE, "Rivets in a row"), 1);
        assertThat(title(library)).isEqualTo(TITLE);
        clock.addAndGet(2_000_000_000L);
        assertThat(title(library)).isEqualTo("Rivets in a row");

        write(rivets, text.replace("title: " + TITLE, "titel: " + TITLE), 2);
        clock.addAndGet(2_000_000_000L);
        assertThat(title(library)).isEqualTo("Rivets in a row");
        assertThat(told.toString()).contains("exercise-bank/rails/rivets.yaml:1:1: ").contains("titel");
    }

    private static void write(Path file, String text, int secondsLater) throws IOException {
        Files.writeString(file, text);
        Files.setLastModifiedTime(file, java.nio.file.attribute.FileTime.fromMillis(1_000_000L + secondsLater * 1000L));
    }

    private static String title(Supplier<Library> library) {
        return library.get().bank().exercise("rails/rivets").orElseThrow().title();
    }
}
