package org.tenthwise.app.command;

import java.io.PrintWriter;
import java.util.stream.Collectors;
import org.tenthwise.app.export.CouldNotExport;
import org.tenthwise.app.store.CouldNotCopy;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.CouldNotRead;
import org.tenthwise.app.store.CouldNotSave;
import picocli.CommandLine;
import picocli.CommandLine.UnmatchedArgumentException;

/** Puts the commands together, and gives every kind of trouble its one line. */
public final class CommandLines {

    static final String PROGRAM = "tenthwise";

    private static final int WIDTH = 100;

    private CommandLines() {}

    /** @param with what the commands work with */
    public static CommandLine of(Tools with) {
        CommandLine line = new CommandLine(new OpenClient(with.client()));
        line.addSubcommand(new ShowDemo(with));
        line.addSubcommand(new CheckPlans(with.plans()));
        line.addSubcommand(new WalkPlan(with));
        line.addSubcommand(new ExportRecord(with));
        line.addSubcommand(new ShowHistory(with.stores()));
        line.addSubcommand(new VerifyKept(with.stores()));
        line.addSubcommand(new BackUpStore(with.stores()));
        line.addSubcommand(new RestoreStore(with.stores()));
        line.addSubcommand(new SalvageStore(with.stores()));
        line.addSubcommand(new Compute(with));
        line.addSubcommand(new Reference(with));
        help(line, with.version());
        line.getSubcommands().values().forEach(command -> help(command, with.version()));
        line.setUsageHelpWidth(WIDTH);
        line.setParameterExceptionHandler((e, arguments) -> wrong(e));
        line.setExecutionExceptionHandler((e, command, parsed) -> trouble(e, command.getErr()));
        return line;
    }

    private static void help(CommandLine command, String version) {
        command.getCommandSpec().mixinStandardHelpOptions(true).version("Tenthwise " + version);
    }

    private static int wrong(CommandLine.ParameterException e) {
        CommandLine command = e.getCommandLine();
        boolean noSuchCommand = e instanceof UnmatchedArgumentException unmatched
                && command.getParent() == null
                && !unmatched.getUnmatched().get(0).startsWith("-");
        String what = noSuchCommand
                ? "There is no command \"%s\"."
                        .formatted(
                                ((UnmatchedArgumentException) e).getUnmatched().get(0))
                : sentence(e.getMessage());
        command.getErr().println("%s %s".formatted(what, right(command)));
        command.getErr().flush();
        return Exit.COULD_NOT;
    }

    private static String right(CommandLine command) {
        if (command.getParent() == null) {
            return "Right is %s [--store DB] [--plans DIR], or %s with one of: %s."
                    .formatted(
                            PROGRAM,
                            PROGRAM,
                            command.getSubcommands().keySet().stream().collect(Collectors.joining(", ")));
        }
        return "Right is: " + command.getHelp().synopsis(0).strip();
    }

    private static int trouble(Exception e, PrintWriter to) {
        boolean foreseen = e instanceof CouldNotRun
                || e instanceof NoDisplay
                || e instanceof CouldNotOpen
                || e instanceof CouldNotSave
                || e instanceof CouldNotCopy
                || e instanceof CouldNotRead
                || e instanceof CouldNotExport;
        to.println(foreseen ? e.getMessage() : unforeseen(e));
        to.flush();
        return Exit.COULD_NOT;
    }

    /** For what nobody thought of: still one line. */
    public static String unforeseen(Throwable e) {
        return "Something went wrong that should not have. What was saved is safe. Tell the makers: "
                + e.toString().replaceAll("\\s+", " ");
    }

    private static String sentence(String message) {
        String oneLine = message.replaceAll("\\s+", " ").strip();
        return oneLine.endsWith(".") ? oneLine : oneLine + ".";
    }
}
