package soapstone.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import soapstone.files.Folder;
import soapstone.page.CompetencyListView;
import soapstone.page.FormView;
import soapstone.page.Pages;
import soapstone.school.Competency;
import soapstone.school.FrameReader;
import soapstone.school.SchoolClass;
import soapstone.school.Signoffs;
import soapstone.school.TradeCode;
import soapstone.school.TradeFrame;
import soapstone.source.Message;

/** What may be signed off in a class: codes of trade frames, and the class's own. */
final class CompetencyListRoom implements SchoolSite.Room {

    private static final String FRAMES = "soapstone/frames";
    private static final int LONGEST_CODE = 40;
    private static final int LONGEST_TITLE = 120;
    private static final String SKILL = "skill-";

    private final OwnClasses own;
    private final Desk desk;
    private final Pages pages;
    private final List<TradeFrame> frames = frames();

    CompetencyListRoom(SchoolOffice office, Desk desk, Pages pages) {
        this.own = new OwnClasses(office);
        this.desk = desk;
        this.pages = pages;
    }

    private static List<TradeFrame> frames() {
        try {
            FrameReader.Result read = FrameReader.read(Folder.builtIn(FRAMES, ".yaml"));
            if (!read.issues().isEmpty()) {
                throw new IllegalStateException(read.issues().all().toString());
            }
            return read.frames();
        } catch (IOException e) {
            throw new UncheckedIOException(FRAMES, e);
        }
    }

    @Override
    public void addTo(Routes routes) {
        routes.get(Who.INSTRUCTOR, "/classes/{class}/competencies/list", v -> list(v, own.schoolClass(v), FormView.of(Map.of())))
                .post(Who.INSTRUCTOR, "/classes/{class}/competencies/list", this::take)
                .post(Who.INSTRUCTOR, "/classes/{class}/competencies/own", this::add)
                .post(Who.INSTRUCTOR, "/classes/{class}/competencies/own/{competency}/remove", this::remove);
    }

    private static String path(SchoolClass in) {
        return "/classes/" + in.id() + "/competencies/list";
    }

    private Reply list(Visit v, SchoolClass in, FormView form) {
        List<Competency> listed = own.school().signoffs().listed(in.id());
        EvidenceBook book = new EvidenceBook(own.school(), desk.marks(), v.reader().words());
        List<CompetencyListView.Frame> all = new ArrayList<>();
        for (int i = 0; i < frames.size(); i++) {
            all.add(frame(i, listed, book));
        }
        List<CompetencyListView.Own> ours = listed.stream().filter(c -> c.code().isOwn())
                .map(c -> new CompetencyListView.Own(c.id(), c.code().code(), c.code().title(), titles(c.skills(), book))).toList();
        List<CompetencyListView.Skill> skills = desk.marks().skills().stream().map(s -> new CompetencyListView.Skill(s.name(), s.title())).toList();
        return Reply.page(pages.show(v.reader(), "competency-list", new CompetencyListView(EvidenceBook.head(in), all, ours, skills, form)));
    }

    private CompetencyListView.Frame frame(int at, List<Competency> listed, EvidenceBook book) {
        TradeFrame frame = frames.get(at);
        List<CompetencyListView.Code> codes = frame.codes().stream().map(c -> new CompetencyListView.Code(field(at, c), c.name().code(), c.name().title(),
                titles(c.skills(), book), !c.read(), listed.stream().anyMatch(l -> l.code().isSame(c.name())))).toList();
        int taken = (int) codes.stream().filter(CompetencyListView.Code::taken).count();
        return new CompetencyListView.Frame(frame.name(), frame.owner(), frame.edition(), taken, codes);
    }

    private static String field(int frame, TradeFrame.Code code) {
        return "take-" + frame + "-" + code.name().code();
    }

    private static String titles(List<String> skills, EvidenceBook book) {
        return skills.stream().map(book::title).collect(Collectors.joining(", "));
    }

    private Reply take(Visit v) {
        SchoolClass in = own.open(v);
        List<Signoffs.NewCompetency> taken = new ArrayList<>();
        for (int i = 0; i < frames.size(); i++) {
            for (TradeFrame.Code code : frames.get(i).codes()) {
                if (v.form().get(field(i, code)).isPresent()) {
                    taken.add(new Signoffs.NewCompetency(code.name(), code.skills()));
                }
            }
        }
        own.school().signoffs().list(in.id(), taken);
        own.note(v, "competency.listed", Optional.empty(), in, String.valueOf(taken.size()));
        return Reply.goTo("/classes/" + in.id() + "/competencies");
    }

    private Reply add(Visit v) {
        SchoolClass in = own.open(v);
        FilledForm form = new FilledForm(v.form());
        TradeCode code = TradeCode.own(form.wanted("code", LONGEST_CODE), form.wanted("title", LONGEST_TITLE));
        List<String> skills = desk.marks().skills().stream().map(MarksDesk.Skill::name).filter(s -> form.ticked(SKILL + s)).toList();
        if (form.isGood() && !own.school().signoffs().add(in.id(), new Signoffs.NewCompetency(code, skills))) {
            form.fault("code", Message.of("competency.taken", code.code()));
        }
        if (!form.isGood()) {
            return list(v, in, form.view()).as(422);
        }
        own.note(v, "competency.listed", Optional.empty(), in, code.code());
        return Reply.goTo(path(in));
    }

    private Reply remove(Visit v) {
        SchoolClass in = own.open(v);
        Competency gone = own.school().signoffs().listed(in.id()).stream().filter(c -> c.id() == v.id("competency") && c.code().isOwn()).findFirst()
                .orElseThrow(() -> Trouble.of(404));
        own.school().signoffs().remove(in.id(), gone.id());
        own.note(v, "competency.taken-off", Optional.empty(), in, gone.code().code());
        return Reply.goTo(path(in));
    }
}
