package soapstone.bank;

import java.util.Map;
import java.util.TreeMap;

/**
 * The files of a bank as texts, by their path below the bank folder with {@code /} between. Where they come from (a
 * folder, the program's own jar) is not known here.
 */
public record BankFiles(Map<String, String> texts) {

    public BankFiles {
        texts = new TreeMap<>(texts);
    }

    /** How issues name a file. */
    static String shown(String path) {
        return "exercise-bank/" + path;
    }
}
