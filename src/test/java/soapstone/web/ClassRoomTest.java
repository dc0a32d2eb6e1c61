package soapstone.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.htmlunit.WebClient;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import soapstone.school.Assignment;
import soapstone.school.Assignments;
import soapstone.school.ClassSettings;
import soapstone.school.Member;
import soapstone.school.Person;
import soapstone.school.SchoolClass;

/** The instructor's classes, rosters and assignments, through the pages. */
class ClassRoomTest {

    private SchoolUnderTest site;
    private Person wren;
    private WebClient browser;
    private Hand hand;

    @BeforeEach
    void start() throws Exception {
        site = SchoolUnderTest.start(new SampleDesk());
        wren = site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
        browser = site.browser(wren);
        hand = new Hand(site, browser);
    }

    @AfterEach
    void stop() {
        browser.close();
        site.close();
    }

    private SchoolClass only() {
        return site.school.classes().taughtBy(wren.id()).get(0);
    }

    private SchoolClass fresh(String name) throws Exception {
        hand.open("/classes/new").type("name", name).press("Make the class");
        return only();
    }

    private List<Member> members(SchoolClass in) {
        return site.school.classes().members(in.id());
    }

    // Classes

    @Test
    void aClassTakesANameAndStartsWithWhatIsUsual() throws Exception {
        SchoolClass in = fresh("Sheet metal 1, period 2");
        assertThat(in.name()).isEqualTo("Sheet metal 1, period 2");
        assertThat(in.settings()).isEqualTo(ClassSettings.USUAL);
        assertThat(hand.path()).isEqualTo("/classes/" + in.id() + "/roster");
        assertThat(hand.open("/classes").text()).contains("Sheet metal 1, period 2");
    }

    @Test
    void everySettingIsKept() throws Exception {
        SchoolClass in = fresh("Night class");
        hand.open("/classes/" + in.id() + "/settings").type("term", "Fall").type("units", "METRIC").type("mark", "comma").type("near", "50")
                .tick("carried").tick("coarse").tick("bare").type("conventions", "K = 0.44\nEdges: 2 diameters").press("Save the settings");
        SchoolClass changed = only();
        assertThat(changed.term()).isEqualTo("Fall");
        assertThat(changed.settings()).isEqualTo(new ClassSettings(soapstone.quantity.UnitSystem.METRIC, "en", ',', false, false, 0.5, false,
                "K = 0.44\nEdges: 2 diameters"));
        hand.open("/classes/" + in.id() + "/settings");
        assertThat(hand.typed("near")).isEqualTo("50");
        assertThat(hand.typed("mark")).isEqualTo("comma");
    }

    @Test
    void whatDoesNotFitIsToldBesideTheFieldAndNothingIsSaved() throws Exception {
        hand.open("/classes/new").type("name", " ").type("near", "101").type("term", "Spring").press("Make the class");
        assertThat(hand.status()).isEqualTo(422);
        assertThat(hand.fault("name")).isEqualTo("Write something here; it is empty.");
        assertThat(hand.fault("near")).isEqualTo("Write a number from 0 to 100, such as 1 or 2.5.");
        assertThat(hand.typed("term")).isEqualTo("Spring");
        assertThat(hand.typed("near")).isEqualTo("101");
        assertThat(hand.text()).contains("Nothing was saved");
        assertThat(site.school.classes().taughtBy(wren.id())).isEmpty();
    }

    @Test
    void aClassThatIsPutAwayCanBeReadAndDoesNotChange() throws Exception {
        SchoolClass in = fresh("Old class");
        hand.open("/classes/" + in.id() + "/settings").press("Put this class away");
        assertThat(hand.text()).contains("Put away").contains("Old class");
        assertThat(hand.open("/classes/" + in.id()).text()).contains("This class is put away").doesNotContain("New assignment");
        assertThat(hand.open("/classes/" + in.id() + "/roster").status()).isEqualTo(409);
        hand.open("/classes/" + in.id() + "/settings").press("Take this class back");
        assertThat(only().archived()).isEmpty();
    }

    @Test
    void aCopyForTheNextTermHasSettingsAndDraftsButNoStudents() throws Exception {
        SchoolClass in = fresh("Sheet metal 1");
        site.enrol(in, "Ada Q.", "ada", "1");
        hand.open("/classes/" + in.id() + "/settings").type("units", "METRIC").press("Save the settings");
        hand.open("/classes/" + in.id() + "/assignments/new").type("title", "Spacing").tick("use-spacing/bolt-holes").press("Give it out");
        hand.open("/classes/" + in.id() + "/settings").type("copy-name", "Sheet metal 1").type("copy-term", "Fall").press("Make the copy");
        SchoolClass copy = only();
        assertThat(copy.term()).isEqualTo("Fall");
        assertThat(copy.settings()).isEqualTo(site.school.classes().find(in.id()).orElseThrow().settings());
        assertThat(members(copy)).isEmpty();
        Assignment draft = site.school.assignments().of(copy.id()).get(0);
        assertThat(draft.state()).isEqualTo(Assignment.State.DRAFT);
        assertThat(draft.due()).isEmpty();
        assertThat(draft.tasks().get(0).exercises()).containsExactly("spacing/bolt-holes");
    }

    @Test
    void aSecondInstructorComesByLoginAndTheLastOneCannotLeave() throws Exception {
        site.add(Person.Kind.INSTRUCTOR, "Moss T.", "moss");
        SchoolClass in = fresh("Shared");
        hand.open("/classes/" + in.id() + "/settings").press("Take Wren K. out");
        assertThat(hand.status()).isEqualTo(422);
        assertThat(hand.text()).contains("Nobody else teaches this class.");
        hand.type("login", "nobody").press("Add this instructor");
        assertThat(hand.fault("login")).startsWith("No instructor has that login.");
        hand.type("login", " MOSS ").press("Add this instructor").press("Take Wren K. out");
        assertThat(hand.path()).isEqualTo("/classes");
        assertThat(hand.open("/classes/" + in.id()).status()).isEqualTo(404);
        assertThat(site.school.classes().instructors(in.id())).extracting(Person::login).containsExactly("moss");
    }

    // Rosters

    @Test
    void aListWithAFaultSavesNothingAndTellsEachRow() throws Exception {
        SchoolClass in = fresh("Roster");
        String list = "1, Ada Q.\n1, Bo R.\n3, " + "x".repeat(100);
        hand.open("/classes/" + in.id() + "/roster").type("roster", list).press("Look at the list");
        assertThat(hand.status()).isEqualTo(422);
        assertThat(hand.typed("roster")).isEqualTo(list);
        assertThat(hand.fault("roster")).isEqualTo("Rows with a fault: 2. Each says what would fit; nothing was saved.");
        assertThat(hand.page().getByXPath("//table//p[@class='fault']")).hasSize(2);
        assertThat(hand.html()).doesNotContain("slips-to-sign-in");
        assertThat(members(in)).isEmpty();
    }

    @Test
    void anEmptyListSaysWhatAListIs() throws Exception {
        SchoolClass in = fresh("Roster");
        hand.open("/classes/" + in.id() + "/roster").press("Look at the list");
        assertThat(hand.fault("roster")).contains("Write one a line");
        hand.type("roster", "1, " + "y".repeat(20_000)).press("Look at the list");
        assertThat(hand.fault("roster")).startsWith("Up to 20000 characters fit here");
    }

    @Test
    void fortyStudentsWithLongNamesGetSlipsOnceAndSignInWithThem() throws Exception {
        SchoolClass in = fresh("Forty");
        String list = IntStream.rangeClosed(1, 40).mapToObj(i -> i + ", " + "Maximiliana-Theodora van der Hollenberg-Oyelaran the Younger no. " + i)
                .collect(Collectors.joining("\n"));
        hand.open("/classes/" + in.id() + "/roster").type("roster", list).press("Look at the list");
        assertThat(hand.status()).isEqualTo(200);
        assertThat(members(in)).as("nobody before the list was looked at").isEmpty();
        hand.press("Make these 40 accounts");
        assertThat(hand.page().getByXPath("//dl[contains(@class, 'cut-slip')]")).hasSize(40);
        assertThat(members(in)).hasSize(40);
        List<String> typed = hand.page().<org.htmlunit.html.DomElement>getByXPath("//dl[contains(@class, 'cut-slip')][40]//dd[@class='typed']").stream()
                .map(d -> d.getTextContent().strip()).toList();
        try (WebClient student = site.browser()) {
            assertThat(site.signIn(student, typed.get(0), typed.get(1)).getVisibleText()).contains("Sign out");
        }
        assertThat(hand.open("/classes/" + in.id()).text()).contains("no. 40").doesNotContain(typed.get(1));
    }

    @Test
    void aListThatIsSentTwiceMakesNobodyTwice() throws Exception {
        SchoolClass in = fresh("Twice");
        hand.open("/classes/" + in.id() + "/roster").type("roster", "1, Ada Q.\nBo R.").press("Look at the list");
        org.htmlunit.html.HtmlPage before = hand.page();
        hand.press("Make these 2 accounts");
        org.htmlunit.html.HtmlButton again = before.<org.htmlunit.html.HtmlButton>getByXPath("//button").stream()
                .filter(b -> b.getTextContent().startsWith("Make these")).findFirst().orElseThrow();
        org.htmlunit.html.HtmlPage second = again.click();
        assertThat(second.getWebResponse().getStatusCode()).isEqualTo(422);
        assertThat(second.getBody().getVisibleText()).contains("sits in this class already");
        assertThat(members(in)).hasSize(2);
    }

    private Hand send(String name, String file, byte[] bytes) throws Exception {
        java.nio.file.Path path = java.nio.file.Files.createTempDirectory("roster").resolve(file);
        java.nio.file.Files.write(path, bytes);
        ((org.htmlunit.html.HtmlFileInput) hand.page().getElementById("f-" + name)).setFiles(path.toFile());
        return hand;
    }

    private Hand send(String name, String text) throws Exception {
        return send(name, name + ".csv", text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }

    @Test
    void aFileStandsInTheFieldBeforeAnythingIsSaved() throws Exception {
        SchoolClass in = fresh("File");
        hand.open("/classes/" + in.id() + "/roster");
        send("list", "Seat,Name\n1,Zoë P.\n2,\"Q., Ada\"\n").press("Look at the list");
        assertThat(hand.status()).as(hand.text()).isEqualTo(200);
        assertThat(hand.typed("roster")).contains("1,Zoë P.").contains("2,\"Q., Ada\"");
        hand.press("Make these 2 accounts");
        assertThat(members(in)).extracting(m -> m.person().shown()).containsExactly("Zoë P.", "Q., Ada");
    }

    @Test
    void aFileThatIsNoUtf8OrTooLargeSaysSo() throws Exception {
        SchoolClass in = fresh("File");
        hand.open("/classes/" + in.id() + "/roster");
        send("list", "old.csv", "1,Zo\u00eb P.\n".getBytes(java.nio.charset.StandardCharsets.ISO_8859_1)).press("Look at the list");
        assertThat(hand.status()).isEqualTo(422);
        assertThat(hand.text()).contains("UTF-8").contains("Line 1");
        send("list", "x".repeat(70_000)).press("Look at the list");
        assertThat(hand.status()).isEqualTo(413);
        assertThat(members(in)).isEmpty();
    }

    @Test
    void aClassComesOutOfOneRosterFiles() throws Exception {
        SchoolClass in = fresh("Set");
        String classes = "sourcedId,status,dateLastModified,title,grades,courseSourcedId,classCode,classType,location,schoolSourcedId,termSourcedIds,subjects,subjectCodes,periods\n"
                + "c1,,,Sheet metal 1,,k,,scheduled,,s,t,,,\nc2,,,Welding 1,,k,,scheduled,,s,t,,,\n";
        String users = "sourcedId,status,dateLastModified,enabledUser,username,userIds,givenName,familyName,middleName,identifier,email,sms,phone,agentSourcedIds,grades,"
                + "password,userMasterIdentifier,preferredGivenName,preferredMiddleName,preferredFamilyName,primaryOrgSourcedId,pronouns\n"
                + "u1,,,true,ada.q,,Ada,Quill,,,,,,,,,,,,,s,\nu2,,,true,bo.r,,Bo,Reed,,,,,,,,,,,,,s,\n";
        String enrollments = "sourcedId,status,dateLastModified,classSourcedId,schoolSourcedId,userSourcedId,role,primary,beginDate,endDate\n"
                + "e1,,,c1,s,u1,student,false,,\ne2,,,c2,s,u2,student,false,,\n";
        hand.open("/classes/" + in.id() + "/roster");
        send("users", users);
        send("enrollments", enrollments);
        send("classes", classes).press("Look at the list");
        assertThat(hand.status()).isEqualTo(422);
        assertThat(hand.fault("one-class")).contains("Sheet metal 1 (c1)").contains("Welding 1 (c2)");
        send("users", users);
        send("enrollments", enrollments);
        send("classes", classes).type("one-class", "c1").press("Look at the list");
        assertThat(hand.status()).as(hand.text()).isEqualTo(200);
        hand.press("Make these 1 accounts");
        assertThat(members(in)).extracting(m -> m.person().shown()).containsExactly("Ada Q.");
    }

    @Test
    void aNewSlipEndsTheSessionsAndTheOldPassphrase() throws Exception {
        SchoolClass in = fresh("Slips");
        Member ada = site.enrol(in, "Ada Q.", "ada", "1");
        try (WebClient student = site.browser(ada.person())) {
            hand.open("/classes/" + in.id() + "/roster/" + ada.person().id()).press("Make a new slip");
            assertThat(hand.page().getByXPath("//dl[contains(@class, 'cut-slip')]")).hasSize(1);
            assertThat(site.open(student, "/units").getVisibleText()).doesNotContain("Ada Q.");
            assertThat(site.signIn(student, "ada", SchoolUnderTest.PASSWORD).getWebResponse().getStatusCode()).isEqualTo(403);
        }
    }

    @Test
    void aPlaceIsChangedGivenUpAndGivenBack() throws Exception {
        SchoolClass in = fresh("Places");
        Member ada = site.enrol(in, "Ada Q.", "ada", "1");
        site.enrol(in, "Bo R.", "bo", "2");
        String place = "/classes/" + in.id() + "/roster/" + ada.person().id();
        hand.open(place).type("seat", "2").type("extra", "500").type("shown", "").press("Save");
        assertThat(hand.status()).isEqualTo(422);
        assertThat(hand.fault("seat")).isEqualTo("Bo R. sits on seat 2. Write another seat, or none.");
        assertThat(hand.fault("extra")).isEqualTo("Write a whole number from 0 to 400.");
        assertThat(hand.fault("shown")).isEqualTo("Write something here; it is empty.");
        hand.type("seat", "7").type("extra", "50").type("shown", "Ada Quill").press("Save");
        Member changed = site.school.classes().member(in.id(), ada.person().id()).orElseThrow();
        assertThat(changed.seat()).isEqualTo("7");
        assertThat(changed.extraTime()).isEqualTo(50);
        assertThat(changed.person().shown()).isEqualTo("Ada Quill");
        hand.open(place).press("Take out of the class");
        assertThat(hand.text()).contains("Out of the class");
        hand.open(place).press("Put back into the class");
        assertThat(site.school.classes().member(in.id(), ada.person().id()).orElseThrow().state()).isEqualTo(Member.State.IN);
    }

    // Joining

    @Test
    void withTheCodeAStudentMakesAnAccountAndWaitsForAYes() throws Exception {
        SchoolClass in = fresh("Joined");
        try (WebClient student = site.browser()) {
            Hand theirs = new Hand(site, student).open("/join").type("code", in.code().toLowerCase(java.util.Locale.ROOT)).type("name", "Zoë P.").press("Ask for a place");
            assertThat(theirs.text()).contains("You have asked for a place in Joined").contains("Passphrase");
            assertThat(members(in)).extracting(Member::state).containsExactly(Member.State.ASKED);
            theirs.open("/join").type("code", in.code()).type("name", "zoë p.").press("Ask for a place");
            assertThat(theirs.fault("name")).startsWith("Somebody of that name");
        }
        hand.open("/classes/" + in.id()).press("Give Zoë P. a place");
        assertThat(members(in)).extracting(Member::state).containsExactly(Member.State.IN);
    }

    @Test
    void aStudentWithAnAccountAsksWithTheCodeAlone() throws Exception {
        Member ada = site.enrol(fresh("First"), "Ada Q.", "ada", "1");
        SchoolClass second = fresh("Second");
        try (WebClient student = site.browser(ada.person())) {
            Hand theirs = new Hand(site, student).open("/join").type("code", soapstone.school.ClassCode.shown(second.code())).press("Ask for a place");
            assertThat(theirs.text()).contains("You have asked for a place in Second").doesNotContain("Passphrase");
        }
        hand.open("/classes/" + second.id()).press("Decline Ada Q.");
        assertThat(members(second)).extracting(Member::state).containsExactly(Member.State.LEFT);
    }

    @Test
    void wrongCodesSaySoAndManyOfThemHaveToWait() throws Exception {
        SchoolClass in = fresh("Guessed");
        try (WebClient student = site.browser()) {
            Hand theirs = new Hand(site, student).open("/join");
            for (int i = 0; i < 21; i++) {
                theirs.type("code", "AAAA-" + i).type("name", "Bo R.").press("Ask for a place");
                assertThat(theirs.fault("code")).startsWith("No class has that code now.");
            }
            theirs.type("code", in.code()).press("Ask for a place");
            assertThat(theirs.fault("code")).startsWith("Too many codes from here were wrong.");
            site.wait(java.time.Duration.ofMinutes(3));
            theirs.press("Ask for a place");
            assertThat(theirs.text()).contains("You have asked for a place in Guessed");
        }
    }

    // Assignments

    private Assignment work(SchoolClass in) {
        return site.school.assignments().of(in.id()).get(0);
    }

    @Test
    void poolsPointsAndOrderComeInASecondLook() throws Exception {
        SchoolClass in = fresh("Pools");
        hand.open("/classes/" + in.id() + "/assignments/new").type("title", "Mixed").tick("use-spacing/bolt-holes").tick("use-spacing/every-state")
                .tick("use-pressure/pump-lid").press("Order, pools and points");
        hand.type("pool-spacing/bolt-holes", "A").type("pool-pressure/pump-lid", "A").type("place-spacing/every-state", "1").type("place-spacing/bolt-holes", "2")
                .type("place-pressure/pump-lid", "3").type("points-spacing/every-state", "2.5").press("Show the order again");
        hand.type("many-A", "3").press("Save as a draft");
        assertThat(hand.fault("many-A")).isEqualTo("Write a whole number from 1 to 2.");
        assertThat(site.school.assignments().of(in.id())).isEmpty();
        hand.type("many-A", "1").type("points-pressure/pump-lid", "4").press("Save as a draft");
        assertThat(hand.fault("points-pressure/pump-lid")).isEqualTo("In pool A each exercise has 1 points, as its first one has.");
        hand.type("points-pressure/pump-lid", "1").press("Save as a draft");
        assertThat(work(in).tasks()).extracting(Assignment.Task::exercises)
                .containsExactly(List.of("spacing/every-state"), List.of("spacing/bolt-holes", "pressure/pump-lid"));
        assertThat(work(in).tasks()).extracting(Assignment.Task::points).containsExactly(2.5, 1.0);
        hand.follow("Change it");
        assertThat(hand.typed("pool-pressure/pump-lid")).isEqualTo("A");
        assertThat(hand.typed("points-spacing/every-state")).isEqualTo("2.5");
        hand.press("Save as a draft");
        assertThat(work(in).tasks()).hasSize(2);
    }

    @Test
    void everyFieldOfAnAssignmentSaysWhatWouldFit() throws Exception {
        SchoolClass in = fresh("Faults");
        hand.open("/classes/" + in.id() + "/assignments/new").type("title", "").type("due-date", "2027-03-01").type("due-time", "").type("tries", "0")
                .choose("for", "SOME").press("Give it out");
        assertThat(hand.status()).isEqualTo(422);
        assertThat(hand.fault("title")).isEqualTo("Write something here; it is empty.");
        assertThat(hand.fault("exercises")).isEqualTo("Tick at least one exercise.");
        assertThat(hand.fault("due-time")).isEqualTo("Write the time as well, or leave both empty.");
        assertThat(hand.fault("tries")).isEqualTo("Write a whole number from 1 to 20.");
        assertThat(hand.fault("for")).isEqualTo("Tick at least one student.");
        hand.type("title", "x").tick("use-spacing/bolt-holes").choose("for", "ALL").type("tries", "2").type("due-time", "08:00").press("Give it out");
        assertThat(hand.fault("due-date")).startsWith("That time is past.");
        hand.type("due-date", "2027-04-01").type("opens-date", "2027-04-02").type("opens-time", "08:00").press("Give it out");
        assertThat(hand.fault("due-date")).isEqualTo("The due time has to come after the opening.");
        hand.type("due-date", "next week").press("Give it out");
        assertThat(site.school.assignments().of(in.id())).isEmpty();
    }

    @Test
    void whatNobodyHasBegunIsADraftAgainWhenItIsTakenBack() throws Exception {
        SchoolClass in = fresh("Back");
        Member ada = site.enrol(in, "Ada Q.", "ada", "1");
        hand.open("/classes/" + in.id() + "/assignments/new").type("title", "Spacing").tick("use-spacing/bolt-holes").press("Give it out");
        String path = hand.path();
        hand.press("Take it back");
        assertThat(work(in).state()).isEqualTo(Assignment.State.DRAFT);
        hand.press("Give it out");
        site.school.sheets().deal(work(in).id(), ada.person().id(), "S1", List.of(), site.now());
        hand.press("Take it back");
        assertThat(work(in).state()).isEqualTo(Assignment.State.TAKEN);
        assertThat(hand.open(path + "/edit").status()).isEqualTo(409);
        hand.open(path).press("Give it out");
        assertThat(work(in).state()).isEqualTo(Assignment.State.GIVEN);
    }

    @Test
    void oneStudentHasAnOwnDueTimeAndTwoGetAMakeUpInOneAction() throws Exception {
        SchoolClass in = fresh("Single");
        Member ada = site.enrol(in, "Ada Q.", "ada", "1");
        Member bo = site.enrol(in, "Bo R.", "bo", "2");
        site.enrol(in, "Cy S.", "cy", "3");
        hand.open("/classes/" + in.id() + "/assignments/new").type("title", "Spacing").tick("use-spacing/bolt-holes").press("Give it out");
        long first = work(in).id();
        hand.type("student", String.valueOf(ada.person().id())).type("own-date", "2027-03-30").type("own-time", "11:00").press("Set this student's due time");
        assertThat(site.school.assignments().givenTo(first)).as(hand.text()).extracting(Assignments.GivenTo::person).containsExactly(ada.person().id());
        assertThat(hand.text()).contains("30 Mar 2027, 11:00");
        hand.press("Give the make-up");
        assertThat(hand.fault("up")).isEqualTo("Tick at least one student.");
        hand.tick("up-" + ada.person().id()).tick("up-" + bo.person().id()).press("Give the make-up");
        Assignment makeUp = work(in);
        assertThat(makeUp.after()).contains(first);
        assertThat(makeUp.state()).isEqualTo(Assignment.State.GIVEN);
        assertThat(makeUp.title()).isEqualTo("Make-up: Spacing");
        assertThat(site.school.assignments().givenTo(makeUp.id())).allMatch(Assignments.GivenTo::onlyThese).extracting(Assignments.GivenTo::person)
                .containsExactlyInAnyOrder(ada.person().id(), bo.person().id());
        assertThat(hand.text()).contains("Only for these: Ada Q., Bo R.");
    }

    @Test
    void anAssignmentIsCopiedToAnotherOwnClassAsADraft() throws Exception {
        SchoolClass in = fresh("From");
        SchoolClass to = fresh("To");
        hand.open("/classes/" + in.id() + "/assignments/new").type("title", "Spacing").tick("use-spacing/bolt-holes").press("Give it out");
        hand.type("to", String.valueOf(to.id())).press("Copy it");
        assertThat(work(to).state()).isEqualTo(Assignment.State.DRAFT);
        assertThat(work(to).title()).isEqualTo("Spacing");
        assertThat(hand.path()).isEqualTo("/assignments/" + work(to).id());
    }

    // Doors

    @Test
    void whatIsNotOnesOwnMightAsWellNotBeThere() throws Exception {
        SchoolClass in = fresh("Mine");
        Member ada = site.enrol(in, "Ada Q.", "ada", "1");
        hand.open("/classes/" + in.id() + "/assignments/new").type("title", "Spacing").tick("use-spacing/bolt-holes").press("Give it out");
        Person moss = site.add(Person.Kind.INSTRUCTOR, "Moss T.", "moss");
        List<String> doors = List.of("/classes/C", "/classes/C/settings", "/classes/C/roster", "/classes/C/roster/P", "/classes/C/assignments/new",
                "/assignments/A", "/assignments/A/edit", "/assignments/A/preview/1");
        List<String> posts = List.of("/classes/C/settings", "/classes/C/code", "/classes/C/archive", "/classes/C/take-back", "/classes/C/copy", "/classes/C/instructors",
                "/classes/C/instructors/P/remove", "/classes/C/roster", "/classes/C/slips-to-sign-in", "/classes/C/roster/P", "/classes/C/roster/P/slip",
                "/classes/C/roster/P/approve", "/classes/C/roster/P/decline", "/classes/C/roster/P/take-out", "/classes/C/roster/P/put-back",
                "/classes/C/assignments/new", "/assignments/A/edit", "/assignments/A/give", "/assignments/A/take", "/assignments/A/due", "/assignments/A/own-due",
                "/assignments/A/make-up", "/assignments/A/copy");
        for (Person other : List.of(moss, ada.person())) {
            try (WebClient theirs = site.browser(other)) {
                for (String door : doors) {
                    assertThat(site.open(theirs, named(door, in, ada)).getWebResponse().getStatusCode()).as(other.shown() + " " + door).isEqualTo(404);
                }
                for (String door : posts) {
                    assertThat(post(theirs, named(door, in, ada))).as(other.shown() + " " + door).isEqualTo(404);
                }
            }
        }
        try (WebClient nobody = site.browser()) {
            for (String door : doors) {
                assertThat(new Hand(site, nobody).open(named(door, in, ada)).path()).as(door).isEqualTo("/sign-in");
            }
        }
        assertThat(only().archived()).isEmpty();
        assertThat(site.school.assignments().of(in.id())).hasSize(1);
    }

    private String named(String door, SchoolClass in, Member member) {
        return door.replace("/C", "/" + in.id()).replace("/P", "/" + member.person().id()).replace("/A", "/" + work(in).id());
    }

    private int post(WebClient browser, String path) throws Exception {
        org.htmlunit.html.HtmlPage page = site.open(browser, "/units");
        String key = page.<org.htmlunit.html.HtmlInput>getFirstByXPath("//input[@name='form-key']").getValue();
        org.htmlunit.WebRequest request = new org.htmlunit.WebRequest(java.net.URI.create(site.address(path)).toURL(), org.htmlunit.HttpMethod.POST);
        request.setRequestParameters(List.of(new org.htmlunit.util.NameValuePair("form-key", key)));
        return browser.getPage(request).getWebResponse().getStatusCode();
    }
}
