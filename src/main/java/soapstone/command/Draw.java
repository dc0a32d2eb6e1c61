package soapstone.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import soapstone.desk.Drawings;
import soapstone.exercise.Ask;
import soapstone.exercise.Given;
import soapstone.exercise.Model;
import soapstone.exercise.Template;
import soapstone.expression.Frame;
import soapstone.page.Figure;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Effect;
import soapstone.variant.Shown;
import soapstone.variant.Variant;

/** Draws the numbers of an exercise. */
@Command(name = "draw", description = "Draw the numbers of an exercise.", mixinStandardHelpOptions = true)
final class Draw implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private SheetOptions sheet;

    @Mixin
    private Output output;

    @Option(names = "--key", description = "Print what is hidden, too: the right answers and what each slip would answer.")
    private boolean key;

    @Option(names = "--figure", paramLabel = "FILE.svg", description = "Write the drawing to a file: with letters for what is asked, or with --key with all its numbers.")
    private Path figure;

    @Override
    public Integer call() {
        Variant variant = sheet.variant();
        ObjectNode data = data(variant);
        if (figure != null) {
            writeFigure(variant);
        }
        output.print(spec.commandLine().getOut(), data, () -> lines(variant, data));
        return 0;
    }

    /** What tells a sheet from all others; every answer about one begins with it. */
    static ObjectNode head(Variant variant) {
        ObjectNode data = Json.object();
        data.put("exercise", variant.exercise().id());
        data.put("seed", variant.seed());
        data.put("units", variant.system().word());
        data.put("fingerprint", variant.exercise().fingerprint());
        if (!variant.conventions().isEmpty()) {
            data.put("conventions", variant.conventions().text());
        }
        return data;
    }

    private void writeFigure(Variant variant) {
        Drawings drawings = Drawings.in("en");
        Figure drawn = (key ? drawings.told(variant.model(), variant.right()) : drawings.asked(variant))
                .orElseThrow(() -> Refusal.failed("The exercise '" + variant.exercise().id() + "' has no drawing."));
        try {
            Files.writeString(figure, drawn.wide().markup());
        } catch (IOException e) {
            throw Refusal.failed("The file '" + figure + "' cannot be written; name one in a folder that is there.");
        }
    }

    private ObjectNode data(Variant variant) {
        Model model = variant.model();
        ObjectNode data = head(variant);
        data.put("story", text(variant, model.story()));
        data.set("notes", Json.texts(model.notes().stream().map(n -> text(variant, n)).toList()));
        data.set("given", given(variant));
        data.set("asks", asks(variant));
        if (key) {
            ObjectNode answers = data.putObject("key");
            model.asks().forEach(a -> answers.set(a.name(), Values.answer(model, variant.right(), a)));
            data.set("slips", slips(variant));
        }
        return data;
    }

    private static String text(Variant variant, Template template) {
        return Json.plain(Shown.text(variant.model(), template, variant.right(), variant.right()));
    }

    private ObjectNode given(Variant variant) {
        ObjectNode all = Json.object();
        for (Given given : variant.model().givens()) {
            if (key || !given.hidden()) {
                ObjectNode value = Values.slot(variant.model(), variant.right(), given.slot());
                if (given.hidden()) {
                    value.put("hidden", true);
                }
                all.set(given.name(), value);
            }
        }
        return all;
    }

    private static ArrayNode asks(Variant variant) {
        ArrayNode asks = Json.array();
        for (Ask ask : variant.model().asks()) {
            ObjectNode node = asks.addObject();
            node.put("ask", ask.name());
            node.put("letter", ask.letter());
            node.put("kind", ask.kind().name().toLowerCase(Locale.ROOT));
            node.put("prompt", text(variant, ask.prompt()));
            node.put("unit", Values.unit(ask.unit()));
            node.set("to", inUnit(ask, ask.to(), variant.system()));
            node.set("within", inUnit(ask, ask.within(), variant.system()));
            node.set("points", Json.number(ask.points()));
            if (ask.kind() == Ask.Kind.CHOICE) {
                ObjectNode options = node.putObject("options");
                ask.options().forEach(o -> options.put(o.name(), text(variant, o.text())));
            }
        }
        return asks;
    }

    /** A step or tolerance in the unit beside the box. */
    private static com.fasterxml.jackson.databind.JsonNode inUnit(Ask ask, double base, UnitSystem system) {
        return Json.number(ask.unit().fromBase(base, system) - ask.unit().fromBase(0, system));
    }

    private static ArrayNode slips(Variant variant) {
        ArrayNode slips = Json.array();
        for (Variant.Outcome o : variant.outcomes()) {
            if (o.effect() == Effect.SEEN) {
                ObjectNode node = slips.addObject();
                node.put("name", o.slip().name());
                node.put("family", o.slip().family());
                node.put("ask", o.ask().name());
                node.setAll(Values.answer(variant.model(), o.theirs(), o.ask()));
            }
        }
        return slips;
    }

    private List<String> lines(Variant variant, ObjectNode data) {
        Model model = variant.model();
        Frame right = variant.right();
        List<String> lines = new ArrayList<>();
        lines.add(variant.exercise().title());
        lines.add(data.get("story").asText());
        data.get("notes").forEach(n -> lines.add("- " + n.asText()));
        for (Ask ask : model.asks()) {
            lines.add(ask.letter() + ") " + text(variant, ask.prompt()) + (key ? ": " + Values.answer(model, right, ask).get("text").asText() : ""));
        }
        if (key) {
            data.get("slips").forEach(s -> lines.add("   " + s.get("ask").asText() + " " + s.get("text").asText() + " fits " + s.get("name").asText()));
        }
        return lines;
    }
}
