package org.tenthwise.app.bundle;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.export.CouldNotExport;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.Exporter;
import org.tenthwise.app.export.RecordName;
import org.tenthwise.app.history.RunName;
import org.tenthwise.app.key.KeyFile;
import org.tenthwise.app.key.NoKey;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.KeptEntries;

/** The bundles of one store, signed by the key beside it. */
public final class StationBundles {

    private final Making making;
    private final KeptEntries kept;
    private final KeyFile key;

    public StationBundles(Making making, KeptEntries kept, KeyFile key) {
        this.making = making;
        this.kept = kept;
        this.key = key;
    }

    /**
     * Writes a bundle into a folder. A run that came in from elsewhere is in none: its own station signs for it.
     *
     * @return the file; absent where no run is in the scope
     */
    public Optional<Path> write(Scope scope, Path folder) throws NoKey, CouldNotExport {
        List<String> runs = kept.runs().stream()
                .filter(run -> !RunName.of(run).isImported() && scope.takes(kept, run))
                .toList();
        if (runs.isEmpty()) {
            return Optional.empty();
        }
        BundleMaker maker = maker();
        return Optional.of(new Exporter()
                .export(
                        name(scope),
                        BundleFile.ENDING,
                        out -> maker.write(scope, runs, run -> Evidence.of(kept, run, making.version()), out),
                        folder));
    }

    private String name(Scope scope) {
        Head head = kept.head();
        String period = scope.from().map(Object::toString).orElse("") + "_"
                + scope.to().map(Object::toString).orElse("");
        return scope.run()
                .map(run -> RecordName.of(run, kept.runHead(run)))
                .orElseGet(() -> RecordName.of(
                        scope.part().orElse("runs") + (period.equals("_") ? "" : "-" + period),
                        head.seq(),
                        head.hash()));
    }

    private BundleMaker maker() throws NoKey {
        String origin = kept.headAt(1).map(Head::hash).orElseThrow();
        return new BundleMaker(making, key.open(), origin);
    }
}
