package soapstone.school;

import java.util.Locale;
import java.util.random.RandomGenerator;

/** The code of a class, read from a board and typed: no sign in it looks like another. */
public final class ClassCode {

    private static final String SIGNS = "ABCDEFGHJKMNPQRSTUVWXYZ23456789";
    private static final int LENGTH = 8;

    private ClassCode() {}

    public static String make(RandomGenerator chance) {
        StringBuilder code = new StringBuilder();
        for (int i = 0; i < LENGTH; i++) {
            code.append(SIGNS.charAt(chance.nextInt(SIGNS.length())));
        }
        return code.toString();
    }

    /** As it is kept, however it was typed: without gaps and hyphens, in capitals. */
    public static String plain(String typed) {
        return typed.replaceAll("[\\s-]+", "").toUpperCase(Locale.ROOT);
    }

    /** As it is shown, in groups of four. */
    public static String shown(String code) {
        return code.length() == LENGTH ? code.substring(0, LENGTH / 2) + "-" + code.substring(LENGTH / 2) : code;
    }
}
