package soapstone.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Forms with files, byte by byte. */
class MultipartTest {

    private static final int MOST = 3;

    private static String form(String text) {
        return text.replace("\n", "\r\n");
    }

    @Test
    void fieldsAndFilesComeInOrder() {
        List<Multipart.Part> parts = Multipart.parse(form("--b\nContent-Disposition: form-data; name=\"roster\"\n\n1, Ada\n2, Bo\n--b\n"
                + "Content-Disposition: form-data; name=\"list\"; filename=\"../x.csv\"\nContent-Type: text/csv\n\na,b\n\n--b--\n"), "b", MOST);
        assertThat(parts).extracting(Multipart.Part::name).containsExactly("roster", "list");
        assertThat(parts).extracting(Multipart.Part::isFile).containsExactly(false, true);
        assertThat(parts).extracting(p -> new String(p.bytes(), StandardCharsets.UTF_8)).containsExactly("1, Ada\r\n2, Bo", "a,b\r\n");
    }

    @Test
    void anEmptyFieldAndAnEmptyFormAreForms() {
        assertThat(Multipart.parse(form("--b\nContent-Disposition: form-data; name=\"a\"\n\n\n--b--"), "b", MOST)).extracting(p -> p.bytes().length).containsExactly(0);
        assertThat(Multipart.parse("--b--", "b", MOST)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "--b", "--b\n", "--c--", "before\n--b--", "--b--after", "--b\nContent-Disposition: form-data; name=\"a\"\n\nx",
            "--b\nContent-Disposition: form-data; name=\"a\"\n--b--", "--b\nContent-Disposition: form-data\n\nx\n--b--", "--b\n\nx\n--b--",
            "--b\nContent-Disposition: attachment; name=\"a\"\n\nx\n--b--", "--b\nContent-Disposition: form-data; name=\"a\"\nContent-Transfer-Encoding: base64\n\nx\n--b--",
            "--b\nContent-Disposition: form-data; name=\"a\"; name=\"b\"\n\nx\n--b--"})
    void whatNoBrowserSendsIsRefused(String text) {
        assertThatThrownBy(() -> Multipart.parse(form(text), "b", MOST)).isInstanceOfSatisfying(Trouble.class, t -> assertThat(t.status()).isEqualTo(400));
    }

    @Test
    void morePartsThanAPageSendsAreTooMuch() {
        String part = "--b\nContent-Disposition: form-data; name=\"a\"\n\nx\n";
        assertThatThrownBy(() -> Multipart.parse(form(part.repeat(4) + "--b--"), "b", MOST))
                .isInstanceOfSatisfying(Trouble.class, t -> assertThat(t.status()).isEqualTo(413));
    }

    @Test
    void theBoundaryHasToBeOne() {
        assertThat(Multipart.boundary("multipart/form-data; boundary=----WebKitFormBoundaryx7")).contains("----WebKitFormBoundaryx7");
        assertThat(Multipart.boundary("multipart/form-data; boundary=\"a b\"")).isEmpty();
        assertThat(Multipart.boundary("multipart/form-data")).isEmpty();
        assertThat(Multipart.boundary("multipart/mixed; boundary=b")).isEmpty();
        assertThat(Multipart.boundary("multipart/form-data; boundary=" + "b".repeat(71))).isEmpty();
    }
}
