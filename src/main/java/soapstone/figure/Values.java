package soapstone.figure;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import soapstone.quantity.Dimension;
import soapstone.quantity.ReadAs;
import soapstone.quantity.Reading;
import soapstone.quantity.ShopReader;
import soapstone.quantity.UnitSystem;

/** Reads a drawing's input: amounts in base units of its system, labels as they are printed. */
final class Values {

    private static final int MOST_OF_A_COUNT = 100_000;
    private static final double MOST = 1e9;
    private static final double SAME = 1e-9;
    /** A thousand liters are as many cubic millimeters as a thousand kilometers are millimeters. */
    private static final double MOST_VOLUME = 1e15;

    private final FigureInput input;
    private final boolean named;
    private final Tabulated tabulated;

    Values(FigureInput input) {
        this(input, true, Tabulated.NOTHING);
    }

    private Values(FigureInput input, boolean named, Tabulated tabulated) {
        this.input = input;
        this.named = named;
        this.tabulated = tabulated;
    }

    /** The values of an answer's part: no flag points at them, their labels do not know their names. */
    static Values ofAnswer(FigureInput input) {
        return new Values(input, false, Tabulated.NOTHING);
    }

    /** The same values with long texts set apart. */
    Values with(Tabulated apart) {
        return new Values(input, named, apart);
    }

    /** The same values without texts and letters of those that a drawing does not print. */
    Values printing(Predicate<String> printed) {
        Map<String, FigureValue> own = new LinkedHashMap<>(input.values());
        own.replaceAll((name, v) -> printed.test(name) ? v : new FigureValue(v.amounts(), v.unit(), null, null));
        return new Values(new FigureInput(input.kind(), own, input.system()), named, tabulated);
    }

    /**
     * The same values under the names of a part of the whole.
     *
     * @param names this one's names by those of the part; others are left out
     */
    Values renamed(Map<String, String> names) {
        Map<String, FigureValue> own = new LinkedHashMap<>();
        names.forEach((theirs, ours) -> {
            if (has(ours)) {
                own.put(theirs, input.values().get(ours));
            }
        });
        return new Values(new FigureInput(input.kind(), own, input.system()), false, tabulated);
    }

    /** The printed texts of all single values that are not asked. */
    List<String> singleTexts() {
        return input.values().values().stream().filter(v -> !v.isAsked() && v.amounts().length == 1 && v.texts().length == 1)
                .map(v -> Svg.clean(v.texts()[0])).toList();
    }

    UnitSystem system() {
        return input.system();
    }

    boolean has(String name) {
        return input.values().containsKey(name);
    }

    /** True when every argument that must be there is there, has the right shape and is a finite number. */
    boolean suits(List<FigureArgument> arguments) {
        return arguments.stream().allMatch(this::suits);
    }

    private boolean suits(FigureArgument argument) {
        FigureValue v = input.values().get(argument.name());
        if (v == null) {
            return argument.optional();
        }
        boolean shape = argument.list() ? v.amounts().length > 0 : v.amounts().length == 1;
        if (!shape || !v.unit().dimension().equals(argument.dimension())) {
            return false;
        }
        for (double d : all(argument.name())) {
            if (!Double.isFinite(d) || Math.abs(d) > (argument.dimension().equals(Dimension.VOLUME) ? MOST_VOLUME : MOST)) {
                return false;
            }
        }
        return true;
    }

    /** A single amount in base units. */
    double at(String name) {
        return all(name)[0];
    }

    /** All amounts of a list in base units. */
    double[] all(String name) {
        FigureValue v = input.values().get(name);
        double[] base = v.amounts();
        for (int i = 0; i < base.length; i++) {
            base[i] = v.unit().toBase(base[i], input.system());
        }
        return base;
    }

    /** A count as a whole number, kept between 0 and what can be worked with. */
    int count(String name) {
        return (int) Math.max(0, Math.min(MOST_OF_A_COUNT, Math.round(at(name))));
    }

    /** Whether a value that is there is an angle. */
    boolean isAngle(String name) {
        return input.values().get(name).unit().dimension().equals(Dimension.ANGLE);
    }

    boolean isAsked(String name) {
        return has(name) && input.values().get(name).isAsked();
    }

    /** What is printed for a value: its letter in a frame, its text, or nothing. */
    Label label(String name) {
        return label(name, 0);
    }

    /** What is printed for one value of a list. */
    Label label(String name, int index) {
        FigureValue v = input.values().get(name);
        if (v == null) {
            return Label.NONE;
        }
        if (v.isAsked()) {
            return sized(Label.letter(v.letter()), name);
        }
        Label label = index < v.texts().length ? Label.text(tabulated.shown(Svg.clean(v.texts()[index]))) : Label.NONE;
        return sized(label, v.amounts().length == 1 ? name : Flags.item(name, index));
    }

    private Label sized(Label label, String size) {
        return named ? label.sized(List.of(size)) : label;
    }

    /** Whether a count must not be read off the drawing: it is asked, or it is not told. */
    boolean isHidden(String name) {
        return isAsked(name) || !isTold(name);
    }

    /** Whether what is printed for a single value is all of it, and not rounded: only then can be reckoned with it. */
    boolean isPrintedWhole(String name) {
        FigureValue v = input.values().get(name);
        return v != null && v.texts().length == 1 && ShopReader.read(v.texts()[0], new ReadAs(ReadAs.Kind.QUANTITY, v.unit(), system(), '.'))
                instanceof Reading.One one && Math.abs(one.base() - at(name)) <= SAME * Math.max(1, Math.abs(at(name)));
    }

    /** Whether something can be printed for it. */
    boolean isTold(String name) {
        return !label(name).isEmpty();
    }

    /** Whether lengths are printed with a unit behind them. */
    boolean printsUnits() {
        for (FigureValue v : input.values().values()) {
            for (String text : v.texts()) {
                if (v.unit().dimension().equals(Dimension.LENGTH) && text.chars().anyMatch(Character::isLetter)) {
                    return true;
                }
            }
        }
        return false;
    }
}
