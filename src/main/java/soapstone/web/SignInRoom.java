package soapstone.web;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.random.RandomGenerator;
import soapstone.page.Pages;
import soapstone.page.SignInView;
import soapstone.school.Codes;
import soapstone.school.Logins;
import soapstone.school.OneTimeCodes;
import soapstone.school.PasswordHash;
import soapstone.school.Person;
import soapstone.school.School;
import soapstone.school.SecretCodes;
import soapstone.school.SessionRule;
import soapstone.source.Message;

/**
 * Signing in and out. With a second factor it takes two forms on the same address: the first makes a secret that says that
 * the password was right, the second brings it back with the code. The secret works once and for five minutes.
 */
final class SignInRoom implements SchoolSite.Room {

    private static final String PATH = "/sign-in";
    private static final int WRONG = 403;

    private final SchoolOffice office;
    private final Pages pages;
    private final Porter porter;
    private final RandomGenerator random;
    private final Entrance entrance;
    private final Guard guard;
    private final Watch watch;

    SignInRoom(SchoolOffice office, Pages pages, Porter porter, RandomGenerator random) {
        this.office = office;
        this.pages = pages;
        this.porter = porter;
        this.random = random;
        this.entrance = new Entrance(office, porter, random);
        this.guard = new Guard(office);
        this.watch = new Watch(office);
    }

    @Override
    public void addTo(Routes routes) {
        routes.get(PATH, v -> show(v, new SignInView(then(v.query()), "", false, "", List.of())))
                .post(Who.ANYONE, PATH, this::signIn)
                .post(Who.SIGNED_IN, "/sign-out", this::signOut)
                .get(Who.SIGNED_IN, "/home", v -> Reply.goTo(home(v.person())))
                .get(Porter.STAY, this::left)
                .post(Who.SIGNED_IN, Porter.STAY, this::left);
    }

    /** The first page after signing in. */
    static String home(Person person) {
        return switch (person.kind()) {
            case INSTRUCTOR -> "/classes";
            case STUDENT -> "/work";
            case KEEPER -> "/accounts";
        };
    }

    /** Only a path of this site. */
    private static String then(Fields fields) {
        String then = fields.text("then");
        boolean own = then.startsWith("/") && !then.startsWith("//") && then.chars().allMatch(c -> c > ' ' && c < 0x7f && c != '\\');
        return own ? then : "";
    }

    private School school() {
        return office.school().get();
    }

    private Reply show(Visit v, SignInView view) {
        return Reply.page(pages.show(v.reader(), "sign-in", view));
    }

    /** The first form, as it comes back. */
    private Reply again(Visit v, Message says) {
        return show(v, new SignInView(then(v.form()), v.form().text("login"), isTablet(v), "", List.of(says))).as(WRONG);
    }

    private Reply tooSoon(Visit v, Guard.Wait wait) {
        watch.note("sign-in-too-soon", v, Optional.empty());
        return again(v, wait.says(v.reader().words().language())).retryAfter(wait.seconds());
    }

    private static boolean isTablet(Visit v) {
        return v.form().get("tablet").isPresent();
    }

    private Reply signIn(Visit v) {
        return v.form().get("step").isPresent() ? withCode(v) : withPassword(v);
    }

    private Reply withPassword(Visit v) {
        String login = Logins.plain(v.form().text("login"));
        Optional<Guard.Wait> wait = guard.enter(login, v.caller().address());
        if (wait.isPresent()) {
            return tooSoon(v, wait.get());
        }
        Optional<Person> known = school().people().byLogin(login);
        Optional<Person> person = known.filter(p -> !p.disabled());
        Optional<String> encoded = person.flatMap(p -> school().people().password(p.id()));
        String password = v.form().text("password");
        if (!Hashing.fits(password, encoded)) {
            guard.wrong(v.caller().address());
            watch.note("sign-in-failed", v, known.map(Person::id));
            return again(v, Message.of("sign-in.wrong"));
        }
        return isRight(v, person.orElseThrow(), password, encoded.orElseThrow());
    }

    private Reply isRight(Visit v, Person person, String password, String encoded) {
        if (PasswordHash.isDated(encoded)) {
            String keep = v.caller().signedIn().map(s -> s.token()).orElse("");
            school().people().setPassword(person.id(), Hashing.hash(password), person.mustChange(), keep);
        }
        return person.twoFactor() ? askCode(v, person, List.of()) : enter(v, person);
    }

    private Reply enter(Visit v, Person person) {
        guard.right(person.login(), v.caller().address());
        String then = then(v.form());
        return entrance.enter(v, person, isTablet(v), then.isEmpty() ? home(person) : then);
    }

    private Reply askCode(Visit v, Person person, List<Message> says) {
        String step = SessionRule.token(random);
        school().codes().make(SessionRule.hash(step), Codes.Purpose.SECOND_FACTOR, Optional.of(person.id()),
                SecretCodes.ends(Codes.Purpose.SECOND_FACTOR, office.clock().instant()));
        return show(v, new SignInView(then(v.form()), "", isTablet(v), step, says));
    }

    private Reply withCode(Visit v) {
        Optional<Person> person = school().codes().take(SessionRule.hash(v.form().text("step")), Codes.Purpose.SECOND_FACTOR, office.clock().instant())
                .flatMap(Codes.Taken::person).flatMap(school().people()::find).filter(p -> !p.disabled() && p.twoFactor());
        if (person.isEmpty()) {
            return again(v, Message.of("sign-in.anew"));
        }
        Optional<Guard.Wait> wait = guard.enter(person.get().login(), v.caller().address());
        if (wait.isPresent()) {
            return tooSoon(v, wait.get());
        }
        if (!takes(person.get(), v.form().text("code"))) {
            guard.wrong(v.caller().address());
            watch.note("sign-in-code-failed", v, person.map(Person::id));
            return askCode(v, person.get(), List.of(Message.of("sign-in.code-wrong"))).as(WRONG);
        }
        return enter(v, person.get());
    }

    /** Whether the code is right and of a step that was not used. */
    private boolean takes(Person person, String code) {
        OptionalLong step = OneTimeCodes.accepts(school().people().factor(person.id()).orElseThrow(), code, office.clock().instant(), OneTimeCodes.NO_STEP);
        return step.isPresent() && school().people().takeStep(person.id(), step.getAsLong());
    }

    private Reply signOut(Visit v) {
        v.caller().signedIn().ifPresent(s -> school().sessions().end(s.token()));
        watch.note("sign-out", v, Optional.of(v.person().id()));
        return Reply.goTo(PATH).with(porter.cookie(""));
    }

    /** For the script that says when one is signed out; a POST is a sign of life, a GET is none. */
    private Reply left(Visit v) {
        long warns = v.caller().signedIn().map(s -> porter.left(SessionRule.warns(s))).orElse(0L);
        long ends = v.caller().signedIn().map(s -> porter.left(SessionRule.ends(s))).orElse(0L);
        return Reply.json("{\"warns\":" + warns + ",\"ends\":" + ends + "}");
    }
}
