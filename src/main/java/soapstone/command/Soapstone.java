package soapstone.command;

import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import soapstone.desk.Library;
import soapstone.source.Near;

/**
 * All commands. A command writes what was asked for to standard output; whatever goes wrong is one sentence on standard
 * error that says what would fit.
 */
@Command(name = "soapstone", synopsisSubcommandLabel = "COMMAND", description = "Shop math for sheet metal: own numbers for everyone, marking that says why.",
        mixinStandardHelpOptions = true, version = "soapstone 0.1.0",
        exitCodeListHeading = "Ends with:%n",
        exitCodeList = {"0:all is well", "1:something was found wrong", "2:wrong usage, or a name that is not known"})
public final class Soapstone implements Runnable {

    private static final String SERVE = "serve";

    /** In the order in which the help lists them. */
    private static final Map<String, Supplier<Object>> COMMANDS = new LinkedHashMap<>();

    static {
        COMMANDS.put(SERVE, () -> new Serve(Optional.empty()));
        COMMANDS.put("check", Check::new);
        COMMANDS.put("draw", Draw::new);
        COMMANDS.put("mark", Mark::new);
        COMMANDS.put(Read.NAME, Read::new);
        COMMANDS.put("work", Work::new);
        COMMANDS.put("print", PrintCommand::new);
        COMMANDS.put("speed", SpeedCommand::new);
        COMMANDS.put("backup", BackupCommand::new);
        COMMANDS.put("restore", RestoreCommand::new);
        COMMANDS.put("doctor", DoctorCommand::new);
        COMMANDS.put("code", CodeCommand::new);
        COMMANDS.put("rehearse", Rehearse::new);
        COMMANDS.put("help", HelpCommand::new);
    }

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    /**
     * Runs one command.
     *
     * @return 0 when all is well, 1 when something was found wrong, 2 for wrong usage
     */
    public static int run(PrintStream out, PrintStream err, String... args) {
        CommandLine line = line(args);
        line.setOut(new PrintWriter(out, true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(err, true, StandardCharsets.UTF_8));
        line.setExpandAtFiles(false);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        // A typed answer may begin with a minus.
        Optional.ofNullable(line.getSubcommands().get(Read.NAME)).ifPresent(read -> read.setUnmatchedOptionsArePositionalParams(true));
        line.setParameterExceptionHandler(Soapstone::wrongUsage);
        line.setExecutionExceptionHandler((problem, command, parsed) -> told(problem, command));
        return line.execute(args);
    }

    /** Only the command that is asked for is set up: each costs a start some hundredths of a second. Whoever asks otherwise gets all. */
    private static CommandLine line(String... args) {
        String asked = args.length > 0 ? args[0] : "";
        Object serve = asked.equals(SERVE) ? new Serve(ahead(args)) : null;
        CommandLine line = new CommandLine(new Soapstone());
        boolean one = COMMANDS.containsKey(asked) && !asked.equals("help");
        COMMANDS.forEach((name, command) -> {
            if (!one || name.equals(asked)) {
                line.addSubcommand(name, serve == null ? command.get() : serve);
            }
        });
        return line;
    }

    /** The bank that comes with the program is read while the options are; not where another one is named. */
    private static Optional<CompletableFuture<Library.Result>> ahead(String... args) {
        boolean other = Arrays.stream(args).anyMatch(a -> a.startsWith("--bank") || a.startsWith("--lessons") || a.startsWith("-h") || a.startsWith("--help"));
        return other ? Optional.empty() : Optional.of(CompletableFuture.supplyAsync(() -> {
            try {
                return Library.read(null, null);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }));
    }

    private static int wrongUsage(ParameterException problem, String[] args) {
        CommandLine command = problem.getCommandLine();
        command.getErr().println(sentence(problem) + " See: " + command.getCommandSpec().qualifiedName() + " --help");
        return Refusal.USAGE;
    }

    private static String sentence(ParameterException problem) {
        CommandLine command = problem.getCommandLine();
        List<String> unmatched = problem instanceof UnmatchedArgumentException u ? u.getUnmatched() : command.getUnmatchedArguments();
        if (!unmatched.isEmpty()) {
            return unknown(command, unmatched.get(0));
        }
        if (problem instanceof MissingParameterException missing) {
            List<String> names = missing.getMissing().stream().map(Soapstone::shown).toList();
            return "Missing: " + String.join(", ", names) + ".";
        }
        return ended(String.valueOf(problem.getMessage()).replaceFirst("^Error: ", "").strip());
    }

    private static String unknown(CommandLine command, String word) {
        return ended(("'" + word + "' is not known here. " + Near.suggest(word, words(command, word.startsWith("-")))).strip());
    }

    private static String ended(String sentence) {
        return sentence.endsWith(".") || sentence.endsWith("?") ? sentence : sentence + ".";
    }

    private static String shown(CommandLine.Model.ArgSpec arg) {
        return arg instanceof CommandLine.Model.OptionSpec option
                ? option.longestName() + (option.paramLabel().isEmpty() ? "" : " " + option.paramLabel()) : arg.paramLabel();
    }

    private static List<String> words(CommandLine command, boolean options) {
        List<String> words = new ArrayList<>();
        if (options) {
            command.getCommandSpec().options().forEach(o -> words.add(o.longestName()));
        } else {
            words.addAll(commands(command));
        }
        return words;
    }

    private static List<String> commands(CommandLine command) {
        return command.getSubcommands().entrySet().stream().filter(c -> !c.getValue().getCommandSpec().usageMessage().hidden()).map(java.util.Map.Entry::getKey).toList();
    }

    private static int told(Exception problem, CommandLine command) {
        if (problem instanceof Refusal refusal) {
            command.getErr().println(refusal.getMessage());
            return refusal.code();
        }
        // The kind of a fault of our own is of no use to whoever typed the command; where it came from is kept for a report.
        StackTraceElement[] trace = problem.getStackTrace();
        String where = trace.length == 0 ? "" : " (" + trace[0].getFileName() + ", line " + trace[0].getLineNumber() + ")";
        command.getErr().println("This is a fault of the program itself" + where + ". Please report it with the command that was typed.");
        return Refusal.FAILED;
    }

    @Override
    public void run() {
        throw Refusal.usage("Say what to do: " + String.join(", ", commands(spec.commandLine())) + ". See: soapstone --help");
    }
}
