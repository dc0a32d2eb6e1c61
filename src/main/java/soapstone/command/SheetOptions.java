package soapstone.command;

import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import soapstone.bank.Bank;
import soapstone.exercise.Exercise;
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

    Variant variant() {
        long number = seed(seed);
        UnitSystem system = units(units);
        Exercise found = bank.exercise(exercise);
        Optional<Variant> variant = Drawer.draw(found, system, number);
        return variant.orElseThrow(() -> Refusal.failed("No fair numbers come from seed " + number + " for '" + exercise
                + "'. Another seed may do; 'soapstone check' tells why draws are refused."));
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
                + Near.suggest(text, java.util.List.of("us", "metric"))));
    }
}
