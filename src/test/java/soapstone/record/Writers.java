package soapstone.record;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import soapstone.school.Attempt;
import soapstone.school.Attempts;
import soapstone.school.School;

/**
 * A process of its own that hands answers in from sixteen threads until it is killed. It prints each receipt when it was
 * acknowledged, never before.
 */
final class Writers {

    private static final int WRITERS = 16;

    private Writers() {}

    static Database open(String place) {
        return place.startsWith("jdbc:") ? Database.at(place, "postgres", "") : Database.inFolder(Path.of(place));
    }

    /** @param args the place of the database, and a name that no other process has */
    public static void main(String[] args) {
        Database database = open(args[0]);
        School school = SqlSchool.of(database);
        List<Long> problems = database.read(h -> h.createQuery("select id from problem order by id").mapTo(Long.class).list());
        PrintStream out = System.out;
        ExecutorService writers = Executors.newFixedThreadPool(WRITERS);
        for (int w = 0; w < WRITERS; w++) {
            String name = args[1] + "-" + w;
            long problem = problems.get(w % problems.size());
            writers.submit(() -> write(school, problem, name, out));
        }
        synchronized (out) {
            out.println("ready");
        }
    }

    private static void write(School school, long problem, String name, PrintStream out) {
        for (int i = 0; ; i++) {
            String receipt = name + "-" + i;
            Attempts.Handed handed = new Attempts.Handed(problem, receipt, FilledSchool.NOW, false, Attempt.Way.SCREEN, "0", "print1", List.of(FilledSchool.mark(receipt)));
            // As a page that was sent again because its answer did not come.
            school.attempts().hand(handed, Integer.MAX_VALUE);
            Attempts.Kept again = i % 7 == 0 ? school.attempts().hand(handed, Integer.MAX_VALUE) : null;
            synchronized (out) {
                out.println(again instanceof Attempts.Kept.Counted ? "counted twice: " + receipt : receipt);
            }
        }
    }
}
