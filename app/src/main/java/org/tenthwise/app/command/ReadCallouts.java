package org.tenthwise.app.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tenthwise.app.batch.CalloutLines;
import org.tenthwise.app.batch.StreamBroke;
import org.tenthwise.model.callout.CalloutReader;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.GeneralTolerance;
import org.tenthwise.model.words.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Reads what stands on drawings, in batch. */
@Command(
        name = "callout",
        customSynopsis = "tenthwise callout --unit mm|in [--general TEXT] [FILE]",
        footerHeading = "%n")
final class ReadCallouts implements Callable<Integer> {

    private final Tools with;

    @Option(names = "--unit", paramLabel = "mm|in", required = true)
    private String unit = "";

    @Option(names = "--general", paramLabel = "TEXT")
    private Optional<String> general = Optional.empty();

    @Parameters(paramLabel = "FILE", arity = "0..1", descriptionKey = "file")
    private Optional<Path> file = Optional.empty();

    ReadCallouts(Tools with) {
        this.with = with;
    }

    @Override
    public Integer call() throws CouldNotRun {
        Unit ofDrawing = Unit.ofSymbol(unit)
                .filter(known -> !known.isOfAngle())
                .orElseThrow(() -> new CouldNotRun(Message.of("command.callout.unit", unit)));
        CalloutLines lines = new CalloutLines(
                new CalloutReader(ofDrawing, general.map(text -> GeneralTolerance.ofText(text, ofDrawing))));
        try {
            if (file.isPresent()) {
                run(lines, file.get());
            } else {
                lines.run(with.streams().in(), with.streams().out());
            }
            return Exit.WELL;
        } catch (StreamBroke e) {
            throw new CouldNotRun(e.why(), e);
        }
    }

    private void run(CalloutLines lines, Path from) throws CouldNotRun, StreamBroke {
        try (InputStream in = Files.newInputStream(from)) {
            lines.run(in, with.streams().out());
        } catch (StreamBroke e) {
            throw e;
        } catch (IOException e) {
            throw new CouldNotRun(Message.of("command.callout.file", from), e);
        }
    }
}
