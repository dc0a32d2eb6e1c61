package soapstone.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.htmlunit.WebClient;
import org.htmlunit.html.DomElement;
import org.htmlunit.html.HtmlPage;
import soapstone.school.Person;
import soapstone.school.Problem;
import soapstone.school.Sheet;
import soapstone.variant.Drawer;
import soapstone.variant.Effect;
import soapstone.variant.Variant;
import soapstone.web.Hand;
import soapstone.web.SchoolUnderTest;

/** A student with the slip to sign in, who does through the pages what students do; a browser for each day. */
final class AtWork {

    /** As it is printed. */
    record Slip(String whose, String login, String passphrase) {}

    private final SchoolUnderTest site;
    private final Slip slip;

    AtWork(SchoolUnderTest site, Slip slip) {
        this.site = site;
        this.slip = slip;
    }

    /** The slips on a page that is to be printed and cut. */
    static List<Slip> cut(HtmlPage page) {
        List<Slip> slips = new ArrayList<>();
        for (DomElement one : page.<DomElement>getByXPath("//dl[contains(@class, 'cut-slip')]")) {
            List<DomElement> typed = one.getByXPath(".//dd[@class='typed']");
            DomElement whose = one.getFirstByXPath(".//div[@class='whose']/dd");
            slips.add(new Slip(RealSite.text(whose).strip(), typed.get(0).getTextContent().strip(), typed.get(1).getTextContent().strip()));
        }
        return slips;
    }

    String login() {
        return slip.login();
    }

    Person person() {
        return site.school.people().byLogin(slip.login()).orElseThrow();
    }

    /** A browser that was signed in with the slip; whoever takes it closes it. */
    WebClient signedIn() throws Exception {
        WebClient browser = site.browser();
        site.signIn(browser, slip.login(), slip.passphrase());
        return browser;
    }

    /** What to do on a page that the student sees first after signing in. */
    interface Doing {

        void at(Hand hand) throws Exception;
    }

    /** Signs in, does it, and leaves. */
    void comes(Doing doing) throws Exception {
        try (WebClient browser = signedIn()) {
            doing.at(new Hand(site, browser).open("/work"));
        }
    }

    /** Which answers to type for a problem; none where it is left alone. */
    interface Answers {

        Optional<Map<String, String>> to(Problem problem);
    }

    /** Signs in, opens the sheet of an assignment and hands in what is to be handed in. */
    void does(String title, Answers answers) throws Exception {
        comes(hand -> {
            hand.follow(title);
            if (hand.text().contains("Open my sheet")) {
                hand.press("Open my sheet");
            }
            for (Problem problem : sheet(hand.path()).problems()) {
                Optional<Map<String, String>> typed = answers.to(problem);
                if (typed.isPresent()) {
                    handIn(hand, problem, typed.get());
                }
            }
        });
    }

    /** From a path on the student's sheet. */
    Sheet sheet(String path) {
        return site.school.sheets().find(Long.parseLong(path.split("/")[2])).orElseThrow();
    }

    /** One problem, from its page to the receipt. */
    static void handIn(Hand hand, Problem problem, Map<String, String> typed) throws Exception {
        hand.open("/sheets/" + problem.sheet() + "/" + problem.place());
        hand.answer(typed).press("Read my answers").press("Hand in");
    }

    static Map<String, String> right(Problem problem) {
        return RealSite.key(variant(problem));
    }

    /** What a slip of the bank gives with the numbers of this problem, if it shows in them. */
    static Optional<Map<String, String>> slip(Problem problem, String name) {
        Variant v = variant(problem);
        return v.outcomes().stream().filter(o -> o.slip().name().equals(name) && o.effect() == Effect.SEEN).findFirst().map(o -> RealSite.answers(v, o.theirs()));
    }

    /** The right answers, but something else for the first. */
    static Map<String, String> but(Problem problem, String first) {
        Map<String, String> typed = new LinkedHashMap<>(right(problem));
        typed.put("a", first);
        return typed;
    }

    static Variant variant(Problem problem) {
        return Drawer.draw(RealSite.library().bank().exercise(problem.exercise()).orElseThrow(), problem.units(), problem.seed()).orElseThrow();
    }
}
