package soapstone.web;

import java.security.SecureRandom;
import java.util.List;
import soapstone.page.Pages;

/** The pages of a school: each room adds the addresses that it answers. */
final class SchoolSite {

    private final List<Room> rooms;

    /** Some pages that belong together. */
    interface Room {
        void addTo(Routes routes);
    }

    SchoolSite(SchoolOffice office, Desk desk, Pages pages, Porter porter, Languages languages) {
        SecureRandom random = new SecureRandom();
        SheetDealer dealer = new SheetDealer(desk.work(), random);
        this.rooms = List.of(
                new SignInRoom(office, pages, porter, random),
                new StartRoom(office, pages, porter, random),
                new AccountRoom(office, pages, porter, languages, random),
                new AccountsRoom(office, pages, random),
                new ClassRoom(office, desk.shop(), pages, random),
                new AssignmentRoom(office, desk, pages, random),
                new RosterRoom(office, pages, random),
                new JoinRoom(office, pages, random),
                new CompetencyListRoom(office, desk, pages),
                new CompetencyRoom(office, desk, pages),
                new StudentDataRoom(office, desk, pages),
                // Before whatever takes /sheets/{sheet}: the first address that fits is taken.
                new OwnRecordRoom(office, desk, pages),
                new AuditRoom(office, pages),
                new RetentionRoom(office, pages),
                new MarksRoom(office, desk.marks(), pages),
                new StudentRoom(office, desk.marks(), pages),
                new RemarkRoom(office, desk.marks(), pages),
                new RegradeRoom(office, desk.marks(), pages),
                new MistakesRoom(office, desk.marks(), pages),
                new MorningRoom(office, desk.marks(), pages),
                new PracticeRoom(office, desk, pages),
                new MarksOutRoom(office, desk.marks(), pages),
                new PrintRoom(office, desk, pages, dealer),
                new HandoutRoom(office, desk),
                new TypingClassRoom(office, desk.work(), pages),
                new TypingRoom(office, desk.work(), pages),
                new WorkRoom(office, desk.work(), pages, dealer));
    }

    void addTo(Routes routes) {
        rooms.forEach(room -> room.addTo(routes));
    }
}
