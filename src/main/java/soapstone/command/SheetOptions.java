package soapstone.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import soapstone.bank.Bank;
import soapstone.exercise.Convention;
import soapstone.exercise.Convention.Allowed;
import soapstone.exercise.Conventions;
import soapstone.exercise.Exercise;
import soapstone.quantity.Quantity;
import soapstone.quantity.ReadAs;
import soapstone.quantity.Reading;
import soapstone.quantity.ShopReader;
import soapstone.quantity.UnitSystem;
import soapstone.source.Near;
import soapstone.variant.Drawer;
import soapstone.variant.Variant;

/** Which numbers of which exercise. */
final class SheetOptions {

    private static final long LAST_SEED = 4_294_967_295L;
    private static final int MOST_DIGITS = 10;

    @Mixin
    private BankOptions bank;

    @Parameters(paramLabel = "EXERCISE", description = "Path below the bank without its ending, such as spacing/bolt-holes.")
    private String exercise;

    @Option(names = "--seed", required = true, paramLabel = "N", description = "Whole number from 0 to 4294967295; the same one gives the same numbers.")
    private String seed;

    @Option(names = "--units", paramLabel = "us|metric", defaultValue = "us", description = "Unit system: us (the default) or metric.")
    private String units;

    @Option(names = "--convention", paramLabel = "NAME=TEXT", description = "What a shop has set, once for each name, such as k_factor=0.42; the exercise has to follow it.")
    private List<String> conventions = new ArrayList<>();

    Variant variant() {
        long number = seed(seed);
        UnitSystem system = units(units);
        Exercise found = bank.exercise(exercise);
        Conventions set = set(found, system);
        Optional<Variant> variant = Drawer.draw(found, system, set, number);
        return variant.orElseThrow(() -> Refusal.failed("No fair numbers come from seed " + number + " for '" + exercise + "'"
                + (set.isEmpty() ? "" : " with " + set.text()) + ". Another seed may do; 'soapstone check' tells why draws are refused."));
    }

    private Conventions set(Exercise exercise, UnitSystem system) {
        Map<String, Quantity> set = new TreeMap<>();
        Set<String> followed = exercise.model(system).conventions();
        for (Pair pair : Pair.all("--convention NAME=TEXT", conventions)) {
            if (!followed.contains(pair.name())) {
                throw Refusal.usage("'" + exercise.id() + "' follows no convention '" + pair.name() + "'. "
                        + (followed.isEmpty() ? "It follows none." : Near.suggest(pair.name(), followed)));
            }
            if (set.put(pair.name(), amount(bank().conventions().get(pair.name()), pair, system)) != null) {
                throw Refusal.usage("'" + pair.name() + "' is set twice; set it once.");
            }
        }
        return new Conventions(set);
    }

    private static Quantity amount(Convention convention, Pair pair, UnitSystem system) {
        Allowed allowed = convention.allowed(system);
        Reading reading = ShopReader.read(pair.text(), new ReadAs(ReadAs.Kind.QUANTITY, allowed.usual().unit(), system, '.'));
        if (!(reading instanceof Reading.One one)) {
            String why = reading instanceof Reading.Again again ? Say.message(again.why()) : "There is no number.";
            throw Refusal.usage("'" + pair.name() + "' cannot be read: " + why);
        }
        if (!allowed.takes(one.base(), system)) {
            String fits = allowed.picks().isEmpty() ? Convention.printed(allowed.least()) + " to " + Convention.printed(allowed.most())
                    : String.join(", ", allowed.picks().stream().map(Convention::printed).toList());
            throw Refusal.usage("'" + pair.name() + "' cannot be set to " + pair.text() + ". It may be: " + fits + ".");
        }
        return new Quantity(one.amount(), one.unit());
    }

    Bank bank() {
        return bank.usable();
    }

    static long seed(String text) {
        boolean digits = !text.isEmpty() && text.length() <= MOST_DIGITS && text.chars().allMatch(c -> c >= '0' && c <= '9');
        long seed = digits ? Long.parseLong(text) : -1;
        if (seed < 0 || seed > LAST_SEED) {
            throw Refusal.usage("A seed is a whole number from 0 to " + LAST_SEED + ", not '" + text + "'.");
        }
        return seed;
    }

    static UnitSystem units(String text) {
        return UnitSystem.parse(text).orElseThrow(() -> Refusal.usage("There is no unit system '" + text + "'. "
                + Near.suggest(text, List.of("us", "metric"))));
    }
}
