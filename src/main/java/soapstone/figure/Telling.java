package soapstone.figure;

/** Gathers the sentences of a description. */
final class Telling {

    private final Words words;
    private final Flags flags;
    private final StringBuilder out = new StringBuilder();

    Telling(Words words, Flags flags) {
        this.words = words;
        this.flags = flags;
    }

    Words words() {
        return words;
    }

    /** A sentence by its key. */
    Telling say(String key, Object... with) {
        return sentence(words.say(key, with));
    }

    /** Says a value as "name: text." or, when it is asked, "name: asked, letter a."; says nothing for what is not printed. */
    Telling value(Values values, String name, String key) {
        Label label = values.label(name);
        if (label.isEmpty()) {
            return this;
        }
        String what = values.isAsked(name) ? words.say("asked", label.runs().get(0).text()) : label.spoken();
        return sentence(words.say("tell", flagged(words.say(key), label), what));
    }

    /** A name or value, and behind it the number of its flag. */
    private String flagged(String what, Label label) {
        return flags.of(label.sizes()).stream().findFirst().map(n -> words.say("flag", what, n)).orElse(what);
    }

    /** Says a list of values the same way. */
    Telling values(Values values, String name, String key) {
        if (values.isAsked(name)) {
            return value(values, name, key);
        }
        StringBuilder list = new StringBuilder();
        for (int i = 0; i < values.all(name).length; i++) {
            String one = values.label(name, i).spoken();
            list.append(list.length() == 0 || one.isEmpty() ? "" : "; ").append(one.isEmpty() ? one : flagged(one, values.label(name, i)));
        }
        return list.length() == 0 ? this : sentence(words.say("tell", words.say(key), list));
    }

    Telling sentence(String sentence) {
        if (!sentence.isEmpty()) {
            out.append(out.length() == 0 ? "" : " ").append(sentence);
        }
        return this;
    }

    String text() {
        return out.toString();
    }
}
