package soapstone.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * From starting a process to its first page, against a bare web server started in the same way. All by turns, each time
 * in a new process.
 *
 * @param bare  seconds to the bare server's page, with the usual options of Java
 * @param ways  how the site was started
 */
public record StartSpeed(Spread bare, List<Way> ways) {

    private static final String MAIN = "soapstone.Main";
    private static final List<String> QUICK = List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC");

    /**
     * One way to start the site.
     *
     * @param site  seconds to the first page
     * @param ratio to the bare server, turn by turn
     */
    public record Way(String name, Spread site, Spread ratio) {}

    private record Plan(String name, List<String> options) {}

    static StartSpeed measure(List<String> bankOptions, String exercise, int bytes, int turns) throws IOException {
        List<Plan> plans = plans();
        double[] bare = new double[turns];
        double[][] site = new double[plans.size()][turns];
        for (int turn = 0; turn < turns; turn++) {
            bare[turn] = seconds(List.of(), BareServer.class.getName(), List.of(String.valueOf(bytes)), "/");
            for (int i = 0; i < plans.size(); i++) {
                List<String> serve = new ArrayList<>(List.of("serve", "--port", "0"));
                serve.addAll(bankOptions);
                site[i][turn] = seconds(plans.get(i).options(), MAIN, serve, "/exercises/" + exercise + "?seed=7");
            }
        }
        List<Way> ways = new ArrayList<>();
        for (int i = 0; i < plans.size(); i++) {
            double[] ratio = new double[turns];
            for (int turn = 0; turn < turns; turn++) {
                ratio[turn] = site[i][turn] / bare[turn];
            }
            ways.add(new Way(plans.get(i).name(), Spread.of(site[i]), Spread.of(ratio)));
        }
        return new StartSpeed(Spread.of(bare), ways);
    }

    private static List<Plan> plans() {
        List<Plan> plans = new ArrayList<>(List.of(new Plan("as it comes", List.of()), new Plan("with " + String.join(" ", QUICK), QUICK)));
        archive().ifPresent(a -> {
            List<String> options = new ArrayList<>(QUICK);
            options.add("-XX:SharedArchiveFile=" + a);
            plans.add(new Plan("with these and the class archive", options));
        });
        return plans;
    }

    /** The archive that the build makes beside the jar. */
    private static Optional<Path> archive() {
        return Child.jar().map(jar -> jar.resolveSibling("soapstone.jsa")).filter(Files::isRegularFile);
    }

    private static double seconds(List<String> options, String main, List<String> arguments, String path) throws IOException {
        long start = System.nanoTime();
        try (Child child = Child.start(options, main, arguments); PlainClient client = new PlainClient(child.port())) {
            if (client.get(path).status() != 200) {
                throw new IOException("the first page did not come");
            }
            return (System.nanoTime() - start) / 1e9;
        }
    }
}
