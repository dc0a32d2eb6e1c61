package soapstone.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import soapstone.speed.CrowdSpeed;
import soapstone.speed.FigureSpeed;
import soapstone.speed.KeepingSpeed;
import soapstone.speed.MarkingSpeed;
import soapstone.speed.PageSpeed;
import soapstone.speed.PaperSpeed;
import soapstone.speed.SizeSpeed;
import soapstone.speed.SmallHeap;
import soapstone.speed.Speed;
import soapstone.speed.Spread;
import soapstone.speed.StartSpeed;

/** Measurements as text and as JSON. A spread is the middle one, with those between which the middle half lies. */
final class SpeedTold {

    private SpeedTold() {}

    static List<String> lines(Speed speed) {
        List<String> lines = new ArrayList<>();
        lines.add("Java " + System.getProperty("java.version") + " on " + Runtime.getRuntime().availableProcessors()
                + " cores. Middle value (and between which the middle half lies).");
        lines.add("");
        speed.marking().ifPresentOrElse(m -> marking(m, lines),
                () -> lines.add("Marking is not measured: this Java has no compiler, which the comparison needs. Use a JDK."));
        lines.add("");
        page(speed.page(), lines);
        lines.add("");
        start(speed.start(), lines);
        lines.add("");
        heap(speed.heap(), lines);
        lines.add("");
        figures(speed.figures(), lines);
        lines.add("");
        speed.keeping().forEach(k -> keeping(k, lines));
        lines.add("");
        crowd(speed.crowd(), lines);
        lines.add("");
        paper(speed.paper(), lines);
        speed.sizes().forEach(k -> size(k, lines));
        return lines;
    }

    private static void marking(MarkingSpeed m, List<String> lines) {
        lines.add("Marking one answer with full diagnosis, over Java written out for the one exercise:");
        m.exercises().stream().sorted(Comparator.comparingDouble(e -> e.ratio().median())).forEach(e ->
                lines.add(String.format(Locale.ROOT, "    %-32s %s times (%.0f ns over %.0f ns, %d answers)", e.exercise(), spread(e.ratio(), 1),
                        e.marker().median(), e.plain().median(), e.answers())));
        lines.add("    The median exercise: " + spread(m.median(), 1) + " times. All answers together: " + spread(m.whole(), 1) + " times.");
        lines.add(m.differences().isEmpty() ? "    Both gave the same verdict on every answer."
                : "    NOT the same work: the verdicts differ on " + m.differences().size() + " answers, first " + m.differences().get(0) + ".");
    }

    private static void page(PageSpeed p, List<String> lines) {
        lines.add(String.format(Locale.ROOT, "The page of %s over HTTP (%d bytes), pages for each of a bare server's fixed page of that size:", p.exercise(), p.bytes()));
        lines.add("    the same sheet again: " + turns(p.same()));
        lines.add("    a new sheet each time: " + turns(p.fresh()));
    }

    private static String turns(PageSpeed.Turns t) {
        return spread(t.ratio(), 2) + " (" + spread(t.site(), 0) + " µs against " + spread(t.bare(), 0) + " µs)";
    }

    private static void start(StartSpeed s, List<String> lines) {
        lines.add("From starting the process to the first page, over a bare server's " + spread(s.bare(), 2) + " s:");
        s.ways().forEach(w -> lines.add("    " + spread(w.ratio(), 1) + " times " + w.name() + " (" + spread(w.site(), 2) + " s)."));
    }

    private static void heap(SmallHeap h, List<String> lines) {
        lines.add("With 64 MB of heap: " + h.good() + " of " + h.pages() + " pages came as they should"
                + h.megabytes().map(m -> "; the whole process had at most " + m + " MB").orElse("") + ".");
    }

    private static void figures(FigureSpeed f, List<String> lines) {
        lines.add("The bank's drawings, " + f.figures() + " of some " + f.bytes() + " characters, each laid out wide and narrow:");
        lines.add("    " + spread(f.drawn(), 0) + " a second; string code that only writes the same text " + spread(f.written(), 0) + ": " + spread(f.times(), 1) + " times as long.");
        lines.add("    With 64 MB of heap: " + f.small().figures() + " drawn and held" + f.small().megabytes().map(m -> "; the whole process had at most " + m + " MB").orElse("")
                + ".");
    }

    private static void keeping(KeepingSpeed k, List<String> lines) {
        lines.add("Handing in on " + k.database() + ", receipts for each durable raw row of the same " + k.bytes() + " characters:");
        lines.add("    one at a time: " + kept(k.alone()));
        lines.add("    sixteen at once: " + kept(k.crowd()));
    }

    private static String kept(KeepingSpeed.Turns t) {
        return spread(t.ratio(), 2) + " (" + spread(t.handed(), 0) + " a second against " + spread(t.raw(), 0) + ")";
    }

    private static void crowd(CrowdSpeed c, List<String> lines) {
        lines.add(String.format(Locale.ROOT, "%d students who are signed in work for %.0f s in 256 MB of heap, %d requests, %d not as they should be:", c.students(), c.seconds(),
                c.requests(), c.bad()));
        lines.add(String.format(Locale.ROOT, "    95 of 100 take under %.1f times the idle time of their kind (%s ms against %s ms idle).", c.times(), spread(c.crowd(), 1), spread(c.idle(), 1)));
        lines.add(String.format(Locale.ROOT, "    All hand in at the same instant: %d receipts, %d attempts kept; half have theirs after %.0f ms, the last after %.0f ms%s.", c.together().receipts(),
                c.together().kept(), c.together().middle(), c.together().last(), c.megabytes().map(m -> "; the whole process had at most " + m + " MB").orElse("")));
    }

    private static void size(SizeSpeed s, List<String> lines) {
        lines.add("");
        lines.add("A class of " + s.small().students() + " in a school of " + s.large().students() + " on " + s.database()
                + ", over the same class in a school of its own, after a year's work:");
        s.pages().forEach(p -> lines.add(String.format(Locale.ROOT, "    %-28s %s times (%.1f ms over %.1f ms)", p.name(), spread(p.ratio(), 2), p.large().median(),
                p.small().median())));
        lines.add("    What grows with the school:");
        lines.add("    " + made(s.large()));
        lines.add("    " + made(s.small()));
    }

    private static String made(SizeSpeed.Made m) {
        return String.format(Locale.ROOT, "%d %s, %d answers: %.0f MB on the disk; filled in %.0f s, opened in %.2f s, a backup in %.1f s.", m.classes(),
                m.classes() == 1 ? "class" : "classes", m.answers(), m.bytes() / 1e6, m.fill(), m.open(), m.backup());
    }

    private static void paper(PaperSpeed p, List<String> lines) {
        lines.add(String.format(Locale.ROOT, "On paper, %d sheets of %d problems with drawings, a process of its own in 256 MB of heap from start to end: the packet in %.1f s "
                + "(%d pages), the key in %.1f s (%d pages).", p.sheets(), p.problems(), p.packet().seconds(), p.packet().pages(), p.key().seconds(), p.key().pages()));
    }

    private static String spread(Spread s, int places) {
        String format = "%." + places + "f (%." + places + "f to %." + places + "f)";
        return String.format(Locale.ROOT, format, s.median(), s.low(), s.high());
    }

    static ObjectNode json(Speed speed) {
        ObjectNode data = Json.object();
        data.put("java", System.getProperty("java.version"));
        data.put("cores", Runtime.getRuntime().availableProcessors());
        speed.marking().ifPresentOrElse(m -> data.set("marking", marking(m)), () -> data.putNull("marking"));
        ObjectNode page = data.putObject("page");
        page.put("exercise", speed.page().exercise());
        page.put("bytes", speed.page().bytes());
        page.set("sameSheet", json(speed.page().same()));
        page.set("newSheet", json(speed.page().fresh()));
        ObjectNode start = data.putObject("start");
        start.set("bareSeconds", json(speed.start().bare()));
        ArrayNode ways = start.putArray("ways");
        speed.start().ways().forEach(w -> ways.addObject().put("started", w.name()).<ObjectNode>set("ratio", json(w.ratio())).set("seconds", json(w.site())));
        ObjectNode heap = data.putObject("heap64");
        heap.put("pages", speed.heap().pages());
        heap.put("good", speed.heap().good());
        speed.heap().megabytes().ifPresent(m -> heap.put("processMegabytes", m));
        data.set("figures", json(speed.figures()));
        ArrayNode keeping = data.putArray("keeping");
        for (KeepingSpeed k : speed.keeping()) {
            ObjectNode one = keeping.addObject().put("database", k.database()).put("characters", k.bytes());
            one.putObject("alone").<ObjectNode>set("ratio", json(k.alone().ratio())).<ObjectNode>set("handedInASecond", json(k.alone().handed()))
                    .set("rawASecond", json(k.alone().raw()));
            one.putObject("crowd").<ObjectNode>set("ratio", json(k.crowd().ratio())).<ObjectNode>set("handedInASecond", json(k.crowd().handed()))
                    .set("rawASecond", json(k.crowd().raw()));
        }
        data.set("crowd", json(speed.crowd()));
        ObjectNode paper = data.putObject("paper").put("sheets", speed.paper().sheets()).put("problems", speed.paper().problems());
        paper.putObject("packet").put("pages", speed.paper().packet().pages()).set("seconds", rounded(speed.paper().packet().seconds()));
        paper.putObject("key").put("pages", speed.paper().key().pages()).set("seconds", rounded(speed.paper().key().seconds()));
        ArrayNode sizes = data.putArray("sizes");
        speed.sizes().forEach(k -> sizes.add(size(k)));
        return data;
    }

    private static ObjectNode json(FigureSpeed f) {
        ObjectNode node = Json.object().put("figures", f.figures()).put("characters", f.bytes());
        node.<ObjectNode>set("drawnASecond", json(f.drawn())).<ObjectNode>set("writtenASecond", json(f.written())).set("times", json(f.times()));
        ObjectNode small = node.putObject("heap64").put("figures", f.small().figures());
        f.small().megabytes().ifPresent(m -> small.put("processMegabytes", m));
        return node;
    }

    private static ObjectNode json(CrowdSpeed c) {
        ObjectNode node = Json.object().put("students", c.students()).put("requests", c.requests()).put("bad", c.bad());
        node.<ObjectNode>set("idleMilliseconds", json(c.idle())).<ObjectNode>set("crowdMilliseconds", json(c.crowd())).set("timesOf95", rounded(c.times()));
        node.putObject("together").put("receipts", c.together().receipts()).put("kept", c.together().kept()).<ObjectNode>set("middleMilliseconds", rounded(c.together().middle()))
                .set("lastMilliseconds", rounded(c.together().last()));
        c.megabytes().ifPresent(m -> node.put("processMegabytes", m));
        return node;
    }

    private static ObjectNode size(SizeSpeed s) {
        ObjectNode node = Json.object().put("database", s.database());
        node.set("large", json(s.large()));
        node.set("small", json(s.small()));
        ArrayNode pages = node.putArray("pages");
        s.pages().forEach(p -> pages.addObject().put("page", p.name()).<ObjectNode>set("ratio", json(p.ratio())).<ObjectNode>set("largeMilliseconds", json(p.large()))
                .set("smallMilliseconds", json(p.small())));
        return node;
    }

    private static ObjectNode json(SizeSpeed.Made m) {
        ObjectNode node = Json.object().put("classes", m.classes()).put("students", m.students()).put("answers", m.answers()).put("bytes", m.bytes());
        node.set("fillSeconds", rounded(m.fill()));
        node.set("openSeconds", rounded(m.open()));
        node.set("backupSeconds", rounded(m.backup()));
        return node;
    }

    private static ObjectNode marking(MarkingSpeed m) {
        ObjectNode node = Json.object();
        node.set("medianRatio", json(m.median()));
        node.set("wholeRatio", json(m.whole()));
        node.put("differences", m.differences().size());
        ArrayNode exercises = node.putArray("exercises");
        for (MarkingSpeed.OfExercise e : m.exercises()) {
            ObjectNode one = exercises.addObject();
            one.put("exercise", e.exercise());
            one.put("answers", e.answers());
            one.set("ratio", json(e.ratio()));
            one.set("markerNanoseconds", json(e.marker()));
            one.set("plainNanoseconds", json(e.plain()));
        }
        return node;
    }

    private static ObjectNode json(PageSpeed.Turns t) {
        ObjectNode node = Json.object();
        node.set("ratio", json(t.ratio()));
        node.set("siteMicroseconds", json(t.site()));
        node.set("bareMicroseconds", json(t.bare()));
        return node;
    }

    private static ObjectNode json(Spread s) {
        ObjectNode node = Json.object();
        node.set("median", rounded(s.median()));
        node.set("low", rounded(s.low()));
        node.set("high", rounded(s.high()));
        return node;
    }

    /** Three figures: more is noise. */
    private static com.fasterxml.jackson.databind.JsonNode rounded(double d) {
        return Json.number(new java.math.BigDecimal(d).round(new java.math.MathContext(3)).doubleValue());
    }
}
