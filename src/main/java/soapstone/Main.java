package soapstone;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import soapstone.command.Soapstone;

/** The command line. */
public final class Main {

    private Main() {}

    /** Runs one command; the process ends with 0 when all is well, 1 when something was found wrong, 2 for wrong usage. */
    public static void main(String[] args) {
        // Fractions and degrees are printed as such whatever the terminal's own setting is.
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        int code = Soapstone.run(out, err, args);
        if (code != 0) {
            System.exit(code);
        }
    }
}
