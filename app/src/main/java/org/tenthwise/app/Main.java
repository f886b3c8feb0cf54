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
import org.tenthwise.app.command.Streams;
import org.tenthwise.model.words.Words;
import picocli.CommandLine;

/** Where the program starts. A plain class: a JavaFX application class cannot be started from one jar. */
public final class Main {

    /** What the services of the device go by; a tablet's own start sets it. */
    private static final String DEVICE = "javafx.platform";

    private Main() {}

    public static void main(String[] arguments) {
        PrintWriter out = writer(System.out);
        PrintWriter err = writer(System.err);
        Words words = Words.of(Locale.getDefault());
        LastResort lastResort = new LastResort(err, words);
        if (System.getProperty(DEVICE) == null) {
            System.setProperty(DEVICE, "Desktop");
        }
        Thread.setDefaultUncaughtExceptionHandler(lastResort);
        MemoryWarning.takeAsGiven();
        System.exit(run(arguments, lastResort, words, out, err));
    }

    private static int run(String[] arguments, LastResort lastResort, Words words, PrintWriter out, PrintWriter err) {
        try {
            CommandLine commands = CommandLines.of(new Wiring(lastResort, words, Locale.getDefault()).tools(streams()));
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
