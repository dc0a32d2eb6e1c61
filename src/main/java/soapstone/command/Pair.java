package soapstone.command;

import java.util.List;

/** A name and a text, typed as {@code NAME=TEXT}. */
record Pair(String name, String text) {

    /** @param form how the option is written, for the sentence about one that is not */
    static List<Pair> all(String form, List<String> typed) {
        return typed.stream().map(t -> one(form, t)).toList();
    }

    private static Pair one(String form, String typed) {
        int at = typed.indexOf('=');
        if (at < 1) {
            throw Refusal.usage("'" + typed + "' names nothing: write " + form + ".");
        }
        return new Pair(typed.substring(0, at).strip(), typed.substring(at + 1).strip());
    }
}
