package soapstone.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import soapstone.quantity.UnitSystem;

/** The addresses of the site's pages. The web's table of routes is their other half. */
public final class Address {

    /** Servers and proxies take some 8000 signs, and signing in wraps the address once more. */
    private static final int LONGEST = 2000;

    private Address() {}

    public static String of(Reference to) {
        return switch (to.kind()) {
            case UNIT -> "/units/" + part(to.name());
            case EXERCISE -> exercise(to.unit(), to.name());
            case LESSON -> "/lessons/" + part(to.name());
            case FORMULA -> "/formulas/" + part(to.name());
            case TABLE -> "/tables/" + part(to.name());
            case FIGURE -> "/figures/" + part(to.name());
            case CAUTION -> "/cautions#" + part(to.name());
        };
    }

    /** An exercise with fresh numbers. */
    public static String exercise(String unit, String id) {
        return "/exercises/" + part(unit) + "/" + part(id);
    }

    /** An exercise with fresh numbers in that system. */
    public static String exercise(String unit, String id, UnitSystem units) {
        return exercise(unit, id) + "?units=" + units.word();
    }

    /** An exercise with the numbers of that draw. */
    public static String sheet(String unit, String id, SheetKey key) {
        String bank = key.fingerprint().isEmpty() ? "" : "&bank=" + part(key.fingerprint());
        return exercise(unit, id) + "?seed=" + key.seed() + "&units=" + key.units().word() + bank;
    }

    /** Where a student keeps a draw that was worked as a guest. */
    public static String practice(String unit, String id, SheetKey key) {
        return sheet(unit, id, key).replaceFirst("^/exercises/", "/practice/");
    }

    /** The same with the answers, for somebody who signs in on the way; empty when they are too long for an address. */
    public static String practice(String unit, String id, SheetKey key, List<AnswerBox> boxes) {
        StringBuilder address = new StringBuilder(practice(unit, id, key));
        boxes.forEach(b -> address.append("&box-").append(b.letter()).append('=').append(part(b.answer().typed())));
        return address.length() > LONGEST ? "" : address.toString();
    }

    /** The bench of an exercise or a formula. */
    public static String bench(Reference of, UnitSystem units) {
        String path = of.kind() == Reference.Kind.FORMULA ? "formula/" : part(of.unit()) + "/";
        return "/bench/" + path + part(of.name()) + "?units=" + units.word();
    }

    private static String part(String name) {
        return URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
