package soapstone.web;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.time.format.TextStyle;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import soapstone.page.FormView;
import soapstone.page.NoticeView;
import soapstone.page.Pages;
import soapstone.page.RetentionView;
import soapstone.page.SchoolTimes;
import soapstone.school.Audit;
import soapstone.school.Person;
import soapstone.school.Retention;
import soapstone.school.Retentions;
import soapstone.school.School;
import soapstone.source.Message;

/** How long records are kept: the notice to everybody, the keeper's list of what is over, and whether it goes by itself. */
final class RetentionRoom implements SchoolSite.Room {

    private static final String PATH = "/retention";
    private static final int LONGEST = 10;
    private static final int PAST = 12;
    private static final int MONTHS = 12;
    private static final int LONGEST_MONTH = 31;
    private static final int WRONG = 422;
    /** So long after a change nothing goes by itself. */
    private static final Duration GRACE = Duration.ofDays(1);

    private final SchoolOffice office;
    private final Pages pages;

    RetentionRoom(SchoolOffice office, Pages pages) {
        this.office = office;
        this.pages = pages;
    }

    @Override
    public void addTo(Routes routes) {
        routes.get("/privacy", v -> Reply.page(pages.show(v.reader(), "privacy", new NoticeView(yearEnds(v)))))
                .get(Who.KEEPER, PATH, v -> list(v, kept(), new RetentionView.Done(done(v), v.query().get("written").isPresent())))
                .post(Who.KEEPER, PATH, this::erase)
                .post(Who.KEEPER, PATH + "/rule", this::write);
    }

    private String yearEnds(Visit v) {
        return SchoolTimes.yearly(school().retentions().rule().yearEnds(), v.reader().words().language());
    }

    /** How many went just now, for the sentence above the list; a number that somebody made up says no harm. */
    private static int done(Visit v) {
        String done = v.query().text("done");
        return done.matches("[0-9]{1,6}") ? Integer.parseInt(done) : -1;
    }

    private School school() {
        return office.school().get();
    }

    private Instant now() {
        return office.clock().instant();
    }

    private List<Person> over() {
        return Retention.over(school(), now(), SchoolTimes.zone());
    }

    /** Changes when anybody comes on the list or goes off it. */
    private static String seen(List<Person> people) {
        return Integer.toHexString(people.stream().map(Person::id).toList().hashCode());
    }

    /** The rule as a form that nobody has changed. */
    private FormView kept() {
        Retentions.Rule rule = school().retentions().rule();
        Map<String, String> typed = new HashMap<>(Map.of("month", String.valueOf(rule.yearEnds().getMonthValue()), "day", String.valueOf(rule.yearEnds().getDayOfMonth())));
        if (rule.byItself()) {
            typed.put("by-itself", "yes");
        }
        return FormView.of(typed);
    }

    private Reply list(Visit v, FormView form, RetentionView.Done done) {
        List<Person> people = over();
        Retentions.Rule rule = school().retentions().rule();
        LocalDate last = Retention.lastDay(LocalDate.ofInstant(now(), SchoolTimes.zone()), rule.yearEnds());
        String language = v.reader().words().language();
        List<RetentionView.Row> rows = people.stream().map(p -> new RetentionView.Row(p.shown(), p.login(), SchoolTimes.moment(p.created(), language))).toList();
        return Reply.page(pages.show(v.reader(), "retention", new RetentionView(SchoolTimes.date(last, language),
                rule.byItself(), rows, seen(people), past(v), months(v), done, form)));
    }

    private List<RetentionView.Past> past(Visit v) {
        Told told = new Told(school(), v.reader().words());
        return school().audit().latest(Retention.ERASED, PAST).stream().map(e -> new RetentionView.Past(told.time(e.at()), told.name(e.by()), e.detail())).toList();
    }

    private static List<RetentionView.Month> months(Visit v) {
        return Stream.of(Month.values()).map(m -> new RetentionView.Month(String.valueOf(m.getValue()), name(v, m))).toList();
    }

    private static String name(Visit v, Month month) {
        return month.getDisplayName(TextStyle.FULL_STANDALONE, Locale.forLanguageTag(v.reader().words().language()));
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
            return again(v, new FormView(withTyped("confirm", typed), form.view().faults()));
        }
        Retention.erase(school(), people, Optional.of(v.person().id()), now());
        return Reply.goTo(PATH + "?done=" + people.size());
    }

    /** The other form on the page stands as it is kept. */
    private Map<String, String> withTyped(String name, String text) {
        Map<String, String> typed = new HashMap<>(kept().typed());
        typed.put(name, text);
        return typed;
    }

    private Reply again(Visit v, FormView form) {
        return list(v, form, new RetentionView.Done(-1, false)).as(WRONG);
    }

    private Reply write(Visit v) {
        FilledForm form = new FilledForm(v.form());
        Month month = Month.of(form.whole("month", 1, MONTHS));
        int day = form.whole("day", 1, LONGEST_MONTH);
        if (day > month.maxLength()) {
            form.fault("day", Message.of("privacy.retention-day-fault", name(v, month), String.valueOf(month.maxLength())));
        }
        if (!form.isGood()) {
            return again(v, form.view());
        }
        Retentions.Rule rule = new Retentions.Rule(MonthDay.of(month, day), form.ticked("by-itself"));
        school().retentions().write(rule, now().plus(GRACE));
        school().audit().note(new Audit.Entry(now(), Optional.of(v.person().id()), "retention.changed", Optional.empty(), Optional.empty(),
                "the year ends " + rule.yearEnds() + ", by itself: " + (rule.byItself() ? "yes" : "no"), false));
        return Reply.goTo(PATH + "?written=1");
    }
}
