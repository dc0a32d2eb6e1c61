package soapstone.web;

import java.util.Map;
import java.util.regex.Pattern;
import soapstone.page.SheetKey;
import soapstone.page.Words;
import soapstone.quantity.UnitSystem;

/**
 * One request, as the routes see it.
 *
 * @param parts  named parts of the path
 * @param query  fields of the address
 * @param form   fields of the body; none for a GET
 * @param words  in the visitor's language
 */
record Visit(Map<String, String> parts, Fields query, Fields form, Words words) {

    private static final Pattern SEED = Pattern.compile("[1-9][0-9]{0,17}");
    private static final Pattern BANK = Pattern.compile("[0-9A-Za-z-]{0,64}");

    String part(String name) {
        return parts.get(name);
    }

    /** The unit system that the address names; inches when it names none. */
    UnitSystem units() {
        return query.get("units").map(u -> UnitSystem.parse(u).orElseThrow(() -> Trouble.of(400))).orElse(UnitSystem.US);
    }

    boolean hasSeed() {
        return query.get("seed").isPresent();
    }

    /** The draw that the address names. */
    SheetKey key() {
        String seed = query.text("seed");
        boolean whole = SEED.matcher(seed).matches();
        String bank = query.text("bank");
        if (!whole || !BANK.matcher(bank).matches()) {
            throw Trouble.of(400);
        }
        return new SheetKey(Long.parseLong(seed), units(), bank);
    }

    /** What was typed, by the letters of the boxes. */
    Map<String, String> typed() {
        return form.startingWith("box-");
    }

    /** Whether all that is typed now is what was read back to the visitor before. */
    boolean wasReadBack() {
        Map<String, String> seen = form.startingWith("seen-");
        return typed().entrySet().stream().allMatch(box -> same(seen.get(box.getKey()), box.getValue()));
    }

    private static boolean same(String seen, String typed) {
        return sameLines(seen == null ? "" : seen).equals(sameLines(typed));
    }

    /** Browsers send every line end as two characters. */
    private static String sameLines(String text) {
        return text.replace("\r\n", "\n").strip();
    }
}
