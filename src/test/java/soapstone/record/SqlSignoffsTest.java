package soapstone.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soapstone.school.Competency;
import soapstone.school.Note;
import soapstone.school.Notes;
import soapstone.school.Signoff;
import soapstone.school.Signoffs;
import soapstone.school.TradeCode;

/** Competency lists, signatures and requests for corrections, in both databases. */
class SqlSignoffsTest {

    private static final TradeCode LAYOUT = new TradeCode("Sheet work", "2027", "B-1", "Lays out \u215D ″");
    private static final TradeCode OLDER = new TradeCode("Sheet work", "2017", "B-1", "Lays out");

    private static Signoff entry(FilledSchool f, Signoff.Act act, TradeCode code) {
        return new Signoff(0, f.student.id(), f.schoolClass.id(), code, act, FilledSchool.HARD, "one\ntwo", f.student.id(), "Wren K.", FilledSchool.NOW);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void aListHoldsWhatWasTakenAndTheClassesOwn(String kind, Database database) {
        try (database) {
            FilledSchool f = new FilledSchool(database, 1);
            Signoffs store = f.school.signoffs();
            assertThat(store.add(f.schoolClass.id(), new Signoffs.NewCompetency(TradeCode.own("S1", "Sweeps"), List.of()))).isTrue();
            assertThat(store.add(f.schoolClass.id(), new Signoffs.NewCompetency(TradeCode.own("S1", "Other"), List.of()))).as("taken").isFalse();
            store.list(f.schoolClass.id(), List.of(new Signoffs.NewCompetency(LAYOUT, List.of("a", "b")), new Signoffs.NewCompetency(OLDER, List.of("a"))));
            assertThat(store.listed(f.schoolClass.id())).extracting(Competency::code).containsExactly(OLDER, LAYOUT, TradeCode.own("S1", "Sweeps"));
            store.list(f.schoolClass.id(), List.of(new Signoffs.NewCompetency(LAYOUT, List.of("other"))));
            List<Competency> left = store.listed(f.schoolClass.id());
            assertThat(left).extracting(Competency::code).containsExactly(LAYOUT, TradeCode.own("S1", "Sweeps"));
            assertThat(left.get(0).skills()).as("what is on the list already stays as it was").containsExactly("a", "b");
            store.remove(f.schoolClass.id() + 1, left.get(1).id());
            store.remove(f.schoolClass.id(), left.get(0).id());
            assertThat(store.listed(f.schoolClass.id())).as("another class's, and a frame's, do not go this way").hasSize(2);
            store.remove(f.schoolClass.id(), left.get(1).id());
            assertThat(store.listed(f.schoolClass.id())).hasSize(1);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void entriesAreAppendedAndTheSameTwiceIsOne(String kind, Database database) {
        try (database) {
            FilledSchool f = new FilledSchool(database, 1);
            Signoffs store = f.school.signoffs();
            assertThat(store.append(entry(f, Signoff.Act.WITHDRAWN, LAYOUT))).as("never signed").isFalse();
            assertThat(store.append(entry(f, Signoff.Act.SIGNED, LAYOUT))).isTrue();
            assertThat(store.append(entry(f, Signoff.Act.SIGNED, LAYOUT))).isFalse();
            assertThat(store.append(entry(f, Signoff.Act.SIGNED, OLDER))).as("another edition").isTrue();
            assertThat(store.append(entry(f, Signoff.Act.WITHDRAWN, LAYOUT))).isTrue();
            assertThat(store.append(entry(f, Signoff.Act.SIGNED, LAYOUT))).isTrue();
            assertThat(store.of(f.student.id())).extracting(s -> s.act() + " " + s.code().edition())
                    .containsExactly("SIGNED 2027", "SIGNED 2017", "WITHDRAWN 2027", "SIGNED 2027");
            assertThat(store.ofClass(f.schoolClass.id())).isEqualTo(store.of(f.student.id()));
            Signoff first = store.of(f.student.id()).get(0);
            assertThat(first).isEqualTo(new Signoff(first.id(), f.student.id(), f.schoolClass.id(), LAYOUT, Signoff.Act.SIGNED, FilledSchool.HARD, "one\ntwo",
                    f.student.id(), "Wren K.", FilledSchool.NOW));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void ofTwentySignaturesAtOnceOneIsKept(String kind, Database database) {
        try (database) {
            FilledSchool f = new FilledSchool(database, 1);
            long kept = IntStream.range(0, 20).parallel().filter(i -> f.school.signoffs().append(entry(f, Signoff.Act.SIGNED, LAYOUT))).count();
            assertThat(kept).isEqualTo(1);
            assertThat(f.school.signoffs().of(f.student.id())).hasSize(1);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void aRequestIsAnsweredOnceAndStays(String kind, Database database) {
        try (database) {
            FilledSchool f = new FilledSchool(database, 1);
            Notes store = f.school.notes();
            store.ask(f.student.id(), f.schoolClass.id(), FilledSchool.HARD, FilledSchool.NOW);
            store.ask(f.student.id(), f.schoolClass.id(), FilledSchool.HARD, FilledSchool.NOW.plus(Duration.ofSeconds(1)));
            Note open = store.of(f.student.id()).get(0);
            assertThat(store.of(f.student.id())).as("the same twice").hasSize(1);
            assertThat(open.asks()).isEqualTo(FilledSchool.HARD);
            Notes.Answer refused = new Notes.Answer(Note.Outcome.REFUSED, "The mark stands.", f.student.id(), "Wren K.", FilledSchool.NOW);
            assertThat(store.answer(open.id(), refused)).isTrue();
            assertThat(store.answer(open.id(), new Notes.Answer(Note.Outcome.MENDED, "x", f.student.id(), "x", FilledSchool.NOW))).isFalse();
            Note answered = store.ofClass(f.schoolClass.id()).get(0);
            assertThat(answered.outcome()).isEqualTo(Note.Outcome.REFUSED);
            assertThat(answered.answer()).isEqualTo("The mark stands.");
            assertThat(answered.answered()).contains(FilledSchool.NOW);
            assertThat(answered.byName()).isEqualTo("Wren K.");
        }
    }
}
