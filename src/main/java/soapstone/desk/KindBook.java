package soapstone.desk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import soapstone.exercise.Exercise;
import soapstone.exercise.Model;
import soapstone.expression.Value;
import soapstone.figure.FigureArgument;
import soapstone.figure.FigureKind;
import soapstone.figure.FigureKinds;
import soapstone.page.FigureKindLink;
import soapstone.page.FigureKindView;
import soapstone.page.FigureKindView.Sample;
import soapstone.page.FigureKindView.Which;
import soapstone.page.Words;
import soapstone.quantity.UnitSystem;
import soapstone.source.Message;
import soapstone.variant.Drawer;
import soapstone.variant.Effect;
import soapstone.variant.Variant;

/** The kinds of drawing for those who write exercises: all out of the kinds themselves and the exercises that use them. */
final class KindBook {

    private static final int TRIED = 200;
    /** Where a slip shows in none of these, it shows in none. */
    private static final int SLIPS_FROM = 10;
    private static final double TINY = 1e-9;
    /** In a row of YAML such a text would mean something else. */
    private static final Pattern NEEDS_QUOTES = Pattern.compile("[,{}\\[\\]#&*!|>'%@`]|: ");

    private final Library library;
    private final Links links;
    private final String language;

    /** @param language of titles and of the words in drawings */
    KindBook(Library library, Links links, String language) {
        this.library = library;
        this.links = links;
        this.language = language;
    }

    /** What samples are made from, found once for a library. */
    record Draws(Variant smallest, Variant largest, List<Variant> all) {}

    /** Every kind, in the order of the kinds. */
    List<FigureKindLink> all() {
        return FigureKinds.kinds().stream().map(this::link).toList();
    }

    private FigureKindLink link(FigureKind kind) {
        String key = kind.name() + ".title";
        String title = Words.ofDrawings(language).getOrDefault(key, FigureKinds.englishWords().getOrDefault(key, kind.name()));
        return new FigureKindLink(kind.name(), title, kind.asCut(), users(kind).size());
    }

    private List<Exercise> users(FigureKind kind) {
        return library.bank().exercises().values().stream().filter(e -> e.us().figure().filter(f -> f.kind().equals(kind.name())).isPresent()).toList();
    }

    Optional<FigureKindView> kind(String name) {
        return FigureKinds.kind(name).map(kind -> {
            List<Exercise> users = users(kind);
            List<FigureKindView.Use> uses = users.stream().map(e -> new FigureKindView.Use(links.exercise(e), line(e.us().figure().orElseThrow()))).toList();
            return new FigureKindView(link(kind), kind.arguments().stream().map(KindBook::argument).toList(), uses, TRIED, samples(users));
        });
    }

    private static FigureKindView.Argument argument(FigureArgument a) {
        return new FigureKindView.Argument(a.name(), Message.of("dimension." + (a.dimension().isNamed() ? a.dimension() : "other")), a.list(), a.optional());
    }

    /** The line as the file has it, on one row. */
    private static String line(Model.FigurePlan plan) {
        return Stream.concat(Stream.of("kind: " + plan.kind()), plan.texts().entrySet().stream().map(KindBook::entry))
                .collect(Collectors.joining(", ", "figure: {", "}"));
    }

    private static String entry(Map.Entry<String, String> argument) {
        String text = argument.getValue();
        return argument.getKey() + ": " + (NEEDS_QUOTES.matcher(text).find() ? "\"" + text + "\"" : text);
    }

    /** The smallest and the largest draw of the first exercise in both unit systems, and the first cut with a slip that any of them gives. */
    private List<Sample> samples(List<Exercise> users) {
        List<Sample> samples = new ArrayList<>();
        for (UnitSystem system : UnitSystem.values()) {
            users.stream().limit(1).flatMap(e -> draws(e, system).stream()).forEach(d -> {
                asked(Which.SMALLEST, d.smallest()).ifPresent(samples::add);
                asked(Which.LARGEST, d.largest()).ifPresent(samples::add);
            });
        }
        users.stream().flatMap(e -> draws(e, UnitSystem.US).stream()).flatMap(d -> d.all().stream()).flatMap(v -> cut(v).stream()).findFirst().ifPresent(samples::add);
        return samples;
    }

    private Optional<Draws> draws(Exercise exercise, UnitSystem system) {
        return library.reached().draws().computeIfAbsent(exercise.id() + " " + system, key -> {
            Drawer drawer = new Drawer(exercise, system);
            List<Variant> all = LongStream.rangeClosed(1, TRIED).boxed().flatMap(seed -> drawer.draw(seed).stream()).toList();
            Comparator<Variant> size = Comparator.comparingDouble(KindBook::size);
            return all.stream().min(size).map(least -> new Draws(least, all.stream().max(size).orElseThrow(), all.subList(0, Math.min(SLIPS_FROM, all.size()))));
        });
    }

    /** How large the part is: the product of its sizes, as a logarithm. */
    private static double size(Variant v) {
        return v.model().figure().orElseThrow().with().values().stream().mapToDouble(value -> Math.log(TINY + Math.abs(total(value, v)))).sum();
    }

    private static double total(Value value, Variant v) {
        return value.type().isList() ? Arrays.stream(value.list(v.right())).sum() : value.number(v.right());
    }

    private Optional<Sample> asked(Which which, Variant v) {
        return Drawings.in(language).asked(v, v.system().word() + "-" + Words.key(which))
                .map(figure -> new Sample(which, links.exercise(v.exercise()), v.system(), "", figure));
    }

    private Optional<Sample> cut(Variant v) {
        return v.outcomes().stream().filter(o -> o.effect() == Effect.SEEN)
                .flatMap(o -> Drawings.in(language).asCut(v, o.theirs(), "slip").stream().map(f -> new Sample(Which.SLIP, links.exercise(v.exercise()), v.system(), o.slip().name(), f)))
                .findFirst();
    }
}
