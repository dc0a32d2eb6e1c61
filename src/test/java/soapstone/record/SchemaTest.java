package soapstone.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import soapstone.school.People;
import soapstone.school.Person;

/** Several schools in one PostgreSQL database, each in a schema of its own. */
class SchemaTest {

    private static final Instant NOW = Instant.parse("2027-03-14T07:30:00Z");

    private static void add(Database database, String login) {
        SqlSchool.of(database).people().add(new People.NewPerson(Person.Kind.INSTRUCTOR, "Wren K.", login, "encoded", false, "en"), NOW);
    }

    @Test
    void theySeeNothingOfEachOther() {
        String url = Databases.postgresUrl();
        try (Database one = Database.at(url, "postgres", "", "one"); Database other = Database.at(url, "postgres", "", "other")) {
            add(one, "wren");
            assertThat(SqlSchool.of(other).people().byLogin("wren")).isEmpty();
            add(other, "wren");
            assertThat(one.bytes()).isPositive();
            one.throwAway();
            assertThat(SqlSchool.of(other).people().byLogin("wren")).isPresent();
        }
        try (Database again = Database.at(url, "postgres", "", "one")) {
            assertThat(SqlSchool.of(again).people().isNobodyInCharge()).isTrue();
        }
    }

    @Test
    void aSchoolThatIsTheWholeDatabaseIsNotThrownAway() {
        try (Database database = Databases.h2()) {
            assertThatThrownBy(database::throwAway).hasMessageContaining("schema of its own");
        }
    }
}
