package soapstone.web;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import soapstone.page.AccountFormView;
import soapstone.page.AccountPersonView;
import soapstone.page.AccountsView;
import soapstone.page.FormView;
import soapstone.page.Pages;
import soapstone.page.SchoolTimes;
import soapstone.page.StudentAccountsView;
import soapstone.school.Audit;
import soapstone.school.PasswordCodes;
import soapstone.school.People;
import soapstone.school.Person;
import soapstone.school.Retention;
import soapstone.school.School;
import soapstone.source.Message;

/** The keeper's pages: who has an account. No class, no answer and no mark stands on any of them. */
final class AccountsRoom implements SchoolSite.Room {

    private static final int PAGE = 100;
    private static final int WRONG = 422;
    private static final int CONFLICT = 409;
    private static final String ACCOUNTS = "/accounts";

    private final SchoolOffice office;
    private final Pages pages;
    private final RandomGenerator random;
    private final Guard guard;

    AccountsRoom(SchoolOffice office, Pages pages, RandomGenerator random) {
        this.office = office;
        this.pages = pages;
        this.random = random;
        this.guard = new Guard(office);
    }

    @Override
    public void addTo(Routes routes) {
        routes.get(Who.KEEPER, ACCOUNTS, this::list)
                .get(Who.KEEPER, "/accounts/new", v -> fresh(v, FormView.of(Map.of("kind", Person.Kind.INSTRUCTOR.name()))))
                .post(Who.KEEPER, "/accounts/new", this::add)
                .get(Who.KEEPER, "/accounts/students", this::students)
                // Looked for in a form and not in the address, which others on the way write down.
                .post(Who.KEEPER, "/accounts/students", this::students)
                .get(Who.KEEPER, "/accounts/{person}", v -> show(v, person(v), FormView.of(Map.of("shown", person(v).shown()))))
                .post(Who.KEEPER, "/accounts/{person}/name", this::rename)
                .post(Who.KEEPER, "/accounts/{person}/disable", v -> able(v, true))
                .post(Who.KEEPER, "/accounts/{person}/enable", v -> able(v, false))
                .post(Who.KEEPER, "/accounts/{person}/code", this::reset);
    }

    private School school() {
        return office.school().get();
    }

    private void note(Visit v, String act, long about) {
        school().audit().note(new Audit.Entry(office.clock().instant(), Optional.of(v.person().id()), act, Optional.of(about), Optional.empty(), "", false));
    }

    private Person person(Visit v) {
        return school().people().find(v.id("person")).orElseThrow(() -> Trouble.of(404));
    }

    private Reply list(Visit v) {
        Set<Long> waiting = school().people().waiting();
        List<AccountsView.Row> rows = Stream.of(Person.Kind.KEEPER, Person.Kind.INSTRUCTOR).flatMap(kind -> school().people().all(kind).stream())
                .map(p -> row(p, waiting.contains(p.id()))).toList();
        return Reply.page(pages.show(v.reader(), "accounts", new AccountsView(rows, Retention.over(school(), office.clock().instant(), SchoolTimes.zone()).size())));
    }

    private static AccountsView.Row row(Person p, boolean waits) {
        return new AccountsView.Row(p.id(), p.shown(), p.login(), p.kind(), p.disabled(), waits, p.twoFactor());
    }

    /** A school may have thousands: the first come, and who is looked for. */
    private Reply students(Visit v) {
        String find = v.form().text("find").strip();
        People.Found found = school().people().students(find, PAGE);
        return Reply.page(pages.show(v.reader(), "accounts-students",
                new StudentAccountsView(found.first().stream().map(p -> row(p, false)).toList(), find, found.all())));
    }

    // Adding

    private Reply fresh(Visit v, FormView form) {
        return Reply.page(pages.show(v.reader(), "accounts-new", new AccountFormView(form)));
    }

    /** Students get their accounts with their class, from its instructor. */
    private Reply add(Visit v) {
        FilledForm form = new FilledForm(v.form());
        Person.Kind kind = form.choice("kind", Person.Kind.class);
        if (kind == Person.Kind.STUDENT) {
            form.fault("kind", Message.of("filled.choice"));
        }
        Person wanted = FreshPerson.read(form, kind, school().people(), office.clock().instant());
        if (!form.isGood()) {
            return fresh(v, form.view()).as(WRONG);
        }
        Person made = school().people().add(new People.NewPerson(kind, wanted.shown(), wanted.login(), null, false, v.person().language()), office.clock().instant());
        note(v, "account.added", made.id());
        return code(v, made, PasswordCodes.make(school(), made, office.clock().instant(), random));
    }

    private Reply code(Visit v, Person person, String code) {
        return Reply.page(pages.show(v.reader(), "account-code", AccountCode.shown(office, v, person, code, ACCOUNTS)));
    }

    // One account

    private Reply show(Visit v, Person p, FormView form) {
        boolean self = p.id() == v.person().id();
        return Reply.page(pages.show(v.reader(), "accounts-person", new AccountPersonView(row(p, school().people().waiting().contains(p.id())), form, self)));
    }

    private Reply rename(Visit v) {
        Person person = person(v);
        FilledForm form = new FilledForm(v.form());
        String shown = form.wanted("shown", StartRoom.LONGEST_NAME);
        if (!form.isGood()) {
            return show(v, person, form.view()).as(WRONG);
        }
        if (!shown.equals(person.shown())) {
            school().people().rename(person.id(), shown);
            note(v, "account.renamed", person.id());
        }
        return Reply.goTo(ACCOUNTS + "/" + person.id());
    }

    /** A keeper who shuts out the last keeper, oneself, could let nobody in again. */
    private Person other(Visit v) {
        Person person = person(v);
        if (person.id() == v.person().id()) {
            throw Trouble.of(CONFLICT);
        }
        return person;
    }

    private Reply able(Visit v, boolean disabled) {
        Person person = other(v);
        if (person.disabled() != disabled) {
            school().people().setDisabled(person.id(), disabled);
            note(v, disabled ? "account.disabled" : "account.enabled", person.id());
        }
        if (!disabled) {
            guard.open(person.login());
        }
        return Reply.goTo(ACCOUNTS + "/" + person.id());
    }

    /** A student's passphrase comes from the class's instructor. */
    private Reply reset(Visit v) {
        Person person = other(v);
        if (person.isStudent()) {
            throw Trouble.of(404);
        }
        return code(v, person, PasswordCodes.anew(school(), person, Optional.of(v.person().id()), "", office.clock().instant(), random));
    }
}
