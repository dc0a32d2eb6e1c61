package soapstone.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.net.ssl.SSLContext;
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
                    .POST(HttpRequest.BodyPublishers.ofString(PlainHttp.form(java.util.List.of("login", "wren", "password", SchoolUnderTest.PASSWORD)))).build(),
                    HttpResponse.BodyHandlers.ofString());
            assertThat(in.statusCode()).isEqualTo(302);
            assertThat(in.headers().firstValue("Set-Cookie").orElseThrow()).startsWith("__Host-soapstone=").endsWith("; Secure");
            assertThat(in.headers().firstValue("Strict-Transport-Security")).isPresent();
            assertThat(in.sslSession().orElseThrow().getProtocol()).isEqualTo("TLSv1.3");
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
