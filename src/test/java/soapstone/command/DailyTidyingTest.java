package soapstone.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import soapstone.record.Database;
import soapstone.record.Databases;
import soapstone.record.SqlSchool;
import soapstone.school.Codes;
import soapstone.school.School;

/** The school is tidied while the site runs, not only when it starts. */
class DailyTidyingTest {

    private static final int MOST_LOOKS = 2000;

    private static long codes(Database database) {
        return database.read(h -> h.createQuery("select count(*) from once_code").mapTo(Long.class).one());
    }

    private static void isTidied(Database database) throws InterruptedException {
        for (int look = 0; look < MOST_LOOKS && codes(database) > 0; look++) {
            Thread.sleep(10);
        }
        assertThat(codes(database)).isZero();
    }

    @Test
    void againAndAgain() throws Exception {
        StringWriter err = new StringWriter();
        try (Database database = Databases.h2(); DailyTidying tidying = DailyTidying.of(SqlSchool.of(database), Duration.ofMillis(20), new PrintWriter(err))) {
            School school = SqlSchool.of(database);
            for (String code : new String[] {"a", "b", "c"}) {
                school.codes().make(code.repeat(64), Codes.Purpose.FIRST_RUN, Optional.empty(), Instant.EPOCH);
                isTidied(database);
            }
            assertThat(tidying).isNotNull();
        }
        assertThat(err.toString()).isEmpty();
    }
}
