package soapstone.speed;

import java.util.List;
import java.util.Optional;
import soapstone.desk.Library;
import soapstone.exercise.Exercise;

/**
 * All measurements of one run. Seconds differ from machine to machine; the ratios do so much less, and each side of a
 * ratio is measured by turns with the other.
 *
 * @param marking empty where this Java has no compiler
 */
public record Speed(Optional<MarkingSpeed> marking, PageSpeed page, StartSpeed start, SmallHeap heap) {

    private static final String USUAL = "spacing/bolt-holes";
    private static final double FOR_MARKING = 0.5;
    private static final double FOR_PAGES = 0.3;
    private static final double SECONDS_A_START = 8;
    private static final int LEAST_STARTS = 3;

    /**
     * Measures for about so many seconds.
     *
     * @param bankOptions what the command line needs to find the same bank and lessons
     */
    public static Speed measure(Library library, List<String> bankOptions, double seconds) throws Exception {
        List<Exercise> all = List.copyOf(library.bank().exercises().values());
        String exercise = library.bank().exercise(USUAL).orElse(all.get(0)).id();
        Optional<MarkingSpeed> marking = MarkingSpeed.measure(library.bank(), seconds * FOR_MARKING);
        PageSpeed page = PageSpeed.measure(library, exercise, seconds * FOR_PAGES);
        int turns = (int) Math.max(LEAST_STARTS, seconds / SECONDS_A_START);
        StartSpeed start = StartSpeed.measure(bankOptions, exercise, page.bytes(), turns);
        return new Speed(marking, page, start, SmallHeap.try64(library.bank(), bankOptions));
    }
}
