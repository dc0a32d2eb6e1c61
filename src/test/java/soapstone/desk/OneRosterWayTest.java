package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.htmlunit.Page;
import org.htmlunit.WebClient;
import org.htmlunit.html.HtmlFileInput;
import org.htmlunit.html.HtmlForm;
import org.htmlunit.html.HtmlPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soapstone.school.Assignment;
import soapstone.school.Member;
import soapstone.school.SchoolClass;
import soapstone.school.Sheet;
import soapstone.web.Hand;
import soapstone.web.SchoolUnderTest;

/** A class comes out of the school's own system as OneRoster files, and its results go back under the ids that stood there. */
class OneRosterWayTest {

    private static final String CLASSES = "sourcedId,status,dateLastModified,title,grades,courseSourcedId,classCode,classType,location,schoolSourcedId,termSourcedIds,"
            + "subjects,subjectCodes,periods\nc1,,,Sheet metal 1,,k,,scheduled,,s,t,,,\n";
    private static final String USERS = "sourcedId,status,dateLastModified,enabledUser,username,userIds,givenName,familyName,middleName,identifier,email,sms,phone,"
            + "agentSourcedIds,grades,password,userMasterIdentifier,preferredGivenName,preferredMiddleName,preferredFamilyName,primaryOrgSourcedId,pronouns\n"
            + "stu-0017,,,true,ada.q,,Ada,Quill,,,,,,,,,,,,,s,\nstu-0042,,,true,bo.r,,Bo,Reed,,,,,,,,,,,,,s,\n";
    private static final String ENROLLMENTS = "sourcedId,status,dateLastModified,classSourcedId,schoolSourcedId,userSourcedId,role,primary,beginDate,endDate\n"
            + "e1,,,c1,s,stu-0017,student,false,,\ne2,,,c1,s,stu-0042,student,false,,\n";

    @TempDir
    private Path folder;

    private Hand look(Hand hand, SchoolClass in) throws Exception {
        hand.open("/classes/" + in.id() + "/roster");
        for (Map.Entry<String, String> file : Map.of("users", USERS, "enrollments", ENROLLMENTS, "classes", CLASSES).entrySet()) {
            Path path = Files.writeString(folder.resolve(file.getKey() + ".csv"), file.getValue());
            ((HtmlFileInput) hand.page().getElementById("f-" + file.getKey())).setFiles(path.toFile());
        }
        return hand.press("Look at the list");
    }

    private static Map<String, String> files(Page zipped) throws Exception {
        Map<String, String> files = new LinkedHashMap<>();
        try (InputStream in = zipped.getWebResponse().getContentAsStream(); ZipInputStream zip = new ZipInputStream(in)) {
            for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
                files.put(e.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return files;
    }

    @Test
    void resultsGoBackUnderTheIdsThatCameWithTheList() throws Exception {
        try (SchoolUnderTest site = RealSchool.open()) {
            RealSchool room = new RealSchool(site);
            SchoolClass in = site.addClass("From the office", room.instructor);
            try (WebClient instructor = site.browser(room.instructor); WebClient student = site.browser()) {
                Hand hand = look(new Hand(site, instructor), in);
                assertThat(hand.status()).as(hand.text()).isEqualTo(200);
                assertThat(hand.text()).contains("stu-0017", "stu-0042");
                hand.press("Make these 2 accounts");
                assertThat(site.school.classes().sourcedIds(in.id()).values()).containsExactlyInAnyOrder("stu-0017", "stu-0042");
                List<String> slip = hand.page().<org.htmlunit.html.DomElement>getByXPath("(//dl[contains(@class, 'cut-slip')])[1]//dd[@class='typed']").stream()
                        .map(d -> d.getTextContent().strip()).toList();
                site.signIn(student, slip.get(0), slip.get(1));
                room.in = in;
                Assignment assignment = room.give(Assignment.Shows.MISTAKE);
                room.begin(student, assignment);
                Member ada = site.school.classes().members(in.id()).get(0);
                Sheet sheet = room.sheet(assignment, ada);
                room.handIn(student, sheet, 1, RealSchool.right(sheet.problems().get(0)));

                String path = "/classes/" + in.id() + "/marks/one-roster";
                HtmlPage page = site.open(instructor, path);
                assertThat(page.asNormalizedText()).as("nobody is left out").doesNotContain("Students whose marks do not go");
                HtmlForm form = RealSchool.form(page, path);
                Map.of("school", "s", "class", "c1", "session", "t").forEach((name, id) -> form.getInputByName(name).setValue(id));
                String results = files(form.getElementsByTagName("button").get(0).click()).get("results.csv");
                assertThat(results.lines()).anySatisfy(l -> assertThat(l).contains("stu-0017", "fully graded", "4"))
                        .anySatisfy(l -> assertThat(l).contains("stu-0042", "not submitted"));
            }
        }
    }

    @Test
    void whoeverSitsThereUnderThatIdIsNotMadeTwice() throws Exception {
        try (SchoolUnderTest site = RealSchool.open()) {
            RealSchool room = new RealSchool(site);
            site.school.classes().setSourcedIds(room.in.id(), Map.of(room.ada.person().id(), "stu-0017"));
            try (WebClient instructor = site.browser(room.instructor)) {
                Hand hand = new Hand(site, instructor).open("/classes/" + room.in.id() + "/roster")
                        .type("roster", "seat,name,sourcedId\n7,A. Quill,stu-0017\n8,Cy V.,two words\n9,Di W.,x1\n10,Ed X.,x1").press("Look at the list");
                assertThat(hand.status()).isEqualTo(422);
                assertThat(hand.text()).contains("Ada sits in this class already under the id stu-0017.", "\"two words\" is not a sourcedId.",
                        "The sourcedId \"x1\" stands here twice.");
                assertThat(site.school.classes().members(room.in.id())).hasSize(2);
            }
        }
    }
}
