package org.tenthwise.app;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.tenthwise.app.command.CommandLines;
import org.tenthwise.app.command.Exit;
import org.tenthwise.app.command.LanguageAsked;
import org.tenthwise.app.command.Streams;
import org.tenthwise.app.text.Spoken;
import org.tenthwise.model.words.Languages;
import org.tenthwise.model.words.Words;
import picocli.CommandLine;

/** Where the program starts. A plain class: a JavaFX application class cannot be started from one jar. */
public final class Main {

    /** What the services of the device go by; a tablet's own start sets it. */
    private static final String DEVICE = "javafx.platform";

    private Main() {}

    public static void main(String[] given) {
        String[] arguments = ArgumentsAsTyped.of(given);
        PrintWriter out = writer(System.out);
        PrintWriter err = writer(System.err);
        Languages languages = Languages.at(Locale.getDefault());
        LanguageAsked asked = LanguageAsked.in(arguments);
        Spoken spoken = new Spoken(languages, asked.of(languages).orElseGet(languages::usual));
        asked.refused(languages).ifPresent(why -> {
            err.println(spoken.words().say(why));
            System.exit(Exit.COULD_NOT);
        });
        LastResort lastResort = new LastResort(err, spoken.words());
        if (System.getProperty(DEVICE) == null) {
            System.setProperty(DEVICE, "Desktop");
        }
        Thread.setDefaultUncaughtExceptionHandler(lastResort);
        MemoryWarning.takeAsGiven();
        System.exit(
                run(arguments, new Wiring(lastResort, spoken, asked.named().isPresent()), spoken.words(), out, err));
    }

    private static int run(String[] arguments, Wiring wiring, Words words, PrintWriter out, PrintWriter err) {
        try {
            CommandLine commands = CommandLines.of(wiring.tools(streams()));
            commands.setOut(out);
            commands.setErr(err);
            return commands.execute(arguments);
        } catch (Throwable e) { // nothing may end in a stack trace
            err.println(CommandLines.unforeseen(e, words));
            return Exit.COULD_NOT;
        } finally {
            out.flush();
            err.flush();
        }
    }

    /** Past the print streams, which would keep a broken pipe to themselves. */
    private static Streams streams() {
        return new Streams(StandardInput.open(), new FileOutputStream(FileDescriptor.out));
    }

    /** UTF-8, but for Windows, whose console shows what its own settings say. */
    private static PrintWriter writer(PrintStream stream) {
        boolean windows = System.getProperty("os.name").toLowerCase(Locale.ROOT).startsWith("windows");
        return new PrintWriter(stream, true, windows ? Charset.defaultCharset() : StandardCharsets.UTF_8);
    }
}
