package soapstone.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import soapstone.desk.EngineDesk;
import soapstone.desk.EnginePaperDesk;
import soapstone.desk.Library;
import soapstone.exercise.Exercise;
import soapstone.page.Words;
import soapstone.paper.Key;
import soapstone.paper.KeySheet;
import soapstone.paper.Packet;
import soapstone.paper.PacketChoices;
import soapstone.paper.PacketSheet;
import soapstone.paper.PaperSize;
import soapstone.paper.Press;
import soapstone.quantity.UnitSystem;
import soapstone.record.Database;
import soapstone.record.SqlSchool;
import soapstone.source.Near;
import soapstone.variant.Drawer;
import soapstone.variant.Variant;
import soapstone.web.PaperDesk;
import soapstone.web.PrintOrder;

/** Prints sheets, keys and strips into a PDF: of an assignment in a school, or of exercises and seeds without one. */
@Command(name = "print", description = "Print sheets, keys and strips into a PDF.", mixinStandardHelpOptions = true)
final class PrintCommand implements Callable<Integer> {

    private static final int MOST_TITLES = 2;
    private static final List<String> KINDS = List.of("packet", "key", "folded", "strips");
    /** Without a school nothing says when it was given: the file is the same whenever it is made. */
    private static final Instant NO_DAY = Instant.EPOCH;

    @Spec
    private CommandSpec spec;

    @Mixin
    private BankOptions bank;

    @Mixin
    private SchoolOptions school;

    @Mixin
    private Output output;

    @Parameters(paramLabel = "packet|key|folded|strips", description = "Sheets for everybody; the key for whoever marks; keys to be folded; strips with what became of the answers.")
    private String kind;

    @Option(names = "--to", required = true, paramLabel = "FILE.pdf", description = "The file to write.")
    private Path file;

    @Option(names = "--assignment", paramLabel = "N", description = "Number of the assignment, as in the address of its page; with --data or --database.")
    private Long assignment;

    @Option(names = "--exercise", paramLabel = "ID", description = "Without a school: what stands on the sheet, once for each problem.")
    private List<String> exercises = new ArrayList<>();

    @Option(names = "--seeds", paramLabel = "N,N…", split = ",", description = "Without a school: a sheet for each seed, which is its number.")
    private List<String> seeds = new ArrayList<>();

    @Option(names = "--units", paramLabel = "us|metric", defaultValue = "us", description = "Without a school: us (the default) or metric.")
    private String units;

    @Option(names = "--title", paramLabel = "TEXT", description = "Without a school: what stands on top.")
    private String title = "";

    @Option(names = "--paper", paramLabel = "letter|a4", defaultValue = "letter", description = "Paper: letter (the default) or a4.")
    private String paper;

    @Option(names = "--half", description = "Each problem on half a page, to be cut.")
    private boolean half;

    @Option(names = "--large", description = "Large print, 18 points.")
    private boolean large;

    @Option(names = "--close", description = "Without room for the work, to save paper.")
    private boolean close;

    @Option(names = "--both-sides", description = "For a printer that prints on both sides: every sheet begins on a fresh piece of paper.")
    private boolean bothSides;

    @Option(names = "--blank", description = "A line in place of the names.")
    private boolean blank;

    @Option(names = "--formulas", description = "With the formulas that a problem uses.")
    private boolean formulas;

    @Option(names = "--spares", paramLabel = "N", defaultValue = "0", description = "Spare sheets for whoever walks in; with an assignment.")
    private int spares;

    @Option(names = "--strips", paramLabel = "2|4", defaultValue = "4", description = "Strips on a page; 4 if not said.")
    private int strips;

    @Override
    public Integer call() {
        check();
        PrintOrder.Printed printed = assignment != null ? ofSchool() : withoutSchool();
        try {
            Files.write(file, printed.file());
        } catch (IOException e) {
            throw Refusal.failed("The file '" + file + "' cannot be written; name one in a folder that is there.");
        }
        ObjectNode data = Json.object();
        data.put("file", file.toString());
        data.put("kind", kind);
        data.put("sheets", printed.sheets());
        data.put("pages", printed.pages());
        output.print(spec.commandLine().getOut(), data, () -> List.of(file + ": " + printed.sheets() + " sheets, " + printed.pages() + " pages"));
        return 0;
    }

    private void check() {
        if (!KINDS.contains(kind)) {
            throw Refusal.usage("'" + kind + "' cannot be printed. " + Near.suggest(kind, KINDS));
        }
        if (assignment == null && (exercises.isEmpty() || seeds.isEmpty())) {
            throw Refusal.usage("Say what to print: --assignment N with --data DIR, or --exercise ID and --seeds N,N.");
        }
        if (assignment != null && !exercises.isEmpty()) {
            throw Refusal.usage("An assignment has its own exercises: leave out --exercise, or --assignment.");
        }
        if (Stream.of(half, large, close).filter(on -> on).count() > 1) {
            throw Refusal.usage("A sheet has one form: --half, --large or --close.");
        }
        if (strips != 2 && strips != 4) {
            throw Refusal.usage("Strips on a page are 2 or 4, not " + strips + ".");
        }
    }

    private PaperSize size() {
        return PaperSize.parse(paper).orElseThrow(() -> Refusal.usage("There is no paper '" + paper + "'. " + Near.suggest(paper, List.of("letter", "a4"))));
    }

    private PacketChoices.Form form() {
        return half ? PacketChoices.Form.HALF : large ? PacketChoices.Form.LARGE : close ? PacketChoices.Form.CLOSE : PacketChoices.Form.WHOLE;
    }

    private PrintOrder.Printed ofSchool() {
        Library library = bank.goodLibrary();
        Map<String, String> choices = new LinkedHashMap<>(Map.of("kind", kind, "size", size().word(), "form", form().word(), "spares",
                String.valueOf(spares), "strips", String.valueOf(strips)));
        if (!blank) {
            choices.put("names", "yes");
        }
        if (formulas) {
            choices.put("formulas", "yes");
        }
        if (bothSides) {
            choices.put("sides", "yes");
        }
        try (Database database = school.open(false)) {
            return PrintOrder.make(SqlSchool.of(database), new EngineDesk(() -> library), assignment, choices, Instant.now());
        } catch (PrintOrder.Refused e) {
            throw Refusal.usage(e.getMessage());
        }
    }

    /** A draw on a sheet whose number is its seed. */
    private record Drawn(String number, List<Variant> problems) {}

    private PrintOrder.Printed withoutSchool() {
        if (kind.equals("strips")) {
            throw Refusal.usage("Strips tell of answers, which a school keeps: name --data DIR and --assignment N.");
        }
        UnitSystem system = SheetOptions.units(units);
        List<Exercise> wanted = exercises.stream().map(bank::exercise).toList();
        List<Drawn> sheets = seeds.stream().map(s -> new Drawn(String.valueOf(SheetOptions.seed(s.strip())), drawn(wanted, system, SheetOptions.seed(s.strip())))).toList();
        Library library = bank.goodLibrary();
        EnginePaperDesk desk = new EnginePaperDesk(() -> library, "en");
        List<String> titles = wanted.stream().map(Exercise::title).distinct().toList();
        String head = !title.isBlank() ? title.strip() : titles.size() <= MOST_TITLES ? String.join(", ", titles) : titles.get(0) + " and " + (titles.size() - 1) + " more";
        try (Press press = new Press(head, NO_DAY)) {
            if (kind.equals("packet")) {
                Packet packet = new Packet(Words.of("en"), new PacketChoices(size(), form(), !blank, formulas, bothSides));
                sheets.forEach(s -> packet.add(press, packetSheet(desk, s, head)));
            } else {
                List<KeySheet> keys = sheets.stream().map(s -> keySheet(desk, s)).toList();
                Key key = new Key(Words.of("en"), size());
                (kind.equals("key") ? List.of(key.markup(new Key.Of(head, "", "", keys, Optional.empty(), Map.of()))) : key.folded(head, keys)).forEach(press::add);
            }
            return new PrintOrder.Printed(press.bytes(), press.pages(), sheets.size());
        }
    }

    private static List<Variant> drawn(List<Exercise> exercises, UnitSystem system, long seed) {
        return exercises.stream().map(e -> Drawer.draw(e, system, seed).orElseThrow(() -> Refusal.failed("No fair numbers come from seed " + seed + " for '" + e.id()
                + "'. Another seed may do; 'soapstone check' tells why draws are refused."))).toList();
    }

    private PacketSheet packetSheet(EnginePaperDesk desk, Drawn sheet, String head) {
        List<PacketSheet.Problem> problems = new ArrayList<>();
        for (Variant v : sheet.problems()) {
            PaperDesk.Asked asked = desk.asked(v);
            problems.add(new PacketSheet.Problem(problems.size() + 1, "", asked.sheet(), formulas ? asked.formulas() : List.of()));
        }
        return new PacketSheet(sheet.number(), "", head, "", "", "", problems);
    }

    private static KeySheet keySheet(EnginePaperDesk desk, Drawn sheet) {
        List<KeySheet.Problem> problems = new ArrayList<>();
        sheet.problems().forEach(v -> problems.add(desk.key(v, problems.size() + 1)));
        return new KeySheet(sheet.number(), "", "", problems);
    }
}
