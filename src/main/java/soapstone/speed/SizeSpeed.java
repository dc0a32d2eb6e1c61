package soapstone.speed;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import soapstone.demo.DemoSchool;
import soapstone.desk.EngineDesk;
import soapstone.desk.Library;
import soapstone.files.SecurityLog;
import soapstone.record.Backup;
import soapstone.record.Database;
import soapstone.record.SqlSchool;
import soapstone.school.School;
import soapstone.web.SchoolOffice;
import soapstone.web.Settings;
import soapstone.web.SiteServer;

/**
 * An instructor's pages about one class of a big school, against the pages of a school that is nothing but this class and did
 * the same work. Both are signed in to over HTTP and asked by turns.
 *
 * @param large the big school
 * @param small the school of one class
 * @param pages in the order in which they were asked
 */
public record SizeSpeed(String database, Made large, Made small, List<Page> pages) {

    private static final int WARM_UP = 5;
    private static final int LEAST_TURNS = 11;

    /**
     * A school that was made to be measured, and what grows with it.
     *
     * @param answers marks that are kept
     * @param bytes   on the disk, with the indexes
     * @param fill    seconds to make it
     * @param open    seconds to open it again
     * @param backup  seconds for a backup
     */
    public record Made(int classes, int students, long answers, long bytes, double fill, double open, double backup) {}

    /**
     * @param large milliseconds for a page in the big school
     * @param small the same in the school of one class
     * @param ratio how many times as long it takes in the big one, turn by turn
     */
    public record Page(String name, Spread large, Spread small, Spread ratio) {}

    /**
     * @param large opens an empty database for the big school, and later the same again
     * @param small the same for the school of one class
     */
    static SizeSpeed measure(String name, Library library, int students, double seconds, Supplier<Database> large, Supplier<Database> small) throws Exception {
        GrownSchool.Plan plan = new GrownSchool.Plan(students);
        ModelClass model = new ModelClass(library.bank(), students);
        Instant now = Instant.now();
        Filling one = Filling.of(small, d -> GrownSchool.fillMiddle(d, model, plan, now));
        Filling many = Filling.of(large, d -> GrownSchool.fill(d, model, plan, now));
        Opened first = Opened.of(large, many);
        try (Database big = first.database) {
            Opened second = Opened.of(small, one);
            try (Database little = second.database) {
                List<Page> pages = pages(library, seconds, big, many.filled().looked(), little, one.filled().looked());
                return new SizeSpeed(name, first.made(), second.made(), pages);
            }
        }
    }

    private interface Fills {
        GrownSchool.Filled into(Database database);
    }

    private record Filling(GrownSchool.Filled filled, double seconds) {

        static Filling of(Supplier<Database> opens, Fills fills) {
            try (Database database = opens.get()) {
                long start = System.nanoTime();
                GrownSchool.Filled filled = fills.into(database);
                return new Filling(filled, since(start));
            }
        }
    }

    private record Opened(Database database, Filling filling, double seconds) {

        static Opened of(Supplier<Database> opens, Filling filling) {
            long start = System.nanoTime();
            Database database = opens.get();
            SqlSchool.of(database).people().isNobodyInCharge();
            return new Opened(database, filling, since(start));
        }

        Made made() throws IOException {
            long start = System.nanoTime();
            Backup.write(database, OutputStream.nullOutputStream(), Instant.now());
            GrownSchool.Filled f = filling.filled();
            return new Made(f.classes(), f.students(), f.answers(), database.bytes(), filling.seconds(), seconds, since(start));
        }
    }

    private static double since(long start) {
        return (System.nanoTime() - start) / 1e9;
    }

    static List<Page> pages(Library library, double seconds, Database large, GrownSchool.Looked inLarge, Database small, GrownSchool.Looked inSmall) throws Exception {
        try (Asking big = new Asking(library, large, inLarge); Asking little = new Asking(library, small, inSmall)) {
            List<Page> pages = new ArrayList<>();
            Map<String, String> paths = paths(inLarge);
            Map<String, String> others = paths(inSmall);
            for (String name : paths.keySet()) {
                pages.add(page(name, big, paths.get(name), little, others.get(name), seconds / paths.size()));
            }
            return pages;
        }
    }

    /** The addresses of an instructor's pages about a class, by name. */
    static Map<String, String> paths(GrownSchool.Looked at) {
        Map<String, String> paths = new LinkedHashMap<>();
        paths.put("what to know in the morning", "/assignments/" + at.assignment() + "/morning");
        paths.put("the marks of one sheet", "/assignments/" + at.assignment() + "/marks");
        paths.put("the mistakes of one sheet", "/assignments/" + at.assignment() + "/mistakes");
        paths.put("the marks of the year", "/classes/" + at.id() + "/marks");
        paths.put("the mistakes of the year", "/classes/" + at.id() + "/mistakes");
        paths.put("one student", "/classes/" + at.id() + "/students/" + at.student());
        paths.put("the class", "/classes/" + at.id());
        return paths;
    }

    private static Page page(String name, Asking large, String inLarge, Asking small, String inSmall, double seconds) throws IOException {
        for (int i = 0; i < WARM_UP; i++) {
            large.millis(inLarge);
            small.millis(inSmall);
        }
        List<double[]> turns = new ArrayList<>();
        long end = System.nanoTime() + (long) (seconds * 1e9);
        while (System.nanoTime() < end || turns.size() < LEAST_TURNS) {
            turns.add(new double[] {large.millis(inLarge), small.millis(inSmall)});
        }
        return new Page(name, Spread.of(turns.stream().mapToDouble(t -> t[0]).toArray()), Spread.of(turns.stream().mapToDouble(t -> t[1]).toArray()),
                Spread.of(turns.stream().mapToDouble(t -> t[0] / t[1]).toArray()));
    }

    /** A site on a school, and its instructor at a browser. */
    private static final class Asking implements AutoCloseable {

        private final SiteServer site;
        private final PlainClient client;

        Asking(Library library, Database database, GrownSchool.Looked at) throws IOException {
            School school = SqlSchool.of(database);
            SecurityLog nowhere = SecurityLog.to(new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8));
            this.site = SiteServer.start(Settings.on(0), new EngineDesk(() -> library), Optional.of(new SchoolOffice(() -> school, Clock.systemUTC(), false, nowhere)));
            this.client = new PlainClient(site.port());
            client.post("/sign-in", "login=" + at.instructor() + "&password=" + URLEncoder.encode(DemoSchool.PASSPHRASE, StandardCharsets.UTF_8));
        }

        double millis(String path) throws IOException {
            long start = System.nanoTime();
            PlainClient.Reply reply = client.get(path);
            double millis = (System.nanoTime() - start) / 1e6;
            if (reply.status() != 200) {
                throw new IllegalStateException(path + " came with status " + reply.status());
            }
            return millis;
        }

        @Override
        public void close() throws IOException {
            client.close();
            site.close();
        }
    }
}
