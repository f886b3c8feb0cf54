package org.tenthwise.app.command;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.tenthwise.app.batch.Batch;
import org.tenthwise.app.batch.StreamBroke;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.model.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Answers measuring sums in batch. */
@Command(name = "compute", customSynopsis = "tenthwise compute < QUESTIONS > ANSWERS", footerHeading = "%n")
final class Compute implements Callable<Integer> {

    @Option(names = "--sums")
    private boolean listing;

    @Spec
    private CommandSpec spec;

    private final Tools with;

    Compute(Tools with) {
        this.with = with;
    }

    @Override
    public Integer call() throws CouldNotRun {
        if (listing) {
            with.sums().descriptions().forEach(this::list);
            spec.commandLine().getOut().flush();
            return Exit.WELL;
        }
        try {
            new Batch(with.sums()).run(with.streams().in(), with.streams().out());
            return Exit.WELL;
        } catch (StreamBroke e) {
            throw new CouldNotRun(e.why(), e);
        }
    }

    private void list(SumDescription sum) {
        PrintWriter out = spec.commandLine().getOut();
        Words words = with.words().byKey();
        out.printf(
                "%s%n  in: %s%n  out: %s%n",
                sum.name(), plain(words.say(sum.takenIn())), plain(words.say(sum.givenOut())));
        sum.standards().forEach(standard -> out.printf("  basis: %s%n", words.say(standard)));
    }

    private static String plain(String guide) {
        return guide.replace("`", "").replace("\\|", "|");
    }
}
