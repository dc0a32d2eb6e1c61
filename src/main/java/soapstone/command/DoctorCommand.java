package soapstone.command;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import soapstone.record.Database;
import soapstone.record.Doctor;

/** Says what is wrong with a school's data. */
@Command(name = "doctor", mixinStandardHelpOptions = true, description = "Look a data folder or database over, and say what in it does not fit together.")
final class DoctorCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private SchoolOptions school;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        try (Database database = school.open(false)) {
            Doctor.Findings found = Doctor.look(database);
            out.println("Tables at step " + found.step() + ".");
            found.holds().forEach((table, rows) -> out.println(String.format("%10d  %s", rows, table)));
            found.faults().forEach(fault -> out.println("Not well: " + fault + "."));
            out.println(found.faults().isEmpty() ? "All is well." : found.faults().size() + " things do not fit together. Restore a backup, or ask whoever keeps the program.");
            return found.faults().isEmpty() ? 0 : Refusal.FAILED;
        }
    }
}
