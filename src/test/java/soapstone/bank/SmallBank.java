package soapstone.bank;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.TreeMap;
import soapstone.exercise.Exercise;
import soapstone.files.Folder;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;
import soapstone.variant.Variant;

/** The small bank below {@code src/test/resources/soapstone/bank/good}, on which the engine's tests run. */
public final class SmallBank {

    private static final Map<String, String> TEXTS = texts("soapstone/bank/good");
    private static final Bank BANK = read(TEXTS);

    private SmallBank() {}

    public static Bank bank() {
        return BANK;
    }

    public static Exercise exercise(String id) {
        return BANK.exercise(id).orElseThrow();
    }

    public static Variant draw(String id, UnitSystem system, long seed) {
        return Drawer.draw(exercise(id), system, seed).orElseThrow(() -> new AssertionError(id + " " + system + " seed " + seed + " has no draw"));
    }

    /** A copy of the files, to be changed. */
    public static Map<String, String> files() {
        return new TreeMap<>(TEXTS);
    }

    /** The files with one text in another's place. */
    public static Map<String, String> with(String path, String text) {
        Map<String, String> files = files();
        files.put(path, text);
        return files;
    }

    /** The bank with a piece of one file replaced; the piece has to be there. */
    public static Bank changed(String path, String piece, String by) {
        if (!TEXTS.get(path).contains(piece)) {
            throw new AssertionError(path + " does not hold: " + piece);
        }
        return read(with(path, TEXTS.get(path).replace(piece, by)));
    }

    public static Bank read(Map<String, String> texts) {
        BankReader.Result result = BankReader.read(new BankFiles(texts));
        return result.bank().orElseThrow(() -> new AssertionError("the bank has issues:\n" + result.issues().all()));
    }

    static Map<String, String> texts(String folder) {
        try {
            return Folder.builtIn(folder, ".yaml", ".csv", ".issues");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
