package org.tenthwise.app.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tenthwise.app.export.CouldNotExport;
import org.tenthwise.app.export.RecordFormat;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Verification;
import org.tenthwise.model.words.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes the record of a run again. Reads the store alone, also while a client has it open. */
@Command(name = "export", customSynopsis = "tenthwise export --store DB --run ID --as pdf,csv,json,qif --out DIR")
final class ExportRecord implements Callable<Integer> {

    private static final int MOST_NAMED = 20;

    private final Tools with;
    private final Records records;

    @Option(names = "--store", paramLabel = "DB", required = true)
    private Path store = Path.of("");

    @Option(names = "--run", paramLabel = "ID", required = true)
    private String run = "";

    @Option(names = "--as", paramLabel = "FORMAT", required = true, split = ",")
    private List<String> as = List.of();

    @Option(names = "--out", paramLabel = "DIR", required = true)
    private Path out = Path.of("");

    @Spec
    private CommandSpec spec;

    ExportRecord(Tools with) {
        this.with = with;
        this.records = new Records(with);
    }

    @Override
    public Integer call() throws CouldNotRun, CouldNotOpen, CouldNotExport {
        List<RecordFormat> formats = records.named(as);
        try (KeptEntries kept = with.stores().openToRead(store)) {
            List<String> runs = kept.runs();
            if (!runs.contains(run)) {
                throw unknown(runs);
            }
            Optional<Verification.Fault> fault = kept.verify().fault();
            if (fault.isPresent()) {
                throw new CouldNotRun(Message.of(
                        "command.export.not-whole", store, fault.get().why()));
            }
            Folders.make(out);
            records.write(kept, run, formats, out).forEach(spec.commandLine().getOut()::println);
            return Exit.WELL;
        }
    }

    private CouldNotRun unknown(List<String> runs) {
        int older = Math.max(0, runs.size() - MOST_NAMED);
        Message holds = runs.isEmpty()
                ? Message.of("command.export.no-runs")
                : Message.of("command.export.runs")
                        .with("runs", runs.subList(older, runs.size()))
                        .with("older", older);
        return new CouldNotRun(Message.of("command.export.no-run", run, store, holds));
    }
}
