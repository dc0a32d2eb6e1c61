package soapstone.web;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import soapstone.page.Pages;
import soapstone.page.SignInView;
import soapstone.school.Logins;
import soapstone.school.PasswordHash;
import soapstone.school.Person;
import soapstone.school.School;
import soapstone.school.SessionRule;
import soapstone.school.SignedIn;
import soapstone.source.Message;

/** Signing in and out. */
final class SignInRoom implements SchoolSite.Room {

    private final SchoolOffice office;
    private final Pages pages;
    private final Porter porter;
    private final RandomGenerator random;

    SignInRoom(SchoolOffice office, Pages pages, Porter porter, RandomGenerator random) {
        this.office = office;
        this.pages = pages;
        this.porter = porter;
        this.random = random;
    }

    @Override
    public void addTo(Routes routes) {
        routes.get("/sign-in", v -> Reply.page(pages.show(v.reader(), "sign-in", new SignInView(then(v.query()), "", List.of(), false))))
                .post(Who.ANYONE, "/sign-in", this::signIn)
                .post(Who.SIGNED_IN, "/sign-out", this::signOut)
                .get(Who.SIGNED_IN, "/home", v -> Reply.goTo(home(v.person())));
    }

    /** The first page after signing in. */
    private static String home(Person person) {
        return switch (person.kind()) {
            case INSTRUCTOR -> "/classes";
            case STUDENT -> "/work";
            case KEEPER -> "/accounts";
        };
    }

    /** Only a path of this site. */
    private static String then(Fields fields) {
        String then = fields.text("then");
        boolean own = then.startsWith("/") && !then.startsWith("//") && then.indexOf('\\') < 0;
        return own ? then : "";
    }

    private Reply signIn(Visit v) {
        School school = office.school().get();
        String login = v.form().text("login");
        Optional<Person> person = school.people().byLogin(Logins.plain(login)).filter(p -> !p.disabled());
        Optional<String> encoded = person.flatMap(p -> school.people().password(p.id()));
        String password = v.form().text("password");
        boolean fits = encoded.isPresent() ? PasswordHash.fits(password, encoded.get()) : PasswordHash.fitsNobody(password);
        if (!fits) {
            SignInView again = new SignInView(then(v.form()), login, List.of(Message.of("sign-in.wrong")), false);
            return Reply.page(pages.show(v.reader(), "sign-in", again)).as(403);
        }
        return begin(person.orElseThrow(), v);
    }

    private Reply begin(Person person, Visit v) {
        Instant now = office.clock().instant();
        v.caller().signedIn().ifPresent(old -> office.school().get().sessions().end(old.token()));
        String token = SessionRule.token(random);
        office.school().get().sessions().begin(new SignedIn(person, SessionRule.hash(token), SessionRule.token(random), v.form().get("tablet").isPresent(), now, now));
        String then = then(v.form());
        return Reply.goTo(then.isEmpty() ? home(person) : then).with(porter.cookie(token));
    }

    private Reply signOut(Visit v) {
        v.caller().signedIn().ifPresent(s -> office.school().get().sessions().end(s.token()));
        return Reply.goTo("/sign-in").with(porter.cookie(""));
    }
}
