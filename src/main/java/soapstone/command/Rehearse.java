package soapstone.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import soapstone.speed.Rehearsal;

/** For the build, which keeps an archive of the classes that a start needs. */
@Command(name = "rehearse", hidden = true, description = "Start the site, ask for some pages, and end.", mixinStandardHelpOptions = true)
final class Rehearse implements Callable<Integer> {

    @Mixin
    private BankOptions bank;

    @Override
    public Integer call() throws Exception {
        return Rehearsal.run(bank.goodLibrary()) == 0 ? Refusal.FAILED : 0;
    }
}
