package org.tenthwise.app.command;

import java.util.concurrent.Callable;
import org.tenthwise.app.batch.Batch;
import org.tenthwise.app.batch.StreamBroke;
import picocli.CommandLine.Command;

/** Answers measuring sums in batch. */
@Command(
        name = "compute",
        customSynopsis = "tenthwise compute < QUESTIONS > ANSWERS",
        description =
                "Reads one JSON object a line from standard input and writes one a line to standard output, in the "
                        + "same "
                        + "order: the sum worked out, or why it cannot be.",
        footer = {
            "",
            "A line: "
                    + "{\"id\":\"a\",\"calc\":\"from-master\",\"unit\":\"in\",\"master\":\"2.000\","
                    + "\"reading\":\"0.007\",\"sense\":-1}",
            "Exit codes: 0 every line was answered, whatever the answers; 2 reading or writing broke."
        })
final class Compute implements Callable<Integer> {

    private final Tools with;

    Compute(Tools with) {
        this.with = with;
    }

    @Override
    public Integer call() throws CouldNotRun {
        try {
            new Batch(with.sums()).run(with.streams().in(), with.streams().out());
            return Exit.WELL;
        } catch (StreamBroke e) {
            throw new CouldNotRun(e.getMessage(), e);
        }
    }
}
