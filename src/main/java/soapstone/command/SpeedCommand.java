package soapstone.command;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import soapstone.desk.Library;
import soapstone.record.Database;
import soapstone.speed.Speed;

/** Measures how fast marking, pages and starting are on this machine. */
@Command(name = "speed", description = "Measure how fast marking, pages and starting are, in ratios to plain Java and to a bare web server.",
        mixinStandardHelpOptions = true)
final class SpeedCommand implements Callable<Integer> {

    private static final double MOST_SECONDS = 3600;

    @Spec
    private CommandSpec spec;

    @Mixin
    private BankOptions bank;

    @Option(names = "--seconds", paramLabel = "N", defaultValue = "60", description = "About how long to measure; 60 if not said. On a busy machine longer is better.")
    private double seconds;

    @Option(names = "--json", description = "Print JSON instead of text.")
    private boolean json;

    @Option(names = "--database", paramLabel = "URL", description = "An empty PostgreSQL database, to measure handing in on it too; it is filled. User and password are "
            + "taken from the environment: SOAPSTONE_DATABASE_USER and SOAPSTONE_DATABASE_PASSWORD.")
    private String url;

    private Speed measure(Library library) throws Exception {
        if (url == null) {
            return Speed.measure(library, bank.asOptions(), seconds, null);
        }
        try (Database other = SchoolOptions.at(url)) {
            return Speed.measure(library, bank.asOptions(), seconds, other);
        }
    }

    @Override
    public Integer call() throws Exception {
        if (!(seconds > 0 && seconds <= MOST_SECONDS)) {
            throw Refusal.usage("Seconds are from 1 to " + (int) MOST_SECONDS + ", not " + seconds + ".");
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
        return same && speed.heap().isGood() ? 0 : Refusal.FAILED;
    }
}
