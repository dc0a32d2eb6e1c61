package soapstone.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import org.htmlunit.WebClient;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import soapstone.school.Codes;
import soapstone.school.PasswordHash;
import soapstone.school.People;
import soapstone.school.Person;
import soapstone.school.SchoolClass;
import soapstone.school.SecretCodes;

/** The first run, everybody's own account and the keeper's list, through the pages. */
class AccountsTest {

    private static final String CODE = "K7CW-34MR-XPN9-THQ6";
    private static final String FRESH = "copper lanterns drift north";

    private SchoolUnderTest site;
    private WebClient browser;
    private Hand hand;

    @BeforeEach
    void start() throws Exception {
        site = SchoolUnderTest.start(new SampleDesk());
        browser = site.browser();
        hand = new Hand(site, browser);
    }

    @AfterEach
    void stop() {
        browser.close();
        site.close();
    }

    private Hand as(Person person) throws Exception {
        return as(person, SchoolUnderTest.PASSWORD);
    }

    private Hand as(Person person, String password) throws Exception {
        site.signIn(browser, person.login(), password);
        return hand;
    }

    private String newCode(Person person) {
        site.school.codes().make(SecretCodes.hash(CODE), Codes.Purpose.NEW_PASSWORD, Optional.of(person.id()), SecretCodes.ends(Codes.Purpose.NEW_PASSWORD, site.now()));
        return CODE;
    }

    private void consoleShows(String code) {
        site.school.codes().make(SecretCodes.hash(code), Codes.Purpose.FIRST_RUN, Optional.empty(), SecretCodes.ends(Codes.Purpose.FIRST_RUN, site.now()));
    }

    private Hand fillStart(String code) throws Exception {
        return hand.open("/start").type("code", code).type("school", "Tamarack Valley Technical Center").type("shown", "W. Kestrel").type("login", "Kestrel")
                .type("fresh", FRESH).type("again", FRESH).press("Make the account");
    }

    // The first run

    @Test
    void theCodeOfTheConsoleMakesTheFirstInstructorWhoIsAskedForAKeeper() throws Exception {
        consoleShows(CODE);
        fillStart(CODE.toLowerCase(java.util.Locale.ROOT).replace("-", " "));
        assertThat(hand.path()).isEqualTo("/account/keeper");
        Person first = site.school.people().byLogin("kestrel").orElseThrow();
        assertThat(first.kind()).isEqualTo(Person.Kind.INSTRUCTOR);
        assertThat(site.school.charters().find().orElseThrow().name()).isEqualTo("Tamarack Valley Technical Center");
        hand.type("shown", "J. Alder").type("login", "alder").press("Make the keeper");
        assertThat(hand.text()).contains("alder").containsPattern("([0-9A-Z]{4}-){3}[0-9A-Z]{4}");
        assertThat(site.school.people().byLogin("alder").orElseThrow().isKeeper()).isTrue();
        assertThat(hand.open("/account/keeper").status()).isEqualTo(404);
    }

    @Test
    void afterTheFirstAccountThereIsNoSuchPage() throws Exception {
        consoleShows(CODE);
        site.add(Person.Kind.KEEPER, "J. Alder", "alder");
        assertThat(hand.open("/start").status()).isEqualTo(404);
        assertThat(new PlainHttp(site).post("/start", "code", CODE, "school", "S", "shown", "N", "login", "nn", "fresh", FRESH, "again", FRESH).statusCode()).isEqualTo(404);
    }

    @Test
    void aFaultElsewhereDoesNotUseTheCodeUp() throws Exception {
        consoleShows(CODE);
        hand.open("/start").type("code", CODE).type("school", "Tamarack Valley Technical Center").type("shown", "W. Kestrel").type("login", "w k")
                .type("fresh", "short").type("again", "short").press("Make the account");
        assertThat(hand.status()).isEqualTo(422);
        assertThat(hand.fault("login")).contains("without gaps");
        assertThat(hand.fault("fresh")).contains("15 or more");
        assertThat(hand.text()).containsSubsequence("Login: Write 2 to 60", "New password: This password has 5 signs");
        assertThat(hand.typed("school")).isEqualTo("Tamarack Valley Technical Center");
        assertThat(hand.typed("fresh")).isEmpty();
        fillStart(CODE);
        assertThat(hand.path()).isEqualTo("/account/keeper");
    }

    @Test
    void aCodeThatIsOverOrWrongMakesNobody() throws Exception {
        consoleShows(CODE);
        fillStart("AAAA-AAAA-AAAA-AAAA");
        assertThat(hand.fault("code")).contains("does not fit");
        site.wait(Duration.ofHours(24));
        fillStart(CODE);
        assertThat(hand.fault("code")).contains("is over");
        assertThat(site.school.people().isNobodyInCharge()).isTrue();
    }

    // Signing in

    @Test
    void afterFourFailuresOneWaitsAndTheRightPasswordWorksAgainAfterwards() throws Exception {
        Person wren = site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
        for (int i = 0; i < 5; i++) {
            as(wren, "not the password at all");
        }
        assertThat(as(wren).open("/units").text()).doesNotContain("Wren K.");
        site.wait(Duration.ofSeconds(31));
        assertThat(as(wren).open("/units").text()).contains("Wren K.");
    }

    @Test
    void aSecondFactorIsTurnedOnAskedForAndTurnedOff() throws Exception {
        Person wren = site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
        as(wren).open("/account/second-factor");
        String secret = hand.page().getElementByName("secret").getAttribute("value");
        assertThat(hand.html()).contains("otpauth://totp/Soapstone:wren?secret=" + secret);
        hand.type("code", "000000").type("current", SchoolUnderTest.PASSWORD).press("Turn it on");
        assertThat(hand.status()).isEqualTo(422);
        assertThat(hand.fault("code")).contains("not the code of this moment");
        hand.type("code", Authenticator.code(secret, site.now())).type("current", SchoolUnderTest.PASSWORD).press("Turn it on");
        assertThat(hand.path()).isEqualTo("/account");
        assertThat(site.school.people().find(wren.id()).orElseThrow().twoFactor()).isTrue();

        hand.press("Sign out");
        as(wren);
        hand.open("/units");
        assertThat(hand.text()).doesNotContain("Wren K.");

        site.wait(Duration.ofMinutes(1));
        PlainHttp plain = new PlainHttp(site);
        String step = PlainHttp.step(plain.post("/sign-in", "login", "wren", "password", SchoolUnderTest.PASSWORD));
        String right = Authenticator.code(secret, site.now());
        assertThat(plain.post("/sign-in", "step", step, "code", right).statusCode()).isEqualTo(302);
        String again = PlainHttp.step(new PlainHttp(site).post("/sign-in", "login", "wren", "password", SchoolUnderTest.PASSWORD));
        assertThat(new PlainHttp(site).post("/sign-in", "step", again, "code", right).statusCode()).isEqualTo(403);
        assertThat(new PlainHttp(site).post("/sign-in", "step", step, "code", right).body()).contains("Type login and password again");

        plain.get("/account");
        assertThat(plain.post("/account/second-factor/off", "current", SchoolUnderTest.PASSWORD).statusCode()).isEqualTo(302);
        assertThat(site.school.people().find(wren.id()).orElseThrow().twoFactor()).isFalse();
    }

    @Test
    void aPasswordThatIsTooShortAloneKeepsItsSecondFactor() throws Exception {
        Person wren = site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
        PlainHttp plain = new PlainHttp(site).signIn("wren", SchoolUnderTest.PASSWORD);
        site.school.people().setFactor(wren.id(), "GEZDGNBVGY3TQOJQGEZDGNBVGY3TQOJQ");
        assertThat(plain.post("/account/password", "current", SchoolUnderTest.PASSWORD, "fresh", "q7#w Zvt", "again", "q7#w Zvt").statusCode()).isEqualTo(302);
        plain.get("/account");
        assertThat(plain.post("/account/second-factor/off", "current", "q7#w Zvt").body()).contains("Change your password first");
        assertThat(site.school.people().find(wren.id()).orElseThrow().twoFactor()).isTrue();
    }

    @Test
    void studentsHaveNoSecondFactor() throws Exception {
        Person seat = site.add(Person.Kind.STUDENT, "Seat 7", "seat7");
        as(seat);
        assertThat(hand.open("/account").text()).doesNotContain("second factor");
        assertThat(hand.open("/account/second-factor").status()).isEqualTo(404);
    }

    @Test
    void aPasswordFromASlipIsReplacedBeforeAnythingElse() throws Exception {
        Person seat = site.school.people().add(new People.NewPerson(Person.Kind.STUDENT, "Seat 7", "seat7", PasswordHash.hash(SchoolUnderTest.PASSWORD), true, "en"),
                site.now());
        as(seat);
        assertThat(hand.open("/work").path()).isEqualTo("/account/password");
        assertThat(hand.heading()).isEqualTo("An own password first");
        hand.type("current", SchoolUnderTest.PASSWORD).type("fresh", SchoolUnderTest.PASSWORD).type("again", SchoolUnderTest.PASSWORD).press("Change the password");
        assertThat(hand.fault("fresh")).contains("already");
        hand.type("current", SchoolUnderTest.PASSWORD).type("fresh", FRESH).type("again", FRESH).press("Change the password");
        assertThat(hand.path()).isEqualTo("/work");
    }

    @Test
    void aNewPasswordEndsTheOtherSessionsAndKeepsThisOne() throws Exception {
        Person wren = site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
        PlainHttp other = new PlainHttp(site).signIn("wren", SchoolUnderTest.PASSWORD);
        as(wren).open("/account").follow("Change my password");
        hand.type("current", "something else altogether").type("fresh", FRESH).type("again", FRESH).press("Change the password");
        assertThat(hand.fault("current")).contains("not your password now");
        hand.type("current", SchoolUnderTest.PASSWORD).type("fresh", FRESH).type("again", FRESH).press("Change the password");
        assertThat(hand.path()).isEqualTo("/account");
        assertThat(other.get("/account").statusCode()).isEqualTo(302);
        assertThat(new PlainHttp(site).signIn("wren", FRESH).get("/account").statusCode()).isEqualTo(200);
    }

    @Test
    void aTabletSaysInItsPageWhenItSignsOut() throws Exception {
        Person seat = site.add(Person.Kind.STUDENT, "Seat 7", "seat7");
        PlainHttp tablet = new PlainHttp(site);
        tablet.post("/sign-in", "login", seat.login(), "password", SchoolUnderTest.PASSWORD, "tablet", "yes");
        assertThat(tablet.get("/account").body()).contains("data-warns=\"480\" data-ends=\"600\" data-tablet=\"yes\"");
        site.wait(Duration.ofMinutes(9));
        assertThat(tablet.get("/stay").body()).isEqualTo("{\"warns\":0,\"ends\":60}");
        assertThat(tablet.post("/stay").body()).isEqualTo("{\"warns\":480,\"ends\":600}");
        site.wait(Duration.ofMinutes(10));
        assertThat(tablet.get("/stay").body()).isEqualTo("{\"warns\":0,\"ends\":0}");
    }

    // With a code

    @Test
    void aCodeSetsANewPasswordOnce() throws Exception {
        Person wren = site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
        String code = newCode(wren);
        hand.open("/new-password").type("login", "wren").type("code", code).type("fresh", FRESH).type("again", FRESH + "!").press("Set the password and sign in");
        assertThat(hand.fault("again")).contains("differs");
        hand.type("fresh", FRESH).type("again", FRESH).press("Set the password and sign in");
        assertThat(hand.path()).isEqualTo("/classes");
        hand.press("Sign out");
        hand.open("/new-password").type("login", "wren").type("code", code).type("fresh", FRESH).type("again", FRESH).press("Set the password and sign in");
        assertThat(hand.fault("code")).contains("does not fit the login");
    }

    @Test
    void aPasswordMadeOfTheOwnNameIsRefusedAndTheCodeIsNotLost() throws Exception {
        Person wren = site.add(Person.Kind.INSTRUCTOR, "Wren Kestrelmann", "wren");
        newCode(wren);
        hand.open("/new-password").type("login", "wren").type("code", CODE).type("fresh", "wren kestrelmann 1").type("again", "wren kestrelmann 1")
                .press("Set the password and sign in");
        assertThat(hand.status()).isEqualTo(422);
        assertThat(hand.fault("fresh")).contains("made of a name");
        hand.type("fresh", FRESH).type("again", FRESH).press("Set the password and sign in");
        assertThat(hand.path()).isEqualTo("/classes");
    }

    // The keeper

    @Test
    void theKeeperAddsAnInstructorWhoSetsAPasswordWithTheCode() throws Exception {
        as(site.add(Person.Kind.KEEPER, "J. Alder", "alder")).open("/accounts").follow("Add an account");
        hand.type("shown", "T. Larch").type("login", "alder").press("Add the account");
        assertThat(hand.fault("login")).contains("has this login already");
        hand.type("login", "larch").press("Add the account");
        String code = hand.page().querySelector("dd.secret-code").getTextContent();
        Person larch = site.school.people().byLogin("larch").orElseThrow();
        assertThat(larch.isInstructor()).isTrue();
        assertThat(site.school.people().password(larch.id())).isEmpty();
        assertThat(hand.open("/accounts").text()).contains("Without a password yet");
        hand.press("Sign out");
        hand.open("/new-password").type("login", "larch").type("code", code).type("fresh", FRESH).type("again", FRESH).press("Set the password and sign in");
        assertThat(hand.path()).isEqualTo("/classes");
    }

    @Test
    void aKeeperMakesNoStudents() throws Exception {
        site.add(Person.Kind.KEEPER, "J. Alder", "alder");
        PlainHttp keeper = new PlainHttp(site).signIn("alder", SchoolUnderTest.PASSWORD);
        assertThat(keeper.post("/accounts/new", "kind", "STUDENT", "shown", "Seat 8", "login", "seat8").statusCode()).isEqualTo(422);
        assertThat(site.school.people().byLogin("seat8")).isEmpty();
    }

    @Test
    void aDisabledAccountIsOutAtOnceAndComesBackWhenItIsEnabled() throws Exception {
        Person wren = site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
        PlainHttp open = new PlainHttp(site).signIn("wren", SchoolUnderTest.PASSWORD);
        as(site.add(Person.Kind.KEEPER, "J. Alder", "alder")).open("/accounts").follow("Wren K.").press("Disable");
        assertThat(hand.text()).contains("Disabled");
        assertThat(open.get("/account").statusCode()).isEqualTo(302);
        assertThat(new PlainHttp(site).post("/sign-in", "login", "wren", "password", SchoolUnderTest.PASSWORD).statusCode()).isEqualTo(403);
        hand.open("/accounts/" + wren.id()).press("Enable");
        assertThat(new PlainHttp(site).post("/sign-in", "login", "wren", "password", SchoolUnderTest.PASSWORD).statusCode()).isEqualTo(302);
    }

    @Test
    void aResetTakesPasswordAndSecondFactorAwayAndEndsSessions() throws Exception {
        Person wren = site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
        PlainHttp open = new PlainHttp(site).signIn("wren", SchoolUnderTest.PASSWORD);
        site.school.people().setFactor(wren.id(), "GEZDGNBVGY3TQOJQGEZDGNBVGY3TQOJQ");
        as(site.add(Person.Kind.KEEPER, "J. Alder", "alder")).open("/accounts/" + wren.id()).press("Make a new code");
        assertThat(open.get("/account").statusCode()).isEqualTo(302);
        assertThat(site.school.people().find(wren.id()).orElseThrow().twoFactor()).isFalse();
        assertThat(site.school.people().password(wren.id())).isEmpty();
    }

    @Test
    void theKeeperCannotShutTheKeeperOut() throws Exception {
        Person alder = site.add(Person.Kind.KEEPER, "J. Alder", "alder");
        PlainHttp keeper = new PlainHttp(site).signIn("alder", SchoolUnderTest.PASSWORD);
        assertThat(keeper.get("/accounts/" + alder.id()).body()).doesNotContain("/disable").doesNotContain("/code");
        assertThat(keeper.post("/accounts/" + alder.id() + "/disable").statusCode()).isEqualTo(409);
        assertThat(keeper.post("/accounts/" + alder.id() + "/code").statusCode()).isEqualTo(409);
    }

    @Test
    void theKeeperFindsAndRenamesStudentsAndSeesNothingElseOfThem() throws Exception {
        SchoolClass in = site.addClass("Period 2", site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren"));
        Person heron = site.enrol(in, "Heron", "heron", "7").person();
        site.enrol(in, "Plover", "plover", "8");
        as(site.add(Person.Kind.KEEPER, "J. Alder", "alder")).open("/accounts").follow("Students").type("find", "HER").press("Find");
        assertThat(hand.text()).contains("Heron").contains("Found: 1").doesNotContain("Plover").doesNotContain("Period 2");
        hand.follow("Heron").type("shown", "").press("Change the name");
        assertThat(hand.fault("shown")).contains("empty");
        hand.type("shown", "Gray heron").press("Change the name");
        assertThat(site.school.people().find(heron.id()).orElseThrow().shown()).isEqualTo("Gray heron");
        assertThat(hand.open("/accounts/" + heron.id()).text()).doesNotContain("Make a new code").doesNotContain("Period 2");
        assertThat(new PlainHttp(site).signIn("alder", SchoolUnderTest.PASSWORD).post("/accounts/" + heron.id() + "/code").statusCode()).isEqualTo(404);
    }
}
