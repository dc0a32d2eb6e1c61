package soapstone.desk;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import soapstone.bank.BankFiles;
import soapstone.bank.BankReader;
import soapstone.files.Folder;

/** The bank that comes with the program, until one of its files is mended while the site runs. */
final class MendableBank implements Supplier<Library> {

    private volatile Library library = RealSite.library();

    @Override
    public Library get() {
        return library;
    }

    /** In one of the files, a text is put in the place of another. */
    void mend(String file, String text, String by) throws Exception {
        Map<String, String> texts = new LinkedHashMap<>(Folder.builtIn("exercise-bank", ".yaml", ".csv"));
        String before = texts.get(file);
        if (!before.contains(text)) {
            throw new IllegalArgumentException(file + " has no '" + text + "'");
        }
        texts.put(file, before.replace(text, by));
        library = Library.of(BankReader.read(new BankFiles(texts)).bank().orElseThrow(), library.course());
    }
}
