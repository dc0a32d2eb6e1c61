package soapstone.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;
import soapstone.page.ClassSettingsView;
import soapstone.page.ClassView;
import soapstone.page.ClassesView;
import soapstone.page.FormView;
import soapstone.page.Pages;
import soapstone.page.SchoolTimes;
import soapstone.school.Assignment;
import soapstone.school.ClassCode;
import soapstone.school.Classes;
import soapstone.school.Logins;
import soapstone.school.Member;
import soapstone.school.Person;
import soapstone.school.SchoolClass;
import soapstone.source.Message;

/** An instructor's classes, and what is set for each. */
final class ClassRoom implements SchoolSite.Room {

    private static final int LONGEST_LOGIN = 80;

    private final OwnClasses own;
    private final ShopDesk shop;
    private final Pages pages;
    private final RandomGenerator random;

    ClassRoom(SchoolOffice office, ShopDesk shop, Pages pages, RandomGenerator random) {
        this.own = new OwnClasses(office);
        this.shop = shop;
        this.pages = pages;
        this.random = random;
    }

    @Override
    public void addTo(Routes routes) {
        routes.get(Who.INSTRUCTOR, "/classes", v -> Reply.page(pages.show(v.reader(), "classes", all(v))))
                .get(Who.INSTRUCTOR, "/classes/new", v -> fresh(v, ClassForm.fresh()))
                .post(Who.INSTRUCTOR, "/classes/new", this::make)
                .get(Who.INSTRUCTOR, "/classes/{class}", v -> Reply.page(pages.show(v.reader(), "class", view(v, own.schoolClass(v)))))
                .get(Who.INSTRUCTOR, "/classes/{class}/settings", v -> settings(v, own.schoolClass(v), Forms.NONE))
                .post(Who.INSTRUCTOR, "/classes/{class}/settings", this::change)
                .post(Who.INSTRUCTOR, "/classes/{class}/code", this::newCode)
                .post(Who.INSTRUCTOR, "/classes/{class}/archive", this::archive)
                .post(Who.INSTRUCTOR, "/classes/{class}/take-back", this::takeBack)
                .post(Who.INSTRUCTOR, "/classes/{class}/copy", this::copy)
                .post(Who.INSTRUCTOR, "/classes/{class}/instructors", this::addInstructor)
                .post(Who.INSTRUCTOR, "/classes/{class}/instructors/{person}/remove", this::removeInstructor);
    }

    private static String path(SchoolClass in) {
        return "/classes/" + in.id();
    }

    private ClassesView all(Visit v) {
        List<ClassesView.Row> current = new ArrayList<>();
        List<ClassesView.Row> archived = new ArrayList<>();
        for (SchoolClass in : own.school().classes().taughtBy(v.person().id())) {
            (in.archived().isPresent() ? archived : current).add(row(in));
        }
        return new ClassesView(current, archived);
    }

    private ClassesView.Row row(SchoolClass in) {
        List<Member> members = own.school().classes().members(in.id());
        long out = own.school().assignments().of(in.id()).stream().filter(a -> a.state() == Assignment.State.GIVEN).count();
        return new ClassesView.Row(in.id(), in.name(), in.term(), count(members, Member.State.IN), count(members, Member.State.ASKED), (int) out);
    }

    private static int count(List<Member> members, Member.State state) {
        return (int) members.stream().filter(m -> m.state() == state).count();
    }

    private Reply fresh(Visit v, FormView form) {
        return Reply.page(pages.show(v.reader(), "class-settings", new ClassSettingsView(form, ClassForm.languages(), ShopForm.fields(shop.conventions()), Optional.empty())));
    }

    private Reply make(Visit v) {
        FilledForm form = new FilledForm(v.form());
        Optional<ClassForm.Filled> filled = ClassForm.read(form, v.form(), shop.conventions());
        if (filled.isEmpty()) {
            return fresh(v, form.view()).as(422);
        }
        ClassForm.Filled f = filled.get();
        SchoolClass made = own.school().classes().add(f.name(), f.term(), ClassCode.make(random), f.settings(), v.person().id(), own.now());
        own.note(v, "class.made", Optional.empty(), made, f.name());
        return Reply.goTo(path(made) + "/roster");
    }

    private ClassView view(Visit v, SchoolClass in) {
        List<Member> members = own.school().classes().members(in.id());
        List<ClassView.Work> work = own.school().assignments().of(in.id()).stream().map(a -> work(v, a)).toList();
        String instructors = own.school().classes().instructors(in.id()).stream().map(Person::shown).collect(Collectors.joining(", "));
        return new ClassView(in.id(), in.name(), in.term(), in.archived().isPresent(), in.settings().units().word(), ClassCode.shown(in.code()),
                own.address(v) + "/join", instructors, seats(members, Member.State.IN), seats(members, Member.State.ASKED), seats(members, Member.State.LEFT), work,
                refused(in));
    }

    /** Exercises of the class's assignments that nobody gets, with what the class has set. */
    private List<Message> refused(SchoolClass in) {
        List<String> exercises = own.school().assignments().of(in.id()).stream().filter(a -> a.state() != Assignment.State.TAKEN)
                .flatMap(a -> a.tasks().stream()).flatMap(t -> t.exercises().stream()).toList();
        return shop.refused(exercises, in.settings()).stream().map(ClassRoom::notDealt).toList();
    }

    static Message notDealt(ShopDesk.Refused refused) {
        return Message.of("class-work.not-dealt", refused.title(), refused.set());
    }

    private static List<ClassView.Seat> seats(List<Member> members, Member.State state) {
        return members.stream().filter(m -> m.state() == state)
                .map(m -> new ClassView.Seat(m.person().id(), m.seat(), m.person().shown(), m.person().login(), m.extraTime())).toList();
    }

    private ClassView.Work work(Visit v, Assignment a) {
        String language = v.reader().words().language();
        return new ClassView.Work(a.id(), a.title(), Standing.of(a, own.now()), SchoolTimes.moment(a.opens(), language),
                a.due().map(d -> SchoolTimes.moment(d, language)).orElse(""), a.tasks().stream().mapToInt(Assignment.Task::many).sum());
    }

    /** The three forms of the settings page, as far as one of them comes back. */
    private record Forms(Optional<FormView> settings, Optional<FormView> another, Optional<FormView> copy) {
        static final Forms NONE = new Forms(Optional.empty(), Optional.empty(), Optional.empty());
    }

    private Reply settings(Visit v, SchoolClass in, Forms forms) {
        List<ClassSettingsView.Named> instructors = own.school().classes().instructors(in.id()).stream()
                .map(p -> new ClassSettingsView.Named(p.id(), p.shown(), p.login())).toList();
        ClassSettingsView.Kept kept = new ClassSettingsView.Kept(in.id(), in.name(), in.archived().isPresent(), ClassCode.shown(in.code()), instructors,
                forms.another().orElse(FormView.of(Map.of())), forms.copy().orElse(FormView.of(Map.of("copy-name", in.name()))));
        return Reply.page(pages.show(v.reader(), "class-settings",
                new ClassSettingsView(forms.settings().orElse(ClassForm.of(in)), ClassForm.languages(), ShopForm.fields(shop.conventions()), Optional.of(kept))));
    }

    private Reply change(Visit v) {
        SchoolClass in = own.open(v);
        FilledForm form = new FilledForm(v.form());
        Optional<ClassForm.Filled> filled = ClassForm.read(form, v.form(), shop.conventions());
        if (filled.isEmpty()) {
            return settings(v, in, new Forms(Optional.of(form.view()), Optional.empty(), Optional.empty())).as(422);
        }
        own.school().classes().change(in.id(), filled.get().name(), filled.get().term(), filled.get().settings());
        own.note(v, "class.changed", Optional.empty(), in, "");
        return Reply.goTo(path(in));
    }

    private Reply newCode(Visit v) {
        SchoolClass in = own.open(v);
        own.school().classes().setCode(in.id(), ClassCode.make(random));
        own.note(v, "class.new-code", Optional.empty(), in, "");
        return Reply.goTo(path(in) + "/settings");
    }

    private Reply archive(Visit v) {
        SchoolClass in = own.open(v);
        own.school().classes().setArchived(in.id(), Optional.of(own.now()));
        own.note(v, "class.archived", Optional.empty(), in, "");
        return Reply.goTo("/classes");
    }

    private Reply takeBack(Visit v) {
        SchoolClass in = own.schoolClass(v);
        own.school().classes().setArchived(in.id(), Optional.empty());
        own.note(v, "class.taken-back", Optional.empty(), in, "");
        return Reply.goTo(path(in));
    }

    /** The settings and every assignment as a draft without times; no student, no sheet, no mark. */
    private Reply copy(Visit v) {
        SchoolClass in = own.schoolClass(v);
        FilledForm form = new FilledForm(v.form());
        String name = form.wanted("copy-name", ClassForm.LONGEST_NAME);
        String term = form.line("copy-term", ClassForm.LONGEST_TERM);
        if (!form.isGood()) {
            return settings(v, in, new Forms(Optional.empty(), Optional.empty(), Optional.of(form.view()))).as(422);
        }
        SchoolClass made = own.school().classes().add(name, term, ClassCode.make(random), in.settings(), v.person().id(), own.now());
        List<Assignment> newestFirst = own.school().assignments().of(in.id());
        for (int i = newestFirst.size() - 1; i >= 0; i--) {
            if (newestFirst.get(i).after().isEmpty()) {
                own.school().assignments().add(Drafts.copy(newestFirst.get(i), made.id(), v.person().id(), own.now()), List.of());
            }
        }
        own.note(v, "class.made", Optional.empty(), made, "copied from class " + in.id());
        return Reply.goTo(path(made));
    }

    private Reply addInstructor(Visit v) {
        SchoolClass in = own.open(v);
        FilledForm form = new FilledForm(v.form());
        String login = form.wanted("login", LONGEST_LOGIN);
        Optional<Person> other = own.school().people().byLogin(Logins.plain(login)).filter(p -> p.isInstructor() && !p.disabled());
        if (other.isEmpty()) {
            form.fault("login", Message.of("class.no-such-instructor"));
        } else if (own.school().classes().teaches(in.id(), other.get().id())) {
            form.fault("login", Message.of("class.teaches-already"));
        }
        if (!form.isGood()) {
            return settings(v, in, new Forms(Optional.empty(), Optional.of(form.view()), Optional.empty())).as(422);
        }
        own.school().classes().addInstructor(in.id(), other.orElseThrow().id());
        own.note(v, "class.instructor-added", Optional.of(other.get().id()), in, "");
        return Reply.goTo(path(in) + "/settings");
    }

    /** A class is never without an instructor. */
    private Reply removeInstructor(Visit v) {
        SchoolClass in = own.open(v);
        Classes classes = own.school().classes();
        long person = v.id("person");
        if (!classes.teaches(in.id(), person)) {
            throw Trouble.of(404);
        }
        if (!classes.removeInstructor(in.id(), person)) {
            FormView last = new FormView(Map.of(), Map.of("login", Message.of("class.last-instructor")));
            return settings(v, in, new Forms(Optional.empty(), Optional.of(last), Optional.empty())).as(422);
        }
        own.note(v, "class.instructor-removed", Optional.of(person), in, "");
        return Reply.goTo(person == v.person().id() ? "/classes" : path(in) + "/settings");
    }
}
