package soapstone.bank;

import java.util.Set;
import soapstone.source.Issues;
import soapstone.source.Yaml;
import soapstone.source.Text;

/** A text without quotes ends at " #": what follows is a comment to YAML, and the student never sees it. */
final class TextIsWhole implements Rule {

    private static final Set<String> TEXTS = Set.of("title", "story", "say", "prompt", "notes", "because");

    @Override
    public void look(Draft draft, Issues issues) {
        look(draft.root(), issues, 0);
    }

    private void look(Yaml.Entries map, Issues issues, int depth) {
        for (String key : map.keys()) {
            map.get(key).ifPresent(v -> look(key, v, issues, depth));
        }
    }

    private void look(String key, Yaml.Value value, Issues issues, int depth) {
        if (value.isMap() && depth < 4) {
            value.map().ifPresent(m -> look(m, issues, depth + 1));
        } else if (value.isList()) {
            value.items().forEach(v -> look(key, v, issues, depth + 1));
        } else if (value.isText() && TEXTS.contains(key)) {
            value.text().filter(Text::plain).ifPresent(t -> {
                if (value.behind().contains(" #")) {
                    issues.add("yaml", t.place(), "the text ends at #; the rest of the line is a comment", "Quote the text, or put the comment on a line of its own");
                }
            });
        }
    }
}
