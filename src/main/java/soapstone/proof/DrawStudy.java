package soapstone.proof;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import soapstone.exercise.Exercise;
import soapstone.exercise.Given;
import soapstone.exercise.Model;
import soapstone.exercise.Slip;
import soapstone.expression.Frame;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Answers;
import soapstone.variant.Drawer;
import soapstone.variant.Effect;
import soapstone.variant.Shown;
import soapstone.variant.Variant;

/**
 * Draws an exercise many times and says what is unfair about it.
 *
 * @param refused    how many of the tries are refused, by reason
 * @param tries      how many single tries were made
 * @param faults     what makes the exercise fail: a choice that never survives, too many refused, a slip seldom seen
 * @param seldomApart pairs of slips that mostly give one number, with the share of draws in percent
 */
public record DrawStudy(String exercise, UnitSystem system, int tries, Map<String, Integer> refused, Map<String, Double> seen,
        Map<String, Integer> seldomApart, List<String> faults) {

    private static final double MOST_REFUSED = 0.60;
    private static final double LEAST_SEEN = 0.10;
    private static final int APART_LIMIT = 50;
    /** From so many draws on, a choice that none of them brought is a choice that students never meet. */
    private static final int ENOUGH_DRAWS = 200;

    public double refusedShare() {
        return refused.values().stream().mapToInt(Integer::intValue).sum() / (double) tries;
    }

    public static DrawStudy of(Exercise exercise, UnitSystem system, int draws) {
        return new Study(exercise, system, draws).run();
    }

    private static final class Study {
        private final Exercise exercise;
        private final Model model;
        private final int draws;
        private final int tries;
        private final Drawer drawer;
        private final Map<String, Integer> refused = new TreeMap<>();
        private final List<String> faults = new ArrayList<>();
        private final Map<String, Integer> makesSense = new HashMap<>();
        private final Map<String, Integer> seenIn = new HashMap<>();
        private final Map<String, Integer> together = new TreeMap<>();
        private final Map<String, Integer> same = new TreeMap<>();

        Study(Exercise exercise, UnitSystem system, int draws) {
            this.exercise = exercise;
            this.model = exercise.model(system);
            this.draws = draws;
            this.tries = Math.max(draws * 4, 1000);
            this.drawer = new Drawer(exercise, system);
        }

        DrawStudy run() {
            faults.addAll(FigureFaults.of(model));
            survivors();
            long[][] drawn = counts();
            for (long seed = 1; seed <= draws; seed++) {
                Optional<Variant> variant = drawer.draw(seed);
                if (variant.isEmpty()) {
                    faults.add("seed " + seed + " has no draw that passes");
                    break;
                }
                slips(variant.get());
                count(drawn, variant.get().right());
            }
            if (faults.isEmpty() && draws >= ENOUGH_DRAWS) {
                told(drawn, "is never drawn");
            }
            Map<String, Double> seen = new TreeMap<>();
            for (Slip slip : model.slips()) {
                int sense = makesSense.getOrDefault(slip.name(), 0);
                double share = sense == 0 ? 0 : seenIn.getOrDefault(slip.name(), 0) / (double) sense;
                seen.put(slip.name(), share);
                if (sense > 0 && share < LEAST_SEEN) {
                    faults.add("the slip '" + slip.name() + "' is seen in " + percent(share) + " of the draws in which it makes sense; at least " + percent(LEAST_SEEN));
                }
            }
            Map<String, Integer> seldom = new TreeMap<>();
            together.forEach((pair, n) -> {
                int share = 100 * same.getOrDefault(pair, 0) / n;
                if (share >= APART_LIMIT) {
                    seldom.put(pair, share);
                }
            });
            return new DrawStudy(exercise.id(), model.system(), tries, refused, seen, seldom, faults);
        }

        private static String percent(double share) {
            return Math.round(share * 100) + " %";
        }

        /** For each given, room to count its picks, or the thirds of its range. */
        private long[][] counts() {
            long[][] counts = new long[model.givens().size()][];
            for (int i = 0; i < counts.length; i++) {
                counts[i] = new long[model.givens().get(i).choice() instanceof Given.Pick pick ? pick.values().length : 3];
            }
            return counts;
        }

        private void survivors() {
            long[][] survived = counts();
            int passed = 0;
            for (int t = 0; t < tries; t++) {
                String reason = drawer.attempt(1_000_003L + t, 0);
                if (reason != null) {
                    refused.merge(reason, 1, Integer::sum);
                    continue;
                }
                passed++;
                count(survived, drawer.last());
            }
            if (passed < tries * (1 - MOST_REFUSED)) {
                faults.add(percent(1 - passed / (double) tries) + " of the draws are refused, at most " + percent(MOST_REFUSED) + ": " + reasons());
            }
            if (passed > 0) {
                told(survived, "never survives");
            }
        }

        private String reasons() {
            return String.join(", ", refused.entrySet().stream().sorted((a, b) -> b.getValue() - a.getValue()).limit(4)
                    .map(e -> e.getKey() + " (" + percent(e.getValue() / (double) tries) + ")").toList());
        }

        private void count(long[][] survived, Frame f) {
            for (int i = 0; i < survived.length; i++) {
                Given given = model.givens().get(i);
                double value = f.number(given.slot());
                if (given.choice() instanceof Given.Pick pick) {
                    for (int k = 0; k < pick.values().length; k++) {
                        survived[i][k] += pick.values()[k] == value ? 1 : 0;
                    }
                } else if (given.choice() instanceof Given.Range range) {
                    double share = (value - range.first()) / (range.step() * Math.max(1, range.size() - 1));
                    survived[i][share < 1 / 3.0 ? 0 : share > 2 / 3.0 ? 2 : 1]++;
                }
            }
        }

        private void told(long[][] survived, String verdict) {
            for (int i = 0; i < survived.length; i++) {
                Given given = model.givens().get(i);
                if (given.choice() instanceof Given.Pick pick) {
                    for (int k = 0; k < pick.values().length; k++) {
                        if (survived[i][k] == 0) {
                            Frame f = model.program().frame();
                            f.set(given.slot(), pick.values()[k]);
                            faults.add("the pick " + Shown.value(model, f, given.slot()) + " of '" + given.name() + "' " + verdict);
                        }
                    }
                } else if (given.choice() instanceof Given.Range range && range.size() >= 3) {
                    if (survived[i][0] == 0 || survived[i][2] == 0) {
                        faults.add("the " + (survived[i][0] == 0 ? "lowest" : "highest") + " third of '" + given.name() + "' " + verdict);
                    }
                }
            }
        }

        private void slips(Variant variant) {
            Map<String, Effect> best = new HashMap<>();
            for (Variant.Outcome o : variant.outcomes()) {
                if (o.slip().makesSense(variant.right())) {
                    best.merge(o.slip().name(), o.effect(), (a, b) -> a.compareTo(b) >= 0 ? a : b);
                }
            }
            best.forEach((name, effect) -> {
                makesSense.merge(name, 1, Integer::sum);
                seenIn.merge(name, effect == Effect.SEEN ? 1 : 0, Integer::sum);
            });
            pairs(variant);
        }

        private void pairs(Variant variant) {
            List<Variant.Outcome> all = variant.outcomes();
            for (int i = 0; i < all.size(); i++) {
                for (int j = i + 1; j < all.size(); j++) {
                    Variant.Outcome a = all.get(i);
                    Variant.Outcome b = all.get(j);
                    boolean both = a.ask() == b.ask() && a.effect() == Effect.SEEN && b.effect() == Effect.SEEN;
                    if (both && !exercise.areTied(a.slip().name(), b.slip().name())) {
                        String pair = a.ask().name() + ": " + a.slip().name() + " ~ " + b.slip().name();
                        together.merge(pair, 1, Integer::sum);
                        if (Answers.difference(a.ask(), a.theirs(), b.theirs()) <= a.ask().to() / 2 + Answers.NOISE) {
                            same.merge(pair, 1, Integer::sum);
                        }
                    }
                }
            }
        }
    }
}
