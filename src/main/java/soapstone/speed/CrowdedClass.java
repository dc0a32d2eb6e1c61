package soapstone.speed;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import soapstone.bank.Bank;
import soapstone.exercise.Ask;
import soapstone.exercise.Exercise;
import soapstone.record.Database;
import soapstone.record.SqlSchool;
import soapstone.school.Assignment;
import soapstone.school.ClassSettings;
import soapstone.school.Classes;
import soapstone.school.Dealing;
import soapstone.school.Member;
import soapstone.school.People;
import soapstone.school.Person;
import soapstone.school.School;
import soapstone.school.SchoolClass;
import soapstone.school.SessionRule;
import soapstone.school.Sheets;
import soapstone.school.SignedIn;

/** Students with a sheet each who are signed in already: hashing passwords is not what a crowd of them waits for. */
final class CrowdedClass {

    private static final long SEED = 5;
    private static final int TRIES = 3;

    private CrowdedClass() {}

    /**
     * Somebody who sits before a sheet.
     *
     * @param cookie of the session
     * @param key    of its forms
     * @param sheet  its number in addresses
     */
    record Seat(String cookie, String key, long sheet) {}

    /**
     * Fills a database that has no school yet.
     *
     * @param places how many problems each sheet has
     */
    static List<Seat> fill(Database database, Bank bank, int students, int places) {
        School school = SqlSchool.of(database);
        SplittableRandom chance = new SplittableRandom(SEED);
        Instant now = Instant.now();
        Person instructor = school.people().add(new People.NewPerson(Person.Kind.INSTRUCTOR, "Measure", "measure", "-", false, "en"), now);
        SchoolClass in = school.classes().add("Measure", "", "MEASURE", ClassSettings.USUAL, instructor.id(), now);
        List<Classes.NewMember> roster = IntStream.range(0, students).mapToObj(i -> new Classes.NewMember(
                new People.NewPerson(Person.Kind.STUDENT, "Seat " + i, "seat" + i, "-", false, "en"), String.valueOf(i), 0)).toList();
        List<Person> people = school.classes().enrol(in.id(), roster, now).stream().map(Member::person).toList();
        Assignment given = school.assignments().add(new Assignment(0, in.id(), "Measure", Assignment.State.GIVEN, now, Optional.of(now.plus(Duration.ofDays(1))),
                Assignment.Late.TAKEN, TRIES, Assignment.Shows.LINES, true, instructor.id(), now, Optional.empty(), tasks(bank, places)), List.of());
        Map<Long, List<Sheets.Dealt>> dealt = new Dealing(bank, in.settings(), chance).deal(given, people.stream().map(Person::id).toList(), List.of());
        List<Seat> seats = new ArrayList<>();
        for (Person person : people) {
            String token = SessionRule.token(chance);
            String key = SessionRule.token(chance);
            school.sessions().begin(new SignedIn(person, SessionRule.hash(token), key, false, now, now));
            seats.add(new Seat("soapstone=" + token, key, school.sheets().deal(given.id(), person.id(), "M" + person.id(), dealt.get(person.id()), now).id()));
        }
        return seats;
    }

    /** Exercises from all over the bank whose answers are numbers. */
    private static List<Assignment.Task> tasks(Bank bank, int places) {
        List<String> ids = bank.exercises().values().stream().filter(e -> e.us().asks().stream().allMatch(a -> a.kind() == Ask.Kind.QUANTITY)).map(Exercise::id).toList();
        return IntStream.range(0, places).mapToObj(i -> new Assignment.Task(0, i + 1, List.of(ids.get(i * ids.size() / places)), 1, 1)).toList();
    }
}
