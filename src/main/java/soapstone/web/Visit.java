package soapstone.web;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import soapstone.page.Reader;
import soapstone.page.SheetKey;
import soapstone.quantity.UnitSystem;
import soapstone.school.Person;
import soapstone.school.SignedIn;

/**
 * One request, as the routes see it.
 *
 * @param parts  named parts of the path
 * @param query  fields of the address
 * @param form   fields of the body; none for a GET
 * @param reader who reads the page that comes of it, and in which language
 * @param caller who came, and from where
 */
record Visit(Map<String, String> parts, Fields query, Fields form, Reader reader, Caller caller) {

    /**
     * Who came.
     *
     * @param signedIn empty for a guest
     * @param address  of the machine, for counting failures
     * @param path     that was asked for
     * @param site     host and port by which the browser knows this site
     */
    record Caller(Optional<SignedIn> signedIn, String address, String path, String site) {}


    private static final Pattern SEED = Pattern.compile("[1-9][0-9]{0,17}");
    private static final Pattern BANK = Pattern.compile("[0-9A-Za-z-]{0,64}");

    String part(String name) {
        return parts.get(name);
    }

    /** A number in the path that names something kept. */
    long id(String name) {
        String digits = part(name);
        if (!SEED.matcher(digits).matches()) {
            throw Trouble.of(404);
        }
        return Long.parseLong(digits);
    }

    /** Who is signed in; only where the route asks for somebody. */
    Person person() {
        return caller.signedIn().orElseThrow(() -> Trouble.of(403)).person();
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
