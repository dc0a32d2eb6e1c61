package soapstone.expression;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Gives each label of a program a number, so that a run works on numbers alone. */
public final class Labels {

    private final Map<String, Integer> numbers = new HashMap<>();
    private final List<String> texts = new ArrayList<>();

    public int number(String label) {
        return numbers.computeIfAbsent(label, l -> {
            texts.add(l);
            return texts.size() - 1;
        });
    }

    /** The label of a number, or "?" for a value that is none. */
    public String text(double number) {
        return number >= 0 && number < texts.size() ? texts.get((int) number) : "?";
    }

    /** All labels of the program, by number. */
    public List<String> all() {
        return List.copyOf(texts);
    }

    /** The number of a label, or -1 when the program has none such. */
    public int find(String label) {
        return numbers.getOrDefault(label, -1);
    }
}
