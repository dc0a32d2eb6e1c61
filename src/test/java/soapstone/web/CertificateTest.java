package soapstone.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLException;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soapstone.school.Person;

/** The site with a certificate of its own. */
class CertificateTest {

    private static final String PASSWORD = "opens the keys";

    @TempDir
    private Path folder;

    /** Made by the Java that runs the test. */
    private Path file() throws Exception {
        Path file = folder.resolve("site.p12");
        String tool = Path.of(System.getProperty("java.home"), "bin", "keytool").toString();
        Process made = new ProcessBuilder(tool, "-genkeypair", "-alias", "site", "-keyalg", "EC", "-dname", "CN=localhost", "-ext", "san=ip:127.0.0.1", "-storetype", "PKCS12",
                "-keystore", file.toString(), "-storepass", PASSWORD).redirectErrorStream(true).start();
        made.getInputStream().readAllBytes();
        assertThat(made.waitFor()).isZero();
        return file;
    }

    private static HttpClient trusting(Certificate certificate) throws Exception {
        TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        trust.init(certificate.keys());
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, trust.getTrustManagers(), null);
        return HttpClient.newBuilder().sslContext(context).build();
    }

    @Test
    void theSiteSpeaksTlsAndBindsItsCookieToIt() throws Exception {
        Certificate certificate = Certificate.read(file(), PASSWORD);
        try (SchoolUnderTest site = SchoolUnderTest.start(new SampleDesk(), Settings.on(0).withCertificate(certificate))) {
            site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
            HttpResponse<String> in = trusting(certificate).send(HttpRequest.newBuilder(URI.create("https://127.0.0.1:" + site.port() + "/sign-in"))
                    .header("Content-Type", "application/x-www-form-urlencoded").header("Origin", "https://127.0.0.1:" + site.port())
                    .POST(HttpRequest.BodyPublishers.ofString(PlainHttp.form(List.of("login", "wren", "password", SchoolUnderTest.PASSWORD)))).build(),
                    HttpResponse.BodyHandlers.ofString());
            assertThat(in.statusCode()).isEqualTo(302);
            assertThat(in.headers().firstValue("Set-Cookie").orElseThrow()).startsWith("__Host-soapstone=").endsWith("; Secure");
            assertThat(in.headers().firstValue("Strict-Transport-Security")).contains("max-age=31536000");
            assertThat(in.sslSession().orElseThrow().getProtocol()).isEqualTo("TLSv1.3");
        }
    }

    /** Ciphers that chain blocks, and what is older than TLS 1.2, are known to be weak. */
    @Test
    void oldProtocolsAndCiphersAreNotSpoken() throws Exception {
        Certificate certificate = Certificate.read(file(), PASSWORD);
        try (SchoolUnderTest site = SchoolUnderTest.start(new SampleDesk(), Settings.on(0).withCertificate(certificate))) {
            assertThat(shaken(certificate, site.port(), "TLSv1.2", "TLS_ECDHE_ECDSA_WITH_AES_256_GCM_SHA384")).isEqualTo("TLSv1.2");
            assertThatThrownBy(() -> shaken(certificate, site.port(), "TLSv1.2", "TLS_ECDHE_ECDSA_WITH_AES_256_CBC_SHA384")).isInstanceOf(SSLException.class);
            assertThatThrownBy(() -> shaken(certificate, site.port(), "TLSv1.1", "TLS_ECDHE_ECDSA_WITH_AES_256_CBC_SHA")).isInstanceOf(SSLException.class);
        }
    }

    private static String shaken(Certificate certificate, int port, String protocol, String cipher) throws Exception {
        try (SSLSocket socket = (SSLSocket) trusting(certificate).sslContext().getSocketFactory().createSocket("127.0.0.1", port)) {
            socket.setEnabledProtocols(new String[] {protocol});
            socket.setEnabledCipherSuites(new String[] {cipher});
            socket.startHandshake();
            return socket.getSession().getProtocol();
        }
    }

    @Test
    void plainHttpIsSentToHttpsAndGetsNothingElse() throws Exception {
        int plain = freePort();
        int port = freePort();
        try (SchoolUnderTest site = SchoolUnderTest.start(new SampleDesk(), Settings.on(port).withCertificate(Certificate.read(file(), PASSWORD)).withPlainPort(plain))) {
            for (String path : List.of("/", "/sign-in", "/classes/1/students?name=a", "/no-such-page")) {
                HttpResponse<String> answer = HttpClient.newHttpClient().send(HttpRequest.newBuilder(URI.create("http://localhost:" + plain + path)).build(),
                        HttpResponse.BodyHandlers.ofString());
                assertThat(answer.statusCode()).as(path).isEqualTo(301);
                assertThat(answer.headers().firstValue("Location")).as(path).contains("https://localhost:" + port + path);
                assertThat(answer.headers().firstValue("Set-Cookie")).as(path).isEmpty();
            }
            HttpResponse<String> form = HttpClient.newHttpClient().send(HttpRequest.newBuilder(URI.create("http://localhost:" + plain + "/sign-in"))
                    .POST(HttpRequest.BodyPublishers.ofString("login=wren&password=x")).build(), HttpResponse.BodyHandlers.ofString());
            assertThat(form.statusCode()).isEqualTo(301);
        }
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }

    @Test
    void aFileThatIsNoneOrAnotherPasswordIsRefused() throws Exception {
        Path keys = file();
        assertThatThrownBy(() -> Certificate.read(keys, "something else")).isInstanceOf(IOException.class);
        Path text = Files.writeString(folder.resolve("text"), "no keys");
        assertThatThrownBy(() -> Certificate.read(text, PASSWORD)).isInstanceOf(IOException.class);
        assertThatThrownBy(() -> Certificate.read(folder.resolve("none"), PASSWORD)).isInstanceOf(IOException.class);
    }
}
