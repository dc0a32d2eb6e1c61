package soapstone.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Runs the site. */
@Command(name = "serve", description = "Run the site.", mixinStandardHelpOptions = true)
final class Serve implements Callable<Integer> {

    @Mixin
    private BankOptions bank;

    @Option(names = "--port", paramLabel = "N", defaultValue = "8080", description = "Port to listen on; 0 takes a free one. Without it: 8080.")
    private int port;

    @Override
    public Integer call() {
        throw Refusal.failed("The site is not part of this build yet.");
    }
}
