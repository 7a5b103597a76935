package chock.cli;

import chock.record.UnusableInput;
import chock.signoff.NotSigned;
import chock.signoff.Program;
import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * The program. Exit status: 0 every gate judged is released, 1 any of them is blocked, 2 unusable input or usage, 3 the
 * program itself failed.
 */
@Command(name = "chock", synopsisSubcommandLabel = "COMMAND", versionProvider = Chock.Version.class,
        description = "Holds an old motorcycle until the evidence releases it.",
        footer = {"", "Exit status: 0 released, 1 blocked, 2 unusable input or usage, 3 chock itself failed.",
            "This is a working aid. Local law and the licensed inspector or technician decide."})
public final class Chock implements Runnable {
    @Spec private CommandSpec spec;

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help.")
    private boolean help;

    @Option(names = {"-V", "--version"}, versionHelp = true, description = "Show the version.")
    private boolean version;

    private Chock() { }

    /** Runs one command and ends the process with its exit status. */
    public static void main(String[] args) {
        // Else a library announces itself on standard error, which is for messages to the user.
        System.setProperty("org.jboss.logging.provider", "slf4j");
        // The chart is drawn into a file; no screen is asked for.
        System.setProperty("java.awt.headless", "true");
        Map<String, String> env = System.getenv();
        boolean bold = System.console() != null && env.getOrDefault("NO_COLOR", "").isEmpty() && !"dumb".equals(env.get("TERM"));
        Bench bench = new Bench(System.in, utf8(FileDescriptor.out), utf8(FileDescriptor.err), Clock.systemUTC(), bold, env.get("CHOCK_TRACE"), env,
                System.console() == null ? null : words -> System.console().readPassword("%s", words));
        System.exit(run(bench, args));
    }

    /** Reports carry signs such as ±, which a terminal set up for plain ASCII would otherwise turn into question marks. */
    private static PrintStream utf8(FileDescriptor to) {
        return new PrintStream(new BufferedOutputStream(new Outlet(new FileOutputStream(to))), false, StandardCharsets.UTF_8);
    }

    /** Runs one command; the result is its exit status. */
    static int run(Bench bench, String... args) {
        int status;
        try {
            Optional<AssessCommand> plain = PlainLine.of(bench, args);
            status = plain.isPresent() ? plain(bench, plain.get()) : line(bench, args).execute(args);
        } catch (StackOverflowError | OutOfMemoryError | LinkageError e) {
            status = bench.failed(e);
        }
        if (bench.out().checkError()) {
            status = bench.failed(new IllegalStateException("the result could not be written"));
        }
        bench.err().flush();
        return status;
    }

    private static int plain(Bench bench, AssessCommand command) {
        try {
            return command.call();
        } catch (RuntimeException e) {
            return ended(bench, e);
        }
    }

    /** The status of a command that came to no result, once it is said why. */
    private static int ended(Bench bench, Exception e) {
        return e instanceof UnusableInput input ? bench.refuse(input)
                : e instanceof NotSigned why ? bench.notSigned(why.getMessage()) : bench.failed(e);
    }

    private static Map<String, Supplier<Object>> commands(Bench bench) {
        Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
        commands.put("assess", () -> new AssessCommand(bench));
        commands.put("order", () -> new OrderCommand(bench));
        commands.put("impact", () -> new ImpactCommand(bench));
        commands.put("sign", () -> new SignCommand(bench));
        commands.put("verify", () -> new VerifyCommand(bench));
        commands.put("sheet", () -> new SheetCommand(bench));
        commands.put("keys", () -> KeysCommand.with(bench));
        commands.put("ledger", () -> LedgerCommand.with(bench));
        commands.put("worksheet", () -> new WorksheetCommand(bench));
        commands.put("take-in", () -> new TakeInCommand(bench));
        commands.put("note", () -> new NoteCommand(bench));
        commands.put("tag", () -> new TagCommand(bench));
        commands.put("statement", () -> new StatementCommand(bench));
        commands.put("rules", () -> RulesCommand.with(bench));
        commands.put("rehearse", () -> new RehearseCommand(bench));
        commands.put("figure", () -> new FigureCommand(bench));
        commands.put("record", () -> new CommandLine(new RecordCommand()).addSubcommand(new RecordCommand.Expand(bench)));
        commands.put("schema", () -> new SchemaCommand(bench));
        commands.put("new", () -> new CommandLine(new NewCommand()).addSubcommand(new NewRecordCommand(bench)).addSubcommand(new NewCheckCommand(bench)).addSubcommand(new NewShopCommand(bench)));
        commands.put("board", () -> new CommandLine(new BoardCommand(bench)).addSubcommand(new BoardCommand.Take(bench)).addSubcommand(new BoardCommand.Give(bench)).addSubcommand(new BoardCommand.Copy()));
        commands.put("demo", () -> new DemoCommand(bench));
        return commands;
    }

    /** The line with the command that is named, or with all where none of them is: to look at every command takes longer than to judge a machine. */
    static CommandLine line(Bench bench, String... args) {
        CommandLine line = new CommandLine(new Chock());
        Map<String, Supplier<Object>> commands = commands(bench);
        if (args.length > 0 && commands.containsKey(args[0])) {
            commands.keySet().retainAll(Set.of(args[0]));
        }
        commands.forEach((name, command) -> line.addSubcommand(name, command.get()));
        return line.setExpandAtFiles(false).setUsageHelpWidth(80)
                .setColorScheme(CommandLine.Help.defaultColorScheme(bench.bold() ? Ansi.ON : Ansi.OFF))
                .setOut(new PrintWriter(bench.out(), true, StandardCharsets.UTF_8))
                .setErr(new PrintWriter(bench.err(), true, StandardCharsets.UTF_8))
                .setParameterExceptionHandler((e, rest) -> misused(e, bench))
                .setExecutionExceptionHandler((e, command, result) -> ended(bench, e));
    }

    private static int misused(ParameterException e, Bench bench) {
        bench.say(e.getMessage());
        if (e instanceof UnmatchedArgumentException unmatched) {
            unmatched.getSuggestions().stream().limit(3).forEach(word -> bench.say("Did you mean '" + word + "'?"));
        }
        bench.say("Try '" + e.getCommandLine().getCommandSpec().qualifiedName() + " --help'.");
        return Bench.UNUSABLE;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Which command? One of " + String.join(", ", spec.subcommands().keySet()) + ".");
    }

    /** The version in the manifest of the program file. */
    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {Program.name()};
        }

        static String number() {
            return Program.version();
        }
    }
}
