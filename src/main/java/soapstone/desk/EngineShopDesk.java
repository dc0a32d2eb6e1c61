package soapstone.desk;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import soapstone.bank.Bank;
import soapstone.exercise.Convention;
import soapstone.exercise.Conventions;
import soapstone.exercise.Exercise;
import soapstone.page.SheetView;
import soapstone.school.ClassSettings;
import soapstone.school.Fairness;
import soapstone.variant.Drawer;
import soapstone.web.Desk;
import soapstone.web.ShopDesk;

/** Answers what pages ask about conventions out of a library. */
final class EngineShopDesk implements ShopDesk {

    private final Supplier<Library> current;
    private final String language;

    /** @param language of the words in drawings */
    EngineShopDesk(Supplier<Library> current, String language) {
        this.current = current;
        this.language = language;
    }

    /** As sheets say what is set, in the order of the names; one that the bank has no more is named as it is kept. */
    static List<String> told(Bank bank, Conventions set) {
        return set.values().entrySet().stream().map(e -> Optional.ofNullable(bank.conventions().get(e.getKey())).map(c -> c.told(e.getValue()))
                .orElseGet(() -> e.getKey().replace('_', ' ') + " = " + Convention.printed(e.getValue()))).toList();
    }

    @Override
    public List<Convention> conventions() {
        return List.copyOf(current.get().bank().conventions().values());
    }

    @Override
    public List<Refused> refused(Collection<String> exercises, ClassSettings settings) {
        Bank bank = current.get().bank();
        return exercises.stream().distinct().flatMap(id -> bank.exercise(id).stream()).filter(e -> !Fairness.isFair(e, settings.units(), settings.shop()))
                .map(e -> new Refused(e.id(), e.title(), String.join("; ", told(bank, set(e, settings))))).toList();
    }

    private static Conventions set(Exercise e, ClassSettings settings) {
        return settings.shop().only(e.model(settings.units()).conventions());
    }

    @Override
    public Optional<SheetView> trial(String exercise, ClassSettings settings, long seed) {
        Library library = current.get();
        return library.bank().exercise(exercise).map(e -> Drawer.draw(e, settings.units(), settings.shop(), seed)
                .map(new Sheets(library, new Links(library), language, settings.decimalMark())::asked).orElseThrow(() -> new Desk.NoDraw(exercise + " has no fair draw for seed " + seed)));
    }
}
