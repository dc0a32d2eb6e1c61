package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.chrome.ChromeDriver;
import soapstone.exercise.Exercise;
import soapstone.exercise.Model;
import soapstone.figure.Figure;
import soapstone.figure.FigureInput;
import soapstone.figure.FigureKinds;
import soapstone.figure.FigureValue;
import soapstone.page.Words;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;
import soapstone.variant.Effect;
import soapstone.variant.Variant;
import soapstone.web.Chromium;
import soapstone.web.InChromium;

/**
 * Pictures of the bank's drawings, to look at before they are shown to anybody: for each exercise and unit system the smallest, a middling and
 * the largest of many draws, each as it is asked, with all told, and as two mistakes would have cut it. Written only when a folder is named:
 * {@code -Dsheets=target/sheets}; {@code -Dsheets.only=bends/.*} takes some exercises, {@code -Dsheets.language=es} another language.
 */
@InChromium
@EnabledIfSystemProperty(named = "sheets", matches = ".+")
class ContactSheets {

    private static final int SEEDS = 60;
    private static final int MISTAKES = 2;
    private static final Path STYLE = Path.of("src/main/resources/soapstone/site").toAbsolutePath();
    private static final String LANGUAGE = System.getProperty("sheets.language", "en");

    /** The widths of a page of pictures and of one picture: phones four in a row, desks two; on paper one by one. */
    private enum Medium {
        PHONE(1600, 390), DESK(1600, 780), PAPER(720, 720);

        private final int page;
        private final int one;

        Medium(int page, int one) {
            this.page = page;
            this.one = one;
        }
    }

    @TempDir
    private static Path profile;

    @Test
    void areWritten() throws Exception {
        Path folder = Path.of(System.getProperty("sheets")).toAbsolutePath();
        Files.createDirectories(folder);
        String only = System.getProperty("sheets.only", ".*");
        List<Exercise> exercises = RealSite.library().bank().exercises().values().stream()
                .filter(e -> e.us().figure().isPresent() && e.id().matches(only)).toList();
        assertThat(exercises).isNotEmpty();
        ChromeDriver browser = Chromium.start(profile);
        try {
            for (Exercise exercise : exercises) {
                for (UnitSystem units : UnitSystem.values()) {
                    write(browser, folder, exercise, units);
                }
            }
        } finally {
            browser.quit();
        }
    }

    private static void write(ChromeDriver browser, Path folder, Exercise exercise, UnitSystem units) throws IOException {
        String name = exercise.id().replace('/', '-') + "-" + units.word();
        List<Picture> pictures = new ArrayList<>();
        draws(exercise, units).forEach(v -> pictures.addAll(pictures(v, units.word() + " " + v.seed())));
        for (Medium medium : Medium.values()) {
            Path page = folder.resolve(name + "-" + medium.name().toLowerCase() + ".html");
            Files.writeString(page, page(exercise.id(), pictures, medium), StandardCharsets.UTF_8);
            browser.get(page.toUri().toString());
            browser.executeAsyncScript("document.fonts.ready.then(arguments[0])");
            if (medium == Medium.PAPER) {
                Files.write(Path.of(page.toString().replace(".html", ".pdf")), pdf(browser));
            } else {
                Files.write(Path.of(page.toString().replace(".html", ".png")), png(browser, medium.page));
            }
            Files.delete(page);
        }
    }

    private static byte[] png(ChromeDriver browser, int width) {
        Chromium.wide(browser, width);
        Object height = browser.executeScript("return document.body.scrollHeight");
        return data(browser.executeCdpCommand("Page.captureScreenshot", Map.of("captureBeyondViewport", true,
                "clip", Map.of("x", 0, "y", 0, "width", width, "height", height, "scale", 1))));
    }

    private static byte[] pdf(ChromeDriver browser) {
        return data(browser.executeCdpCommand("Page.printToPDF", Map.of("paperWidth", 8.5, "paperHeight", 11)));
    }

    private static byte[] data(Map<String, Object> answer) {
        return Base64.getDecoder().decode((String) answer.get("data"));
    }

    private record Picture(String what, String key, Figure figure) {}

    /** The smallest, a middling and the largest of the first draws, by the sizes that are drawn. */
    private static List<Variant> draws(Exercise exercise, UnitSystem units) {
        Map<Variant, Double> sizes = new HashMap<>();
        LongStream.range(0, SEEDS).mapToObj(seed -> Drawer.draw(exercise, units, seed)).flatMap(Optional::stream).forEach(v -> sizes.put(v, size(v)));
        List<Variant> sorted = sizes.keySet().stream().sorted(Comparator.comparing(sizes::get)).toList();
        return sorted.isEmpty() ? List.of() : List.of(sorted.get(0), sorted.get(sorted.size() / 2), sorted.get(sorted.size() - 1));
    }

    private static double size(Variant v) {
        double size = 0;
        for (FigureValue value : right(v).values().values()) {
            for (double amount : value.amounts()) {
                size += Math.log(Math.abs(amount) + 1e-9);
            }
        }
        return size;
    }

    private static FigureInput right(Variant v) {
        return Drawings.input(v.model(), v.model().figure().orElseThrow(), v.right(), false);
    }

    private static List<Picture> pictures(Variant v, String what) {
        Model model = v.model();
        Model.FigurePlan plan = model.figure().orElseThrow();
        List<String> flags = new Spoken(model).sizes();
        FigureInput right = right(v);
        List<Picture> pictures = new ArrayList<>();
        add(pictures, what + " asked", Drawings.input(model, plan, v.right(), true), null, List.of());
        add(pictures, what + " told", right, null, flags);
        Set<FigureInput> seen = new HashSet<>(Set.of(right));
        for (Variant.Outcome outcome : v.outcomes()) {
            FigureInput yours = Drawings.input(model, plan, outcome.theirs(), false);
            if (outcome.effect() == Effect.SEEN && FigureKinds.kind(plan.kind()).orElseThrow().asCut() && seen.size() <= MISTAKES && seen.add(yours)) {
                add(pictures, what + " " + outcome.slip().name(), right, yours, flags);
            }
        }
        return pictures;
    }

    private static void add(List<Picture> to, String what, FigureInput right, FigureInput yours, List<String> flags) {
        String key = "f" + what.replaceAll("\\W", "-");
        FigureKinds.draw(right, yours, key, Words.ofDrawings(LANGUAGE), flags).ifPresent(f -> to.add(new Picture(what, key, f)));
    }

    private static String page(String id, List<Picture> pictures, Medium medium) {
        StringBuilder out = new StringBuilder("<!doctype html><html lang=\"en\"><meta charset=\"utf-8\"><title>" + id + "</title>")
                .append(style("site.css")).append(style("drawing.css"))
                .append("<style>body{max-width:none;width:" + medium.page + "px;margin:0;padding:0;display:flex;flex-wrap:wrap;align-items:start}"
                        + "figure{width:" + medium.one + "px;margin:0;break-inside:avoid}figcaption{background:#eee}</style>\n");
        for (Picture p : pictures) {
            out.append("<figure><figcaption>").append(id).append(' ').append(p.what()).append("</figcaption><div class=\"drawings\">")
                    .append(p.figure().wide()).append(p.figure().narrow()).append("</div></figure>\n");
        }
        return out.append("</html>\n").toString();
    }

    private static String style(String name) {
        return "<link rel=\"stylesheet\" href=\"" + STYLE.resolve(name).toUri() + "\">";
    }
}
