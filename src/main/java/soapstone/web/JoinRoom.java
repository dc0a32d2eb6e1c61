package soapstone.web;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import soapstone.page.FormView;
import soapstone.page.JoinView;
import soapstone.page.Pages;
import soapstone.page.SlipsView;
import soapstone.school.ClassCode;
import soapstone.school.Logins;
import soapstone.school.Member;
import soapstone.school.Passphrases;
import soapstone.school.People;
import soapstone.school.Person;
import soapstone.school.Roster;
import soapstone.school.RosterReader;
import soapstone.school.RosterRules;
import soapstone.school.SchoolClass;
import soapstone.school.Throttle;
import soapstone.school.Throttles;
import soapstone.source.Message;

/** Asking for a place in a class with its code. Nobody is in before the instructor has said yes. */
final class JoinRoom implements SchoolSite.Room {

    private static final int LONGEST_CODE = 20;
    private static final int MOST_WAITING = 60;

    private final OwnClasses own;
    private final Pages pages;
    private final RandomGenerator random;

    JoinRoom(SchoolOffice office, Pages pages, RandomGenerator random) {
        this.own = new OwnClasses(office);
        this.pages = pages;
        this.random = random;
    }

    @Override
    public void addTo(Routes routes) {
        routes.get("/join", v -> show(v, FormView.of(Map.of("code", v.query().text("code")))))
                .post(Who.ANYONE, "/join", this::ask);
    }

    private static boolean student(Visit v) {
        if (v.caller().signedIn().filter(s -> !s.person().isStudent()).isPresent()) {
            throw Trouble.of(404);
        }
        return v.caller().signedIn().isPresent();
    }

    private Reply show(Visit v, FormView form) {
        return Reply.page(pages.show(v.reader(), "join", new JoinView(form, student(v), "", own.address(v), Optional.empty())));
    }

    private Reply asked(Visit v, SchoolClass in, Optional<SlipsView.Slip> slip) {
        return Reply.page(pages.show(v.reader(), "join", new JoinView(FormView.of(Map.of()), student(v), in.name(), own.address(v), slip)));
    }

    private Reply ask(Visit v) {
        boolean student = student(v);
        FilledForm form = new FilledForm(v.form());
        Optional<SchoolClass> in = byCode(v, form);
        String name = student ? "" : form.wanted("name", Roster.LONGEST_NAME);
        if (form.isGood()) {
            checkRoom(in.orElseThrow(), student, name, form);
        }
        if (!form.isGood()) {
            return show(v, form.view()).as(422);
        }
        return student ? askAgain(v, in.orElseThrow()) : makeAccount(v, in.orElseThrow(), name, form);
    }

    private Optional<SchoolClass> byCode(Visit v, FilledForm form) {
        String code = ClassCode.plain(form.wanted("code", LONGEST_CODE));
        String address = v.caller().address();
        Throttles throttles = own.school().throttles();
        if (throttles.of(Throttle.JOIN.subject(address)).filter(f -> !Throttle.isFree(f.freeAt(), own.now())).isPresent()) {
            form.fault("code", Message.of("class-join.wait"));
            return Optional.empty();
        }
        Optional<SchoolClass> in = own.school().classes().byCode(code).filter(c -> c.archived().isEmpty());
        if (in.isEmpty() && !code.isEmpty()) {
            Throttle.JOIN.fail(throttles, Throttle.JOIN.subject(address), own.now());
            form.fault("code", Message.of("class-join.no-class"));
        }
        return in;
    }

    private void checkRoom(SchoolClass in, boolean student, String name, FilledForm form) {
        List<Member> members = own.school().classes().members(in.id()).stream().filter(m -> m.state() != Member.State.LEFT).toList();
        if (members.stream().filter(m -> m.state() == Member.State.ASKED).count() >= MOST_WAITING) {
            form.fault("code", Message.of("class-join.full"));
        }
        if (!student && members.stream().anyMatch(m -> Logins.plain(m.person().shown()).equals(Logins.plain(name)))) {
            form.fault("name", Message.of("class-join.name-taken"));
        }
    }

    private Reply askAgain(Visit v, SchoolClass in) {
        long person = v.person().id();
        Optional<Member> member = own.school().classes().member(in.id(), person);
        if (member.filter(m -> m.state() != Member.State.LEFT).isEmpty()) {
            own.school().classes().seat(in.id(), person, member.map(Member::seat).orElse(""), Member.State.ASKED, member.map(Member::extraTime).orElse(0), own.now());
            own.note(v, "member.asked", Optional.of(person), in, "");
        }
        return asked(v, in, Optional.empty());
    }

    /** Somebody new: the name alone decides the login, as if it stood on a roster. */
    private Reply makeAccount(Visit v, SchoolClass in, String name, FilledForm form) {
        RosterRules rules = new RosterRules(in.code(), v.reader().words().say("class-seat.seat", List.of()), login -> own.school().people().byLogin(login).isPresent());
        Roster roster = new RosterReader(rules).read("name\n\"" + name.replace("\"", "\"\"") + "\"");
        if (!roster.isRight() || roster.rows().size() != 1) {
            form.fault("name", roster.all().isEmpty() ? Message.of("filled.empty") : roster.all().get(0).fits());
            return show(v, form.view()).as(422);
        }
        Roster.Row row = roster.rows().get(0);
        String phrase = Passphrases.draw(random);
        try {
            Person person = own.school().people().add(new People.NewPerson(Person.Kind.STUDENT, row.name(), row.login(), Hashing.hash(Passphrases.plain(phrase)), false,
                    in.settings().language()), own.now());
            own.school().classes().seat(in.id(), person.id(), "", Member.State.ASKED, 0, own.now());
            own.note(v, "member.asked", Optional.of(person.id()), in, "");
        } catch (People.Taken taken) {
            form.fault("name", Message.of("class-join.name-taken"));
            return show(v, form.view()).as(422);
        }
        return asked(v, in, Optional.of(new SlipsView.Slip("", row.name(), row.login(), phrase)));
    }
}
