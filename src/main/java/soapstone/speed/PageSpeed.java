package soapstone.speed;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import soapstone.desk.EngineDesk;
import soapstone.desk.Library;
import soapstone.web.Settings;
import soapstone.web.SiteServer;

/**
 * The exercise page over HTTP, against a bare web server that gives out a fixed page of the same size. Once the same sheet
 * again and again, as when a class opens one link; once a new sheet each time, for which numbers are drawn, the part is
 * drawn and the page is set. One client on one connection asks one after the other, both servers by turns.
 *
 * @param bytes of a page, on average
 */
public record PageSpeed(String exercise, int bytes, Turns same, Turns fresh) {

    private static final int REQUESTS_IN_A_TURN = 5;
    private static final int LEAST_TURNS = 21;
    private static final double WARM_UP = 0.5;
    private static final int SHEETS = 99_999;

    /**
     * The site and the bare server by turns.
     *
     * @param site  microseconds for a page
     * @param bare  the same of the bare server
     * @param ratio pages of the site for each page of the bare server, turn by turn
     */
    public record Turns(Spread site, Spread bare, Spread ratio) {}

    static PageSpeed measure(Library library, String exercise, double seconds) throws Exception {
        try (SiteServer site = SiteServer.start(Settings.on(0), new EngineDesk(() -> library)); PlainClient ours = new PlainClient(site.port())) {
            Measuring measuring = new Measuring(ours, "/exercises/" + exercise + "?units=us&seed=");
            int bytes = measuring.bytes();
            try (BareServer bare = BareServer.start(bytes); PlainClient theirs = new PlainClient(bare.port())) {
                measuring.turns(theirs, true, seconds / 2 * WARM_UP);
                measuring.turns(theirs, false, seconds / 2 * WARM_UP);
                Turns fresh = measuring.turns(theirs, true, seconds / 2 * (1 - WARM_UP));
                Turns same = measuring.turns(theirs, false, seconds / 2 * (1 - WARM_UP));
                return new PageSpeed(exercise, bytes, same, fresh);
            }
        }
    }

    private static final class Measuring {
        private final PlainClient ours;
        private final String path;
        private int seed;

        Measuring(PlainClient ours, String path) {
            this.ours = ours;
            this.path = path;
        }

        int bytes() throws IOException {
            int sum = 0;
            for (int i = 0; i < REQUESTS_IN_A_TURN; i++) {
                sum += checked(ours.get(next(true))).body().length;
            }
            return sum / REQUESTS_IN_A_TURN;
        }

        private String next(boolean fresh) {
            seed = fresh ? 1 + seed % SHEETS : 7;
            return path + seed;
        }

        private static PlainClient.Reply checked(PlainClient.Reply reply) {
            if (reply.status() != 200) {
                throw new IllegalStateException("a page came with status " + reply.status());
            }
            return reply;
        }

        Turns turns(PlainClient theirs, boolean fresh, double seconds) throws IOException {
            List<double[]> turns = new ArrayList<>();
            long end = System.nanoTime() + (long) (seconds * 1e9);
            while (System.nanoTime() < end || turns.size() < LEAST_TURNS) {
                long start = System.nanoTime();
                for (int i = 0; i < REQUESTS_IN_A_TURN; i++) {
                    checked(ours.get(next(fresh)));
                }
                long middle = System.nanoTime();
                for (int i = 0; i < REQUESTS_IN_A_TURN; i++) {
                    checked(theirs.get("/"));
                }
                double each = 1e3 * REQUESTS_IN_A_TURN;
                turns.add(new double[] {(middle - start) / each, (System.nanoTime() - middle) / each});
            }
            return new Turns(Spread.of(turns.stream().mapToDouble(t -> t[0]).toArray()), Spread.of(turns.stream().mapToDouble(t -> t[1]).toArray()),
                    Spread.of(turns.stream().mapToDouble(t -> t[1] / t[0]).toArray()));
        }
    }
}
