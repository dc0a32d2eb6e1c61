package soapstone.bank;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import soapstone.exercise.Template;
import soapstone.source.Issues;
import soapstone.source.Near;
import soapstone.source.Text;

/** Reads texts with {@code {name}} places. */
final class Templates {

    private static final String RULE = "text";
    private static final String THEIRS = "theirs.";

    private final Issues issues;
    private final Map<String, Integer> slots;

    /** @param slots the slots of names; it may grow while texts are read */
    Templates(Issues issues, Map<String, Integer> slots) {
        this.issues = issues;
        this.slots = slots;
    }

    Template read(Text text) {
        List<Template.Part> parts = new ArrayList<>();
        String value = text.value();
        int at = 0;
        while (at < value.length()) {
            int open = value.indexOf('{', at);
            if (open < 0) {
                parts.add(plain(value.substring(at), text, at));
                break;
            }
            if (open > at) {
                parts.add(plain(value.substring(at, open), text, at));
            }
            int close = value.indexOf('}', open);
            int next = value.indexOf('{', open + 1);
            if (close < 0 || next >= 0 && next < close) {
                issues.add(RULE, text.at(open), "a { is not closed", "A place is written {name}");
                break;
            }
            place(value.substring(open + 1, close).trim(), text, open, parts);
            at = close + 1;
        }
        return new Template(parts);
    }

    private Template.Part plain(String words, Text text, int at) {
        int close = words.indexOf('}');
        if (close >= 0) {
            issues.add(RULE, text.at(at + close), "a } has no { before it", "A place is written {name}");
        }
        return new Template.Part(words, -1, false);
    }

    private void place(String name, Text text, int at, List<Template.Part> parts) {
        boolean theirs = name.startsWith(THEIRS);
        String bare = theirs ? name.substring(THEIRS.length()) : name;
        int slot = slots.getOrDefault(bare, -1);
        if (slot < 0) {
            issues.add(RULE, text.at(at), "unknown name '" + bare + "' in a text", Near.suggest(bare, slots.keySet()));
            return;
        }
        parts.add(new Template.Part("", slot, theirs));
    }
}
