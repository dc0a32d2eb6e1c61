package soapstone.mark;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import soapstone.exercise.Ask;
import soapstone.exercise.Model;
import soapstone.exercise.Slip;
import soapstone.expression.Change;
import soapstone.expression.Frame;
import soapstone.expression.Program;
import soapstone.expression.Trials;
import soapstone.quantity.Notation;
import soapstone.quantity.Reading;
import soapstone.quantity.ShopPrinter;
import soapstone.source.Message;
import soapstone.variant.Effect;
import soapstone.variant.Shown;
import soapstone.variant.Variant;

/**
 * Marks the answers to one variant, the whole exercise at once. For each ask in order: right; right with a coarse
 * constant; carried on from an earlier wrong answer; one slip; the right value in another unit; a line on the way;
 * rounded on the way; two slips; a slip of the pen; near; unexplained. The first tier with one to three fits decides;
 * more than three in one tier explain nothing. Not for several threads at once.
 */
public final class Marker {

    private static final int MOST_FITS = 3;
    /** The digits that somebody rounded away are those that would have told slips apart: a few more may be meant. */
    private static final int MOST_ROUNDED_FITS = 5;
    private static final int MOST_RUNS = 6;
    /** Pairs are not named where chance alone would name more than this share of random answers. */
    private static final double MOST_LUCK = 0.02;
    /** Random answers are thought of as log-uniform from a fifth to five times the right one. */
    private static final double LOG_RANGE = 2 * Math.log(5);
    private static final char POINT = '.';
    private static final List<Fit> NO_FITS = List.of();
    private static final List<Run> NO_RUNS = List.of(new Run(Change.NONE, NO_FITS));
    private static final Message FITS = Message.of("mark.fits");
    private static final Message FITS_PAIR = Message.of("mark.fits-pair");
    private static final Message FITS_SEVERAL = Message.of("mark.fits-several");
    private static final Message BLANK = Message.of("mark.blank");
    private static final Finding RIGHT = new Finding(Verdict.RIGHT, List.of(), List.of(), Message.of("mark.right"));
    private static final Finding UNEXPLAINED = new Finding(Verdict.UNEXPLAINED, List.of(), List.of(), Message.of("mark.unexplained"));

    private final Variant variant;
    private final Model model;
    private final Program program;
    private final MarkPlan plan;
    private final MarkRules rules;
    private final Frame right;
    /** Made when something has to be tried that the draw did not try, and so is the other. */
    private Trials madeTrials;
    private Mechanical madeMechanical;
    /** Which slips make sense here, a bit each; -1 while nobody asked. */
    private long sense = -1;
    /** Typed answers that are not right, put into the working as fixed values. */
    private Change typedSoFar = Change.NONE;
    /** What may stand behind the earlier wrong answers, unrounded: one run for each way in which they fit. */
    private List<Run> slipsSoFar = NO_RUNS;
    /** All typed answers, also the right ones, as typed: somebody may go on with rounded numbers. */
    private Change allTyped = Change.NONE;
    private boolean anyWrong;

    /** Slips put in, and which. */
    private record Run(Change change, List<Fit> fits) {

        Run with(Change more, List<Fit> moreFits) {
            return new Run(more.over(change), added(fits, moreFits));
        }
    }

    public Marker(Variant variant, MarkRules rules) {
        this.variant = variant;
        this.model = variant.model();
        this.program = model.program();
        this.plan = MarkPlan.of(model);
        this.rules = rules;
        this.right = variant.right();
    }

    /** Marks texts as they were typed, in the order of the asks; a missing one counts as blank. */
    public static Marked mark(Variant variant, List<String> texts, char decimalMark, MarkRules rules) {
        List<Typed> typed = new ArrayList<>();
        List<Ask> asks = variant.model().asks();
        for (int i = 0; i < asks.size(); i++) {
            typed.add(AnswerReader.read(variant.model(), asks.get(i), i < texts.size() ? texts.get(i) : "", decimalMark));
        }
        return new Marker(variant, rules).mark(typed);
    }

    /** Marks answers that were read. */
    public Marked mark(List<Typed> typed) {
        AskMark[] marks = new AskMark[model.asks().size()];
        for (int i = 0; i < marks.length; i++) {
            marks[i] = mark(i, typed.get(i));
        }
        return new Marked(variant, marks.length == 1 ? List.of(marks[0]) : List.of(marks));
    }

    private AskMark mark(int index, Typed typed) {
        Ask ask = model.asks().get(index);
        if (typed.reading() instanceof Reading.Again again) {
            return new AskMark(ask, typed, Verdict.ASK_AGAIN, List.of(), List.of(), 0, again.why());
        }
        if (typed.isEmpty()) {
            return new AskMark(ask, typed, Verdict.BLANK, List.of(), List.of(), 0, BLANK);
        }
        AskMark mark = judge(new Compare(index, ask, plan.ask(index), typed));
        remember(mark, index == model.asks().size() - 1);
        return mark;
    }

    /** The verdict with what fits, before points are added. */
    private record Finding(Verdict verdict, List<Fit> fits, List<String> families, Message say) {}

    private AskMark judge(Compare answer) {
        Finding finding = find(answer);
        double share = switch (finding.verdict()) {
            case RIGHT -> 1;
            case RIGHT_BUT -> rules.coarseEarns() || !finding.families().contains(Mechanical.COARSE) ? 1 : 0;
            case CARRIED -> rules.carriedEarns() ? 1 : 0;
            case NEAR -> rules.nearEarns();
            default -> 0;
        };
        Ask ask = answer.ask();
        return new AskMark(ask, answer.typed(), finding.verdict(), finding.fits(), finding.families(), share * ask.points(), finding.say());
    }

    private Finding find(Compare answer) {
        if (answer.fits(right, Compare.Window.WITHIN)) {
            return rightly(answer.ask(), answer.typed());
        }
        if (isCoarse(answer)) {
            return new Finding(Verdict.RIGHT_BUT, List.of(), List.of(Mechanical.COARSE), Message.of("mark.coarse-constant"));
        }
        Finding carried = carried(answer);
        if (carried != null) {
            return carried;
        }
        Finding named = named(answer);
        if (named != null) {
            return named;
        }
        if (answer.ask().to() > 0 && answer.fits(right, Compare.Window.NEAR)) {
            return new Finding(Verdict.NEAR, List.of(), List.of(), near(answer.ask(), answer.typed()));
        }
        return UNEXPLAINED;
    }

    private Message near(Ask ask, Typed typed) {
        String within = ShopPrinter.text(ask.within(), ask.unit(), model.system(), soapstone.quantity.Show.AUTO, POINT);
        if (!ask.isNumber()) {
            return Message.of("mark.near-list", within);
        }
        double off = Math.abs(typed.value(0) - right.number(ask.slot()));
        return Message.of("mark.near", ShopPrinter.text(off, ask.unit(), model.system(), soapstone.quantity.Show.AUTO, POINT), within);
    }

    /** Right, and whether something about the form is worth a word. */
    private Finding rightly(Ask ask, Typed typed) {
        if (typed.reading() instanceof Reading.One one) {
            if (ask.kind() == Ask.Kind.FRACTION && one.reducible()) {
                return new Finding(Verdict.RIGHT_BUT, List.of(), List.of(), Message.of("mark.reduce", typed.text().strip(), Shown.answer(model, right, ask)));
            }
            boolean parts = one.notation() == Notation.FEET_INCHES || one.notation() == Notation.DEGREES_MINUTES;
            if (!one.bare() && !parts && !one.unit().equals(ask.unit()) && !one.unit().symbol().equals(ask.unit().symbol())) {
                return new Finding(Verdict.RIGHT_BUT, List.of(), List.of(), Message.of("mark.right-but-unit", one.unit().symbol(), ask.unit().symbol()));
            }
        }
        return RIGHT;
    }

    /** Right with a coarser value of a constant that is named as right too. */
    private boolean isCoarse(Compare answer) {
        for (AskPlan.Try coarse : answer.plan().coarse) {
            if (fitsWith(answer, coarse, Compare.Window.WITHIN)) {
                return true;
            }
        }
        return false;
    }

    /** The same on top of what is put in already. */
    private boolean isCoarse(Compare answer, Change base) {
        for (AskPlan.Try coarse : answer.plan().coarse) {
            if (fitsWith(answer, coarse.change().over(base), Compare.Window.WITHIN)) {
                return true;
            }
        }
        return false;
    }

    private boolean fitsWith(Compare answer, Change change, Compare.Window window) {
        return fitsWith(answer, answer.plan().of(change), window);
    }

    private boolean fitsWith(Compare answer, AskPlan.Try candidate, Compare.Window window) {
        return candidate.reaches() && trials().put(candidate.recipe()) && answer.fits(trials().run(), window);
    }

    private Trials trials() {
        if (madeTrials == null) {
            madeTrials = new Trials(program, right);
        }
        return madeTrials;
    }

    private Mechanical mechanical() {
        if (madeMechanical == null) {
            madeMechanical = new Mechanical(model, right, trials());
        }
        return madeMechanical;
    }

    /** Right with the student's own earlier answers, as typed or as the slip behind them would give them. */
    private Finding carried(Compare answer) {
        if (!anyWrong) {
            return null;
        }
        for (Run run : slipsSoFar) {
            if (fitsWith(answer, run.change(), Compare.Window.WITHIN) || isCoarse(answer, run.change())) {
                return new Finding(Verdict.CARRIED, run.fits(), families(run.fits()), Message.of("mark.carried"));
            }
        }
        if (fitsWith(answer, typedSoFar, Compare.Window.WITHIN) || fitsWith(answer, allTyped, Compare.Window.WITHIN)
                || isCoarse(answer, typedSoFar)) {
            List<Fit> behind = slipsSoFar.get(0).fits();
            return new Finding(Verdict.CARRIED, behind, families(behind), Message.of("mark.carried"));
        }
        return isNextMark(answer) ? rounded() : null;
    }

    /** Right with the earlier right answers put in as they were rounded. */
    private boolean isRounded(Compare answer) {
        return !allTyped.isEmpty() && fitsWith(answer, allTyped, Compare.Window.WITHIN);
    }

    private static Finding rounded() {
        Message say = Message.of("mark.rounded-early");
        return new Finding(Verdict.SLIP, List.of(Fit.mechanical(Mechanical.ROUNDED, Change.NONE, say)), List.of(Mechanical.ROUNDED), say);
    }

    /** The earlier answer rounded to the mark before or after the typed one. */
    private boolean isNextMark(Compare answer) {
        for (Ask before : model.asks()) {
            if (before == answer.ask()) {
                return false;
            }
            if (before.isNumber() && before.to() > 0 && (typedSoFar.mask() & 1L << before.slot()) != 0) {
                double value = typedValue(before);
                for (int side = -1; side <= 1; side += 2) {
                    Change next = Change.fixed(before.slot(), value + side * before.to()).over(typedSoFar);
                    if (fitsWith(answer, next, Compare.Window.WITHIN)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /** What was typed at an earlier ask of a number that was not right. */
    private double typedValue(Ask before) {
        trials().put(program.recipe(typedSoFar, before.slot()));
        return trials().run().number(before.slot());
    }

    private static List<String> families(List<Fit> fits) {
        if (fits.size() == 1) {
            return fits.get(0).families();
        }
        LinkedHashSet<String> families = new LinkedHashSet<>();
        fits.forEach(fit -> families.addAll(fit.families()));
        return List.copyOf(families);
    }

    /** The tiers that name a mistake, in order. */
    private Finding named(Compare answer) {
        Ask ask = answer.ask();
        boolean measured = ask.to() > 0;
        List<Fit> fits = singles(answer);
        if (fits.isEmpty() && measured) {
            fits = mechanical().otherUnit(answer);
        }
        if (fits.isEmpty() && measured) {
            fits = mechanical().stoppedEarly(answer);
        }
        if (fits.isEmpty() && !anyWrong && isRounded(answer)) {
            return rounded();
        }
        if (fits.isEmpty() && measured) {
            fits = mechanical().roundedEarly(answer);
        }
        if (fits.isEmpty() && measured) {
            fits = pairs(answer);
        }
        if (fits.isEmpty() && measured) {
            fits = mechanical().ofThePen(answer);
        }
        if (fits.isEmpty() || ask.kind() == Ask.Kind.CHOICE && !isDistinctChoice(ask, fits)) {
            return null;
        }
        int most = answer.isRoundedCoarser() ? MOST_ROUNDED_FITS : MOST_FITS;
        if (fits.size() > most) {
            return UNEXPLAINED;
        }
        return isCounted(fits) ? new Finding(Verdict.CARRIED, fits, families(fits), Message.of("mark.carried")) : named(fits);
    }

    /** Whether a slip that fits stands behind an earlier answer already: it is counted once, however many asks it spoils. */
    private boolean isCounted(List<Fit> fits) {
        if (!anyWrong) {
            return false;
        }
        for (Run run : slipsSoFar) {
            for (Fit before : run.fits()) {
                if (before.isSingle() && fits.stream().anyMatch(f -> f.isSingle() && f.name().equals(before.name()))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean isDistinctChoice(Ask ask, List<Fit> fits) {
        return ask.options().size() >= 3 && fits.size() == 1;
    }

    private static Finding named(List<Fit> fits) {
        Fit first = fits.get(0);
        Message say = first.say() != null ? first.say() : fits.size() > 1 ? FITS_SEVERAL : first.isSingle() ? FITS : FITS_PAIR;
        return new Finding(Verdict.SLIP, List.copyOf(fits), families(fits), say);
    }

    /** One slip; of an answer that was rounded to three figures, every slip that gives the same three. */
    private List<Fit> singles(Compare answer) {
        // Such an answer may be the right one rounded so; then no slip is behind it.
        if (answer.ask().to() > 0 && answer.isRoundedCoarser() && !answer.fits(right, Compare.Window.FIGURES)) {
            List<Fit> fits = singles(answer, Compare.Window.FIGURES);
            if (!fits.isEmpty()) {
                return fits;
            }
        }
        return singles(answer, Compare.Window.SHARP);
    }

    /** The draw has put every slip in already; only on carried values it has to be done again. */
    private List<Fit> singles(Compare answer, Compare.Window window) {
        List<Fit> fits = answer.ask().isNumber() ? ofOneNumber(answer, window) : NO_FITS;
        for (int i = 0; i < model.slips().size() && !answer.ask().isNumber(); i++) {
            Variant.Outcome outcome = variant.outcome(i, answer.index());
            boolean differs = outcome.effect() == Effect.SEEN || outcome.effect() == Effect.NEAR;
            if (differs && answer.fits(outcome.theirs(), window)) {
                fits = added(fits, plan.alone(i));
            }
        }
        return fits.isEmpty() && anyWrong ? carriedSingles(answer, window) : fits;
    }

    private List<Fit> ofOneNumber(Compare answer, Compare.Window window) {
        List<Fit> fits = NO_FITS;
        double[] theirs = variant.theirs(answer.index());
        for (int i = 0; i < theirs.length; i++) {
            if (answer.fits(theirs[i], window)) {
                fits = added(fits, plan.alone(i));
            }
        }
        return fits;
    }

    private static List<Fit> added(List<Fit> fits, List<Fit> more) {
        if (fits.isEmpty()) {
            return more;
        }
        List<Fit> all = new ArrayList<>(fits);
        all.addAll(more);
        return all;
    }

    private List<Fit> carriedSingles(Compare answer, Compare.Window window) {
        List<Fit> fits = NO_FITS;
        for (int i = 0; i < model.slips().size(); i++) {
            Slip slip = model.slips().get(i);
            if ((sense() & 1L << i) != 0 && (fitsOnCarried(answer, slip, typedSoFar, window)
                    || slipsSoFar.stream().anyMatch(run -> fitsOnCarried(answer, slip, run.change(), window)))) {
                fits = added(fits, List.of(Fit.slip(slip, true)));
            }
        }
        return fits;
    }

    private long sense() {
        if (sense < 0) {
            sense = MarkPlan.sense(model, right);
        }
        return sense;
    }

    private boolean fitsOnCarried(Compare answer, Slip slip, Change carried, Compare.Window window) {
        return (slip.change().mask() & carried.mask()) == 0 && fitsWith(answer, carried.over(slip.change()), window);
    }

    /** Two slips at once that share no line; counts and choices have too few values to tell two apart. */
    private List<Fit> pairs(Compare answer) {
        List<Fit> fits = NO_FITS;
        if (isLuck(answer)) {
            return fits;
        }
        for (AskPlan.Pair pair : answer.plan().pairs) {
            if ((sense() & 1L << pair.first()) != 0 && (sense() & 1L << pair.second()) != 0 && fitsBoth(answer, pair)) {
                Slip a = model.slips().get(pair.first());
                Slip b = model.slips().get(pair.second());
                fits = added(fits, List.of(Fit.pair(a, b, a.change().over(b.change()))));
            }
        }
        trials().from(right);
        return fits;
    }

    /** The draw has put the first slip in already. */
    private boolean fitsBoth(Compare answer, AskPlan.Pair pair) {
        trials().from(variant.outcome(pair.first(), answer.index()).theirs());
        return trials().put(pair.onFirst()) && answer.fits(trials().run(), Compare.Window.SHARP);
    }

    /** Whether so many pairs, through windows so wide, would explain too many random answers. */
    private boolean isLuck(Compare answer) {
        if (!answer.ask().isNumber()) {
            return false;
        }
        int n = Long.bitCount(sense());
        double window = answer.width(Compare.Window.SHARP);
        return n * (n - 1) / 2.0 * 2 * window > MOST_LUCK * Math.abs(answer.typed().value(0)) * LOG_RANGE;
    }

    /** Keeps what a later ask may carry on. */
    private void remember(AskMark mark, boolean last) {
        if (last) {
            return;
        }
        Change fixed = mark.putIn();
        allTyped = fixed.over(allTyped);
        if (mark.verdict().isRight()) {
            return;
        }
        anyWrong = true;
        typedSoFar = fixed.over(typedSoFar);
        if (mark.verdict() == Verdict.CARRIED) {
            return;
        }
        List<Run> runs = new ArrayList<>(2);
        for (Run run : slipsSoFar) {
            int before = runs.size();
            for (Fit fit : mark.fits()) {
                if (mark.verdict() == Verdict.SLIP && !fit.change().isEmpty()) {
                    runs.add(run.with(fit.change(), List.of(fit)));
                }
            }
            if (runs.size() == before) {
                runs.add(run.with(fixed, NO_FITS));
            }
        }
        slipsSoFar = runs.size() <= MOST_RUNS ? runs : runs.subList(0, MOST_RUNS);
    }
}
