package soapstone.web;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import soapstone.exercise.Convention;
import soapstone.exercise.Convention.Allowed;
import soapstone.exercise.Conventions;
import soapstone.page.ClassSettingsView;
import soapstone.quantity.Quantity;
import soapstone.quantity.ReadAs;
import soapstone.quantity.Reading;
import soapstone.quantity.ShopReader;
import soapstone.quantity.UnitSystem;
import soapstone.source.Message;

/** The fields of a class's settings in which the shop's conventions are set; an empty one leaves it to the exercises. */
final class ShopForm {

    private static final String FIELD = "shop-";
    private static final int LONGEST = 40;
    private static final char NO_BREAK = '\u00A0';

    private ShopForm() {}

    /** What is set now. A convention that the bank has no more has no field, and is given up when the form is kept. */
    static void fill(Map<String, String> typed, Conventions set) {
        set.values().forEach((name, q) -> typed.put(FIELD + name, typed(q)));
    }

    /** As somebody would type it. */
    private static String typed(Quantity q) {
        return Convention.printed(q).replace(NO_BREAK, ' ');
    }

    static List<ClassSettingsView.Field> fields(List<Convention> all) {
        return all.stream().map(c -> new ClassSettingsView.Field(FIELD + c.name(), c.title(), c.says(), range(c.us()), range(c.metric()),
                Convention.printed(c.us().usual()), Convention.printed(c.metric().usual()), picks(c))).toList();
    }

    private static String range(Allowed allowed) {
        return Convention.printed(allowed.least()) + " to " + Convention.printed(allowed.most());
    }

    private static List<String> picks(Convention c) {
        return Stream.concat(c.us().picks().stream(), c.metric().picks().stream()).map(ShopForm::typed).distinct().toList();
    }

    /** What was typed, in the class's units where none was; what does not fit is told beside its field. */
    static Conventions read(FilledForm form, List<Convention> all, UnitSystem units, char decimalMark) {
        Map<String, Quantity> set = new TreeMap<>();
        for (Convention convention : all) {
            String field = FIELD + convention.name();
            String text = form.line(field, LONGEST);
            Allowed allowed = convention.allowed(units);
            // What stands there already is printed with a point, whatever the class writes.
            Reading reading = ShopReader.read(text, new ReadAs(ReadAs.Kind.QUANTITY, allowed.usual().unit(), units, text.indexOf(',') < 0 ? '.' : decimalMark));
            if (reading instanceof Reading.Again again) {
                form.fault(field, again.why());
            } else if (reading instanceof Reading.One one) {
                fitting(allowed, one, units).ifPresentOrElse(q -> set.put(convention.name(), q), () -> form.fault(field, fault(allowed)));
            }
        }
        return new Conventions(set);
    }

    private static Optional<Quantity> fitting(Allowed allowed, Reading.One one, UnitSystem units) {
        return Optional.of(new Quantity(one.amount(), one.unit())).filter(q -> allowed.takes(one.base(), units));
    }

    private static Message fault(Allowed allowed) {
        String picks = allowed.picks().stream().map(Convention::printed).collect(Collectors.joining(", "));
        return picks.isEmpty() ? Message.of("class.shop-range", Convention.printed(allowed.least()), Convention.printed(allowed.most()))
                : Message.of("class.shop-picks", picks);
    }
}
