package soapstone.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lines that nothing breaks out of, in a file that nobody else reads, for 30 days. */
class SecurityLogTest {

    private static final Instant TUESDAY = Instant.parse("2027-03-16T07:00:00.123Z");

    @TempDir
    private Path folder;

    private String text() throws Exception {
        return Files.readString(folder.resolve(SecurityLog.FILE));
    }

    @Test
    void anEventIsOneLineInUtc() throws Exception {
        SecurityLog log = SecurityLog.in(folder);
        log.note(TUESDAY, "sign-in-failed", "address", "192.0.2.7", "about", "");
        log.note(TUESDAY.plusSeconds(60), "sign-in-ok", "about", "12");
        assertThat(text()).isEqualTo("2027-03-16T07:00:00Z sign-in-failed address=192.0.2.7\n2027-03-16T07:01:00Z sign-in-ok about=12\n");
    }

    @Test
    void noValueBreaksOutOfItsLine() throws Exception {
        SecurityLog.in(folder).note(TUESDAY, "refused", "at", "/a\r\n2027 forged by=1\u2028\u0007\u001b[2J é", "by", "x".repeat(500));
        assertThat(text()).isEqualTo("2027-03-16T07:00:00Z refused at=/a??2027?forged?by?1???[2J?? by=" + "x".repeat(120) + "\n");
    }

    @Test
    void theFileIsForNobodyElse() throws Exception {
        SecurityLog log = SecurityLog.in(folder);
        log.note(TUESDAY, "sign-out");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve(SecurityLog.FILE)))).isEqualTo("rw-------");
        log.note(TUESDAY.plusSeconds(86_400), "sign-out");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve(SecurityLog.FILE)))).isEqualTo("rw-------");
    }

    @Test
    void linesGoAfterThirtyDays() throws Exception {
        SecurityLog log = SecurityLog.in(folder);
        for (int day = 0; day <= 31; day++) {
            log.note(TUESDAY.plusSeconds(86_400L * day), "sign-out");
        }
        assertThat(text().lines()).hasSize(31).first().asString().startsWith("2027-03-17");
        SecurityLog.in(folder).note(TUESDAY.plusSeconds(86_400L * 90), "sign-out");
        assertThat(text().lines()).singleElement().asString().startsWith("2027-06-14");
    }

    @Test
    void aLogThatCannotBeWrittenStopsNobody() throws Exception {
        java.io.ByteArrayOutputStream out = new java.io.ByteArrayOutputStream();
        SecurityLog.to(new java.io.PrintStream(out, true)).note(TUESDAY, "sign-out");
        assertThat(out.toString()).isEqualTo("2027-03-16T07:00:00Z sign-out\n");
        Path gone = folder.resolve("gone");
        SecurityLog.in(gone).note(TUESDAY, "sign-out");
        assertThat(gone).doesNotExist();
    }
}
