package soapstone.speed;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import soapstone.desk.EngineDesk;
import soapstone.desk.Library;
import soapstone.web.Settings;
import soapstone.web.SiteServer;

/**
 * The exercise page over HTTP, against a bare web server that gives out a fixed page of the same size. Every page has
 * numbers of its own: they are drawn, drawn to scale and set into the page for this one request. One client on one
 * connection asks one after the other, both servers by turns.
 *
 * @param bytes of a page, on average
 * @param site  microseconds for a page
 * @param bare  the same of the bare server
 * @param ratio pages of the site for each page of the bare server, turn by turn
 */
public record PageSpeed(String exercise, int bytes, Spread site, Spread bare, Spread ratio) {

    private static final int REQUESTS_IN_A_TURN = 5;
    private static final int LEAST_TURNS = 21;
    private static final double WARM_UP = 0.5;
    private static final int SEEDS = 500;

    static PageSpeed measure(Library library, String exercise, double seconds) throws Exception {
        try (SiteServer site = SiteServer.start(Settings.on(0), new EngineDesk(() -> library)); PlainClient ours = new PlainClient(site.port())) {
            String path = "/exercises/" + exercise + "?seed=";
            int bytes = bytes(ours, path);
            try (BareServer bare = BareServer.start(bytes); PlainClient theirs = new PlainClient(bare.port())) {
                turns(ours, path, theirs, seconds * WARM_UP);
                List<double[]> turns = turns(ours, path, theirs, seconds * (1 - WARM_UP));
                return new PageSpeed(exercise, bytes, Spread.of(turns.stream().mapToDouble(t -> t[0]).toArray()),
                        Spread.of(turns.stream().mapToDouble(t -> t[1]).toArray()), Spread.of(turns.stream().mapToDouble(t -> t[1] / t[0]).toArray()));
            }
        }
    }

    private static int bytes(PlainClient client, String path) throws IOException {
        int sum = 0;
        for (int seed = 1; seed <= REQUESTS_IN_A_TURN; seed++) {
            sum += checked(client.get(path + seed)).body().length;
        }
        return sum / REQUESTS_IN_A_TURN;
    }

    private static PlainClient.Reply checked(PlainClient.Reply reply) {
        if (reply.status() != 200) {
            throw new IllegalStateException("a page came with status " + reply.status());
        }
        return reply;
    }

    private static List<double[]> turns(PlainClient ours, String path, PlainClient theirs, double seconds) throws IOException {
        List<double[]> turns = new ArrayList<>();
        long end = System.nanoTime() + (long) (seconds * 1e9);
        for (int turn = 0; System.nanoTime() < end || turns.size() < LEAST_TURNS; turn++) {
            long start = System.nanoTime();
            for (int i = 0; i < REQUESTS_IN_A_TURN; i++) {
                checked(ours.get(path + (1 + (turn * REQUESTS_IN_A_TURN + i) % SEEDS)));
            }
            long middle = System.nanoTime();
            for (int i = 0; i < REQUESTS_IN_A_TURN; i++) {
                checked(theirs.get("/"));
            }
            double each = 1e3 * REQUESTS_IN_A_TURN;
            turns.add(new double[] {(middle - start) / each, (System.nanoTime() - middle) / each});
        }
        return turns;
    }
}
