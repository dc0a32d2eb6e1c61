package soapstone.speed;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import soapstone.bank.Bank;
import soapstone.desk.Drawings;
import soapstone.desk.Library;
import soapstone.exercise.Exercise;
import soapstone.page.Figure;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;

/**
 * A process that draws a thousand figures from all over the bank, no two with the same numbers, and holds them all. It prints how many
 * it has, and ends when it is told a line.
 */
public final class ManyFigures {

    static final int MANY = 1000;
    private static final int MOST_SEEDS = 100;

    private ManyFigures() {}

    /** @param args {@code --bank DIR --lessons DIR}, or none for those of the program */
    public static void main(String[] args) throws IOException {
        List<String> options = List.of(args);
        List<Figure> figures = draw(Library.read(folder(options, "--bank"), folder(options, "--lessons")).library().orElseThrow().bank());
        System.out.println(figures.size());
        System.in.read();
        // Whoever looks at the process sees it with all of them.
        figures.clear();
    }

    private static Path folder(List<String> options, String name) {
        int at = options.indexOf(name);
        return at < 0 ? null : Path.of(options.get(at + 1));
    }

    private static List<Figure> draw(Bank bank) {
        Drawings drawings = Drawings.in("en");
        List<Figure> figures = new ArrayList<>();
        for (long seed = 1; seed <= MOST_SEEDS && figures.size() < MANY; seed++) {
            for (Exercise exercise : bank.exercises().values()) {
                for (UnitSystem units : UnitSystem.values()) {
                    if (figures.size() < MANY) {
                        Drawer.draw(exercise, units, seed).flatMap(drawings::asked).ifPresent(figures::add);
                    }
                }
            }
        }
        return figures;
    }
}
