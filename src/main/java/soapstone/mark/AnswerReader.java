package soapstone.mark;

import java.util.List;
import java.util.Locale;
import soapstone.exercise.Ask;
import soapstone.exercise.Model;
import soapstone.quantity.ReadAs;
import soapstone.quantity.Reading;
import soapstone.quantity.ShopReader;
import soapstone.quantity.Unit;
import soapstone.quantity.Units;
import soapstone.source.Message;

/** Reads what was typed for an ask. */
public final class AnswerReader {

    private AnswerReader() {}

    /** How an ask's box is to be read. */
    public static ReadAs readAs(Model model, Ask ask, char decimalMark) {
        ReadAs.Kind kind = switch (ask.kind()) {
            case COUNT -> ReadAs.Kind.COUNT;
            case FRACTION -> ReadAs.Kind.FRACTION;
            case LIST -> ReadAs.Kind.LIST;
            case POINT -> ReadAs.Kind.POINT;
            case POINTS -> ReadAs.Kind.POINTS;
            default -> ReadAs.Kind.QUANTITY;
        };
        Unit unit = ask.kind() == Ask.Kind.COUNT ? Units.ONE : ask.unit();
        return new ReadAs(kind, unit, model.system(), decimalMark);
    }

    public static Typed read(Model model, Ask ask, String text, char decimalMark) {
        String typed = text == null ? "" : text;
        if (ask.kind() == Ask.Kind.CHOICE) {
            return choice(ask, typed);
        }
        return Typed.of(typed, ShopReader.read(typed, readAs(model, ask, decimalMark)), ask);
    }

    /** A choice may be given by its name or by its number in the list. */
    private static Typed choice(Ask ask, String typed) {
        String wanted = typed.strip().toLowerCase(Locale.ROOT);
        if (wanted.isEmpty()) {
            return Typed.of(typed, new Reading.Blank(), ask);
        }
        List<Ask.Option> options = ask.options();
        for (int i = 0; i < options.size(); i++) {
            if (options.get(i).name().toLowerCase(Locale.ROOT).equals(wanted) || String.valueOf(i + 1).equals(wanted)) {
                return Typed.choice(typed, new Reading.Blank(), options.get(i).label());
            }
        }
        String names = String.join(", ", options.stream().map(Ask.Option::name).toList());
        return Typed.of(typed, new Reading.Again(Message.of("mark.no-such-option", typed.strip(), names), 0), ask);
    }
}
