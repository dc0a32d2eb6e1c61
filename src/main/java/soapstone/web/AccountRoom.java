package soapstone.web;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.random.RandomGenerator;
import soapstone.page.AccountFormView;
import soapstone.page.AccountView;
import soapstone.page.FactorView;
import soapstone.page.FormView;
import soapstone.page.Pages;
import soapstone.page.PasswordView;
import soapstone.school.Audit;
import soapstone.school.Charter;
import soapstone.school.OneTimeCodes;
import soapstone.school.Passwords;
import soapstone.school.People;
import soapstone.school.Person;
import soapstone.school.School;
import soapstone.source.Message;

/**
 * Everybody's own account: password, second factor, language. While a school has no keeper, its instructors make one
 * here.
 */
final class AccountRoom implements SchoolSite.Room {

    static final String PASSWORD = "/account/password";
    static final String KEEPER = "/account/keeper";
    private static final String ACCOUNT = "/account";
    private static final String FACTOR = "/account/second-factor";
    private static final String CURRENT = "current";
    private static final String SITE = "Soapstone";
    private static final int SECRET_SIGNS = 32;
    private static final int WRONG = 422;

    private final SchoolOffice office;
    private final Pages pages;
    private final Languages languages;
    private final RandomGenerator random;
    private final Entrance entrance;
    private final Guard guard;

    AccountRoom(SchoolOffice office, Pages pages, Porter porter, Languages languages, RandomGenerator random) {
        this.office = office;
        this.pages = pages;
        this.languages = languages;
        this.random = random;
        this.entrance = new Entrance(office, porter, random);
        this.guard = new Guard(office);
    }

    @Override
    public void addTo(Routes routes) {
        routes.get(Who.SIGNED_IN, ACCOUNT, this::account)
                .post(Who.SIGNED_IN, "/account/language", this::setLanguage)
                .get(Who.SIGNED_IN, PASSWORD, v -> password(v, FormView.of(Map.of())))
                .post(Who.SIGNED_IN, PASSWORD, this::setPassword)
                .get(Who.SIGNED_IN, FACTOR, v -> factor(v, OneTimeCodes.draw(random), FormView.of(Map.of())))
                .post(Who.SIGNED_IN, FACTOR, this::turnOn)
                .post(Who.SIGNED_IN, "/account/second-factor/off", this::turnOff)
                .get(Who.INSTRUCTOR, KEEPER, v -> keeper(v, FormView.of(Map.of())))
                .post(Who.INSTRUCTOR, KEEPER, this::makeKeeper);
    }

    private School school() {
        return office.school().get();
    }

    private void note(Visit v, String act, long about) {
        school().audit().note(new Audit.Entry(office.clock().instant(), Optional.of(v.person().id()), act, Optional.of(about), Optional.empty(), "", false));
    }

    private boolean wantsKeeper() {
        return school().people().all(Person.Kind.KEEPER).isEmpty();
    }

    private Reply account(Visit v) {
        Person p = v.person();
        return Reply.page(pages.show(v.reader(), "account", new AccountView(p.shown(), p.login(), !p.isStudent(), p.twoFactor(), p.isInstructor() && wantsKeeper(),
                languages.all(), p.language())));
    }

    private Reply setLanguage(Visit v) {
        String language = v.form().text("language");
        if (!languages.all().contains(language)) {
            throw Trouble.of(400);
        }
        school().people().setLanguage(v.person().id(), language);
        return Reply.goTo(ACCOUNT);
    }

    // The password

    private Reply password(Visit v, FormView form) {
        return Reply.page(pages.show(v.reader(), "password", new PasswordView(form, v.person().mustChange(), v.person().login())));
    }

    private Reply setPassword(Visit v) {
        FilledForm form = new FilledForm(v.form());
        Person person = v.person();
        Optional<Guard.Wait> wait = checkCurrent(v, form);
        String fresh = NewSecret.take(form, v.form(), person, NewSecret.around(school(), person));
        if (form.isGood() && fresh.equals(v.form().text(CURRENT))) {
            form.fault(NewSecret.FRESH, Message.of("account.same-password"));
        }
        if (!form.isGood()) {
            return waiting(password(v, form.view()), wait);
        }
        school().people().setPassword(person.id(), Hashing.hash(fresh), false, "");
        note(v, "account.password", person.id());
        return entrance.enterAnew(v, person.mustChange() ? SignInRoom.home(person) : ACCOUNT);
    }

    private static Reply waiting(Reply page, Optional<Guard.Wait> wait) {
        return wait.map(w -> page.retryAfter(w.seconds())).orElseGet(() -> page.as(WRONG));
    }

    /** Whoever finds a browser left open does not know the password: it is asked before anything about signing in changes. */
    private Optional<Guard.Wait> checkCurrent(Visit v, FilledForm form) {
        Optional<Guard.Wait> wait = guard.enter(v.person().login(), v.caller().address());
        if (wait.isPresent()) {
            form.fault(CURRENT, wait.get().says(v.reader().words().language()));
        } else if (Hashing.fits(v.form().text(CURRENT), school().people().password(v.person().id()))) {
            guard.right(v.person().login(), v.caller().address());
        } else {
            guard.wrong(v.caller().address());
            form.fault(CURRENT, Message.of("account.current-wrong"));
        }
        return wait;
    }

    // The second factor

    private Reply factor(Visit v, String secret, FormView form) {
        noStudent(v);
        String site = school().charters().find().map(Charter::name).orElse(SITE);
        String apart = secret.replaceAll("(.{4})(?!$)", "$1 ");
        return Reply.page(pages.show(v.reader(), "second-factor", new FactorView(form, v.person().twoFactor(), secret, apart,
                OneTimeCodes.link(site, v.person().login(), secret))));
    }

    /** Students sign in with a slip; a second factor is for those who see others' work. */
    private static void noStudent(Visit v) {
        if (v.person().isStudent()) {
            throw Trouble.of(404);
        }
    }

    private Reply turnOn(Visit v) {
        noStudent(v);
        FilledForm form = new FilledForm(v.form());
        String secret = v.form().text("secret");
        OptionalLong step = step(v, secret);
        if (step.isEmpty()) {
            form.fault("code", Message.of("account.factor-code-wrong"));
        }
        Optional<Guard.Wait> wait = checkCurrent(v, form);
        if (!form.isGood()) {
            return waiting(factor(v, secret, form.view()), wait);
        }
        school().people().setFactor(v.person().id(), secret);
        school().people().takeStep(v.person().id(), step.getAsLong());
        note(v, "account.factor-on", v.person().id());
        return entrance.enterAnew(v, ACCOUNT);
    }

    private OptionalLong step(Visit v, String secret) {
        if (secret.length() != SECRET_SIGNS) {
            throw Trouble.of(400);
        }
        try {
            return OneTimeCodes.accepts(secret, v.form().text("code"), office.clock().instant(), OneTimeCodes.NO_STEP);
        } catch (IllegalArgumentException e) {
            throw Trouble.of(400);
        }
    }

    /** A password that was long enough beside a second factor may be too short alone. */
    private Reply turnOff(Visit v) {
        noStudent(v);
        FilledForm form = new FilledForm(v.form());
        Person p = v.person();
        Person alone = new Person(p.id(), p.kind(), p.shown(), p.login(), p.language(), p.disabled(), p.mustChange(), false, p.created());
        Optional<Guard.Wait> wait = checkCurrent(v, form);
        if (form.isGood() && Passwords.refusal(v.form().text(CURRENT), alone, List.of()).isPresent()) {
            form.fault(CURRENT, Message.of("account.too-short-alone", String.valueOf(Passwords.LEAST)));
        }
        if (!form.isGood()) {
            return waiting(factor(v, OneTimeCodes.draw(random), form.view()), wait);
        }
        school().people().setFactor(p.id(), "");
        note(v, "account.factor-off", p.id());
        return entrance.enterAnew(v, ACCOUNT);
    }

    // The first keeper

    private Reply keeper(Visit v, FormView form) {
        if (!wantsKeeper()) {
            throw Trouble.of(404);
        }
        return Reply.page(pages.show(v.reader(), "keeper", new AccountFormView(form)));
    }

    private Reply makeKeeper(Visit v) {
        FilledForm form = new FilledForm(v.form());
        Person fresh = FreshPerson.read(form, Person.Kind.KEEPER, school().people(), office.clock().instant());
        if (!form.isGood() || !wantsKeeper()) {
            return keeper(v, form.view()).as(WRONG);
        }
        Person made = school().people().add(new People.NewPerson(Person.Kind.KEEPER, fresh.shown(), fresh.login(), null, false, v.person().language()),
                office.clock().instant());
        note(v, "account.added", made.id());
        return Reply.page(pages.show(v.reader(), "account-code", AccountCode.shown(office, v, made, random, ACCOUNT)));
    }
}
