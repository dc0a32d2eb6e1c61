package soapstone.web;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import soapstone.page.FormView;
import soapstone.page.Pages;
import soapstone.page.PrintChooseView;
import soapstone.page.PrintView;
import soapstone.page.SchoolTimes;
import soapstone.page.Words;
import soapstone.school.Assignment;
import soapstone.school.CannotDeal;
import soapstone.school.Print;
import soapstone.school.School;
import soapstone.source.Message;

/**
 * What of an assignment goes on paper: asked for, watched while it is made, ended, taken. How far it is and the file itself stand in the
 * school's database; whichever program somebody comes to next knows both.
 */
final class PrintRoom implements SchoolSite.Room {

    private static final String ALL = "/assignments/{assignment}/print";
    private static final String ONE = "/assignments/{assignment}/print/{print}";

    private final OwnClasses own;
    private final Desk desk;
    private final Pages pages;
    private final SheetDealer dealer;
    /** One after the other: a printer takes longer than this, and the class that is at work needs the other core. */
    private final ExecutorService making = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "printing");
        thread.setDaemon(true);
        return thread;
    });

    PrintRoom(SchoolOffice office, Desk desk, Pages pages, SheetDealer dealer) {
        this.own = new OwnClasses(office);
        this.desk = desk;
        this.pages = pages;
        this.dealer = dealer;
    }

    @Override
    public void addTo(Routes routes) {
        routes.get(Who.INSTRUCTOR, ALL, v -> choose(v, own.work(v), FormView.of(PrintChoices.usual())))
                .post(Who.INSTRUCTOR, ALL, this::ask)
                .get(Who.INSTRUCTOR, ONE, v -> show(v, "print"))
                .get(Who.INSTRUCTOR, ONE + "/now", v -> show(v, "print-now"))
                .post(Who.INSTRUCTOR, ONE + "/end", this::end)
                .get(Who.INSTRUCTOR, ONE + "/file", this::file);
    }

    private School school() {
        return own.school();
    }

    private Reply choose(Visit v, OwnClasses.Work work, FormView form) {
        Assignment a = work.assignment();
        List<PrintChooseView.Made> made = school().prints().of(a.id()).stream().map(p -> new PrintChooseView.Made(p.id(), p.kind(), state(p),
                SchoolTimes.moment(p.asked(), v.reader().words().language()))).toList();
        int spares = school().spares().all(a.id()).size();
        return Reply.page(pages.show(v.reader(), "print-choose", new PrintChooseView(a.id(), a.title(), work.in().id(), work.in().name(), canPrint(work), spares, form, made)));
    }

    /** What nobody has been given has no sheets yet. */
    private static boolean canPrint(OwnClasses.Work work) {
        return work.assignment().state() != Assignment.State.DRAFT && work.in().archived().isEmpty();
    }

    private String state(Print print) {
        return print.isLeft(own.now()) ? "left" : Words.key(print.state());
    }

    private Reply ask(Visit v) {
        OwnClasses.Work work = own.openWork(v);
        if (!canPrint(work)) {
            throw Trouble.of(409);
        }
        FilledForm form = new FilledForm(v.form());
        PrintChoices choices = PrintChoices.of(form, v.form().all(), v.reader().words().language());
        if (form.isGood()) {
            try {
                dealer.dealAll(school(), work.assignment(), work.in(), own.now());
                dealer.spares(school(), work.assignment(), work.in(), choices.spares(), own.now());
            } catch (CannotDeal e) {
                form.fault("kind", Message.of("work.cannot-deal"));
            }
        }
        if (!form.isGood()) {
            return choose(v, work, form.view()).as(422);
        }
        PrintWork making = new PrintWork(school(), desk, work, choices, own.now());
        Print print = school().prints().ask(work.assignment().id(), v.person().id(), choices.kind().word(), choices.text(), making.total(), own.now());
        own.note(v, "assignment.printed", Optional.empty(), work.in(), work.assignment().title() + ": " + choices.kind().word());
        begin(print, making);
        return Reply.goTo(path(work.assignment(), print));
    }

    private static String path(Assignment assignment, Print print) {
        return "/assignments/" + assignment.id() + "/print/" + print.id();
    }

    private void begin(Print print, PrintWork work) {
        try {
            making.execute(() -> make(print, work));
        } catch (RejectedExecutionException e) {
            school().prints().end(print.id(), Print.State.FAILED);
        }
    }

    private void make(Print print, PrintWork work) {
        try {
            if (school().prints().goOn(print.id(), 0, own.now())) {
                work.make(done -> school().prints().goOn(print.id(), done, own.now()))
                        .ifPresent(made -> school().prints().done(print.id(), made.file(), made.pages(), own.now()));
            }
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            own.failed("print-broke", e, print.assignment());
            school().prints().end(print.id(), Print.State.FAILED);
        }
    }

    /** One that the visitor's assignment has. */
    private Print print(Visit v, OwnClasses.Work work) {
        return school().prints().find(v.id("print")).filter(p -> p.assignment() == work.assignment().id()).orElseThrow(() -> Trouble.of(404));
    }

    private Reply show(Visit v, String template) {
        OwnClasses.Work work = own.work(v);
        Print p = print(v, work);
        PrintView view = new PrintView(work.assignment().id(), work.assignment().title(), p.id(), p.kind(), state(p), p.done(), p.total(), p.pages(),
                PrintChoices.fields(p.kind(), p.choices()));
        return Reply.page(pages.show(v.reader(), template, view));
    }

    private Reply end(Visit v) {
        OwnClasses.Work work = own.work(v);
        Print print = print(v, work);
        school().prints().end(print.id(), Print.State.ENDED);
        return Reply.goTo(path(work.assignment(), print));
    }

    private Reply file(Visit v) {
        OwnClasses.Work work = own.work(v);
        Print print = print(v, work);
        byte[] file = print.state() == Print.State.DONE ? school().prints().file(print.id()).orElseThrow(() -> Trouble.of(404)) : null;
        if (file == null) {
            throw Trouble.of(404);
        }
        return Reply.download("application/pdf", print.kind() + "-" + work.assignment().id() + ".pdf", file);
    }
}
