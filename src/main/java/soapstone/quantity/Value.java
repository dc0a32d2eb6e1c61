package soapstone.quantity;

import java.math.BigDecimal;
import java.util.List;

/** What the parts of a typed value mean together: whether they answer what is asked, and how much they are. */
final class Value {

    /** The largest amount that is read, in its own unit and in base units: far past what a shop can hold. */
    static final double LARGEST_AMOUNT = 1e12;
    static final double LARGEST_BASE = 1e15;

    private static final double EDGE = 1e-9;

    private final List<Part> parts;
    private final boolean negative;
    private final ReadAs as;

    /**
     * Takes the parts as they were typed.
     *
     * @param parts    at least one; of several only the last may have no unit
     * @param negative whether a minus stands before the first
     */
    Value(List<Part> parts, boolean negative, ReadAs as) {
        this.parts = parts;
        this.negative = negative;
        this.as = as;
    }

    /** One, or Again. */
    Reading reading() {
        for (Part part : parts) {
            if (part.amount().value() > LARGEST_AMOUNT) {
                return Reason.TOO_BIG.at(part.amount().from());
            }
        }
        return parts.size() == 1 ? single(parts.get(0)) : composed();
    }

    private double signed(double amount) {
        return negative && amount != 0 ? -amount : amount;
    }

    // ---- one part

    private Reading single(Part typed) {
        boolean bare = typed.unit() == null;
        Part part = bare ? typed.in(as.kind() == ReadAs.Kind.COUNT ? Units.ONE : as.unit()) : typed;
        Reading.Again why = fits(part);
        if (why != null) {
            return why;
        }
        Unit unit = part.unit();
        double amount = signed(part.amount().value(part.scale()));
        double base = unit.toBase(amount, as.system());
        if (Math.abs(base) > LARGEST_BASE) {
            return Reason.TOO_BIG.at(part.amount().from());
        }
        double place = Math.abs(unit.toBase(part.amount().place() * part.scale(), as.system()) - unit.toBase(0, as.system()));
        return new Reading.One(Rounding.plusZero(base), amount, unit, bare, part.amount().notation(), place,
                printed(List.of(part), amount < 0));
    }

    private String printed(List<Part> all, boolean minus) {
        StringBuilder out = new StringBuilder(24);
        for (Part part : all) {
            if (out.length() > 0) {
                out.append(ShopPrinter.NO_BREAK);
            }
            part.print(out, as.decimalMark());
        }
        if (minus) {
            out.insert(0, ShopPrinter.MINUS);
        }
        return out.toString();
    }

    /** Whether unit and form can answer what is asked; the reason when they cannot. */
    private Reading.Again fits(Part part) {
        Amount a = part.amount();
        if (as.kind() == ReadAs.Kind.COUNT) {
            return !part.unit().equals(Units.ONE) ? Reason.COUNT_ASKED.at(a.from(), part.said(as.decimalMark()))
                    : a.value() != Math.rint(a.value()) ? Reason.WHOLE_COUNT.at(a.from()) : null;
        }
        if (!part.unit().dimension().equals(as.unit().dimension())) {
            return wrongDimension(part);
        }
        if (as.kind() == ReadAs.Kind.FRACTION && a.bottom() == 0 && (!a.isWhole() || part.scale() != 1)) {
            return Reason.FRACTION_ASKED.at(a.from());
        }
        return a.bottom() > 0 ? bottomFits(part) : null;
    }

    private Reading.Again wrongDimension(Part part) {
        int at = part.amount().from();
        String typed = part.said(as.decimalMark());
        String is = word(part.unit().dimension());
        return as.unit().equals(Units.ONE) ? Reason.NUMBER_ASKED.at(at, typed, is)
                : Reason.WRONG_DIMENSION.at(at, typed, is, word(as.unit().dimension()), as.unit().symbol());
    }

    /** A place of the sentence that is itself a key of the words files, marked by an at-sign. */
    private static String word(Dimension d) {
        return "@dimension." + (d.isNamed() ? d.toString() : "other");
    }

    private static Reading.Again bottomFits(Part part) {
        Amount a = part.amount();
        if (Fractions.areRead(part.unit(), a.bottom())) {
            return null;
        }
        String symbol = part.unit().symbol();
        return Fractions.areUsed(part.unit()) ? Reason.NO_SUCH_RULE.at(a.from(), String.valueOf(a.bottom()))
                : Reason.METRIC_FRACTION.at(a.from(), a.top() + "/" + a.bottom(), symbol);
    }

    // ---- several parts

    private Reading composed() {
        if (!parts.get(0).unit().dimension().equals(as.unit().dimension())) {
            return wrongDimension(parts.get(0));
        }
        Part last = parts.get(parts.size() - 1);
        if (last.unit() == null) {
            Unit small = smaller(parts.get(parts.size() - 2).unit());
            if (small == null || last.amount().number() == null) {
                return afterUnit(parts.get(parts.size() - 2), last.amount(), small);
            }
            last = last.in(small);
            parts.set(parts.size() - 1, last);
        }
        Reading.Again why = null;
        for (int i = 1; i < parts.size() && why == null; i++) {
            why = goTogether(parts.get(i - 1), parts.get(i));
        }
        why = why == null ? fits(last) : why;
        return why == null ? sum(last) : why;
    }

    private Reading sum(Part last) {
        double base = 0;
        for (Part part : parts) {
            base += part.base(as.system());
        }
        if (base > LARGEST_BASE) {
            return Reason.TOO_BIG.at(parts.get(0).amount().from());
        }
        base = signed(base);
        double place = last.unit().toBase(last.amount().place() * last.scale(), as.system());
        String text = last.scale() == 1 ? printed(parts, base < 0) : inOneUnit(last.unit(), base < 0);
        return new Reading.One(base, as.unit().fromBase(base, as.system()), as.unit(), false, notation(), place, text);
    }

    /** {@code 12 dollars 50 cents} as $12.50, because a cent is no unit of its own. */
    private String inOneUnit(Unit unit, boolean minus) {
        BigDecimal sum = BigDecimal.ZERO;
        for (Part part : parts) {
            sum = sum.add(part.amount().scaled(part.scale()));
        }
        StringBuilder out = new StringBuilder(16);
        Amount.print(out, sum, as.decimalMark());
        ShopPrinter.attach(out, 0, unit.symbol());
        return (minus ? String.valueOf(ShopPrinter.MINUS) : "") + out;
    }

    /** Checks that a part goes with the one before it: 5 in after 3 ft, and never a whole foot of inches. */
    private Reading.Again goTogether(Part big, Part small) {
        int at = small.amount().from();
        String bigSymbol = big.unit().symbol();
        boolean related = small.scale() == 1 ? big.unit().dimension().equals(small.unit().dimension())
                : parts.size() == 2 && big.unit().equals(small.unit());
        if (!related) {
            return Reason.TWO_UNITS.at(at, bigSymbol, small.unit().symbol());
        }
        if (!big.amount().isWhole() || big.scale() != 1) {
            return Reason.PART_NOT_WHOLE.at(big.amount().from(), big.said(as.decimalMark()));
        }
        double bigSize = big.unit().toBase(1, as.system()) * (1 - EDGE);
        boolean temperature = small.unit().dimension().equals(Dimension.TEMPERATURE);
        if (temperature || small.unit().toBase(small.scale(), as.system()) >= bigSize) {
            return Reason.PARTS_ORDER.at(at, bigSymbol, small.unit().symbol());
        }
        return small.base(as.system()) < bigSize ? null : Reason.PART_TOO_BIG.at(at, small.said(as.decimalMark()),
                ShopPrinter.text(big.unit().toBase(1, as.system()), big.unit(), as.system(), Show.WHOLE, as.decimalMark()));
    }

    /** What a bare number means after a unit: 5 after {@code 3'} is inches. */
    private static Unit smaller(Unit big) {
        if (big.equals(Units.FOOT)) {
            return Units.INCH;
        }
        if (big.equals(Units.DEGREE)) {
            return Units.ARCMIN;
        }
        if (big.equals(Units.ARCMIN)) {
            return Units.ARCSEC;
        }
        return big.equals(Units.HOUR) ? Units.MINUTE : null;
    }

    /** {@code 41" 3/8}: most likely the unit stands too early; {@code 3' 5/8} can be 5/8 in or 5/8 ft. */
    private Reading.Again afterUnit(Part before, Amount after, Unit small) {
        char mark = as.decimalMark();
        if (after.number() != null || !before.amount().isWhole()) {
            return Reason.TWO_NUMBERS.at(after.from(), before.said(mark), after.said(mark));
        }
        Amount mixed = new Amount(before.amount().number(), after.top(), after.bottom(), false, after.from(), after.to());
        String both = new Part(mixed, before.unit(), 1).said(mark);
        return small == null ? Reason.UNIT_INSIDE.at(after.from(), before.said(mark), after.said(mark), both)
                : Reason.TWO_WAYS.at(after.from(),
                        before.said(mark) + ShopPrinter.NO_BREAK + new Part(after, small, 1).said(mark), both);
    }

    private Notation notation() {
        Unit first = parts.get(0).unit();
        if (first.equals(Units.FOOT)) {
            return Notation.FEET_INCHES;
        }
        if (first.equals(Units.DEGREE)) {
            return Notation.DEGREES_MINUTES;
        }
        if (first.equals(Units.HOUR)) {
            return Notation.HOURS_MINUTES;
        }
        return first.equals(Units.POUND) ? Notation.POUNDS_OUNCES : Notation.PARTS;
    }
}
