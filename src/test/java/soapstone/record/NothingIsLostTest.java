package soapstone.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The program is killed while sixteen writers hand in: every answer that got its receipt is there afterwards, and none
 * twice. A few times in every run of the tests, a hundred times with the group {@code soak}.
 */
class NothingIsLostTest {

    private static final int FEW = 3;
    private static final int MANY = 100;
    private static final int LEAST_RECEIPTS = 30;
    private static final int MOST_MORE = 600;

    @TempDir
    private Path folder;

    @Test
    void onTheEmbeddedDatabase() throws Exception {
        kill(folder.toString(), 1, FEW);
    }

    @Test
    void onPostgresWithTwoNodes() throws Exception {
        kill(Databases.postgresUrl(), 2, FEW);
    }

    @Test
    @Tag("soak")
    void onTheEmbeddedDatabaseAHundredTimes() throws Exception {
        kill(folder.toString(), 1, MANY);
    }

    @Test
    @Tag("soak")
    void onPostgresAHundredTimes() throws Exception {
        kill(Databases.postgresUrl(), 1, MANY);
    }

    @Test
    @Tag("soak")
    void onPostgresWithTwoNodesAHundredTimes() throws Exception {
        kill(Databases.postgresUrl(), 2, MANY);
    }

    /** A process that writes, and what it has acknowledged. */
    private static final class Node {
        private final Process process;
        private final BufferedReader said;
        private final List<String> receipts = new ArrayList<>();

        Node(String place, String name) throws IOException {
            process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx128m", "-cp", System.getProperty("java.class.path"),
                    Writers.class.getName(), place, name).redirectError(ProcessBuilder.Redirect.DISCARD).start();
            said = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        }

        void take(int more) throws IOException {
            for (int i = 0; i < more; i++) {
                add(said.readLine());
            }
        }

        /** A line that was cut off in the middle was not acknowledged: nobody could read it. */
        void killAndTakeTheRest() throws Exception {
            // Through its handle: the process itself would close its pipe, with receipts still in it.
            process.toHandle().destroyForcibly();
            StringBuilder rest = new StringBuilder();
            for (int c = said.read(); c >= 0; c = said.read()) {
                rest.append((char) c);
            }
            String whole = rest.substring(0, rest.lastIndexOf("\n") + 1);
            whole.lines().forEach(this::add);
            assertThat(process.waitFor(20, TimeUnit.SECONDS)).isTrue();
        }

        private void add(String line) {
            assertThat(line).as("what a writer says").isNotNull().doesNotStartWith("counted twice");
            if (!line.equals("ready")) {
                receipts.add(line);
            }
        }
    }

    private static void kill(String place, int nodes, int rounds) throws Exception {
        try (Database database = Writers.open(place)) {
            new FilledSchool(database, 5);
        }
        SplittableRandom random = new SplittableRandom(11);
        Set<String> acknowledged = new HashSet<>();
        for (int round = 0; round < rounds; round++) {
            List<Node> running = new ArrayList<>();
            try {
                for (int n = 0; n < nodes; n++) {
                    running.add(new Node(place, "r" + round + "n" + n));
                }
                for (Node node : running) {
                    node.take(LEAST_RECEIPTS + random.nextInt(MOST_MORE));
                }
                for (Node node : running) {
                    node.killAndTakeTheRest();
                    acknowledged.addAll(node.receipts);
                }
            } finally {
                running.forEach(node -> node.process.toHandle().destroyForcibly());
            }
            check(place, acknowledged, round);
        }
    }

    private static void check(String place, Set<String> acknowledged, int round) {
        try (Database database = Writers.open(place)) {
            List<String> kept = database.read(h -> h.createQuery("select receipt from attempt").mapTo(String.class).list());
            Set<String> each = new HashSet<>(kept);
            assertThat(each).as("none twice after round " + round).hasSameSizeAs(kept);
            assertThat(each.containsAll(acknowledged)).as("receipts after round " + round).isTrue();
            List<String> typed = database.read(h -> h.createQuery("select m.typed from mark m join attempt a on a.id = m.attempt where m.typed = a.receipt").mapTo(String.class).list());
            assertThat(new HashSet<>(typed).containsAll(acknowledged)).as("answers of receipts after round " + round).isTrue();
            assertThat(Doctor.look(database).faults()).as("after round " + round).isEmpty();
        }
    }

    @Test
    void aFolderThatIsOpenElsewhereIsRefusedWithASentence() throws Exception {
        try (Database database = Writers.open(folder.toString())) {
            new FilledSchool(database, 1);
        }
        Node node = new Node(folder.toString(), "other");
        node.take(LEAST_RECEIPTS);
        try {
            assertThat(org.assertj.core.api.Assertions.catchThrowable(() -> Writers.open(folder.toString()))).isInstanceOf(Database.Unusable.class)
                    .hasMessageContaining("Another program has the school in this data folder open.");
        } finally {
            node.killAndTakeTheRest();
        }
        assertThat(Files.exists(folder.resolve("school.mv.db"))).isTrue();
    }
}
