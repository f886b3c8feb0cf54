package org.tenthwise.app.command;

import java.io.PrintWriter;
import java.util.List;
import org.tenthwise.model.words.Explained;
import org.tenthwise.model.words.Words;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ScopeType;

/** Puts the commands together, and gives every kind of trouble its one line. */
public final class CommandLines {

    static final String PROGRAM = "tenthwise";

    private static final int WIDTH = 100;

    private CommandLines() {}

    /** @param with what the commands work with */
    public static CommandLine of(Tools with) {
        CommandLine line = new CommandLine(new OpenClient(with.client()));
        line.getCommandSpec()
                .addOption(OptionSpec.builder(LanguageAsked.OPTION)
                        .type(String.class)
                        .paramLabel("LANGUAGE")
                        .scopeType(ScopeType.INHERIT)
                        .build());
        line.addSubcommand(new ShowDemo(with));
        line.addSubcommand(new CheckPlans(with));
        line.addSubcommand(new ComparePlans(with));
        line.addSubcommand(new DraftPlan(with));
        line.addSubcommand(new WalkPlan(with));
        line.addSubcommand(new ExportRecord(with));
        line.addSubcommand(new FirstArticleReport(with));
        line.addSubcommand(new ShowHistory(with));
        line.addSubcommand(new ShowMatters(with));
        line.addSubcommand(new VerifyKept(with));
        line.addSubcommand(new ShowKey(with));
        line.addSubcommand(new SignPdf(with));
        line.addSubcommand(new ImportBundle(with));
        line.addSubcommand(new BackUpStore(with));
        line.addSubcommand(new RestoreStore(with));
        line.addSubcommand(new SalvageStore(with));
        line.addSubcommand(new Compute(with));
        line.addSubcommand(new ReadCallouts(with));
        line.addSubcommand(new ShowReference(with));
        help(line, with);
        line.getSubcommands().values().forEach(command -> help(command, with));
        line.setResourceBundle(new HelpTexts(with.words()));
        line.setUsageHelpWidth(WIDTH);
        line.setParameterExceptionHandler((e, typed) -> wrong(e, List.of(typed), with.words()));
        line.setExecutionExceptionHandler((e, command, parsed) -> trouble(e, with.words(), command.getErr()));
        return line;
    }

    private static void help(CommandLine command, Tools with) {
        command.getCommandSpec()
                .mixinStandardHelpOptions(true)
                .version("Tenthwise " + with.version())
                .usageMessage()
                .synopsisHeading(with.words().say("command.usage") + " ")
                .commandListHeading(with.words().say("command.commands") + "%n");
    }

    private static int wrong(CommandLine.ParameterException e, List<String> typed, Words words) {
        CommandLine command = e.getCommandLine();
        String what = new UsageError(e, typed).why().map(words::say).orElseGet(() -> sentence(e.getMessage()));
        command.getErr().println("%s %s".formatted(what, right(command, words)));
        command.getErr().flush();
        return Exit.COULD_NOT;
    }

    private static String right(CommandLine command, Words words) {
        if (command.getParent() == null) {
            return words.say(
                    "command.right-is-one-of",
                    PROGRAM,
                    PROGRAM,
                    List.copyOf(command.getSubcommands().keySet()));
        }
        return words.say("command.right-is", oneLine(command.getHelp().synopsis(0)));
    }

    private static int trouble(Exception e, Words words, PrintWriter to) {
        to.println(e instanceof Explained explained ? words.say(explained.why()) : unforeseen(e, words));
        to.flush();
        return Exit.COULD_NOT;
    }

    /** For what nobody thought of: still one line. */
    public static String unforeseen(Throwable e, Words words) {
        return words.say("command.unforeseen", oneLine(e.toString()));
    }

    private static String sentence(String message) {
        String oneLine = oneLine(message);
        return oneLine.endsWith(".") ? oneLine : oneLine + ".";
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }
}
