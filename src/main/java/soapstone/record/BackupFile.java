package soapstone.record;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;

/** Backups as files, sealed with a passphrase if there is one. */
public final class BackupFile {

    private static final int LOOK = 16;

    private BackupFile() {}

    /**
     * Writes a backup beside the wanted file and moves it there when it is whole: whoever finds it finds all of it.
     *
     * @param passphrase empty for none
     */
    public static Backup.Told write(Database database, Path file, String passphrase, Instant now) throws IOException {
        Path parent = file.toAbsolutePath().getParent();
        Files.createDirectories(parent);
        Path part = Files.createTempFile(parent, file.getFileName().toString(), ".part");
        try {
            Backup.Told told;
            try (OutputStream out = sealed(new BufferedOutputStream(Files.newOutputStream(part)), passphrase)) {
                told = Backup.write(database, out, now);
            }
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
            return told;
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static OutputStream sealed(OutputStream out, String passphrase) throws IOException {
        return passphrase.isEmpty() ? out : Sealed.seal(out, passphrase);
    }

    /**
     * Puts a backup into an empty database.
     *
     * @param passphrase empty for none
     * @throws Backup.Unreadable with a sentence
     */
    public static Backup.Told restore(Database database, Path file, String passphrase) throws IOException {
        try (BufferedInputStream in = new BufferedInputStream(Files.newInputStream(file))) {
            in.mark(LOOK);
            boolean sealed = Sealed.isSealed(in.readNBytes(LOOK));
            in.reset();
            if (sealed && passphrase.isEmpty()) {
                throw new Backup.Unreadable("This backup is sealed: it needs its passphrase.");
            }
            try (InputStream open = sealed ? Sealed.open(in, passphrase) : in) {
                return Backup.restore(database, open);
            }
        }
    }
}
