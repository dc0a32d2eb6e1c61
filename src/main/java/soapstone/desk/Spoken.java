package soapstone.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import soapstone.exercise.Line;
import soapstone.exercise.Model;
import soapstone.expression.Node;
import soapstone.expression.Parser;
import soapstone.expression.Program;

/**
 * Which lines of a working speak of which sizes of the drawing: a line speaks of the size that it gives, and of those that it
 * reads. The bank's file says which name is which size ({@code figure: {pitch: pitch}}); one value of a list is a size too, where
 * the list is a row of names.
 */
final class Spoken {

    /** The style sheet knows so many flags. */
    private static final int MOST_FLAGS = 9;

    private final Program program;
    private final List<Integer> lines;
    private final Map<Integer, String> sizes = new LinkedHashMap<>();

    Spoken(Model model) {
        this.program = model.program();
        this.lines = model.lines().stream().filter(l -> l.phase() == Line.Phase.WORKING).map(Line::slot).toList();
        model.figure().ifPresent(plan -> plan.texts().forEach((argument, text) -> add(argument, parsed(text))));
    }

    /** A text that a checked bank holds. */
    private static Node parsed(String text) {
        try {
            return Parser.expression(text);
        } catch (Parser.Fault e) {
            throw new IllegalStateException(text, e);
        }
    }

    private void add(String size, Node node) {
        if (node instanceof Node.Name name && program.find(name.name()) >= 0) {
            int slot = program.find(name.name());
            sizes.putIfAbsent(slot, size);
            Node value = program.slot(slot).value();
            if (value instanceof Node.Name || isRow(value)) {
                add(size, value);
            }
        } else if (isRow(node)) {
            List<Node> row = ((Node.Call) node).with();
            for (int i = 0; i < row.size(); i++) {
                add(row.size() == 1 ? size : size + "." + (i + 1), row.get(i));
            }
        }
    }

    private static boolean isRow(Node node) {
        return node instanceof Node.Call call && call.name().equals("list");
    }

    /** The names of the sizes as a drawing knows them, in the order in which the lines first speak of them. */
    List<String> sizes() {
        Set<String> all = new LinkedHashSet<>();
        lines.forEach(slot -> of(slot).forEach(all::add));
        return all.stream().limit(MOST_FLAGS).toList();
    }

    /**
     * The numbers of the flags that a line points at: of the size that it gives first.
     *
     * @param flagged the sizes that have a flag, in the order of their numbers
     */
    List<Integer> flags(int slot, List<String> flagged) {
        return of(slot).map(flagged::indexOf).filter(i -> i >= 0).map(i -> i + 1).distinct().toList();
    }

    private Stream<String> of(int slot) {
        List<Integer> slots = new ArrayList<>(List.of(slot));
        names(program.slot(slot).value(), slots);
        return slots.stream().filter(sizes::containsKey).map(sizes::get);
    }

    private void names(Node node, List<Integer> found) {
        if (node instanceof Node.Name name && program.find(name.name()) >= 0) {
            found.add(program.find(name.name()));
        } else if (node instanceof Node.Sign sign) {
            names(sign.of(), found);
        } else if (node instanceof Node.Pair pair) {
            names(pair.left(), found);
            names(pair.right(), found);
        } else if (node instanceof Node.Call call) {
            call.with().forEach(with -> names(with, found));
        }
    }
}
