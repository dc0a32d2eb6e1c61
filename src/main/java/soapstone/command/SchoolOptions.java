package soapstone.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import soapstone.files.SecurityLog;
import soapstone.record.Database;

/** Where the school is kept. */
final class SchoolOptions {

    static final String PASSPHRASE = "SOAPSTONE_BACKUP_PASSPHRASE";

    @Option(names = "--data", paramLabel = "DIR", description = "The data folder of the school.")
    private Path data;

    @Option(names = "--database", paramLabel = "URL", description = "PostgreSQL in place of the data folder, such as jdbc:postgresql://localhost/school. User and "
            + "password are taken from the environment: SOAPSTONE_DATABASE_USER and SOAPSTONE_DATABASE_PASSWORD.")
    private String url;

    /** @param fresh whether the folder may be new */
    Database open(boolean fresh) {
        if ((data == null) == (url == null)) {
            throw Refusal.usage("Say where the school is kept: --data DIR or --database URL.");
        }
        if (data != null && !fresh && !Files.exists(data.resolve("school.mv.db"))) {
            throw Refusal.usage("There is no school in '" + data + "'.");
        }
        try {
            return url == null ? Database.inFolder(data) : at(url);
        } catch (Database.Unusable e) {
            throw Refusal.failed(e.getMessage());
        }
    }

    /** Where the site notes what is done to accounts; with PostgreSQL it has no file of its own. */
    Optional<SecurityLog> log() {
        return Optional.ofNullable(data).map(SecurityLog::in);
    }

    /** PostgreSQL at an address, as the user that the environment names. */
    static Database at(String url) {
        return Database.at(url, of("SOAPSTONE_DATABASE_USER"), of("SOAPSTONE_DATABASE_PASSWORD"));
    }

    /** The same, in a schema of its own. */
    static Database at(String url, String schema) {
        return Database.at(url, of("SOAPSTONE_DATABASE_USER"), of("SOAPSTONE_DATABASE_PASSWORD"), schema);
    }

    /** The passphrase of backups; empty for none. */
    static String passphrase() {
        return of(PASSPHRASE);
    }

    private static String of(String variable) {
        return System.getenv().getOrDefault(variable, "");
    }
}
