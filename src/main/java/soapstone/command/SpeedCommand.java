package soapstone.command;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import soapstone.desk.Library;
import soapstone.record.Database;
import soapstone.speed.Speed;

/** Measures how fast marking, pages and starting are on this machine, and what a big school takes. */
@Command(name = "speed", description = "Measure how fast marking, pages and starting are, in ratios to plain Java and to a bare web server.",
        mixinStandardHelpOptions = true)
final class SpeedCommand implements Callable<Integer> {

    private static final double MOST_SECONDS = 3600;
    private static final int MOST_STUDENTS = 20_000;

    @Spec
    private CommandSpec spec;

    @Mixin
    private BankOptions bank;

    @Option(names = "--seconds", paramLabel = "N", defaultValue = "60", description = "About how long to measure; 60 if not said. On a busy machine longer is better.")
    private double seconds;

    @Option(names = "--json", description = "Print JSON instead of text.")
    private boolean json;

    @Option(names = "--database", paramLabel = "URL", description = "An empty PostgreSQL database, to measure handing in and big schools on it too; it is filled. User and password are "
            + "taken from the environment: SOAPSTONE_DATABASE_USER and SOAPSTONE_DATABASE_PASSWORD.")
    private String url;

    @Option(names = "--students", paramLabel = "N", defaultValue = "1000", description = "How many students sit in the big school whose pages are measured; 1000 if not said, 0 for "
            + "none. Each hands in some 500 answers in its year. 10000 take some ten minutes and 5 GB of disk.")
    private int students;

    private Speed measure(Library library) throws Exception {
        Speed.Wanted wanted = new Speed.Wanted(seconds, students);
        if (url == null) {
            return Speed.measure(library, bank.asOptions(), wanted, Optional.empty());
        }
        try (Database other = SchoolOptions.at(url)) {
            return Speed.measure(library, bank.asOptions(), wanted, Optional.of(new Speed.Other(other, schema -> SchoolOptions.at(url, schema))));
        }
    }

    @Override
    public Integer call() throws Exception {
        if (!(seconds > 0 && seconds <= MOST_SECONDS)) {
            throw Refusal.usage("Seconds are from 1 to " + (int) MOST_SECONDS + ", not " + seconds + ".");
        }
        if (students < 0 || students > MOST_STUDENTS) {
            throw Refusal.usage("Students are from 1 to " + MOST_STUDENTS + ", or 0 for no big school, not " + students + ".");
        }
        Library library = bank.goodLibrary();
        Speed speed = measure(library);
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            Json.print(out, SpeedTold.json(speed));
        } else {
            SpeedTold.lines(speed).forEach(out::println);
        }
        boolean same = speed.marking().map(m -> m.differences().isEmpty()).orElse(true);
        return same && speed.heap().isGood() && speed.figures().small().isGood() && speed.crowd().isGood() ? 0 : Refusal.FAILED;
    }
}
