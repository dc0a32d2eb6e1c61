package soapstone.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Proves a bank: its text, its published checks, its draws, and how far its diagnosis can be trusted. */
@Command(name = "check", description = "Check a bank: its text, every published example, and many draws of every exercise.",
        mixinStandardHelpOptions = true)
final class Check implements Callable<Integer> {

    private static final int MOST_DRAWS = 100_000;

    @Spec
    private CommandSpec spec;

    @Mixin
    private BankOptions bank;

    @Parameters(arity = "0..1", paramLabel = "BANK", description = "Folder of the bank; the same as --bank.")
    private Path folder;

    @Option(names = "--draws", paramLabel = "N", defaultValue = "100", description = "How often every exercise is drawn in each unit system; 100 if not said, 0 for no draws.")
    private int draws;

    @Option(names = "--json", description = "Print JSON instead of text.")
    private boolean json;

    @Override
    public Integer call() {
        if (draws < 0 || draws > MOST_DRAWS) {
            throw Refusal.usage("Draws are from 0 to " + MOST_DRAWS + ", not " + draws + ".");
        }
        if (folder != null) {
            bank.bank(folder);
        }
        CheckResult result = CheckResult.of(bank, draws);
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            Json.print(out, CheckJson.of(result));
        } else {
            CheckText.lines(result).forEach(out::println);
        }
        return result.isGood() ? 0 : Refusal.FAILED;
    }
}
