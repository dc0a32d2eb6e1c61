package soapstone.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import soapstone.speed.Rehearsal;

/** For the build, which keeps an archive of the classes that a start needs. */
@Command(name = "rehearse", hidden = true, description = "Start the site, ask for some pages, and end.", mixinStandardHelpOptions = true)
final class Rehearse implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private BankOptions bank;

    @Override
    public Integer call() throws Exception {
        int pages = Rehearsal.run(bank.goodLibrary());
        spec.commandLine().getOut().println(pages + " pages");
        return pages == 0 ? Refusal.FAILED : 0;
    }
}
