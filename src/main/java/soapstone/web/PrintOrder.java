package soapstone.web;

import java.security.SecureRandom;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import soapstone.page.Words;
import soapstone.school.Assignment;
import soapstone.school.CannotDeal;
import soapstone.school.School;
import soapstone.school.SchoolClass;

/** Prints of an assignment without the site's pages: the same files as from there. */
public final class PrintOrder {

    private PrintOrder() {}

    /** @param sheets that it is about */
    public record Printed(byte[] file, int pages, int sheets) {}

    /** Says what cannot be printed, in a sentence. */
    public static final class Refused extends RuntimeException {

        private static final long serialVersionUID = 1L;

        Refused(String sentence) {
            super(sentence, null, false, false);
        }
    }

    /**
     * Deals what is not dealt yet, and makes the file.
     *
     * @param choices as the page's form sends them: {@code kind}, {@code size}, {@code form}, {@code names}, {@code formulas}, {@code spares},
     *                {@code strips}; what is left out is as the page offers it, but for the two that are on when they are there
     * @throws Refused when there is no such assignment, it is not given out, or a choice does not fit
     */
    public static Printed make(School school, Desk desk, long assignment, Map<String, String> choices, Instant now) {
        Assignment found = school.assignments().find(assignment).orElseThrow(() -> new Refused("There is no assignment " + assignment + "."));
        SchoolClass in = school.classes().find(found.schoolClass()).orElseThrow();
        if (found.state() == Assignment.State.DRAFT) {
            throw new Refused("The assignment " + assignment + " is a draft; give it out first.");
        }
        FilledForm form = new FilledForm(Fields.of(choices));
        PrintChoices wanted = PrintChoices.of(form, choices, "en");
        if (!form.isGood()) {
            Words words = Words.of("en");
            throw new Refused(form.view().faults().entrySet().stream().map(e -> e.getKey() + ": " + words.say(e.getValue())).collect(Collectors.joining(" ")));
        }
        SheetDealer dealer = new SheetDealer(desk.work(), new SecureRandom());
        try {
            dealer.dealAll(school, found, in, now);
            dealer.spares(school, found, in, wanted.spares(), now);
        } catch (CannotDeal e) {
            throw new Refused("Nothing can be dealt: " + e.getMessage() + ".");
        }
        PrintWork work = new PrintWork(school, desk, new OwnClasses.Work(in, found), wanted, now);
        Optional<PrintWork.Made> made = work.make(done -> true);
        return new Printed(made.orElseThrow().file(), made.orElseThrow().pages(), work.total());
    }
}
