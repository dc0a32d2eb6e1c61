package soapstone.web;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import soapstone.page.AuditView;
import soapstone.page.Pages;
import soapstone.school.Audit;
import soapstone.school.SchoolClass;

/** What was changed in a class and what left it, for its instructors. */
final class AuditRoom implements SchoolSite.Room {

    private static final int ON_A_PAGE = 100;
    private static final String MARKS = "marks";
    private static final String LEFT = "left";

    private final OwnClasses own;
    private final Pages pages;

    AuditRoom(SchoolOffice office, Pages pages) {
        this.own = new OwnClasses(office);
        this.pages = pages;
    }

    @Override
    public void addTo(Routes routes) {
        routes.get(Who.INSTRUCTOR, "/classes/{class}/audit", this::audit);
    }

    private Reply audit(Visit v) {
        SchoolClass in = own.schoolClass(v);
        String only = v.query().text("only");
        List<Audit.Entry> entries = new ArrayList<>(own.school().audit().aboutClass(in.id()).stream().filter(e -> isWanted(e, only)).toList());
        Collections.reverse(entries);
        int count = Math.max(1, (entries.size() + ON_A_PAGE - 1) / ON_A_PAGE);
        int page = page(v, count);
        Told told = new Told(own.school(), v.reader().words());
        List<AuditView.Row> rows = entries.stream().skip((long) (page - 1) * ON_A_PAGE).limit(ON_A_PAGE)
                .map(e -> new AuditView.Row(told.time(e.at()), told.name(e.by()), told.act(e), told.name(e.aboutPerson()), e.detail(), e.leftSchool())).toList();
        return Reply.page(pages.show(v.reader(), "audit", new AuditView(EvidenceBook.head(in), isFilter(only) ? only : "all", page, count, entries.size(), rows)));
    }

    private static boolean isFilter(String only) {
        return only.equals(MARKS) || only.equals(LEFT);
    }

    private static boolean isWanted(Audit.Entry e, String only) {
        return !isFilter(only) || (only.equals(MARKS) ? e.act().startsWith("mark.") : e.leftSchool());
    }

    private static int page(Visit v, int pages) {
        String page = v.query().text("page");
        return page.matches("[1-9][0-9]{0,5}") ? Math.min(pages, Integer.parseInt(page)) : 1;
    }
}
