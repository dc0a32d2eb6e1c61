package soapstone.school;

import java.text.Normalizer;
import java.util.Locale;

/** How a login is written so that it is found again however it was typed. */
public final class Logins {

    private Logins() {}

    /** Without spaces round it, in lower case, in one form of Unicode. */
    public static String plain(String typed) {
        return Normalizer.normalize(typed.strip(), Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
    }
}
