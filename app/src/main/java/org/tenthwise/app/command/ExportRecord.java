package org.tenthwise.app.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tenthwise.app.bundle.Scope;
import org.tenthwise.app.bundle.StationBundles;
import org.tenthwise.app.export.CouldNotExport;
import org.tenthwise.app.export.RecordFormat;
import org.tenthwise.app.history.RunName;
import org.tenthwise.app.key.KeyFile;
import org.tenthwise.app.key.NoKey;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.model.words.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/**
 * Writes the record of a run again, or a bundle of one or of several. Reads the store alone, also while a client has it
 * open.
 */
@Command(
        name = "export",
        customSynopsis = {
            "tenthwise export --store DB --run ID --as pdf,csv,json,qif,bundle --out DIR",
            "tenthwise export --store DB [--part P] [--from DAY] [--to DAY] --as " + ExportRecord.BUNDLE + " --out DIR"
        })
final class ExportRecord implements Callable<Integer> {

    private static final int MOST_NAMED = 20;
    static final String BUNDLE = "bundle";

    private final Tools with;
    private final Records records;

    @Option(names = "--store", paramLabel = "DB", required = true)
    private Path store = Path.of("");

    @Option(names = "--run", paramLabel = "ID")
    private Optional<String> run = Optional.empty();

    @Option(names = "--part", paramLabel = "P")
    private Optional<String> part = Optional.empty();

    @Option(names = "--from", paramLabel = "DAY")
    private Optional<LocalDate> from = Optional.empty();

    @Option(names = "--to", paramLabel = "DAY")
    private Optional<LocalDate> to = Optional.empty();

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
    public Integer call() throws CouldNotRun, CouldNotOpen, CouldNotExport, NoKey {
        Scope scope = scope();
        boolean bundle = as.stream().map(String::strip).anyMatch(BUNDLE::equals);
        List<String> others =
                as.stream().filter(name -> !name.strip().equals(BUNDLE)).toList();
        if (run.isEmpty() && !others.isEmpty()) {
            throw new CouldNotRun(Message.of("command.export.bundle-alone"));
        }
        List<RecordFormat> formats = records.named(others);
        try (KeptEntries kept = with.stores().openToRead(store)) {
            List<String> runs = kept.runs();
            if (run.filter(named -> !runs.contains(named)).isPresent()) {
                throw unknown(runs);
            }
            Intact.forRecords(kept, store);
            Folders.make(out);
            if (!formats.isEmpty()) {
                records.write(kept, run.orElseThrow(), formats, out)
                        .forEach(spec.commandLine().getOut()::println);
            }
            if (bundle) {
                writeBundle(kept, scope);
            }
            return Exit.WELL;
        }
    }

    private Scope scope() throws CouldNotRun {
        Scope scope = new Scope(run, part, from, to);
        if (scope.isOfNothing() || run.isPresent() && !scope.equals(Scope.ofRun(run.get()))) {
            throw new CouldNotRun(Message.of("command.export.which"));
        }
        return scope;
    }

    private void writeBundle(KeptEntries kept, Scope scope) throws CouldNotRun, CouldNotExport, NoKey {
        if (run.filter(named -> RunName.of(named).isImported()).isPresent()) {
            throw new CouldNotRun(Message.of("bundle.made-elsewhere", run.get()));
        }
        Path made = new StationBundles(with.making(), kept, KeyFile.beside(store))
                .write(scope, out)
                .orElseThrow(() -> new CouldNotRun(Message.of("command.export.no-such-runs", store)));
        spec.commandLine().getOut().println(made);
    }

    private CouldNotRun unknown(List<String> runs) {
        int older = Math.max(0, runs.size() - MOST_NAMED);
        Message holds = runs.isEmpty()
                ? Message.of("command.export.no-runs")
                : Message.of("command.export.runs")
                        .with("runs", runs.subList(older, runs.size()))
                        .with("older", older);
        return new CouldNotRun(Message.of("command.export.no-run", run.orElseThrow(), store, holds));
    }
}
