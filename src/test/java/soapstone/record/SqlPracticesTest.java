package soapstone.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soapstone.quantity.UnitSystem;
import soapstone.school.AnswerMark;
import soapstone.school.Practice;

/** Practice is kept once, comes back as it was, and goes away with its student. */
class SqlPracticesTest {

    private static final Instant LATER = FilledSchool.NOW.plus(Duration.ofHours(1));

    private static Practice practice(long person, String typed) {
        return new Practice(person, LATER, "bends/setback", 12, UnitSystem.US, "print1", "0.2.0", List.of(FilledSchool.mark(typed)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void itComesBackAsItWasTheNewestFirst(String kind, Database database) {
        try (database) {
            FilledSchool f = new FilledSchool(database, 1);
            assertThat(f.school.practices().keep(practice(f.student.id(), FilledSchool.HARD))).isTrue();
            List<Practice> kept = f.school.practices().of(f.student.id());
            assertThat(kept).extracting(Practice::exercise).containsExactly("bends/setback", "spacing/bolt-holes");
            assertThat(kept.get(0)).usingRecursiveComparison().ignoringFields("marks").isEqualTo(practice(f.student.id(), FilledSchool.HARD));
            AnswerMark mark = kept.get(0).marks().get(0);
            assertThat(mark).usingRecursiveComparison().ignoringFields("points", "possible", "odds").isEqualTo(FilledSchool.mark(FilledSchool.HARD));
            assertThat(mark.possible()).as("nothing to earn").isZero();
            assertThat(f.school.attempts().ofPerson(f.student.id())).as("no attempt").hasSize(1);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void manyAtTheSameMomentAreOne(String kind, Database database) throws Exception {
        try (database) {
            FilledSchool f = new FilledSchool(database, 1);
            ExecutorService all = Executors.newFixedThreadPool(8);
            try {
                var kept = all.invokeAll(IntStream.range(0, 8).<java.util.concurrent.Callable<Boolean>>mapToObj(i -> () -> f.school.practices().keep(practice(f.student.id(), "7 in")))
                        .toList());
                int counted = 0;
                for (var one : kept) {
                    counted += one.get() ? 1 : 0;
                }
                assertThat(counted).isOne();
            } finally {
                all.shutdown();
            }
            assertThat(f.school.practices().of(f.student.id())).hasSize(2);
            assertThat(Doctor.look(database).faults()).isEmpty();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void itGoesWithItsStudent(String kind, Database database) {
        try (database) {
            FilledSchool f = new FilledSchool(database, 1);
            f.school.classes().setArchived(f.schoolClass.id(), Optional.of(LATER));
            f.school.practices().keep(practice(f.student.id(), "7 in"));
            assertThat(f.school.privacy().idleSince(LATER)).as("whoever practises is not gone").isEmpty();
            assertThat(f.school.privacy().idleSince(LATER.plusSeconds(1))).hasSize(1);
            assertThat(f.school.privacy().wouldGo(f.student.id())).containsEntry("practice", 2L).containsEntry("practice_mark", 2L);
            f.school.privacy().erase(f.student.id(), Optional.empty(), LATER);
            assertThat(f.school.practices().of(f.student.id())).isEmpty();
            assertThat(f.school.privacy().wouldGo(f.student.id())).containsEntry("practice", 0L).containsEntry("practice_mark", 0L);
        }
    }
}
