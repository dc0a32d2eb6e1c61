package soapstone.bench;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import soapstone.desk.EnginePaperDesk;
import soapstone.desk.Library;
import soapstone.page.Words;
import soapstone.paper.Packet;
import soapstone.paper.PacketChoices;
import soapstone.paper.PacketSheet;
import soapstone.paper.Press;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;
import soapstone.variant.Variant;

/**
 * Lays out the sheets of some students: by the press, and by the library as it comes with the drawer of SVG that it offers, from the same
 * markup with the same fonts, all of it tagged. An operation is all the sheets; {@link #pages} says how many pages that is.
 *
 * <p>Run: see the package.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class PaperBenchmark {

    @Param("6")
    public int sheets;

    private final List<String> markup = new ArrayList<>();

    @Setup(Level.Trial)
    public void draw() throws IOException {
        XRLog.setLoggingEnabled(false);
        Library library = Library.read(null, null).library().orElseThrow();
        EnginePaperDesk desk = new EnginePaperDesk(() -> library, "en");
        Packet packet = new Packet(Words.of("en"), PacketChoices.USUAL);
        List<String> ids = library.bank().exercises().values().stream().filter(e -> e.us().figure().isPresent()).map(e -> e.id()).toList();
        for (int s = 0; s < sheets; s++) {
            List<PacketSheet.Problem> problems = new ArrayList<>();
            for (int p = 0; p < 10; p++) {
                problems.add(new PacketSheet.Problem(p + 1, "2", desk.asked(variant(library, ids.get(p * ids.size() / 10), s + 1)).sheet(), List.of()));
            }
            markup.add(packet.markup(new PacketSheet("K7M-42P" + s, "Seat " + s, "Week 9", "Sheet metal 1", "Mar 16, 2027", "", problems)));
        }
        System.out.println("pages: " + pages());
    }

    private static Variant variant(Library library, String id, long from) {
        for (long seed = from;; seed += 1000) {
            Optional<Variant> drawn = Drawer.draw(library.bank().exercise(id).orElseThrow(), UnitSystem.US, seed);
            if (drawn.isPresent()) {
                return drawn.get();
            }
        }
    }

    /** Of one operation. */
    public int pages() {
        try (Press press = new Press("Week 9", Instant.EPOCH)) {
            markup.forEach(press::add);
            return press.pages();
        }
    }

    @Benchmark
    public byte[] press() {
        try (Press press = new Press("Week 9", Instant.EPOCH)) {
            markup.forEach(press::add);
            return press.bytes();
        }
    }

    @Benchmark
    public int bareLibrary() throws IOException {
        int bytes = 0;
        for (String html : markup) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            try (BatikSVGDrawer drawer = new BatikSVGDrawer()) {
                PdfRendererBuilder builder = new PdfRendererBuilder().usePdfUaAccessibility(true).useSVGDrawer(drawer);
                builder.useFont(() -> Press.class.getResourceAsStream("/soapstone/paper/b612-regular.ttf"), "B612", 400, FontStyle.NORMAL, true);
                builder.useFont(() -> Press.class.getResourceAsStream("/soapstone/paper/b612-bold.ttf"), "B612", 700, FontStyle.NORMAL, true);
                builder.useFont(() -> Press.class.getResourceAsStream("/soapstone/paper/dejavu-sans.ttf"), "DejaVu", 400, FontStyle.NORMAL, true);
                builder.withHtmlContent(html, null).toStream(out).run();
            }
            bytes += out.size();
        }
        return bytes;
    }
}
