package soapstone.web;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import soapstone.exercise.Convention;
import soapstone.exercise.Conventions;
import soapstone.page.FormView;
import soapstone.page.Words;
import soapstone.quantity.UnitSystem;
import soapstone.school.ClassSettings;
import soapstone.school.SchoolClass;
import soapstone.source.Message;

/** The form with the name and the settings of a class. */
final class ClassForm {

    static final int LONGEST_NAME = 120;
    static final int LONGEST_TERM = 60;
    private static final int LONGEST_CONVENTIONS = 1500;
    private static final int WHOLE = 100;
    private static final List<String> KNOWN = List.of("en", "es");

    /** What was filled in. */
    record Filled(String name, String term, ClassSettings settings) {}

    private ClassForm() {}

    /** The languages of the pages. */
    static List<String> languages() {
        return KNOWN.stream().filter(Words::speaks).toList();
    }

    /** What a class has now. */
    static FormView of(SchoolClass in) {
        return of(in.name(), in.term(), in.settings());
    }

    /** A new class. */
    static FormView fresh() {
        return of("", "", ClassSettings.USUAL);
    }

    private static FormView of(String name, String term, ClassSettings s) {
        Map<String, String> typed = new HashMap<>(Map.of("name", name, "term", term, "units", s.units().name(), "language", s.language(),
                "mark", s.decimalMark() == ',' ? "comma" : "point", "near", String.valueOf(Math.round(s.nearEarns() * WHOLE)), "conventions", s.conventions()));
        ShopForm.fill(typed, s.shop());
        tick(typed, "carried", s.carriedEarns());
        tick(typed, "coarse", s.coarseEarns());
        tick(typed, "bare", s.bareAllowed());
        return FormView.of(typed);
    }

    private static void tick(Map<String, String> typed, String name, boolean ticked) {
        if (ticked) {
            typed.put(name, "yes");
        }
    }

    /**
     * What was typed, or empty when something of it does not fit.
     *
     * @param shop the conventions that can be set
     */
    static Optional<Filled> read(FilledForm form, Fields fields, List<Convention> shop) {
        String name = form.wanted("name", LONGEST_NAME);
        String term = form.line("term", LONGEST_TERM);
        UnitSystem units = form.choice("units", UnitSystem.class);
        String language = fields.text("language");
        if (!languages().contains(language)) {
            form.fault("language", Message.of("filled.choice"));
        }
        String mark = fields.text("mark");
        if (!mark.equals("point") && !mark.equals("comma")) {
            form.fault("mark", Message.of("filled.choice"));
        }
        double near = form.number("near", 0, WHOLE) / WHOLE;
        String conventions = form.text("conventions", LONGEST_CONVENTIONS);
        char decimalMark = mark.equals("comma") ? ',' : '.';
        Conventions set = ShopForm.read(form, shop, units, decimalMark);
        return form.isGood() ? Optional.of(new Filled(name, term, new ClassSettings(units, language, decimalMark,
                form.ticked("carried"), form.ticked("coarse"), near, form.ticked("bare"), conventions, set))) : Optional.empty();
    }
}
