package soapstone.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soapstone.exercise.Conventions;
import soapstone.mark.Verdict;
import soapstone.quantity.Quantity;
import soapstone.quantity.UnitSystem;
import soapstone.quantity.Units;
import soapstone.school.AnswerMark;
import soapstone.school.Assignment;
import soapstone.school.Assignments;
import soapstone.school.Attempt;
import soapstone.school.Attempts;
import soapstone.school.Audit;
import soapstone.school.ClassSettings;
import soapstone.school.Classes;
import soapstone.school.Codes;
import soapstone.school.Counted;
import soapstone.school.Draft;
import soapstone.school.Member;
import soapstone.school.People;
import soapstone.school.Person;
import soapstone.school.Problem;
import soapstone.school.Remark;
import soapstone.school.School;
import soapstone.school.SchoolClass;
import soapstone.school.Sheet;
import soapstone.school.Sheets;
import soapstone.school.SignedIn;
import soapstone.school.Throttle;

/** What the school keeps, on both databases: it comes back as it went in, and what happens twice counts once. */
class SqlSchoolTest {

    private static final Instant NOW = Instant.parse("2027-03-14T07:30:15.123456Z");
    private static final String TOKEN = "a".repeat(64);
    private static final String KEY = "k".repeat(43);
    private static final int MANY = 16;

    private static People.NewPerson person(Person.Kind kind, String login) {
        return new People.NewPerson(kind, "Wren K.", login, "encoded", true, "en");
    }

    private static Person anInstructor(School school) {
        return school.people().add(person(Person.Kind.INSTRUCTOR, "wren"), NOW);
    }

    private static SchoolClass aClass(School school, Person by) {
        ClassSettings settings = new ClassSettings(UnitSystem.METRIC, "es", ',', false, false, 0.5, false, "Edge distance: 2 \u00D7 hole",
                new Conventions(Map.of("k_factor", new Quantity(0.42, Units.ONE), "lid_gap", new Quantity(1.5, Units.MILLIMETER))));
        return school.classes().add("Sheet metal 1", "Spring", "MAPLE7", settings, by.id(), NOW);
    }

    private static Assignment fresh(SchoolClass in, Person by) {
        return new Assignment(0, in.id(), "Holes", Assignment.State.GIVEN, NOW, Optional.of(NOW.plus(Duration.ofDays(2))), Assignment.Late.HALF, 3,
                Assignment.Shows.MISTAKE, true, by.id(), NOW, Optional.empty(),
                List.of(new Assignment.Task(0, 1, List.of("spacing/bolt-holes"), 1, 2), new Assignment.Task(0, 2, List.of("bends/setback", "bends/flat-angle"), 1, 4)));
    }

    private static AnswerMark mark(int place, Verdict verdict, double points) {
        return new AnswerMark(place, "pitch", "a", " 7-5/16\" ", "7 5/16 in", verdict, "shared-over-holes", List.of("fence-post", "one-of-two"),
                "There is one space fewer than holes.", points, 1, 0.017);
    }

    private static Attempts.Handed handed(long problem, String receipt) {
        return new Attempts.Handed(problem, receipt, NOW, false, Attempt.Way.SCREEN, "0.2.0", "print1", List.of(mark(0, Verdict.SLIP, 0), mark(1, Verdict.RIGHT, 1)));
    }

    /** A class of one student with a sheet of two problems. */
    private record Fixture(School school, Person instructor, SchoolClass schoolClass, Assignment assignment, Person student, Sheet sheet) {

        static Fixture in(Database database) {
            School school = SqlSchool.of(database);
            Person instructor = anInstructor(school);
            SchoolClass schoolClass = aClass(school, instructor);
            Assignment assignment = school.assignments().add(fresh(schoolClass, instructor), List.of());
            Person student = school.people().add(person(Person.Kind.STUDENT, "seat7"), NOW);
            List<Sheets.Dealt> dealt = assignment.tasks().stream()
                    .map(t -> new Sheets.Dealt(t.id(), t.place(), t.exercises().get(0), 40 + t.place(), UnitSystem.US, "print1", t.points())).toList();
            return new Fixture(school, instructor, schoolClass, assignment, student, school.sheets().deal(assignment.id(), student.id(), "K7-2M", dealt, NOW));
        }

        long problem() {
            return sheet.problems().get(0).id();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void studentsFollowTheLanguageOfTheirClassUnlessTheyChoseAnother(String name, Database database) {
        try (database) {
            School school = SqlSchool.of(database);
            Person wren = anInstructor(school);
            SchoolClass in = aClass(school, wren);
            for (String login : List.of("ada", "bo", "cy", "di")) {
                Person student = school.people().add(new People.NewPerson(Person.Kind.STUDENT, login, login, "encoded", false, login.equals("bo") ? "en" : "es"), NOW);
                if (!login.equals("di")) {
                    school.classes().seat(in.id(), student.id(), login, login.equals("cy") ? Member.State.LEFT : Member.State.IN, 0, NOW);
                }
            }
            school.people().setLanguage(wren.id(), "es");
            school.classes().change(in.id(), in.name(), in.term(), withLanguage(in.settings(), "fr"));
            assertThat(List.of("ada", "bo", "cy", "di", "wren")).extracting(l -> school.people().byLogin(l).orElseThrow().language())
                    .containsExactly("fr", "en", "es", "es", "es");
            assertThat(school.classes().find(in.id()).orElseThrow().settings().language()).isEqualTo("fr");
        }
    }

    private static ClassSettings withLanguage(ClassSettings s, String language) {
        return new ClassSettings(s.units(), language, s.decimalMark(), s.carriedEarns(), s.coarseEarns(), s.nearEarns(), s.bareAllowed(), s.conventions());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void peopleAreFoundByTheirLogins(String kind, Database database) {
        try (database) {
            School school = SqlSchool.of(database);
            Person wren = anInstructor(school);
            assertThat(wren.created()).isEqualTo(NOW);
            assertThat(school.people().byLogin("wren")).contains(wren);
            assertThat(school.people().find(wren.id())).contains(wren);
            assertThat(school.people().password(wren.id())).contains("encoded");
            assertThat(school.people().factor(wren.id())).isEmpty();
            assertThatThrownBy(() -> anInstructor(school)).isInstanceOf(People.Taken.class).hasMessageContaining("wren");
            assertThat(school.people().all(Person.Kind.INSTRUCTOR)).containsExactly(wren);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void studentsAreFoundByAPartOfTheirNameOrLogin(String kind, Database database) {
        try (database) {
            School school = SqlSchool.of(database);
            anInstructor(school);
            for (String login : List.of("heron", "plover", "snipe_1", "ruff%")) {
                school.people().add(person(Person.Kind.STUDENT, login), NOW);
            }
            assertThat(school.people().students("", 2).first()).extracting(Person::login).containsExactly("heron", "plover");
            assertThat(school.people().students("", 2).all()).isEqualTo(4);
            assertThat(school.people().students("wren k", 9).all()).isEqualTo(4);
            assertThat(school.people().students("OVER", 9).first()).extracting(Person::login).containsExactly("plover");
            assertThat(school.people().students("_", 9).first()).extracting(Person::login).containsExactly("snipe_1");
            assertThat(school.people().students("%", 9).first()).extracting(Person::login).containsExactly("ruff%");
            assertThat(school.people().students("linnet", 9)).isEqualTo(new People.Found(List.of(), 0));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void whoHasNoPasswordYetIsWaiting(String kind, Database database) {
        try (database) {
            School school = SqlSchool.of(database);
            Person wren = anInstructor(school);
            Person moss = school.people().add(new People.NewPerson(Person.Kind.KEEPER, "Moss", "moss", null, false, "en"), NOW);
            assertThat(school.people().waiting()).containsExactly(moss.id());
            school.people().setPassword(wren.id(), null, false, "");
            assertThat(school.people().waiting()).containsExactlyInAnyOrder(wren.id(), moss.id());
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void theLastInstructorStaysEvenWhenTwoLeaveAtTheSameMoment(String kind, Database database) throws Exception {
        try (database) {
            School school = SqlSchool.of(database);
            Person wren = anInstructor(school);
            Person moss = school.people().add(person(Person.Kind.INSTRUCTOR, "moss"), NOW);
            SchoolClass in = aClass(school, wren);
            assertThat(school.classes().removeInstructor(in.id(), wren.id())).isFalse();
            school.classes().addInstructor(in.id(), moss.id());
            List<Long> both = List.of(wren.id(), moss.id());
            AtomicInteger next = new AtomicInteger();
            List<Boolean> left = atOnce(() -> school.classes().removeInstructor(in.id(), both.get(next.getAndIncrement() % 2)));
            assertThat(left).containsOnlyOnce(true);
            assertThat(school.classes().instructors(in.id())).hasSize(1);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void whatIsGivenOutDoesNotChangeAsAWhole(String kind, Database database) {
        try (database) {
            School school = SqlSchool.of(database);
            Person wren = anInstructor(school);
            SchoolClass in = aClass(school, wren);
            Assignment given = school.assignments().add(fresh(in, wren), List.of());
            assertThat(school.assignments().change(given, List.of())).isFalse();
            assertThat(school.assignments().find(given.id())).contains(given);
            school.assignments().setState(given.id(), Assignment.State.DRAFT);
            assertThat(school.assignments().change(given, List.of())).isTrue();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void aStepOfTheSecondFactorIsTakenOnce(String kind, Database database) {
        try (database) {
            School school = SqlSchool.of(database);
            long wren = anInstructor(school).id();
            school.people().setFactor(wren, "SECRET");
            assertThat(school.people().find(wren).orElseThrow().twoFactor()).isTrue();
            assertThat(school.people().takeStep(wren, 100)).isTrue();
            assertThat(school.people().takeStep(wren, 100)).isFalse();
            assertThat(school.people().takeStep(wren, 99)).isFalse();
            assertThat(school.people().takeStep(wren, 101)).isTrue();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void sessionsEndWithThePasswordAndWithTheAccount(String kind, Database database) {
        try (database) {
            School school = SqlSchool.of(database);
            Person wren = anInstructor(school);
            SignedIn session = new SignedIn(wren, TOKEN, KEY, false, NOW, NOW);
            SignedIn other = new SignedIn(wren, "b".repeat(64), KEY, true, NOW, NOW);
            school.sessions().begin(session);
            school.sessions().begin(other);
            assertThat(school.sessions().find(TOKEN)).contains(session);
            school.sessions().seen(TOKEN, NOW.plusSeconds(60));
            assertThat(school.sessions().find(TOKEN).orElseThrow().seen()).isEqualTo(NOW.plusSeconds(60));
            school.people().setPassword(wren.id(), "new", false, TOKEN);
            assertThat(school.sessions().find(other.token())).isEmpty();
            assertThat(school.sessions().find(TOKEN)).isPresent();
            school.people().setDisabled(wren.id(), true);
            assertThat(school.sessions().find(TOKEN)).isEmpty();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void failuresAtTheSameMomentAreAllCounted(String kind, Database database) throws Exception {
        try (database) {
            School school = SqlSchool.of(database);
            atOnce(() -> school.throttles().fail("seat7", (n, at) -> at.plusSeconds(n), NOW));
            assertThat(school.throttles().of("seat7").orElseThrow().count()).isEqualTo(MANY);
            assertThat(school.throttles().of("seat7").orElseThrow().freeAt()).isEqualTo(NOW.plusSeconds(MANY));
            school.throttles().reset("seat7");
            assertThat(school.throttles().of("seat7")).isEmpty();
            for (String subject : List.of("pair a 1", "pair a 2", "pair ab 1", "login a", "address 1")) {
                school.throttles().fail(subject, (n, at) -> at, NOW);
            }
            school.throttles().resetAll("pair a ");
            assertThat(school.throttles().of("pair a 1")).isEmpty();
            assertThat(school.throttles().of("pair a 2")).isEmpty();
            assertThat(school.throttles().of("pair ab 1")).isPresent();
            Stream.of(Throttle.values()).filter(Throttle::forgets).forEach(t -> school.throttles().forgetBefore(t, NOW.plusSeconds(1)));
            assertThat(school.throttles().of("pair ab 1")).isEmpty();
            assertThat(school.throttles().of("address 1")).isEmpty();
            assertThat(school.throttles().of("login a")).as("until a right sign-in").isPresent();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void aCodeWorksOnceAndBeforeItsEnd(String kind, Database database) throws Exception {
        try (database) {
            Codes codes = SqlSchool.of(database).codes();
            codes.make(TOKEN, Codes.Purpose.FIRST_RUN, Optional.empty(), NOW.plusSeconds(10));
            assertThat(codes.isOpen(Codes.Purpose.FIRST_RUN, NOW)).isTrue();
            assertThat(codes.take(TOKEN, Codes.Purpose.NEW_PASSWORD, NOW)).isEmpty();
            assertThat(codes.take(TOKEN, Codes.Purpose.FIRST_RUN, NOW.plusSeconds(10))).isEmpty();
            List<Optional<Codes.Taken>> taken = atOnce(() -> codes.take(TOKEN, Codes.Purpose.FIRST_RUN, NOW));
            assertThat(taken.stream().filter(Optional::isPresent)).hasSize(1);
            assertThat(codes.isOpen(Codes.Purpose.FIRST_RUN, NOW)).isFalse();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void aClassComesBackAsItWasMade(String kind, Database database) {
        try (database) {
            School school = SqlSchool.of(database);
            Person wren = anInstructor(school);
            SchoolClass made = aClass(school, wren);
            assertThat(school.classes().find(made.id())).contains(made);
            assertThat(school.classes().byCode("MAPLE7")).contains(made);
            assertThat(school.classes().taughtBy(wren.id())).containsExactly(made);
            assertThat(school.classes().teaches(made.id(), wren.id())).isTrue();
            assertThat(school.classes().teaches(made.id(), wren.id() + 1)).isFalse();
            assertThat(school.classes().instructors(made.id())).containsExactly(wren);
            assertThat(made.settings().decimalMark()).isEqualTo(',');
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void aRosterIsTakenAsAWholeOrNotAtAll(String kind, Database database) {
        try (database) {
            School school = SqlSchool.of(database);
            SchoolClass made = aClass(school, anInstructor(school));
            List<Classes.NewMember> roster = new ArrayList<>();
            for (int seat : new int[] {10, 9, 11}) {
                roster.add(new Classes.NewMember(person(Person.Kind.STUDENT, "seat" + seat), String.valueOf(seat), 0));
            }
            school.classes().enrol(made.id(), roster, NOW);
            assertThat(school.classes().members(made.id())).extracting(Member::seat).containsExactly("9", "10", "11");
            List<Classes.NewMember> second = List.of(new Classes.NewMember(person(Person.Kind.STUDENT, "seat12"), "12", 0),
                    new Classes.NewMember(person(Person.Kind.STUDENT, "seat9"), "13", 0));
            assertThatThrownBy(() -> school.classes().enrol(made.id(), second, NOW)).isInstanceOf(People.Taken.class).hasMessageContaining("seat9");
            assertThat(school.people().byLogin("seat12")).isEmpty();
            assertThat(school.classes().members(made.id())).hasSize(3);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void idsOfTheSchoolsOwnSystemComeWithTheRoster(String kind, Database database) {
        try (database) {
            School school = SqlSchool.of(database);
            SchoolClass made = aClass(school, anInstructor(school));
            List<Member> added = school.classes().enrol(made.id(), List.of(new Classes.NewMember(person(Person.Kind.STUDENT, "seat1"), "1", 0, "stu-0017"),
                    new Classes.NewMember(person(Person.Kind.STUDENT, "seat2"), "2", 0)), NOW);
            assertThat(school.classes().sourcedIds(made.id())).containsOnly(Map.entry(added.get(0).person().id(), "stu-0017"));
            List<Classes.NewMember> second = List.of(new Classes.NewMember(person(Person.Kind.STUDENT, "seat3"), "3", 0, "stu-0042"),
                    new Classes.NewMember(person(Person.Kind.STUDENT, "seat1"), "4", 0, "stu-0043"));
            assertThatThrownBy(() -> school.classes().enrol(made.id(), second, NOW)).isInstanceOf(People.Taken.class);
            assertThat(school.classes().sourcedIds(made.id()).values()).containsExactly("stu-0017");
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void anAssignmentComesBackWithItsTasks(String kind, Database database) {
        try (database) {
            Fixture f = Fixture.in(database);
            assertThat(f.school().assignments().find(f.assignment().id())).contains(f.assignment());
            assertThat(f.school().assignments().of(f.schoolClass().id())).containsExactly(f.assignment());
            assertThat(f.assignment().tasks()).extracting(Assignment.Task::exercises).containsExactly(List.of("spacing/bolt-holes"),
                    List.of("bends/setback", "bends/flat-angle"));
            Assignments.GivenTo given = new Assignments.GivenTo(f.student().id(), Optional.of(NOW.plusSeconds(99)), true, false);
            f.school().assignments().give(f.assignment().id(), given);
            f.school().assignments().give(f.assignment().id(), given);
            assertThat(f.school().assignments().givenTo(f.assignment().id())).containsExactly(given);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void aStudentGetsOneSheetHoweverOftenItIsDealt(String kind, Database database) throws Exception {
        try (database) {
            Fixture f = Fixture.in(database);
            List<Sheet> dealt = atOnce(() -> f.school().sheets().deal(f.assignment().id(), f.student().id(), "other", List.of(), NOW));
            assertThat(dealt).containsOnly(f.sheet());
            assertThat(f.school().sheets().byNumber("K7-2M")).contains(f.sheet());
            assertThat(f.school().sheets().all(f.assignment().id())).containsExactly(f.sheet());
        }
    }

    private static Sheets.Dealt dealt(long seed, String fingerprint) {
        Conventions set = new Conventions(Map.of("k_factor", new Quantity(0.42, Units.ONE), "saw_kerf", new Quantity(0.09375, Units.INCH)));
        return new Sheets.Dealt(1, 1, "spacing/bolt-holes", seed, UnitSystem.METRIC, fingerprint, 1, set);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void aProblemKeepsWhatWasSetWhenItWasDealt(String kind, Database database) {
        try (database) {
            Fixture f = Fixture.in(database);
            assertThat(f.school().sheets().problem(f.problem()).orElseThrow().conventions()).isEqualTo(Conventions.NONE);
            Problem next = f.school().sheets().again(f.problem(), dealt(77, "print2"));
            assertThat(next.conventions()).isEqualTo(dealt(77, "print2").conventions());
            assertThat(next.units()).as("the units that it was drawn in").isEqualTo(UnitSystem.METRIC);
            assertThat(f.school().sheets().allRounds(f.sheet().id())).contains(next);
            assertThat(f.school().sheets().find(f.sheet().id()).orElseThrow().problems()).contains(next);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void otherNumbersMakeANewRound(String kind, Database database) {
        try (database) {
            Fixture f = Fixture.in(database);
            assertThat(f.school().sheets().again(f.problem(), dealt(77, "print2")).round()).isEqualTo(2);
            // The second of two taps, or an old page: no third round comes of it.
            assertThat(f.school().sheets().again(f.problem(), dealt(78, "print3")).seed()).isEqualTo(77);
            Sheet now = f.school().sheets().find(f.sheet().id()).orElseThrow();
            assertThat(f.school().sheets().ofPerson(f.student().id())).containsExactly(now);
            assertThat(f.school().sheets().allRounds(f.sheet().id())).extracting(p -> p.seed()).containsExactly(41L, 77L, 42L);
            assertThat(f.school().sheets().roundsOfPerson(f.student().id())).isEqualTo(f.school().sheets().allRounds(f.sheet().id()));
            assertThat(now.problems()).extracting(p -> p.seed()).containsExactly(77L, 42L);
            assertThat(f.school().sheets().rounds(f.sheet().id(), 1)).extracting(p -> p.seed()).containsExactly(41L, 77L);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void aDraftThatIsNewerIsNotWrittenOver(String kind, Database database) throws Exception {
        try (database) {
            Fixture f = Fixture.in(database);
            Draft first = f.school().sheets().keepDraft(f.problem(), Map.of("a", "5 in"), Set.of(""), NOW);
            assertThat(first.typed()).isEqualTo(Map.of("a", "5 in"));
            assertThat(first.saved()).contains(NOW);
            assertThat(f.school().sheets().keepDraft(f.problem(), Map.of("a", "6 in"), Set.of(""), NOW)).isEqualTo(first);
            assertThat(f.school().sheets().keepDraft(f.problem(), Map.of("a", "6 in"), Set.of("", first.version()), NOW).typed()).isEqualTo(Map.of("a", "6 in"));
            assertThat(f.school().sheets().keepDraft(f.problem(), Map.of("a", "6 in"), Set.of("long ago"), NOW).typed()).isEqualTo(Map.of("a", "6 in"));
            assertThat(f.school().sheets().draftOf(f.problem()).typed()).isEqualTo(Map.of("a", "6 in"));
            f.school().attempts().hand(handed(f.problem(), "r1"), 3);
            assertThat(f.school().sheets().draftOf(f.problem())).isEqualTo(Draft.NONE);
            assertThat(f.school().attempts().ofPerson(f.student().id())).isEqualTo(f.school().attempts().ofSheet(f.sheet().id())).hasSize(1);
            AtomicInteger page = new AtomicInteger();
            List<Draft> kept = atOnce(() -> f.school().sheets().keepDraft(f.problem(), Map.of("a", "page " + page.incrementAndGet()), Set.of(""), NOW));
            assertThat(kept).containsOnly(kept.get(0));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void aDraftIsKeptAsTypedUntilItIsHandedIn(String kind, Database database) {
        try (database) {
            Fixture f = Fixture.in(database);
            f.school().sheets().saveDraft(f.problem(), Map.of("a", " 7 5/16'' ", "b", "x"), NOW);
            f.school().sheets().saveDraft(f.problem(), Map.of("b", ""), NOW);
            assertThat(f.school().sheets().draft(f.problem())).isEqualTo(Map.of("a", " 7 5/16'' ", "b", ""));
            f.school().attempts().hand(handed(f.problem(), "r1"), 3);
            assertThat(f.school().sheets().draft(f.problem())).isEmpty();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void aPageThatIsSentManyTimesAtOnceIsOneAttempt(String kind, Database database) throws Exception {
        try (database) {
            Fixture f = Fixture.in(database);
            List<Attempts.Kept> kept = atOnce(() -> f.school().attempts().hand(handed(f.problem(), "r1"), 3));
            assertThat(kept.stream().filter(Attempts.Kept.Counted.class::isInstance)).hasSize(1);
            assertThat(kept.stream().filter(Attempts.Kept.Before.class::isInstance)).hasSize(MANY - 1);
            Attempt only = f.school().attempts().of(f.problem()).get(0);
            assertThat(f.school().attempts().of(f.problem())).hasSize(1);
            assertThat(only.marks()).containsExactly(mark(0, Verdict.SLIP, 0), mark(1, Verdict.RIGHT, 1));
            assertThat(f.school().attempts().find(only.id())).contains(only);
            assertThat(f.school().attempts().ofAssignment(f.assignment().id())).containsExactly(only);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void thereAreAsManyTriesAsGivenAndNoMore(String kind, Database database) throws Exception {
        try (database) {
            Fixture f = Fixture.in(database);
            List<Attempts.Kept> kept = atOnce(() -> f.school().attempts().hand(handed(f.problem(), "r" + Thread.currentThread().getId() + "-" + System.nanoTime()), 3));
            assertThat(kept.stream().filter(Attempts.Kept.Counted.class::isInstance)).hasSize(3);
            assertThat(kept.stream().filter(Attempts.Kept.NoTriesLeft.class::isInstance)).hasSize(MANY - 3);
            assertThat(f.school().attempts().of(f.problem())).extracting(Attempt::number).containsExactly(1, 2, 3);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void aRemarkKeepsTheAnswerAsItWasMarkedAnew(String kind, Database database) {
        try (database) {
            Fixture f = Fixture.in(database);
            f.school().attempts().hand(handed(f.problem(), "r1"), 3);
            Attempt attempt = f.school().attempts().of(f.problem()).get(0);
            AnswerMark first = attempt.marks().get(0);
            AnswerMark anew = new AnswerMark(first.place(), first.ask(), first.letter(), "9 1/4", "9 1/4 in", Verdict.SLIP, "shared-over-holes", List.of("fence-post", "spacing"),
                    "This answer fits sharing over the holes.", 0, first.possible(), 0.02);
            f.school().attempts().remark(List.of(new Remark(0, attempt.id(), first.place(), NOW, Optional.of(f.instructor().id()), Remark.Cause.CORRECTED, Verdict.SLIP, 0,
                    "Typed in by mistake.").with(anew)));
            Counted counted = Counted.of(attempt, f.school().attempts().remarks(attempt.id())).get(0);
            assertThat(counted.mark()).isEqualTo(anew);
            f.school().attempts().remark(List.of(new Remark(0, attempt.id(), first.place(), NOW.plusSeconds(60), Optional.of(f.instructor().id()), Remark.Cause.OVERRULED, Verdict.NEAR, 1,
                    "Half of it holds.")));
            AnswerMark judged = Counted.of(attempt, f.school().attempts().remarks(attempt.id())).get(0).mark();
            assertThat(judged.verdict()).isEqualTo(Verdict.NEAR);
            assertThat(judged.typed()).as("what was judged is what the paper says").isEqualTo("9 1/4");
            assertThat(f.school().attempts().of(f.problem())).as("the first mark stays").containsExactly(attempt);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void aRemarkStandsBesideTheFirstMark(String kind, Database database) {
        try (database) {
            Fixture f = Fixture.in(database);
            f.school().attempts().hand(handed(f.problem(), "r1"), 3);
            Attempt before = f.school().attempts().of(f.problem()).get(0);
            f.school().attempts().remark(List.of(new Remark(0, before.id(), 0, NOW, Optional.of(f.instructor().id()), Remark.Cause.OVERRULED, Verdict.RIGHT, 1,
                    "Measured on the bench.")));
            assertThat(f.school().attempts().remarks(before.id())).extracting(Remark::reason).containsExactly("Measured on the bench.");
            assertThat(f.school().attempts().remarksOfAssignment(f.assignment().id())).hasSize(1);
            assertThat(f.school().attempts().of(f.problem())).containsExactly(before);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void theAuditTellsWhatHappenedInOrder(String kind, Database database) {
        try (database) {
            Fixture f = Fixture.in(database);
            Audit.Entry first = new Audit.Entry(NOW, Optional.of(f.instructor().id()), "mark.overruled", Optional.of(f.student().id()), Optional.empty(), "0 to 1", false);
            Audit.Entry second = new Audit.Entry(NOW.plusSeconds(1), Optional.empty(), "marks.exported", Optional.empty(), Optional.of(f.schoolClass().id()), "csv", true);
            f.school().audit().note(first);
            f.school().audit().note(second);
            assertThat(f.school().audit().about(f.student().id())).containsExactly(first);
            assertThat(f.school().audit().aboutClass(f.schoolClass().id())).containsExactly(second);
            assertThat(f.school().audit().latest(5)).containsExactly(second, first);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void theWholeOfAFingerprintIsKeptOnce(String kind, Database database) {
        try (database) {
            Sheets sheets = SqlSchool.of(database).sheets();
            sheets.keepWhole("print1", "first", NOW);
            sheets.keepWhole("print1", "second", NOW);
            assertThat(sheets.whole("print1")).contains("first");
            assertThat(sheets.whole("print2")).isEmpty();
        }
    }

    private static <T> List<T> atOnce(Callable<T> work) throws Exception {
        ExecutorService many = Executors.newFixedThreadPool(MANY);
        try {
            List<T> results = new ArrayList<>();
            for (Future<T> result : many.invokeAll(java.util.Collections.nCopies(MANY, work))) {
                results.add(result.get());
            }
            return results;
        } finally {
            many.shutdown();
        }
    }
}
