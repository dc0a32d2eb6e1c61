package soapstone.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A folder with a backup for each day, of which the newest are kept. */
public final class BackupFolder {

    private static final Pattern NAME = Pattern.compile("school-\\d{4}-\\d{2}-\\d{2}\\.(zip|sealed)");

    private final Path folder;
    private final String passphrase;
    private final int kept;

    /**
     * @param passphrase empty for none
     * @param kept       how many are kept, at least 1
     */
    public BackupFolder(Path folder, String passphrase, int kept) {
        this.folder = folder;
        this.passphrase = passphrase;
        this.kept = Math.max(1, kept);
    }

    /** Takes a backup where there is none of this day (in UTC) yet, and lets go of the oldest. */
    public boolean takeIfDue(Database database, Instant now) throws IOException {
        String ending = passphrase.isEmpty() ? ".zip" : ".sealed";
        Path today = folder.resolve("school-" + LocalDate.ofInstant(now, ZoneOffset.UTC) + ending);
        if (Files.exists(today)) {
            return false;
        }
        BackupFile.write(database, today, passphrase, now);
        List<Path> all = all();
        for (Path old : all.subList(Math.min(kept, all.size()), all.size())) {
            Files.delete(old);
        }
        return true;
    }

    /** The newest backup, if there is one. */
    public Optional<Path> newest() throws IOException {
        return all().stream().findFirst();
    }

    /** The newest first. Files of other names are nobody's business here. */
    private List<Path> all() throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> NAME.matcher(f.getFileName().toString()).matches()).sorted(Comparator.comparing((Path f) -> f.getFileName().toString()).reversed())
                    .toList();
        }
    }
}
