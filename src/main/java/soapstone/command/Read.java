package soapstone.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import soapstone.quantity.Notation;
import soapstone.quantity.ReadAs;
import soapstone.quantity.Reading;
import soapstone.quantity.ShopReader;
import soapstone.quantity.Unit;
import soapstone.quantity.UnitSystem;
import soapstone.quantity.Units;
import soapstone.source.Message;
import soapstone.source.Near;

/** Reads a typed answer. A text that cannot be read is a result, as it is on a page: the process ends with 0. */
@Command(name = Read.NAME, description = "Show how a typed answer is understood.", mixinStandardHelpOptions = true)
final class Read implements Callable<Integer> {

    static final String NAME = "read";
    private static final String COUNT = "count";

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "UNIT", description = "The unit that stands beside the box, such as in, mm, deg or lb/ft3; or count.")
    private String unit;

    @Parameters(index = "1", paramLabel = "TEXT", description = "The answer as typed, in quotes.")
    private String text;

    @ArgGroup
    private Several several = new Several();

    @Option(names = "--units", paramLabel = "us|metric", defaultValue = "us", description = "Unit system: us (the default) or metric.")
    private String units;

    @Option(names = "--decimal-mark", paramLabel = "MARK", defaultValue = ".", description = "What stands before decimals: . (the default) or ,")
    private String decimalMark;

    @Mixin
    private Output output;

    /** One value is read unless one of these is said. */
    static final class Several {

        @Option(names = "--list", description = "Several values, parted by semicolons.")
        private boolean list;

        @Option(names = "--point", description = "Two coordinates, parted by a semicolon; several points in brackets.")
        private boolean point;
    }

    @Override
    public Integer call() {
        Unit asked = asked();
        UnitSystem system = SheetOptions.units(units);
        ReadAs as = new ReadAs(kind(), asked, system, Mark.decimalMark(decimalMark));
        ObjectNode data = data(ShopReader.read(text, as), asked, system);
        output.print(spec.commandLine().getOut(), data, () -> List.of(data.has("problem") ? data.get("problem").asText() : data.get("text").asText()));
        return 0;
    }

    private Unit asked() {
        if (unit.equals(COUNT)) {
            return Units.ONE;
        }
        Optional<Unit> found = Units.parse(unit);
        return found.orElseThrow(() -> {
            List<String> known = new java.util.ArrayList<>(Units.all().stream().map(Unit::name).toList());
            known.add(COUNT);
            return Refusal.usage("There is no unit '" + unit + "'. " + Near.suggest(unit, known));
        });
    }

    private ReadAs.Kind kind() {
        if (several.list) {
            return ReadAs.Kind.LIST;
        } else if (several.point) {
            return text.indexOf('(') >= 0 ? ReadAs.Kind.POINTS : ReadAs.Kind.POINT;
        }
        return unit.equals(COUNT) ? ReadAs.Kind.COUNT : ReadAs.Kind.QUANTITY;
    }

    private static ObjectNode data(Reading reading, Unit asked, UnitSystem system) {
        if (reading instanceof Reading.Again again) {
            return problem(again.why());
        } else if (reading instanceof Reading.Blank) {
            return problem(Message.of("reading.no-number"));
        }
        ObjectNode understood = (ObjectNode) Readings.understood(reading, asked, system);
        ObjectNode data = Json.object();
        data.set("value", understood.get("value"));
        data.set("unit", understood.get("unit"));
        if (reading instanceof Reading.One one) {
            data.put("notation", word(one.notation()));
            data.set("text", understood.get("text"));
            data.set("place", Json.number(Math.abs(asked.fromBase(one.place(), system) - asked.fromBase(0, system))));
            data.putObject("asked").<ObjectNode>set("value", Json.number(asked.fromBase(one.base(), system))).put("unit", Values.unit(asked));
        } else {
            List<Reading.One> items = reading instanceof Reading.Many many ? many.items() : ((Reading.Points) reading).x();
            data.set("notation", Json.texts(items.stream().map(i -> word(i.notation())).toList()));
            data.set("text", understood.get("text"));
        }
        return data;
    }

    private static ObjectNode problem(Message why) {
        return Json.object().put("problem", Say.message(why));
    }

    private static String word(Notation notation) {
        return notation.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
