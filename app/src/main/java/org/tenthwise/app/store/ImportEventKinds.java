package org.tenthwise.app.store;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.tenthwise.model.run.ImportEvent;
import org.tenthwise.model.run.ImportEvent.OfRun;
import org.tenthwise.model.run.ImportEvent.Provenance;

/** The kinds of events that happen to a store with runs of another. */
final class ImportEventKinds {

    static final EventKind<ImportEvent.Imported> IMPORTED = new EventKind<>(
            "imported",
            11,
            ImportEvent.Imported.class,
            (imported, to) -> {
                write(imported.origin(), to.putObject("origin"));
                to.put("bundle", imported.bundle());
                if (imported.signerKnown()) {
                    to.put("signer-known", true);
                }
                ArrayNode runs = to.putArray("runs");
                imported.runs().forEach(run -> write(run, runs.addObject()));
            },
            from -> new ImportEvent.Imported(
                    origin(from.object("origin")), from.text("bundle"), from.isSo("signer-known"), runs(from)));

    static final EventKind<ImportEvent.Lost> LOST = new EventKind<>(
            "import-lost",
            12,
            ImportEvent.Lost.class,
            (lost, to) -> {
                write(lost.origin(), to.putObject("origin"));
                ArrayNode runs = to.putArray("runs");
                lost.runs().forEach(run -> runs.addObject().put("run", run));
            },
            from -> new ImportEvent.Lost(origin(from.object("origin")), names(from)));

    private ImportEventKinds() {}

    private static void write(Provenance origin, ObjectNode to) {
        to.put("key", origin.key()).put("store", origin.store()).put("sign", origin.sign());
    }

    private static Provenance origin(JsonFields from) throws UnreadableEntry {
        Provenance origin = new Provenance(from.text("key"), from.text("store"), from.text("sign"));
        from.end();
        return origin;
    }

    private static void write(OfRun run, ObjectNode to) {
        to.put("run", run.run())
                .put("entries", run.entries())
                .put("last", run.last())
                .put("hash", run.hash());
    }

    private static List<OfRun> runs(JsonFields from) throws UnreadableEntry {
        List<OfRun> runs = new ArrayList<>();
        for (JsonFields run : from.objectsIfAny("runs")) {
            runs.add(new OfRun(run.text("run"), run.whole("entries"), run.whole("last"), run.text("hash")));
            run.end();
        }
        return runs;
    }

    private static List<String> names(JsonFields from) throws UnreadableEntry {
        List<String> names = new ArrayList<>();
        for (JsonFields run : from.objectsIfAny("runs")) {
            names.add(run.text("run"));
            run.end();
        }
        return names;
    }
}
