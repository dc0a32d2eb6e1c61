package soapstone.speed;

import java.io.IOException;
import java.util.List;
import soapstone.desk.EngineDesk;
import soapstone.desk.Library;
import soapstone.web.Settings;
import soapstone.web.SiteServer;

/** Starts the site, asks for a page of each kind, and stops: whoever keeps the classes that were loaded has those of a start. */
public final class Rehearsal {

    private static final String EXERCISE = "/exercises/spacing/bolt-holes?seed=7&units=us";
    private static final List<String> PAGES = List.of("/", "/units", "/units/spacing", EXERCISE, "/lessons", "/lessons/holes-and-spaces",
            "/formulas", "/bench/spacing/bolt-holes?units=us", "/tables", "/cautions", "/about");

    private Rehearsal() {}

    /** @return how many pages came as they should */
    public static int run(Library library) throws Exception {
        try (SiteServer site = SiteServer.start(Settings.on(0), new EngineDesk(() -> library)); PlainClient client = new PlainClient(site.port())) {
            int good = 0;
            for (String page : PAGES) {
                good += came(client.get(page));
            }
            good += came(client.post(EXERCISE, "box-a=5&action=read"));
            good += came(client.post(EXERCISE, "box-a=5&seen-a=5&action=mark"));
            return good;
        }
    }

    private static int came(PlainClient.Reply reply) throws IOException {
        return reply.status() == 200 ? 1 : 0;
    }
}
