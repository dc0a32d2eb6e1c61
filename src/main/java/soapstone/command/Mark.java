package soapstone.command;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import soapstone.exercise.Ask;
import soapstone.exercise.Model;
import soapstone.mark.AskMark;
import soapstone.mark.Fit;
import soapstone.mark.MarkRules;
import soapstone.mark.Marked;
import soapstone.mark.Marker;
import soapstone.mark.Odds;
import soapstone.source.Near;
import soapstone.variant.Shown;
import soapstone.variant.Variant;

/** Marks answers. A wrong answer is a result like any other: the process ends with 0. */
@Command(name = "mark", description = "Mark answers and name the mistakes behind them.", mixinStandardHelpOptions = true)
final class Mark implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private SheetOptions sheet;

    @Mixin
    private Output output;

    @Option(names = "--answer", paramLabel = "ASK=TEXT", description = "An answer as typed, once for each ask; an ask that is left out is blank.")
    private List<String> answers = new ArrayList<>();

    @Option(names = "--decimal-mark", paramLabel = "MARK", defaultValue = ".", description = "What stands before decimals in the answers: . (the default) or ,")
    private String decimalMark;

    @Override
    public Integer call() {
        char mark = decimalMark(decimalMark);
        Variant variant = sheet.variant();
        Marked marked = Marker.mark(variant, texts(variant.model().asks()), mark, MarkRules.USUAL);
        ObjectNode data = data(marked);
        output.print(spec.commandLine().getOut(), data, () -> lines(data));
        return 0;
    }

    static char decimalMark(String text) {
        if (!text.equals(".") && !text.equals(",")) {
            throw Refusal.usage("The decimal mark is . or , and not '" + text + "'.");
        }
        return text.charAt(0);
    }

    private List<String> texts(List<Ask> asks) {
        String[] texts = new String[asks.size()];
        List<String> known = asks.stream().map(Ask::name).toList();
        for (Pair answer : Pair.all("--answer ASK=TEXT", answers)) {
            int at = known.indexOf(answer.name());
            if (at < 0) {
                throw Refusal.usage("The exercise does not ask for '" + answer.name() + "'. " + Near.suggest(answer.name(), known));
            }
            if (texts[at] != null) {
                throw Refusal.usage("There are two answers for '" + answer.name() + "'; give one.");
            }
            texts[at] = answer.text();
        }
        List<String> all = new ArrayList<>();
        for (String text : texts) {
            all.add(text == null ? "" : text);
        }
        return all;
    }

    private static ObjectNode data(Marked marked) {
        ObjectNode data = Draw.head(marked.variant());
        ArrayNode asks = data.putArray("asks");
        marked.asks().forEach(m -> asks.add(ask(marked, m)));
        data.set("points", Json.number(marked.points()));
        data.set("possible", Json.number(marked.possible()));
        Model model = marked.variant().model();
        data.put("consequence", marked.consequence()
                .map(c -> Json.plain(Shown.text(model, c.say(), marked.asCut(), marked.asCut()))).orElse(""));
        return data;
    }

    private static ObjectNode ask(Marked marked, AskMark mark) {
        ObjectNode node = Json.object();
        node.put("ask", mark.ask().name());
        node.put("verdict", mark.verdict().word());
        node.set("reading", reading(marked.variant().model(), mark));
        node.set("families", Json.texts(mark.families()));
        node.set("points", Json.number(mark.points()));
        node.set("odds", Json.number(Odds.of(marked.variant(), mark.ask())));
        node.put("say", Say.mark(marked, mark));
        ArrayNode fits = node.putArray("fits");
        for (Fit fit : mark.fits()) {
            fits.addObject().put("name", fit.name()).put("family", fit.family()).put("say", Say.fit(marked, fit));
        }
        return node;
    }

    /** How the answer was understood, or null where there is nothing that was. */
    private static JsonNode reading(Model model, AskMark mark) {
        Ask ask = mark.ask();
        if (ask.kind() == Ask.Kind.CHOICE && mark.verdict().isMarked()) {
            Ask.Option option = ask.options().stream().filter(o -> o.label() == mark.typed().value(0)).findFirst().orElseThrow();
            return Values.value(option.name(), JsonNodeFactory.instance.textNode(option.name()), "");
        }
        return Readings.understood(mark.typed().reading(), ask.unit(), model.system());
    }

    private static List<String> lines(ObjectNode data) {
        List<String> lines = new ArrayList<>();
        for (JsonNode ask : data.get("asks")) {
            String read = ask.get("reading").isNull() ? "" : " (" + ask.get("reading").get("text").asText() + ")";
            lines.add(ask.get("ask").asText() + read + ": " + ask.get("verdict").asText() + ". " + ask.get("say").asText());
        }
        lines.add(data.get("points").asText() + " of " + data.get("possible").asText() + " points");
        if (!data.get("consequence").asText().isEmpty()) {
            lines.add(data.get("consequence").asText());
        }
        return lines;
    }
}
