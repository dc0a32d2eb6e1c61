package soapstone.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import soapstone.school.Person;
import soapstone.school.School;

/** What is backed up comes back as it was, into either database; what is not whole does not come back at all. */
class BackupTest {

    private static byte[] backup(Database database) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Backup.write(database, out, FilledSchool.NOW);
        return out.toByteArray();
    }

    private static Backup.Told restore(Database database, byte[] backup) throws IOException {
        return Backup.restore(database, new ByteArrayInputStream(backup));
    }

    private static Map<String, String> parts(byte[] backup) throws IOException {
        Map<String, String> parts = new TreeMap<>();
        ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(backup));
        for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
            parts.put(e.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
        }
        return parts;
    }

    private static byte[] zip(Map<String, String> parts) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, String> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue().getBytes(StandardCharsets.UTF_8));
                zip.closeEntry();
            }
        }
        return out.toByteArray();
    }

    static Stream<Arguments> ways() {
        Supplier<Database> h2 = Databases::h2;
        Supplier<Database> postgres = Databases::postgres;
        return Stream.of(Arguments.of("H2 to H2", h2, h2), Arguments.of("H2 to PostgreSQL", h2, postgres), Arguments.of("PostgreSQL to H2", postgres, h2),
                Arguments.of("PostgreSQL to PostgreSQL", postgres, postgres));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ways")
    void everythingComesBackAsItWas(String way, Supplier<Database> from, Supplier<Database> to) throws IOException {
        try (Database old = from.get(); Database fresh = to.get()) {
            new FilledSchool(old, 3);
            byte[] backup = backup(old);
            Backup.Told told = restore(fresh, backup);
            assertThat(told.rows()).containsEntry("attempt", 3L).containsEntry("person", 4L).containsEntry("draft", 1L);
            assertThat(parts(backup(fresh))).isEqualTo(parts(backup));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ways")
    void afterARestoreTheSchoolGoesOnCounting(String way, Supplier<Database> from, Supplier<Database> to) throws IOException {
        try (Database old = from.get(); Database fresh = to.get()) {
            FilledSchool before = new FilledSchool(old, 2);
            restore(fresh, backup(old));
            School school = SqlSchool.of(fresh);
            Person added = school.people().add(new soapstone.school.People.NewPerson(Person.Kind.STUDENT, "New", "new", "x", false, "en"), FilledSchool.NOW);
            assertThat(added.id()).isGreaterThan(before.student.id());
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void everyTableIsKeptOrSaidToPass(String kind, Database database) {
        try (database) {
            List<String> found = database.read(h -> h.createQuery("select lower(table_name) from information_schema.tables where lower(table_schema) = 'public'")
                    .mapTo(String.class).list());
            Set<String> tables = new TreeSet<>(found);
            tables.remove("flyway_schema_history");
            Set<String> known = new TreeSet<>(Tables.KEPT);
            known.addAll(Tables.PASSING);
            assertThat(tables).isEqualTo(known);
        }
    }

    @Test
    void nobodyIsSignedInAfterARestore() throws IOException {
        try (Database old = Databases.h2(); Database fresh = Databases.h2()) {
            new FilledSchool(old, 1);
            restore(fresh, backup(old));
            assertThat(SqlSchool.of(fresh).sessions().find("a".repeat(64))).isEmpty();
        }
    }

    @Test
    void nothingIsPutIntoASchoolThatHasPeople() throws IOException {
        try (Database old = Databases.h2()) {
            new FilledSchool(old, 1);
            byte[] backup = backup(old);
            assertThatThrownBy(() -> restore(old, backup)).isInstanceOf(Backup.Unreadable.class).hasMessageContaining("empty data folder");
        }
    }

    /** Each is refused with a sentence, and leaves the fresh school empty. */
    private static void refused(byte[] backup, String... says) throws IOException {
        try (Database fresh = Databases.h2()) {
            assertThatThrownBy(() -> restore(fresh, backup)).isInstanceOf(Backup.Unreadable.class).message().contains(says);
            long people = fresh.read(h -> h.createQuery("select count(*) from person").mapTo(Long.class).one());
            assertThat(people).isZero();
        }
    }

    @Test
    void aBackupThatIsNotWholeIsRefused() throws IOException {
        Map<String, String> parts;
        try (Database old = Databases.h2()) {
            new FilledSchool(old, 2);
            parts = new LinkedHashMap<>();
            Map<String, String> all = parts(backup(old));
            Tables.KEPT.forEach(t -> parts.put(t + ".jsonl", all.get(t + ".jsonl")));
            parts.put("backup.json", all.get("backup.json"));
        }
        refused("no zip at all".getBytes(StandardCharsets.UTF_8), "no backup");
        Map<String, String> headless = new LinkedHashMap<>(parts);
        headless.remove("backup.json");
        refused(zip(headless), "its end is missing");
        Map<String, String> without = new LinkedHashMap<>(parts);
        without.remove("audit.jsonl");
        refused(zip(without), "not whole");
        Map<String, String> other = new LinkedHashMap<>(parts);
        other.put("secrets.jsonl", "{}");
        refused(zip(other), "secrets.jsonl");
        Map<String, String> column = new LinkedHashMap<>(parts);
        column.put("audit.jsonl", "{\"id\":1,\"colour\":\"red\"}\n");
        refused(zip(column), "colour");
        Map<String, String> newer = new LinkedHashMap<>(parts);
        newer.put("backup.json", parts.get("backup.json").replaceFirst("\"step\":\"\\d+\"", "\"step\":\"999\""));
        refused(zip(newer), "newer program");
        Map<String, String> loose = new LinkedHashMap<>(parts);
        loose.put("mark.jsonl", parts.get("mark.jsonl").replaceAll("\"attempt\":1,", "\"attempt\":77,"));
        refused(zip(loose), "mark");
    }

    /** ASVS 5.0, 5.2.3: small files that would become large ones, many entries, names that lead out of the folder. */
    @Test
    void anArchiveThatMeansHarmIsRefused() throws IOException {
        refused(zip(Map.of("../person.jsonl", "")), "'../person.jsonl'");
        refused(zip(Map.of("/etc/person.jsonl", "")), "does not know");
        Map<String, String> many = new TreeMap<>();
        for (int i = 0; i <= 10_000; i++) {
            many.put("part" + i + ".jsonl", "");
        }
        refused(zip(many), "does not know");
        byte[] bomb = zip(Map.of("school.jsonl", "{\"id\":1,\"name\":\"" + "a".repeat(30_000_000) + "\"}"));
        assertThat(bomb.length).as("packed").isLessThan(100_000);
        try (Database fresh = Databases.h2()) {
            assertThatThrownBy(() -> restore(fresh, bomb)).isInstanceOfAny(IOException.class, Backup.Unreadable.class);
            assertThat(SqlSchool.of(fresh).people().isNobodyInCharge()).isTrue();
        }
    }

    @Test
    void withAPassphraseItOpensForNobodyElse() throws IOException {
        byte[] plain = new byte[200_000];
        new SplittableRandom(5).nextBytes(plain);
        for (int size : new int[] {0, 1, 64 * 1024, 64 * 1024 + 1, plain.length}) {
            byte[] part = Arrays.copyOf(plain, size);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            try (OutputStream sealed = Sealed.seal(out, "four plain words here")) {
                sealed.write(part);
            }
            assertThat(open(out.toByteArray(), "four plain words here")).isEqualTo(part);
            assertThatThrownBy(() -> open(out.toByteArray(), "four plain words hers")).isInstanceOf(Backup.Unreadable.class).hasMessageContaining("passphrase");
        }
    }

    @Test
    void aSealedFileThatWasChangedOrCutShortIsRefused() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (OutputStream sealed = Sealed.seal(out, "four plain words here")) {
            sealed.write(new byte[150_000]);
        }
        byte[] whole = out.toByteArray();
        SplittableRandom random = new SplittableRandom(6);
        for (int cut : List.of(whole.length - 1, whole.length - 40_000, 37 + 65_552, 37 + 2 * 65_552, 40, 20)) {
            assertThatThrownBy(() -> open(Arrays.copyOf(whole, cut), "four plain words here")).as("cut at " + cut).isInstanceOf(Backup.Unreadable.class);
        }
        for (int i = 0; i < 5; i++) {
            byte[] changed = whole.clone();
            changed[random.nextInt(changed.length)] ^= 4;
            assertThatThrownBy(() -> open(changed, "four plain words here")).isInstanceOf(Backup.Unreadable.class);
        }
    }

    private static byte[] open(byte[] sealed, String passphrase) throws IOException {
        try (InputStream in = Sealed.open(new ByteArrayInputStream(sealed), passphrase)) {
            return in.readAllBytes();
        }
    }
}
