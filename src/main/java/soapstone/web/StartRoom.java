package soapstone.web;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import soapstone.page.AccountFormView;
import soapstone.page.FormView;
import soapstone.page.Pages;
import soapstone.school.Audit;
import soapstone.school.Charter;
import soapstone.school.Codes;
import soapstone.school.Logins;
import soapstone.school.PasswordCodes;
import soapstone.school.People;
import soapstone.school.Person;
import soapstone.school.School;
import soapstone.school.SecretCodes;
import soapstone.source.Message;

/**
 * What is done with a code that works once: the first instructor of a school takes the one that the console shows, and
 * anybody whom a keeper gave one sets a new password with it.
 */
final class StartRoom implements SchoolSite.Room {

    static final int LONGEST_NAME = 80;
    private static final int LONGEST_SCHOOL = 120;
    private static final int WRONG = 422;
    private static final String START = "/start";
    static final String PASSWORD = "/new-password";

    private final SchoolOffice office;
    private final Pages pages;
    private final RandomGenerator random;
    private final Entrance entrance;
    private final Guard guard;
    private final Watch watch;

    StartRoom(SchoolOffice office, Pages pages, Porter porter, RandomGenerator random) {
        this.office = office;
        this.pages = pages;
        this.random = random;
        this.entrance = new Entrance(office, porter, random);
        this.guard = new Guard(office);
        this.watch = new Watch(office);
    }

    @Override
    public void addTo(Routes routes) {
        routes.get(START, v -> first(v, FormView.of(Map.of())))
                .post(Who.ANYONE, START, this::begin)
                .get(PASSWORD, v -> show(v, "new-password", FormView.of(Map.of())))
                .post(Who.ANYONE, PASSWORD, this::setPassword);
    }

    private School school() {
        return office.school().get();
    }

    private Instant now() {
        return office.clock().instant();
    }

    private Reply show(Visit v, String template, FormView form) {
        return Reply.page(pages.show(v.reader(), template, new AccountFormView(form)));
    }

    /** Only as long as nobody is in charge. */
    private Reply first(Visit v, FormView form) {
        if (!school().people().isNobodyInCharge()) {
            throw Trouble.of(404);
        }
        return show(v, "start", form);
    }

    private Reply begin(Visit v) {
        FilledForm form = new FilledForm(v.form());
        String code = form.wanted("code", LONGEST_NAME);
        String school = form.wanted("school", LONGEST_SCHOOL);
        Person fresh = FreshPerson.read(form, Person.Kind.INSTRUCTOR, school().people(), now());
        String password = NewSecret.take(form, v.form(), fresh, List.of(school));
        // The code is used up when all else is right, so that a fault elsewhere does not cost it.
        Optional<Guard.Wait> wait = guard.enter(v.caller().address());
        wait.ifPresent(w -> form.fault("code", w.says(v.reader().words().language())));
        if (form.isGood() && school().people().isNobodyInCharge() && takes(v, code, Codes.Purpose.FIRST_RUN, form).isPresent()) {
            return found(v, school, fresh, password);
        }
        Reply again = first(v, form.view()).as(WRONG);
        return wait.map(w -> again.retryAfter(w.seconds())).orElse(again);
    }

    private Optional<Codes.Taken> takes(Visit v, String code, Codes.Purpose purpose, FilledForm form) {
        Optional<Codes.Taken> taken = school().codes().take(SecretCodes.hash(code), purpose, now());
        if (taken.isEmpty()) {
            guard.wrong(v.caller().address());
            watch.note("code-failed", v, Optional.empty());
            form.fault("code", Message.of("account.code-wrong"));
        }
        return taken;
    }

    private Reply found(Visit v, String name, Person fresh, String password) {
        Person first = school().people().add(new People.NewPerson(Person.Kind.INSTRUCTOR, fresh.shown(), fresh.login(), Hashing.hash(password), false,
                v.reader().words().language()), now());
        school().charters().write(new Charter(name, false, now()));
        school().codes().endAll(Codes.Purpose.FIRST_RUN);
        school().audit().note(new Audit.Entry(now(), Optional.of(first.id()), "school.founded", Optional.of(first.id()), Optional.empty(), "", false));
        return entrance.enter(v, first, false, AccountRoom.KEEPER);
    }

    private Reply setPassword(Visit v) {
        FilledForm form = new FilledForm(v.form());
        String login = Logins.plain(form.wanted("login", LONGEST_NAME));
        String code = form.wanted("code", LONGEST_NAME);
        // By the login alone: what else is known about somebody is not told to whoever has no code.
        String password = NewSecret.take(form, v.form(), FreshPerson.of(Person.Kind.INSTRUCTOR, login, login, now()), List.of());
        Optional<Guard.Wait> wait = guard.enter(v.caller().address());
        wait.ifPresent(w -> form.fault("code", w.says(v.reader().words().language())));
        if (form.isGood()) {
            Optional<Person> person = takes(v, code, Codes.Purpose.NEW_PASSWORD, form).flatMap(Codes.Taken::person).flatMap(school().people()::find)
                    .filter(p -> p.login().equals(login) && !p.disabled());
            if (person.isPresent()) {
                return setPassword(v, person.get(), password, form);
            }
            form.fault("code", Message.of("account.code-wrong"));
        }
        Reply again = show(v, "new-password", form.view()).as(WRONG);
        return wait.map(w -> again.retryAfter(w.seconds())).orElse(again);
    }

    /** What is made of the person's own names is found out last; another code then stands for the one that is used up. */
    private Reply setPassword(Visit v, Person person, String password, FilledForm form) {
        NewSecret.take(form, v.form(), person, NewSecret.around(school(), person));
        if (!form.isGood()) {
            Map<String, String> typed = new HashMap<>(form.view().typed());
            typed.put("code", PasswordCodes.make(school(), person, now(), random));
            return show(v, "new-password", new FormView(typed, form.view().faults())).as(WRONG);
        }
        school().people().setPassword(person.id(), Hashing.hash(password), false, "");
        guard.open(person.login());
        school().audit().note(new Audit.Entry(now(), Optional.of(person.id()), "account.password", Optional.of(person.id()), Optional.empty(), "With a code", false));
        return entrance.enter(v, school().people().find(person.id()).orElseThrow(), false, SignInRoom.home(person));
    }
}
