package soapstone.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import soapstone.page.FormView;
import soapstone.page.NoticeView;
import soapstone.page.Pages;
import soapstone.page.RetentionView;
import soapstone.page.SchoolTimes;
import soapstone.school.Audit;
import soapstone.school.Person;
import soapstone.school.Retention;
import soapstone.school.School;
import soapstone.source.Message;

/** How long records are kept: the notice to everybody, and the keeper's list of what is over. */
final class RetentionRoom implements SchoolSite.Room {

    private static final int LONGEST = 10;

    private final SchoolOffice office;
    private final Pages pages;

    RetentionRoom(SchoolOffice office, Pages pages) {
        this.office = office;
        this.pages = pages;
    }

    @Override
    public void addTo(Routes routes) {
        routes.get("/privacy", v -> Reply.page(pages.show(v.reader(), "privacy", new NoticeView(yearEnds(v)))))
                .get(Who.KEEPER, "/retention", v -> list(v, FormView.of(Map.of()), done(v)))
                .post(Who.KEEPER, "/retention", this::erase);
    }

    private static String yearEnds(Visit v) {
        return SchoolTimes.yearly(Retention.YEAR_ENDS, v.reader().words().language());
    }

    /** How many went just now, for the sentence above the list; a number that somebody made up says no harm. */
    private static int done(Visit v) {
        String done = v.query().text("done");
        return done.matches("[0-9]{1,6}") ? Integer.parseInt(done) : -1;
    }

    private School school() {
        return office.school().get();
    }

    private List<Person> over() {
        return school().privacy().idleSince(Retention.last(office.clock().instant(), SchoolTimes.zone()));
    }

    /** Changes when anybody comes on the list or goes off it. */
    private static String seen(List<Person> people) {
        return Integer.toHexString(people.stream().map(Person::id).toList().hashCode());
    }

    private Reply list(Visit v, FormView form, int done) {
        List<Person> people = over();
        LocalDate last = Retention.lastDay(LocalDate.ofInstant(office.clock().instant(), SchoolTimes.zone()));
        String language = v.reader().words().language();
        return Reply.page(pages.show(v.reader(), "retention", new RetentionView(SchoolTimes.date(last, language),
                people.stream().map(p -> new RetentionView.Row(p.shown(), p.login(), SchoolTimes.moment(p.created(), language))).toList(), seen(people), done, form)));
    }

    /** Nobody goes who was not on the list that the keeper looked at. */
    private Reply erase(Visit v) {
        List<Person> people = over();
        FilledForm form = new FilledForm(v.form());
        String typed = form.line("confirm", LONGEST);
        if (!v.form().text("seen").equals(seen(people))) {
            form.fault("confirm", Message.of("privacy.list-changed"));
        } else if (people.isEmpty() || !typed.equals(String.valueOf(people.size()))) {
            form.fault("confirm", Message.of("privacy.confirm-number", String.valueOf(people.size())));
        }
        if (!form.isGood()) {
            return list(v, form.view(), -1).as(422);
        }
        people.forEach(p -> school().privacy().erase(p.id(), Optional.of(v.person().id()), office.clock().instant()));
        school().audit().note(new Audit.Entry(office.clock().instant(), Optional.of(v.person().id()), "retention.erased", Optional.empty(), Optional.empty(),
                String.valueOf(people.size()), false));
        return Reply.goTo("/retention?done=" + people.size());
    }
}
