package soapstone.web;

/** Serves the sample desk for looking at by hand: {@code SampleSite 8090}. */
final class SampleSite {

    private SampleSite() {}

    public static void main(String[] args) throws Exception {
        try (SiteServer site = SiteServer.start(Settings.on(Integer.parseInt(args[0])), new SampleDesk())) {
            System.out.println("http://127.0.0.1:" + site.port() + "/");
            site.join();
        }
    }
}
