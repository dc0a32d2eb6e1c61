package soapstone.desk;

import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.htmlunit.html.DomNode;
import org.htmlunit.html.HtmlPage;
import soapstone.exercise.Ask;
import soapstone.exercise.Exercise;
import soapstone.expression.Frame;
import soapstone.page.Address;
import soapstone.page.SheetKey;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;
import soapstone.variant.Shown;
import soapstone.variant.Variant;
import soapstone.web.Settings;
import soapstone.web.SiteUnderTest;

/** The site with the bank and the lessons that come with the program, on a free port, and a guest without scripts. */
final class RealSite implements AutoCloseable {

    static final long SEED = 7;

    private static Library library;

    private final SiteUnderTest site;

    RealSite() throws Exception {
        EngineDesk desk = new EngineDesk(RealSite::library);
        site = SiteUnderTest.start(Settings.on(0), desk);
    }

    /** Read once for all tests. */
    static synchronized Library library() {
        if (library == null) {
            try {
                Library.Result result = Library.read(null, null);
                library = result.library().orElseThrow(() -> new IllegalStateException("the bank has faults: " + result.issues()));
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
        }
        return library;
    }

    /** Every exercise in both unit systems, drawn with one seed. */
    static List<Variant> variants() {
        List<Variant> all = new ArrayList<>();
        for (Exercise exercise : library().bank().exercises().values()) {
            for (UnitSystem system : UnitSystem.values()) {
                all.add(variant(exercise.id(), system));
            }
        }
        return all;
    }

    static Variant variant(String id, UnitSystem system) {
        return Drawer.draw(library().bank().exercise(id).orElseThrow(), system, SEED).orElseThrow();
    }

    /** The address of a draw, with the fingerprint of the bank as it is. */
    static String path(Variant v) {
        Exercise e = v.exercise();
        return Address.sheet(e.unit(), Links.file(e), new SheetKey(v.seed(), v.system(), e.fingerprint()));
    }

    static String benchPath(Variant v) {
        return "/bench/" + v.exercise().id() + "?units=" + v.system().word();
    }

    /** What a test says of a draw when it fails. */
    static String name(Variant v) {
        return v.exercise().id() + " " + v.system().word() + " seed " + v.seed();
    }

    /** The answers of a run as they would be typed, by letter. */
    static Map<String, String> answers(Variant v, Frame run) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (Ask ask : v.model().asks()) {
            typed.put(ask.letter(), plain(Shown.answer(v.model(), run, ask)));
        }
        return typed;
    }

    static Map<String, String> key(Variant v) {
        return answers(v, v.right());
    }

    HtmlPage open(String path) throws IOException {
        return site.open(path);
    }

    SiteUnderTest site() {
        return site;
    }

    /** Hands in answers that were read back before. */
    HtmlPage mark(Variant v, Map<String, String> typed) throws IOException {
        return site.submit(path(v), form("mark", typed, true));
    }

    HtmlPage read(Variant v, Map<String, String> typed) throws IOException {
        return site.submit(path(v), form("read", typed, false));
    }

    HtmlPage work(String bench, Map<String, String> typed) throws IOException {
        return site.submit(bench, form("work", typed, false));
    }

    HtmlPage submit(RealPages.State state) throws IOException {
        return site.submit(state.path(), form(state.action(), state.typed(), state.action().equals("mark")));
    }

    private static String form(String action, Map<String, String> typed, boolean seen) {
        return "action=" + action + typed.entrySet().stream()
                .map(e -> field("box-", e) + (seen ? field("seen-", e) : "")).collect(Collectors.joining());
    }

    private static String field(String prefix, Map.Entry<String, String> box) {
        return "&" + prefix + box.getKey() + "=" + URLEncoder.encode(box.getValue(), StandardCharsets.UTF_8);
    }

    /** What is to be read, with plain spaces. */
    static String text(DomNode node) {
        return plain(node.asNormalizedText());
    }

    static String text(HtmlPage page) {
        return text(page.getHtmlElementById("main"));
    }

    static String box(HtmlPage page, String letter) {
        return text(page.getHtmlElementById("box-" + letter));
    }

    static String state(HtmlPage page, String letter) {
        return page.getHtmlElementById("box-" + letter).getAttribute("class").replace("box is-", "");
    }

    static String plain(String text) {
        return text.replace('\u00A0', ' ').replace("\u2060", "").replaceAll("\\s+", " ");
    }

    @Override
    public void close() {
        site.close();
    }
}
