package soapstone.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import soapstone.page.FormView;
import soapstone.page.Pages;
import soapstone.page.PlaceView;
import soapstone.page.RosterView;
import soapstone.page.SlipsView;
import soapstone.page.Words;
import soapstone.school.Classes;
import soapstone.school.Logins;
import soapstone.school.Member;
import soapstone.school.Passphrases;
import soapstone.school.People;
import soapstone.school.Person;
import soapstone.school.Roster;
import soapstone.school.RosterFault;
import soapstone.school.RosterReader;
import soapstone.school.RosterRules;
import soapstone.school.SchoolClass;
import soapstone.school.SessionRule;
import soapstone.school.Throttle;
import soapstone.source.Message;

/** Who sits in a class: put in as a list, changed one by one, and the slips that they sign in with. */
final class RosterRoom implements SchoolSite.Room {

    static final String TEXT = "roster";
    private static final int LONGEST_TEXT = 20_000;

    private final OwnClasses own;
    private final Guard guard;
    private final Pages pages;
    private final RandomGenerator random;

    RosterRoom(SchoolOffice office, Pages pages, RandomGenerator random) {
        this.own = new OwnClasses(office);
        this.guard = new Guard(office);
        this.pages = pages;
        this.random = random;
    }

    @Override
    public void addTo(Routes routes) {
        routes.get(Who.INSTRUCTOR, "/classes/{class}/roster", v -> roster(v, own.open(v), FormView.of(Map.of()), Optional.empty()))
                .post(Who.INSTRUCTOR, "/classes/{class}/roster", Fields.Limit.ROSTER, this::look)
                .post(Who.INSTRUCTOR, "/classes/{class}/slips-to-sign-in", Fields.Limit.ROSTER, this::make)
                .get(Who.INSTRUCTOR, "/classes/{class}/roster/{person}", this::place)
                .post(Who.INSTRUCTOR, "/classes/{class}/roster/{person}", this::change)
                .post(Who.INSTRUCTOR, "/classes/{class}/roster/{person}/slip", this::newSlip)
                .post(Who.INSTRUCTOR, "/classes/{class}/roster/{person}/approve", v -> move(v, Member.State.IN, "member.approved"))
                .post(Who.INSTRUCTOR, "/classes/{class}/roster/{person}/decline", v -> move(v, Member.State.LEFT, "member.declined"))
                .post(Who.INSTRUCTOR, "/classes/{class}/roster/{person}/take-out", v -> move(v, Member.State.LEFT, "member.taken-out"))
                .post(Who.INSTRUCTOR, "/classes/{class}/roster/{person}/put-back", v -> move(v, Member.State.IN, "member.put-back"));
    }

    private Classes classes() {
        return own.school().classes();
    }

    // A list of students

    private Reply roster(Visit v, SchoolClass in, FormView form, Optional<RosterView.Preview> preview) {
        String seen = preview.filter(RosterView.Preview::right).map(p -> SessionRule.hash(text(form.typed().get(TEXT)))).orElse("");
        return Reply.page(pages.show(v.reader(), "roster", new RosterView(in.id(), in.name(), own.sitting(in).size(), form, preview, seen)));
    }

    private static String text(String typed) {
        return typed.replace("\r\n", "\n");
    }

    private Reply look(Visit v) {
        SchoolClass in = own.open(v);
        FilledForm form = new FilledForm(v.form());
        Optional<Roster> sent = RosterFiles.read(form, v.form(), rules(v, in));
        Optional<String> standing = sent.flatMap(r -> r.isRight() ? Optional.of(RosterFiles.asText(r, own.sitting(in))) : RosterFiles.asSent(v.form(), LONGEST_TEXT));
        String text = standing.orElseGet(() -> form.text(TEXT, LONGEST_TEXT));
        if (text.length() > LONGEST_TEXT) {
            form.fault(RosterFiles.LIST, Message.of("class-roster.file-long", String.valueOf(sent.map(r -> r.rows().size()).orElse(0))));
        }
        if (!form.isGood()) {
            return roster(v, in, form.view(), Optional.empty()).as(422);
        }
        if (sent.isPresent() && standing.isEmpty()) {
            return previewed(v, in, form, new Read(sent.get(), sent.get().rows().stream().map(r -> List.<RosterView.Fault>of()).toList()));
        }
        // What came in a file stands in the field from here on, so that it can be mended by hand.
        FilledForm shown = standing.isEmpty() ? form : new FilledForm(Fields.of(Map.of(TEXT, text)));
        return previewed(v, in, shown, read(v, in, text));
    }

    private Reply previewed(Visit v, SchoolClass in, FilledForm form, Read read) {
        RosterView.Preview preview = read.preview();
        if (!preview.right()) {
            form.fault(TEXT, preview.faulty() > 0 ? Message.of("class-roster.faulty", String.valueOf(preview.faulty())) : Message.of("class-roster.not-read"));
        }
        return roster(v, in, form.view(), Optional.of(preview)).as(preview.right() ? 200 : 422);
    }

    /** A list as it was read, and beside it what does not go together with those who sit in the class already. */
    private record Read(Roster roster, List<List<RosterView.Fault>> faults) {

        boolean isRight() {
            return roster.isRight() && faults.stream().allMatch(List::isEmpty);
        }

        RosterView.Preview preview() {
            List<RosterView.Row> rows = new ArrayList<>();
            for (int i = 0; i < roster.rows().size(); i++) {
                Roster.Row row = roster.rows().get(i);
                List<RosterView.Fault> all = new ArrayList<>(row.faults().stream().map(Read::shown).toList());
                all.addAll(faults.get(i));
                rows.add(new RosterView.Row(row.line(), row.seat(), row.name(), row.login(), row.extraTime(), row.sourcedId(), all));
            }
            int faulty = (int) rows.stream().filter(r -> r.faults().stream().anyMatch(RosterView.Fault::weighs)).count();
            return new RosterView.Preview(rows, roster.faults().stream().map(Read::shown).toList(), isRight(), faulty);
        }

        private static RosterView.Fault shown(RosterFault fault) {
            return new RosterView.Fault(fault.isFault(), fault.where(), fault.says(), fault.fits());
        }
    }

    private RosterRules rules(Visit v, SchoolClass in) {
        return new RosterRules(in.code(), v.reader().words().say("class-seat.seat", List.of()), login -> own.school().people().byLogin(login).isPresent());
    }

    private Read read(Visit v, SchoolClass in, String text) {
        Roster roster = new RosterReader(rules(v, in)).read(text);
        List<Member> sitting = own.sitting(in);
        Map<Long, String> ids = classes().sourcedIds(in.id());
        return new Read(roster, roster.rows().stream().map(row -> beside(row, sitting, ids)).toList());
    }

    private static Message where(Roster.Row row) {
        return Message.of("class-roster.row", String.valueOf(row.line()));
    }

    /** A list that is sent twice finds everybody there already. */
    private static List<RosterView.Fault> beside(Roster.Row row, List<Member> sitting, Map<Long, String> ids) {
        for (Member member : sitting) {
            boolean sameName = Logins.plain(member.person().shown()).equals(Logins.plain(row.name()));
            boolean sameSeat = !row.seat().isEmpty() && member.seat().equals(row.seat());
            if (sameName && (sameSeat || row.seat().isEmpty())) {
                return List.of(new RosterView.Fault(true, where(row), Message.of("class-roster.sits", row.name()), Message.of("class-roster.sits-fits")));
            }
            if (sameSeat) {
                return List.of(new RosterView.Fault(true, where(row), Message.of("class-roster.seat-taken", row.seat(), member.person().shown()),
                        Message.of("class-roster.seat-taken-fits")));
            }
            if (!row.sourcedId().isEmpty() && row.sourcedId().equals(ids.get(member.person().id()))) {
                return List.of(new RosterView.Fault(true, where(row), Message.of("class-roster.id-taken", row.sourcedId(), member.person().shown()),
                        Message.of("class-roster.sits-fits")));
            }
        }
        return List.of();
    }

    /** Makes what was looked at, all of it or nothing; anything else is shown first. */
    private Reply make(Visit v) {
        SchoolClass in = own.open(v);
        FilledForm form = new FilledForm(v.form());
        String text = form.text(TEXT, LONGEST_TEXT);
        Read read = read(v, in, text);
        if (!form.isGood() || !read.isRight() || !SessionRule.same(SessionRule.hash(text(v.form().text(TEXT))), v.form().text("seen"))) {
            return previewed(v, in, form, read);
        }
        List<SlipsView.Slip> slips = new ArrayList<>();
        List<Classes.NewMember> fresh = new ArrayList<>();
        for (Roster.Row row : read.roster().rows()) {
            String phrase = Passphrases.draw(random);
            slips.add(new SlipsView.Slip(row.seat(), row.name(), row.login(), phrase));
            fresh.add(new Classes.NewMember(new People.NewPerson(Person.Kind.STUDENT, row.name(), row.login(), Hashing.hash(Passphrases.plain(phrase)), false,
                    in.settings().language()), row.seat(), row.extraTime(), row.sourcedId()));
        }
        try {
            classes().enrol(in.id(), fresh, own.now());
        } catch (People.Taken taken) {
            return previewed(v, in, form, read(v, in, text));
        }
        own.note(v, "member.enrolled", Optional.empty(), in, String.valueOf(fresh.size()));
        return slips(v, in, slips);
    }

    private Reply slips(Visit v, SchoolClass in, List<SlipsView.Slip> slips) {
        return Reply.page(pages.show(v.reader(), "slips", new SlipsView(in.id(), in.name(), own.address(v), slips)));
    }

    // One student

    private Reply place(Visit v) {
        SchoolClass in = own.schoolClass(v);
        Member member = own.member(v, in);
        return place(v, in, member, FormView.of(Map.of("shown", member.person().shown(), "seat", member.seat(), "extra", String.valueOf(member.extraTime()))));
    }

    private Reply place(Visit v, SchoolClass in, Member member, FormView form) {
        return Reply.page(pages.show(v.reader(), "place", new PlaceView(in.id(), in.name(), member.person().id(), member.person().shown(), member.person().login(),
                Words.key(member.state()), in.archived().isEmpty(), form)));
    }

    private Reply change(Visit v) {
        SchoolClass in = own.open(v);
        Member member = own.member(v, in);
        FilledForm form = new FilledForm(v.form());
        String shown = form.wanted("shown", Roster.LONGEST_NAME);
        String seat = form.line("seat", Roster.LONGEST_SEAT);
        int extra = form.whole("extra", 0, Roster.MOST_EXTRA_TIME);
        Optional<Member> there = own.sitting(in).stream().filter(m -> !seat.isEmpty() && m.seat().equals(seat) && m.person().id() != member.person().id()).findFirst();
        there.ifPresent(m -> form.fault("seat", Message.of("class-roster.seat-taken", seat, m.person().shown())));
        if (!form.isGood()) {
            return place(v, in, member, form.view()).as(422);
        }
        if (!shown.equals(member.person().shown())) {
            own.school().people().rename(member.person().id(), shown);
        }
        classes().seat(in.id(), member.person().id(), seat, member.state(), extra, member.since());
        own.note(v, "member.changed", Optional.of(member.person().id()), in, "");
        return Reply.goTo("/classes/" + in.id());
    }

    /** Who is out of the class, or only asks for a place, is somebody else's to help. */
    private Reply newSlip(Visit v) {
        SchoolClass in = own.open(v);
        Member member = own.member(v, in);
        if (member.state() != Member.State.IN) {
            throw Trouble.of(409);
        }
        String phrase = Passphrases.draw(random);
        own.school().people().setPassword(member.person().id(), Hashing.hash(Passphrases.plain(phrase)), false, "");
        // Whoever has forgotten a passphrase has tried too often, and need not wait with the new one.
        guard.open(member.person().login());
        own.note(v, "member.new-slip", Optional.of(member.person().id()), in, "");
        return slips(v, in, List.of(new SlipsView.Slip(member.seat(), member.person().shown(), member.person().login(), phrase)));
    }

    private Reply move(Visit v, Member.State to, String act) {
        SchoolClass in = own.open(v);
        Member member = own.member(v, in);
        boolean seatTaken = to == Member.State.IN && own.sitting(in).stream().anyMatch(m -> m.seat().equals(member.seat()) && m.person().id() != member.person().id());
        if (member.state() != to) {
            classes().seat(in.id(), member.person().id(), seatTaken ? "" : member.seat(), to, member.extraTime(), own.now());
            own.note(v, act, Optional.of(member.person().id()), in, "");
        }
        return Reply.goTo("/classes/" + in.id());
    }
}
