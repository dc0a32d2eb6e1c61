package soapstone.speed;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import soapstone.bank.Bank;
import soapstone.record.Database;
import soapstone.record.SqlSchool;
import soapstone.school.School;

/**
 * A site with 256 megabytes of heap and two hundred students who are signed in and work at once; then all of them hand
 * in at the same instant.
 *
 * @param students  how many
 * @param seconds   how long they work
 * @param idle      milliseconds for a request, each kind as often as in the crowd, with one student only
 * @param crowd     milliseconds for a request with all of them
 * @param times     of 100 requests of the crowd, 95 take at most so many times the middle idle one of their kind
 * @param requests  of the crowd
 * @param bad       how many of all came otherwise than they should
 * @param together  all hand in at the same instant
 * @param megabytes the most memory that the whole process had; empty where the system does not tell
 */
public record CrowdSpeed(int students, double seconds, Spread idle, Spread crowd, double times, int requests, int bad, Together together, Optional<Integer> megabytes) {

    private static final String HEAP = "-Xmx256m";
    private static final int STUDENTS = 200;
    /** A morning's work for the server before anything is measured: until then its compiler takes one of two cores for itself. */
    private static final int WARM_UP = 400;
    private static final int ALONE = 10;
    /** Two problems are worked in the crowd, the third is handed in by all together. */
    private static final int PLACES = 3;
    private static final int PAUSES = 5;
    private static final double OF_A_HUNDRED = 0.95;
    private static final long ALONE_MILLIS = 20;
    /** Seconds; where one of them failed, the others do not wait for ever. */
    private static final long LONGEST_WAIT = 120;

    /**
     * @param receipts how many got theirs
     * @param kept     how many attempts of that problem the school has afterwards
     * @param middle   milliseconds until half had it
     * @param last     milliseconds until the last one had it
     */
    public record Together(int receipts, int kept, double middle, double last) {}

    public boolean isGood() {
        return bad == 0 && together.receipts() == students && together.kept() == students;
    }

    /**
     * @param arguments of a server with this school on any port
     * @param opens     the school's database, empty; it is opened, filled, and opened again at the end
     */
    static CrowdSpeed measure(Bank bank, Supplier<Database> opens, List<String> arguments, double seconds) throws Exception {
        List<CrowdedClass.Seat> seats;
        try (Database database = opens.get()) {
            seats = CrowdedClass.fill(database, bank, WARM_UP + ALONE + STUDENTS, PLACES);
        }
        Crowd crowd = new Crowd(seats, seconds);
        try (Child child = Child.start(List.of(HEAP), "soapstone.Main", arguments)) {
            crowd.work(child.port());
            crowd.megabytes = child.megabytes();
        }
        try (Database database = opens.get()) {
            return crowd.told(SqlSchool.of(database));
        }
    }

    /** The arguments of a server on a data folder. */
    static List<String> inFolder(Path folder, List<String> bankOptions) {
        List<String> arguments = new ArrayList<>(List.of("serve", "--port", "0", "--data", folder.toString()));
        arguments.addAll(bankOptions);
        return arguments;
    }

    private static final class Crowd {

        private final List<CrowdedClass.Seat> seats;
        private final double seconds;
        private final SplittableRandom chance = new SplittableRandom(3);
        private final List<WorkingStudent.Asked> alone = new ArrayList<>();
        private final List<WorkingStudent.Asked> many = new ArrayList<>();
        private final List<Double> receipts = new ArrayList<>();
        private Optional<Integer> megabytes = Optional.empty();

        Crowd(List<CrowdedClass.Seat> seats, double seconds) {
            this.seats = seats;
            this.seconds = seconds;
        }

        void work(int port) throws Exception {
            ExecutorService threads = Executors.newFixedThreadPool(STUDENTS);
            try {
                for (int i = 0; i < WARM_UP + ALONE; i++) {
                    try (WorkingStudent student = new WorkingStudent(port, seats.get(i), chance.split())) {
                        long millis = i < WARM_UP ? 0 : ALONE_MILLIS;
                        for (int place = 1; place <= PLACES; place++) {
                            student.work(place, () -> TimeUnit.MILLISECONDS.sleep(millis));
                        }
                        alone.addAll(i < WARM_UP ? List.of() : student.asked());
                    }
                }
                all(threads, port);
            } finally {
                threads.shutdownNow();
            }
        }

        private void all(ExecutorService threads, int port) throws Exception {
            CyclicBarrier ready = new CyclicBarrier(STUDENTS);
            List<Callable<Double>> tasks = new ArrayList<>();
            List<WorkingStudent> students = new ArrayList<>();
            for (int i = 0; i < STUDENTS; i++) {
                WorkingStudent student = new WorkingStudent(port, seats.get(WARM_UP + ALONE + i), chance.split());
                SplittableRandom own = chance.split();
                students.add(student);
                tasks.add(() -> one(student, own, ready));
            }
            for (Future<Double> f : threads.invokeAll(tasks)) {
                receipts.add(f.get());
            }
            for (WorkingStudent student : students) {
                many.addAll(student.asked());
                student.close();
            }
        }

        /** @return milliseconds for handing in together with all others */
        private double one(WorkingStudent student, SplittableRandom own, CyclicBarrier ready) throws Exception {
            double pause = seconds / (PLACES * PAUSES) * 2e9;
            WorkingStudent.Pause thinks = () -> LockSupport.parkNanos((long) (own.nextDouble() * pause));
            thinks.take();
            for (int place = 1; place < PLACES; place++) {
                student.work(place, thinks);
            }
            student.prepare(PLACES, thinks);
            int before = student.asked().size();
            ready.await((long) seconds + LONGEST_WAIT, TimeUnit.SECONDS);
            student.handIn(PLACES);
            WorkingStudent.Asked last = student.forget(before);
            return last.good() ? last.millis() : Double.NaN;
        }

        CrowdSpeed told(School school) {
            Map<WorkingStudent.Step, Double> usual = new EnumMap<>(WorkingStudent.Step.class);
            for (WorkingStudent.Step step : WorkingStudent.Step.values()) {
                usual.put(step, Spread.of(alone.stream().filter(a -> a.step() == step).mapToDouble(WorkingStudent.Asked::millis).toArray()).median());
            }
            double[] times = many.stream().mapToDouble(a -> a.millis() / usual.get(a.step())).sorted().toArray();
            double[] good = receipts.stream().filter(d -> !d.isNaN()).mapToDouble(d -> d).sorted().toArray();
            int kept = (int) seats.subList(WARM_UP + ALONE, seats.size()).stream().flatMap(s -> school.attempts().ofSheet(s.sheet()).stream())
                    .filter(a -> a.number() == 1).count() - STUDENTS * (PLACES - 1);
            int bad = (int) IntStream.concat(alone.stream().mapToInt(a -> a.good() ? 0 : 1), many.stream().mapToInt(a -> a.good() ? 0 : 1)).sum();
            return new CrowdSpeed(STUDENTS, seconds, spread(alone), spread(many), times[(int) (OF_A_HUNDRED * (times.length - 1))], many.size(), bad,
                    new Together(good.length, kept, good.length == 0 ? 0 : good[good.length / 2], good.length == 0 ? 0 : good[good.length - 1]), megabytes);
        }

        private static Spread spread(List<WorkingStudent.Asked> asked) {
            return Spread.of(asked.stream().mapToDouble(WorkingStudent.Asked::millis).toArray());
        }
    }
}
