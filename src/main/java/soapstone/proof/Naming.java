package soapstone.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soapstone.exercise.Ask;
import soapstone.exercise.Conventions;
import soapstone.exercise.Exercise;
import soapstone.exercise.Model;
import soapstone.expression.Frame;
import soapstone.mark.AskMark;
import soapstone.mark.Fit;
import soapstone.mark.MarkRules;
import soapstone.mark.Marked;
import soapstone.mark.Marker;
import soapstone.mark.Typed;
import soapstone.mark.Verdict;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;
import soapstone.variant.Effect;
import soapstone.variant.Variant;

/**
 * Tries the marking on simulated students: the right answer has to be right, and each slip's own answer has to be named
 * by that slip.
 */
public final class Naming {

    private Naming() {}

    /** What went wrong with one simulated answer, with all that is needed to see it again. */
    public record Miss(String exercise, UnitSystem system, long seed, String ask, String slip, String typed, String got) {

        @Override
        public String toString() {
            return exercise + " " + system.word() + " seed " + seed + " ask " + ask + ": " + slip + " typed " + typed + " got " + got;
        }
    }

    /** Marks the key and every seen slip's answer, rounded as asked and to three figures. */
    public static List<Miss> slips(Exercise exercise, UnitSystem system, long firstSeed, int seeds) {
        return slips(exercise, system, Conventions.NONE, firstSeed, seeds);
    }

    /** The same with numbers as a shop has set them. */
    public static List<Miss> slips(Exercise exercise, UnitSystem system, Conventions set, long firstSeed, int seeds) {
        List<Miss> misses = new ArrayList<>();
        Drawer drawer = new Drawer(exercise, system, set);
        for (long seed = firstSeed; seed < firstSeed + seeds; seed++) {
            Optional<Variant> variant = drawer.draw(seed);
            if (variant.isEmpty()) {
                misses.add(new Miss(exercise.id(), system, seed, "", "", "", "no draw"));
                continue;
            }
            key(variant.get(), misses);
            for (Variant.Outcome o : variant.get().outcomes()) {
                if (o.effect() == Effect.SEEN) {
                    slip(variant.get(), o, misses);
                }
            }
        }
        return misses;
    }

    private static void key(Variant variant, List<Miss> misses) {
        Model model = variant.model();
        List<Typed> typed = new ArrayList<>();
        for (Ask ask : model.asks()) {
            typed.add(Written.read(model, ask, Written.asAsked(model, ask, variant.right())));
        }
        Marked marked = new Marker(variant, MarkRules.USUAL).mark(typed);
        for (AskMark mark : marked.asks()) {
            if (mark.verdict() != Verdict.RIGHT) {
                misses.add(miss(variant, mark.ask(), "right answer", mark.typed().text(), mark));
            }
        }
    }

    private static Miss miss(Variant variant, Ask ask, String slip, String typed, AskMark mark) {
        return new Miss(variant.exercise().id(), variant.system(), variant.seed(), ask.name(), slip, typed,
                mark.verdict().word() + " " + mark.fits().stream().map(Fit::name).toList() + " " + mark.say().key());
    }

    private static void slip(Variant variant, Variant.Outcome o, List<Miss> misses) {
        Model model = variant.model();
        String asked = Written.asAsked(model, o.ask(), o.theirs());
        named(variant, o, asked, misses);
        if (o.ask().kind() == Ask.Kind.QUANTITY) {
            String figures = Written.threeFigures(model, o.ask(), o.theirs().number(o.ask().slot()));
            // Where the right answer lies within that rounding, nobody could tell: that is near or right, not a slip.
            boolean couldBeRight = Written.isWithinFigures(model, o.ask(), figures, variant.right().number(o.ask().slot()));
            if (!figures.equals(asked) && !couldBeRight) {
                named(variant, o, figures, misses);
            }
        }
    }

    private static void named(Variant variant, Variant.Outcome o, String text, List<Miss> misses) {
        AskMark mark = FalseNames.mark(variant, o.ask(), Written.read(variant.model(), o.ask(), text));
        boolean named = mark.verdict() == Verdict.SLIP && mark.fits().stream().anyMatch(f -> f.isSingle()
                && (f.name().equals(o.slip().name()) || variant.exercise().areTied(f.name(), o.slip().name())));
        boolean plainChoice = o.ask().kind() == Ask.Kind.CHOICE;
        if (!named && !plainChoice) {
            misses.add(miss(variant, o.ask(), o.slip().name(), text, mark));
        }
    }

    /** How later answers fare that were worked out with an earlier wrong one. */
    public record Carried(int answers, int explained, int countedTwice, List<Miss> misses) {}

    /** For every slip seen at the first ask, goes on with the typed, the unrounded, and the next mark's value. */
    public static Carried carried(Exercise exercise, UnitSystem system, long firstSeed, int seeds) {
        Drawer drawer = new Drawer(exercise, system);
        Model model = exercise.model(system);
        CarriedTrial trial = new CarriedTrial(model);
        for (long seed = firstSeed; seed < firstSeed + seeds && model.asks().size() > 1; seed++) {
            drawer.draw(seed).ifPresent(trial::variant);
        }
        return new Carried(trial.answers, trial.explained, trial.twice, trial.misses);
    }

    private static final class CarriedTrial {
        private final Model model;
        private final Frame run;
        private int answers;
        private int explained;
        private int twice;
        private final List<Miss> misses = new ArrayList<>();

        CarriedTrial(Model model) {
            this.model = model;
            this.run = model.program().frame();
        }

        void variant(Variant variant) {
            Ask first = model.asks().get(0);
            for (Variant.Outcome o : variant.outcomes()) {
                if (o.ask() == first && o.effect() == Effect.SEEN) {
                    String typed = Written.asAsked(model, first, o.theirs());
                    carry(variant, o, typed, o.theirs());
                    if (first.isNumber()) {
                        double value = Written.read(model, first, typed).reading() instanceof soapstone.quantity.Reading.One one ? one.base() : 0;
                        carry(variant, o, typed, with(variant, o, first, value));
                        carry(variant, o, typed, with(variant, o, first, value + first.to()));
                    }
                }
            }
        }

        /** Somebody who slipped once and goes on with a value of their own: the slip's line does not come up again. */
        private Frame with(Variant variant, Variant.Outcome o, Ask first, double value) {
            Frame f = model.program().frame();
            model.program().rerun(variant.right(), f, soapstone.expression.Change.fixed(first.slot(), value).over(o.slip().change()),
                    model.program().slots().size() - 1);
            return f;
        }

        private void carry(Variant variant, Variant.Outcome o, String firstText, Frame theirs) {
            List<Typed> typed = new ArrayList<>();
            for (Ask ask : model.asks()) {
                boolean defined = Written.isDefined(ask, theirs);
                typed.add(Written.read(model, ask, ask == model.asks().get(0) ? firstText : defined ? Written.asAsked(model, ask, theirs) : ""));
            }
            Marked marked = new Marker(variant, MarkRules.USUAL).mark(typed);
            int counted = 0;
            for (AskMark mark : marked.asks()) {
                counted += mark.counts() && mark.fits().get(0).name().equals(o.slip().name()) ? 1 : 0;
                if (mark.ask() != model.asks().get(0) && mark.verdict().isMarked()) {
                    later(variant, o, mark);
                }
            }
            twice += counted > 1 ? 1 : 0;
        }

        private void later(Variant variant, Variant.Outcome o, AskMark mark) {
            answers++;
            boolean good = mark.verdict().isRight() || mark.verdict() == Verdict.CARRIED || mark.families().contains("rounded-early")
                    || mark.fits().stream().anyMatch(f -> f.name().equals(o.slip().name()));
            explained += good ? 1 : 0;
            if (!good) {
                misses.add(miss(variant, mark.ask(), o.slip().name(), mark.typed().text(), mark));
            }
        }
    }
}
