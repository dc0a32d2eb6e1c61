package soapstone.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soapstone.school.Charter;
import soapstone.school.Codes;
import soapstone.school.People;
import soapstone.school.Person;
import soapstone.school.School;

/** What accounts need of the record, on both databases. */
class SqlAccountsTest {

    private static final Instant NOW = Instant.parse("2027-03-16T07:00:00Z");

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void theSchoolHasOneNameAndKeepsItsFirstDay(String name, Database database) {
        try (database) {
            School school = SqlSchool.of(database);
            assertThat(school.charters().find()).isEmpty();
            school.charters().write(new Charter("Tamarack Valley", false, NOW));
            school.charters().write(new Charter("Tamarack Valley Technical Center", false, NOW.plusSeconds(60)));
            assertThat(school.charters().find()).contains(new Charter("Tamarack Valley Technical Center", false, NOW));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void somebodyWithoutAPasswordHasNoneUntilOneIsSet(String name, Database database) {
        try (database) {
            School school = SqlSchool.of(database);
            school.people().add(new People.NewPerson(Person.Kind.STUDENT, "Seat 7", "seat7", "x", false, "en"), NOW);
            assertThat(school.people().isNobodyInCharge()).isTrue();
            Person wren = school.people().add(new People.NewPerson(Person.Kind.INSTRUCTOR, "Wren K.", "wren", null, false, "en"), NOW);
            assertThat(school.people().password(wren.id())).isEmpty();
            school.people().setPassword(wren.id(), "encoded", false, "");
            assertThat(school.people().password(wren.id())).contains("encoded");
            school.people().setPassword(wren.id(), null, false, "");
            assertThat(school.people().password(wren.id())).isEmpty();
            school.people().setLanguage(wren.id(), "es");
            assertThat(school.people().find(wren.id()).orElseThrow().language()).isEqualTo("es");
            school.people().setDisabled(wren.id(), true);
            assertThat(school.people().isNobodyInCharge()).isFalse();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void codesThatAreOverAreForgotten(String name, Database database) {
        try (database) {
            School school = SqlSchool.of(database);
            school.codes().make("a".repeat(64), Codes.Purpose.SECOND_FACTOR, Optional.empty(), NOW);
            school.codes().make("b".repeat(64), Codes.Purpose.FIRST_RUN, Optional.empty(), NOW.plus(Duration.ofHours(1)));
            assertThat(school.codes().forgetBefore(NOW.plusSeconds(1))).isEqualTo(1);
            assertThat(school.codes().isOpen(Codes.Purpose.FIRST_RUN, NOW)).isTrue();
        }
    }
}
