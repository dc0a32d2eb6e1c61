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
import soapstone.quantity.Notation;
import soapstone.quantity.Reading;
import soapstone.quantity.ShopPrinter;
import soapstone.source.Message;
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
    private static final int MOST_RUNS = 6;
    /** Pairs are not named where chance alone would name more than this share of random answers. */
    private static final double MOST_LUCK = 0.02;
    /** Random answers are thought of as log-uniform from a fifth to five times the right one. */
    private static final double LOG_RANGE = 2 * Math.log(5);
    private static final char POINT = '.';

    private final Variant variant;
    private final Model model;
    private final Program program;
    private final MarkRules rules;
    private final Frame right;
    private final Frame other;
    private final Mechanical mechanical;
    private final List<Slip> slips;
    /** Typed answers that are not right, put into the working as fixed values. */
    private Change typedSoFar = Change.NONE;
    /** What may stand behind the earlier wrong answers, unrounded: one run for each way in which they fit. */
    private List<Run> slipsSoFar = List.of(new Run(Change.NONE, List.of()));
    /** All typed answers, also the right ones, as typed: somebody may go on with rounded numbers. */
    private Change allTyped = Change.NONE;
    private boolean anyWrong;

    /** Slips put in, and which. */
    private record Run(Change change, List<Fit> fits) {

        Run with(Change more, List<Fit> moreFits) {
            List<Fit> all = new ArrayList<>(fits);
            all.addAll(moreFits);
            return new Run(more.over(change), all);
        }
    }

    public Marker(Variant variant, MarkRules rules) {
        this.variant = variant;
        this.model = variant.model();
        this.program = model.program();
        this.rules = rules;
        this.right = variant.right();
        this.other = program.frame();
        this.mechanical = new Mechanical(model, right, other);
        this.slips = model.slips().stream().filter(s -> s.makesSense(right)).toList();
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
        List<AskMark> marks = new ArrayList<>();
        for (int i = 0; i < model.asks().size(); i++) {
            marks.add(mark(model.asks().get(i), typed.get(i)));
        }
        return new Marked(variant, List.copyOf(marks), typedSoFar);
    }

    private AskMark mark(Ask ask, Typed typed) {
        if (typed.reading() instanceof Reading.Again again) {
            return new AskMark(ask, typed, Verdict.ASK_AGAIN, List.of(), List.of(), 0, 0, again.why());
        }
        if (typed.isEmpty()) {
            return new AskMark(ask, typed, Verdict.BLANK, List.of(), List.of(), 0, 0, Message.of("mark.blank"));
        }
        AskMark mark = judge(ask, typed);
        remember(mark);
        return mark;
    }

    /** The verdict with what fits, before points and odds are added. */
    private record Finding(Verdict verdict, List<Fit> fits, List<String> families, Message say) {}

    private AskMark judge(Ask ask, Typed typed) {
        Finding finding = find(ask, typed);
        double share = switch (finding.verdict()) {
            case RIGHT -> 1;
            case RIGHT_BUT -> rules.coarseEarns() || !finding.families().contains(Mechanical.COARSE) ? 1 : 0;
            case CARRIED -> rules.carriedEarns() ? 1 : 0;
            case NEAR -> rules.nearEarns();
            default -> 0;
        };
        return new AskMark(ask, typed, finding.verdict(), finding.fits(), finding.families(), share * ask.points(), Odds.of(variant, ask), finding.say());
    }

    private Finding find(Ask ask, Typed typed) {
        if (Compare.fits(ask, right, typed, Compare.Window.WITHIN)) {
            return rightly(ask, typed);
        }
        if (isCoarse(ask, typed, Change.NONE)) {
            return new Finding(Verdict.RIGHT_BUT, List.of(), List.of(Mechanical.COARSE), Message.of("mark.coarse-constant"));
        }
        Finding carried = carried(ask, typed);
        if (carried != null) {
            return carried;
        }
        Finding named = named(ask, typed);
        if (named != null) {
            return named;
        }
        if (ask.to() > 0 && Compare.fits(ask, right, typed, Compare.Window.NEAR)) {
            return new Finding(Verdict.NEAR, List.of(), List.of(), near(ask, typed));
        }
        return unexplained();
    }

    private static Finding unexplained() {
        return new Finding(Verdict.UNEXPLAINED, List.of(), List.of(), Message.of("mark.unexplained"));
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
        return new Finding(Verdict.RIGHT, List.of(), List.of(), Message.of("mark.right"));
    }

    /** Right with a coarser value of a constant that is named as right too, on top of what is put in already. */
    private boolean isCoarse(Ask ask, Typed typed, Change base) {
        List<Model.Constant> constants = model.constants();
        for (int i = 0; i < constants.size(); i++) {
            for (double value : constants.get(i).also()) {
                Change one = Change.fixed(constants.get(i).slot(), value).over(base);
                if (fitsWith(ask, typed, one, Compare.Window.WITHIN)) {
                    return true;
                }
                for (int k = 0; k < i; k++) {
                    for (double second : constants.get(k).also()) {
                        if (fitsWith(ask, typed, one.over(Change.fixed(constants.get(k).slot(), second)), Compare.Window.WITHIN)) {
                            return true;
                        }
                    }
                }
            }
        }
        return false;
    }

    private boolean fitsWith(Ask ask, Typed typed, Change change, Compare.Window window) {
        long changed = program.rerun(right, other, change, last(ask));
        return reaches(changed, ask) && Compare.fits(ask, other, typed, window);
    }

    private static int last(Ask ask) {
        return Math.max(ask.slot(), ask.second());
    }

    private static boolean reaches(long changed, Ask ask) {
        return (changed & 1L << ask.slot()) != 0 || ask.second() >= 0 && (changed & 1L << ask.second()) != 0;
    }

    /** Right with the student's own earlier answers, as typed or as the slip behind them would give them. */
    private Finding carried(Ask ask, Typed typed) {
        if (!anyWrong) {
            return isRounded(ask, typed) ? rounded() : null;
        }
        for (Run run : slipsSoFar) {
            if (fitsWith(ask, typed, run.change(), Compare.Window.WITHIN) || isCoarse(ask, typed, run.change())) {
                return new Finding(Verdict.CARRIED, run.fits(), families(run.fits()), Message.of("mark.carried"));
            }
        }
        if (fitsWith(ask, typed, typedSoFar, Compare.Window.WITHIN) || fitsWith(ask, typed, allTyped, Compare.Window.WITHIN)
                || isCoarse(ask, typed, typedSoFar)) {
            List<Fit> behind = slipsSoFar.get(0).fits();
            return new Finding(Verdict.CARRIED, behind, families(behind), Message.of("mark.carried"));
        }
        return isNextMark(ask, typed) ? rounded() : null;
    }

    private boolean isRounded(Ask ask, Typed typed) {
        return !allTyped.isEmpty() && fitsWith(ask, typed, allTyped, Compare.Window.WITHIN);
    }

    private static Finding rounded() {
        Message say = Message.of("mark.rounded-early");
        return new Finding(Verdict.SLIP, List.of(Fit.mechanical(Mechanical.ROUNDED, Change.NONE, say)), List.of(Mechanical.ROUNDED), say);
    }

    /** The earlier answer rounded to the mark before or after the typed one. */
    private boolean isNextMark(Ask ask, Typed typed) {
        for (Ask before : model.asks()) {
            if (before == ask) {
                return false;
            }
            if (before.isNumber() && before.to() > 0 && (typedSoFar.mask() & 1L << before.slot()) != 0) {
                program.rerun(right, other, typedSoFar, last(ask));
                double value = other.number(before.slot());
                for (int side = -1; side <= 1; side += 2) {
                    Change next = Change.fixed(before.slot(), value + side * before.to()).over(typedSoFar);
                    if (fitsWith(ask, typed, next, Compare.Window.WITHIN)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private static List<String> families(List<Fit> fits) {
        LinkedHashSet<String> families = new LinkedHashSet<>();
        for (Fit fit : fits) {
            if (fit.slips().isEmpty()) {
                families.add(fit.family());
            }
            fit.slips().forEach(s -> families.add(s.family()));
        }
        return List.copyOf(families);
    }

    /** The tiers that name a mistake, in order. */
    private Finding named(Ask ask, Typed typed) {
        boolean measured = ask.to() > 0;
        List<Fit> fits = singles(ask, typed);
        if (fits.isEmpty() && measured) {
            fits = mechanical.otherUnit(ask, typed);
        }
        if (fits.isEmpty() && measured) {
            fits = mechanical.stoppedEarly(ask, typed);
        }
        if (fits.isEmpty() && measured) {
            fits = mechanical.roundedEarly(ask, typed);
        }
        if (fits.isEmpty() && measured) {
            fits = pairs(ask, typed);
        }
        if (fits.isEmpty() && measured) {
            fits = mechanical.ofThePen(ask, typed);
        }
        if (fits.isEmpty() || ask.kind() == Ask.Kind.CHOICE && !isDistinctChoice(ask, fits)) {
            return null;
        }
        return fits.size() > MOST_FITS ? unexplained() : named(fits);
    }

    private static boolean isDistinctChoice(Ask ask, List<Fit> fits) {
        return ask.options().size() >= 3 && fits.size() == 1;
    }

    private static Finding named(List<Fit> fits) {
        Fit first = fits.get(0);
        Message say = first.say() != null ? first.say() : Message.of(fits.size() == 1 ? first.isSingle() ? "mark.fits" : "mark.fits-pair" : "mark.fits-several");
        return new Finding(Verdict.SLIP, List.copyOf(fits), families(fits), say);
    }

    /** One slip; of an answer that was rounded to three figures, every slip that gives the same three. */
    private List<Fit> singles(Ask ask, Typed typed) {
        // Such an answer may be the right one rounded so; then no slip is behind it.
        if (ask.to() > 0 && Compare.isRoundedCoarser(ask, typed) && !Compare.fits(ask, right, typed, Compare.Window.FIGURES)) {
            List<Fit> fits = singles(ask, typed, Compare.Window.FIGURES);
            if (fits.size() <= MOST_FITS) {
                return fits;
            }
        }
        return singles(ask, typed, Compare.Window.SHARP);
    }

    private List<Fit> singles(Ask ask, Typed typed, Compare.Window window) {
        List<Fit> fits = new ArrayList<>(2);
        for (Slip slip : slips) {
            if (fitsWith(ask, typed, slip.change(), window)) {
                fits.add(Fit.slip(slip, false));
            }
        }
        if (fits.isEmpty() && anyWrong) {
            for (Slip slip : slips) {
                if (fitsOnCarried(ask, typed, slip, typedSoFar, window)
                        || slipsSoFar.stream().anyMatch(run -> fitsOnCarried(ask, typed, slip, run.change(), window))) {
                    fits.add(Fit.slip(slip, true));
                }
            }
        }
        return fits;
    }

    private boolean fitsOnCarried(Ask ask, Typed typed, Slip slip, Change carried, Compare.Window window) {
        return (slip.change().mask() & carried.mask()) == 0 && fitsWith(ask, typed, carried.over(slip.change()), window);
    }

    /** Two slips at once that share no line; counts and choices have too few values to tell two apart. */
    private List<Fit> pairs(Ask ask, Typed typed) {
        List<Fit> fits = new ArrayList<>(2);
        if (isLuck(ask, typed)) {
            return fits;
        }
        for (int i = 0; i < slips.size(); i++) {
            Change a = slips.get(i).change();
            for (int k = i + 1; k < slips.size(); k++) {
                Change b = slips.get(k).change();
                if ((a.mask() & b.mask()) == 0) {
                    Change both = a.over(b);
                    if (fitsWith(ask, typed, both, Compare.Window.SHARP)) {
                        fits.add(Fit.pair(slips.get(i), slips.get(k), both));
                    }
                }
            }
        }
        return fits;
    }

    /** Whether so many pairs, through windows so wide, would explain too many random answers. */
    private boolean isLuck(Ask ask, Typed typed) {
        int n = slips.size();
        double window = Compare.width(ask, typed, 0, Compare.Window.SHARP);
        return ask.isNumber() && n * (n - 1) / 2.0 * 2 * window > MOST_LUCK * Math.abs(typed.value(0)) * LOG_RANGE;
    }

    /** Keeps what a later ask may carry on. */
    private void remember(AskMark mark) {
        Ask ask = mark.ask();
        Change fixed = fixed(ask, mark.typed());
        allTyped = fixed.over(allTyped);
        if (mark.verdict().isRight()) {
            return;
        }
        anyWrong = true;
        typedSoFar = fixed.over(typedSoFar);
        if (mark.verdict() == Verdict.CARRIED) {
            return;
        }
        List<Fit> fits = mark.verdict() == Verdict.SLIP ? mark.fits().stream().filter(f -> !f.change().isEmpty()).toList() : List.of();
        List<Run> runs = new ArrayList<>();
        for (Run run : slipsSoFar) {
            for (Fit fit : fits) {
                runs.add(run.with(fit.change(), List.of(fit)));
            }
            if (fits.isEmpty()) {
                runs.add(run.with(fixed, List.of()));
            }
        }
        slipsSoFar = runs.subList(0, Math.min(runs.size(), MOST_RUNS));
    }

    private static Change fixed(Ask ask, Typed typed) {
        int step = ask.second() < 0 ? 1 : 2;
        if (!ask.isMany()) {
            Change first = Change.fixed(ask.slot(), typed.value(0));
            return step == 1 ? first : first.over(Change.fixed(ask.second(), typed.value(1)));
        }
        Change first = Change.fixed(ask.slot(), typed.list(0, step));
        return step == 1 ? first : first.over(Change.fixed(ask.second(), typed.list(1, 2)));
    }
}
