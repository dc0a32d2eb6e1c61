package soapstone.bank;

import java.util.Optional;
import soapstone.exercise.Exercise;
import soapstone.source.Place;
import soapstone.source.Text;
import soapstone.source.Yaml;

/** An exercise that was read without a fault, with the text it was read from, for the rules to look at. */
record Draft(Exercise exercise, Yaml.Entries root, Book book) {

    /** Where a line of the working is written. */
    Place line(String name) {
        return place("working", "let", name);
    }

    /** Where a slip is written; for one that a formula brings, where slips begin. */
    Place slip(String name) {
        return place("slips", "name", name);
    }

    /** Where an ask is written. */
    Place ask(String name) {
        return place("ask", "find", name);
    }

    /** Where a given says which convention it follows. */
    Place convention(String name) {
        Optional<Yaml.Entries> givens = root.map("given");
        return givens.flatMap(m -> m.map(name)).filter(m -> m.has("convention")).map(m -> m.place("convention"))
                .orElse(givens.map(m -> m.place(name)).orElse(root.place("given")));
    }

    private Place place(String list, String key, String name) {
        for (Yaml.Value item : root.items(list)) {
            if (item.isMap()) {
                Optional<Text> text = item.map().filter(m -> m.has(key)).flatMap(m -> m.items(key).stream().findFirst()).flatMap(Yaml.Value::text);
                if (text.isPresent() && text.get().value().split("=", 2)[0].strip().equals(name)) {
                    return text.get().place();
                }
            }
        }
        return root.place(list);
    }
}
