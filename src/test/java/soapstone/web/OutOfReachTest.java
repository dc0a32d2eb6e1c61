package soapstone.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import soapstone.page.UnitView;
import soapstone.record.Database;
import soapstone.record.Databases;
import soapstone.school.OutOfReach;
import soapstone.school.Person;

/** What nobody expected: a room that breaks says so under a number, and a database that is away is waited for. */
class OutOfReachTest {

    @TempDir
    private Path folder;

    @Test
    void aFaultOfOurOwnHasANumberOnThePageAndItsTraceInTheLog() throws Exception {
        try (SchoolUnderTest site = SchoolUnderTest.start(new SampleDesk() {
            @Override
            public Optional<UnitView> unit(String unit) {
                throw new IllegalStateException("the key is forty-two", new ArithmeticException("of Ada"));
            }
        })) {
            HttpResponse<String> page = new PlainHttp(site).get("/units/spacing");
            assertThat(page.statusCode()).isEqualTo(500);
            assertThat(page.body()).contains("This is a fault of the site and not of your answer.").doesNotContain("Exception").doesNotContain("forty-two").doesNotContain("OutOfReachTest");
            String reference = Pattern.compile("under\\s([0-9a-f]{8})").matcher(page.body().replace('\u00a0', ' ')).results().findFirst().orElseThrow().group(1);
            String line = site.log().lines().filter(l -> l.contains("reference=" + reference)).findFirst().orElseThrow();
            assertThat(line).contains(" broke ").contains("at=/units/{unit}").contains("trace=java.lang.IllegalStateException@soapstone.web.OutOfReachTest$1.unit:")
                    .contains("<soapstone.web.SiteServlet.reply:").contains(";because:java.lang.ArithmeticException@").doesNotContain("forty-two").doesNotContain("Ada");
        }
    }

    private static void isAway(HttpResponse<String> page) {
        assertThat(page.statusCode()).isEqualTo(503);
        assertThat(page.headers().firstValue("Retry-After")).isPresent();
        assertThat(page.body()).contains("The records cannot be reached at the moment").contains("counts once").doesNotContain("Exception").doesNotContain("SQL");
    }

    @Test
    void anEmbeddedDatabaseThatIsClosedInTheMiddle() throws Exception {
        Database database = Databases.h2();
        try (SchoolUnderTest site = SchoolUnderTest.start(new SampleDesk(), database, false)) {
            site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
            PlainHttp http = new PlainHttp(site).signIn("wren", SchoolUnderTest.PASSWORD);
            database.close();
            isAway(http.get("/classes"));
            isAway(http.post("/classes/new", "name", "Sheet metal 1"));
            assertThat(new PlainHttp(site).get("/units").statusCode()).as("what needs no records goes on").isEqualTo(200);
            assertThat(site.log()).contains(" out-of-reach ").contains("at=null").doesNotContain(" broke ");
        }
    }

    @Test
    void anEmbeddedDatabaseThatClosedItselfIsOpenedAgain() throws Exception {
        Database database = Databases.h2();
        try (SchoolUnderTest site = SchoolUnderTest.start(new SampleDesk(), database, false)) {
            site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
            PlainHttp http = new PlainHttp(site).signIn("wren", SchoolUnderTest.PASSWORD);
            assertThatThrownBy(() -> database.read(h -> h.execute("shutdown immediately"))).isInstanceOf(OutOfReach.class);
            assertThat(comesBack(http)).isTrue();
        }
    }

    private EmbeddedPostgres postgres(int port) throws IOException {
        EmbeddedPostgres.Builder builder = EmbeddedPostgres.builder().setDataDirectory(folder.resolve("pg")).setCleanDataDirectory(false);
        return port == 0 ? builder.start() : builder.setPort(port).start();
    }

    @Test
    @Timeout(120)
    void aServerThatIsStoppedAndStarted() throws Exception {
        EmbeddedPostgres first = postgres(0);
        int port = first.getPort();
        try (Database database = Database.at(first.getJdbcUrl("postgres", "postgres"), "postgres", "");
                SchoolUnderTest site = SchoolUnderTest.start(new SampleDesk(), database, false)) {
            site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
            PlainHttp http = new PlainHttp(site).signIn("wren", SchoolUnderTest.PASSWORD);
            first.close();
            isAway(http.get("/classes"));
            isAway(http.post("/classes/new", "name", "Sheet metal 1"));
            try (EmbeddedPostgres again = postgres(port)) {
                assertThat(again.getPort()).isEqualTo(port);
                assertThat(comesBack(http)).isTrue();
                assertThat(http.get("/classes").body()).as("the same session").contains("Wren K.");
                assertThat(site.school.classes().taughtBy(1)).as("what was not acknowledged was not kept").isEmpty();
            }
        } finally {
            first.close();
        }
    }

    /** Within a few tries, each of which may say that it is still away. */
    private static boolean comesBack(PlainHttp http) throws Exception {
        for (int i = 0; i < 10; i++) {
            HttpResponse<String> page = http.get("/classes");
            if (page.statusCode() == 200) {
                return true;
            }
            isAway(page);
        }
        return false;
    }
}
