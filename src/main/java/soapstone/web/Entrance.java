package soapstone.web;

import java.time.Instant;
import java.util.Optional;
import java.util.random.RandomGenerator;
import soapstone.school.Person;
import soapstone.school.Sessions;
import soapstone.school.SessionRule;
import soapstone.school.SignedIn;

/** Begins sessions. Each has a secret that nobody has seen before; the one that a browser came with ends. */
final class Entrance {

    private final SchoolOffice office;
    private final Porter porter;
    private final RandomGenerator random;

    Entrance(SchoolOffice office, Porter porter, RandomGenerator random) {
        this.office = office;
        this.porter = porter;
        this.random = random;
    }

    /** Lets somebody in and sends the browser on. */
    Reply enter(Visit v, Person person, boolean tablet, String to) {
        Instant now = office.clock().instant();
        Sessions sessions = office.school().get().sessions();
        v.caller().signedIn().ifPresent(old -> sessions.end(old.token()));
        String token = SessionRule.token(random);
        sessions.begin(new SignedIn(person, SessionRule.hash(token), SessionRule.token(random), tablet, now, now));
        new Watch(office).note("sign-in-ok", v, Optional.of(person.id()));
        return Reply.goTo(to).with(porter.cookie(token));
    }

    /** A new secret for somebody who is in already. */
    Reply enterAnew(Visit v, String to) {
        return enter(v, office.school().get().people().find(v.person().id()).orElseThrow(), v.caller().signedIn().orElseThrow().tablet(), to);
    }
}
