package soapstone.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soapstone.record.Database;
import soapstone.school.Assignment;
import soapstone.school.Person;
import soapstone.school.SchoolClass;

/** A make-up that is asked for twice at the same moment is one: by a double click, or by two who teach a class together. */
class OnceTest {

    private static final Pattern SEEN = Pattern.compile("name=\"seen\" value=\"([0-9]+)\"");

    private static String seen(PlainHttp http, String path) throws Exception {
        Matcher found = SEEN.matcher(http.get(path).body());
        assertThat(found.find()).isTrue();
        return found.group(1);
    }

    private static HttpResponse<String> ask(PlainHttp http, String path, String seen, Person student, String day) throws Exception {
        return http.post(path + "/make-up", "seen", seen, "up-" + student.id(), "yes", "up-date", day, "up-time", "12:00");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void twiceAtTheSameMomentIsOnce(String kind, Database database) throws Exception {
        ExecutorService hands = Executors.newFixedThreadPool(8);
        try (SchoolUnderTest site = SchoolUnderTest.start(new SampleDesk(), database, false)) {
            Person wren = site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
            Person rook = site.add(Person.Kind.INSTRUCTOR, "Rook T.", "rook");
            SchoolClass in = site.addClass("Sheet metal 1", wren);
            site.school.classes().addInstructor(in.id(), rook.id());
            Person ada = site.enrol(in, "Ada Q.", "ada", "1").person();
            Person bo = site.enrol(in, "Bo R.", "bo", "2").person();
            Assignment first = site.school.assignments().add(new Assignment(0, in.id(), "Spacing", Assignment.State.GIVEN, site.now(), Optional.empty(), Assignment.Late.TAKEN, 3,
                    Assignment.Shows.LINES, true, wren.id(), site.now(), Optional.empty(), List.of(new Assignment.Task(0, 1, List.of("spacing/bolt-holes"), 1, 1))), List.of());
            String path = "/assignments/" + first.id();
            List<PlainHttp> both = List.of(new PlainHttp(site).signIn("wren", SchoolUnderTest.PASSWORD), new PlainHttp(site).signIn("rook", SchoolUnderTest.PASSWORD));
            String seen = seen(both.get(0), path);

            List<Future<HttpResponse<String>>> answers = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                PlainHttp who = both.get(i % 2);
                String day = "2027-04-0" + (1 + i % 2);
                answers.add(hands.submit(() -> ask(who, path, seen, ada, day)));
            }
            Set<String> places = new HashSet<>();
            for (Future<HttpResponse<String>> answer : answers) {
                assertThat(answer.get().statusCode()).isEqualTo(302);
                places.add(answer.get().headers().firstValue("Location").orElseThrow());
            }
            assertThat(places).as("all see the same one").hasSize(1);
            assertThat(site.school.assignments().of(in.id())).hasSize(2);
            assertThat(site.school.audit().latest("assignment.make-up", 9)).hasSize(1);

            ask(both.get(0), path, seen, bo, "2027-04-01");
            assertThat(site.school.assignments().of(in.id())).as("for somebody else it is another").hasSize(3);
            ask(both.get(1), path, seen(both.get(1), path), ada, "2027-04-01");
            assertThat(site.school.assignments().of(in.id())).as("whoever saw the first may give one more").hasSize(4);
        } finally {
            hands.shutdownNow();
        }
    }
}
