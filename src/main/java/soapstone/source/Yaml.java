package soapstone.source;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Views a bank file as mappings, lists and texts that know their places. Texts stay texts: nothing is guessed. */
public final class Yaml {

    /** The largest file that is read, in characters. */
    public static final int LARGEST = 200_000;
    private static final String RULE = "yaml";

    private final Source source;
    private final Issues issues;

    /** Whether a character counted by a mark is one of the text: only signs beyond the usual planes are two. */
    private final boolean single;

    private Yaml(Source source, Issues issues) {
        this.source = source;
        this.issues = issues;
        this.single = source.text().codePointCount(0, source.text().length()) == source.text().length();
    }

    /** The mapping that a file holds; empty, with an issue, when it holds none. */
    public static Optional<Entries> read(Source source, Issues issues) {
        if (source.text().length() > LARGEST) {
            issues.add(RULE, source.at(1, 1), "the file has " + source.text().length() + " characters", "At most " + LARGEST);
            return Optional.empty();
        }
        Yaml yaml = new Yaml(source, issues);
        LoadSettings settings = LoadSettings.builder().setLabel(source.name()).setMaxAliasesForCollections(0).build();
        try {
            Optional<Node> root = new Compose(settings).composeString(source.text());
            if (root.isEmpty() || !(root.get() instanceof MappingNode map)) {
                issues.add(RULE, source.at(1, 1), "the file holds no entries", "Lines such as title: Bolt holes");
                return Optional.empty();
            }
            return Optional.of(yaml.map(map, "this file"));
        } catch (MarkedYamlEngineException e) {
            yaml.broken(e);
        } catch (ReaderException e) {
            issues.add(RULE, source.atOffset(source.text().offsetByCodePoints(0, e.getPosition())), "the file cannot be read here: this sign is not text", "Take it out");
        } catch (YamlEngineException e) {
            issues.add(RULE, source.at(1, 1), "the file cannot be read: " + firstLine(e.getMessage()), "");
        } catch (StackOverflowError e) {
            issues.add(RULE, source.at(1, 1), "brackets are nested too deep", "");
        }
        return Optional.empty();
    }

    private void broken(MarkedYamlEngineException e) {
        Place place = e.getProblemMark().map(this::place).orElse(source.at(1, 1));
        String what = e.getProblem() == null ? firstLine(e.getMessage()) : e.getProblem();
        issues.add(RULE, place, "the file cannot be read here: " + what, hint(place));
    }

    /** What mostly bites: a text that begins with a brace or holds a colon or a tab. */
    private static String hint(Place place) {
        String line = place.source().line(place.line());
        if (line.substring(0, line.length() - line.stripLeading().length()).indexOf('\t') >= 0) {
            return "Tabs cannot indent: use spaces";
        }
        String value = line.contains(": ") ? line.substring(line.indexOf(": ") + 2).trim() : line.trim();
        if (!value.isEmpty() && "{[\"".indexOf(value.charAt(0)) >= 0 && !value.endsWith("\"")) {
            return "A text that begins with { or [ or \" needs quotes around all of it: quote it";
        }
        if (!value.isEmpty() && "*&!%@`>|".indexOf(value.charAt(0)) >= 0) {
            return "A text that begins with " + value.charAt(0) + " needs quotes: quote it";
        }
        if (value.contains("\"")) {
            return "A quote is open, here or further up, or something stands behind a closed one";
        }
        return value.contains(": ") ? "A text with a colon needs quotes: quote it" : "Check the quotes, the indent and the commas";
    }

    private static String firstLine(String message) {
        int end = message.indexOf('\n');
        return end < 0 ? message : message.substring(0, end);
    }

    private Place place(Mark mark) {
        return source.at(mark.getLine() + 1, mark.getColumn() + 1);
    }

    private Place place(Node node) {
        return node.getStartMark().map(this::place).orElse(source.at(1, 1));
    }

    private Entries map(MappingNode node, String what) {
        Map<String, Value> entries = new LinkedHashMap<>();
        Map<String, Place> places = new LinkedHashMap<>();
        for (NodeTuple tuple : node.getValue()) {
            Place place = place(tuple.getKeyNode());
            if (!(tuple.getKeyNode() instanceof ScalarNode key)) {
                issues.add(RULE, place, "a key is not a word", "A text that begins with { needs quotes: quote it");
                continue;
            }
            if (entries.put(key.getValue(), new Value(tuple.getValueNode(), key.getValue())) != null) {
                issues.add(RULE, place, "'" + key.getValue() + "' stands twice in " + what, "Keep one");
            }
            places.put(key.getValue(), place);
        }
        return new Entries(entries, places, place(node), what, span(node));
    }

    private String span(Node node) {
        int start = node.getStartMark().map(m -> offset(m.getIndex())).orElse(0);
        int end = node.getEndMark().map(m -> offset(m.getIndex())).orElse(0);
        return start < end ? source.text().substring(start, end) : "";
    }

    /** Marks count characters; a text counts the one or two parts of each. */
    private int offset(int mark) {
        String text = source.text();
        if (single) {
            return Math.min(mark, text.length());
        }
        return mark >= text.codePointCount(0, text.length()) ? text.length() : text.offsetByCodePoints(0, mark);
    }

    /** A value that may be a text, a list or a mapping; what it is not is told as an issue. */
    public final class Value {
        private final Node node;
        private final String what;

        private Value(Node node, String what) {
            this.node = node;
            this.what = what;
        }

        public Place place() {
            return Yaml.this.place(node);
        }

        public boolean isMap() {
            return node instanceof MappingNode;
        }

        public boolean isList() {
            return node instanceof SequenceNode;
        }

        public boolean isText() {
            return node instanceof ScalarNode;
        }

        public Optional<Text> text() {
            if (!(node instanceof ScalarNode scalar)) {
                String found = isMap() ? "entries in { }" : "a list";
                issues.add(RULE, place(), "'" + what + "' has " + found + " where a text belongs",
                        isMap() ? "A text that begins with { needs quotes: quote it" : "One text");
                return Optional.empty();
            }
            boolean plain = scalar.getScalarStyle() == ScalarStyle.PLAIN;
            boolean oneLine = scalar.getStartMark().map(Mark::getLine).equals(scalar.getEndMark().map(Mark::getLine));
            boolean escaped = scalar.getScalarStyle() == ScalarStyle.DOUBLE_QUOTED && span(scalar).contains("\\");
            Place start = plain ? place() : place().right(1);
            return Optional.of(new Text(scalar.getValue(), start, oneLine && !escaped, plain));
        }

        public Optional<Entries> map() {
            if (node instanceof MappingNode m) {
                return Optional.of(Yaml.this.map(m, "'" + what + "'"));
            }
            issues.add(RULE, place(), "'" + what + "' has no entries", "Entries such as { name: value }");
            return Optional.empty();
        }

        /** The items of a list; a single value counts as a list of one. */
        public List<Value> items() {
            if (!(node instanceof SequenceNode list)) {
                return List.of(this);
            }
            List<Value> items = new ArrayList<>();
            list.getValue().forEach(n -> items.add(new Value(n, what)));
            return items;
        }

        /** What stands behind the value on its last line: a comment that may have been meant as text. */
        public String behind() {
            return node.getEndMark().map(m -> {
                String line = source.line(m.getLine() + 1);
                return m.getColumn() <= line.length() ? line.substring(m.getColumn()) : "";
            }).orElse("");
        }
    }

    /** A mapping with a closed list of keys. */
    public final class Entries {
        private final Map<String, Value> entries;
        private final Map<String, Place> places;
        private final Place place;
        private final String what;
        private final String written;

        private Entries(Map<String, Value> entries, Map<String, Place> places, Place place, String what, String written) {
            this.entries = entries;
            this.places = places;
            this.place = place;
            this.what = what;
            this.written = written;
        }

        /** Tells every key that is not of the list. */
        public Entries only(Collection<String> known) {
            places.forEach((key, at) -> {
                if (!known.contains(key)) {
                    issues.add("unknown-key", at, "unknown key '" + key + "' in " + what, Near.suggest(key, known));
                }
            });
            return this;
        }

        public Place place() {
            return place;
        }

        public Place place(String key) {
            return places.getOrDefault(key, place);
        }

        public Collection<String> keys() {
            return entries.keySet();
        }

        public boolean has(String key) {
            return entries.containsKey(key);
        }

        public Optional<Value> get(String key) {
            return Optional.ofNullable(entries.get(key));
        }

        public Optional<Text> text(String key) {
            return get(key).flatMap(Value::text);
        }

        public String string(String key, String otherwise) {
            return text(key).map(Text::value).orElse(otherwise);
        }

        /** Yes or no: no unless the file says {@code true}. */
        public boolean flag(String key) {
            Optional<Text> text = text(key);
            if (text.isPresent() && !text.get().value().equals("true") && !text.get().value().equals("false")) {
                issues.add(RULE, text.get().place(), "'" + key + "' is " + text.get().value(), "true or false");
            }
            return text.isPresent() && text.get().value().equals("true");
        }

        /** A text that has to be there. */
        public Optional<Text> need(String key) {
            Optional<Text> text = text(key);
            if (!has(key)) {
                issues.add("missing-key", place, what + " has no '" + key + "'", "Add a line " + key + ": …");
            }
            return text;
        }

        public Optional<Entries> map(String key) {
            return get(key).flatMap(Value::map);
        }

        public List<Value> items(String key) {
            return get(key).map(Value::items).orElse(List.of());
        }

        /** The mapping as it is written in the file. */
        public String written() {
            return written;
        }
    }
}
