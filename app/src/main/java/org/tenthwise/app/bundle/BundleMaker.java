package org.tenthwise.app.bundle;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.RecordFormat;
import org.tenthwise.app.key.StationKey;

/** Makes bundles. The same store, key, language and scope give the same bytes, whenever they are asked for. */
public final class BundleMaker {

    private final Making making;
    private final StationKey key;
    private final String origin;

    /** @param origin hash of the first entry of the ledger */
    public BundleMaker(Making making, StationKey key, String origin) {
        this.making = making;
        this.key = key;
        this.origin = origin;
    }

    /** All there is of a run; taken one by one, for there can be many. */
    public interface EvidenceOf {
        Evidence run(String run);
    }

    /**
     * Writes a bundle; leaves the stream open.
     *
     * @param runs those in the scope, in the order they were begun
     */
    public void write(Scope scope, List<String> runs, EvidenceOf all, OutputStream out) throws IOException {
        try (Spool spool = new Spool()) {
            List<Manifest.OfRun> told = new ArrayList<>();
            for (String run : runs) {
                Evidence evidence = all.run(run);
                Manifest.OfRun of = new Manifest.OfRun(run, evidence.head());
                told.add(of);
                spool.add(of.file(Manifest.ENTRIES), EntryLines.write(evidence.entries()));
                spool.add(
                        of.file(Manifest.PLAN),
                        evidence.sheet().run().begun().plan().text().getBytes(UTF_8));
                for (RecordFormat format : making.whole(making.language())) {
                    spool.add(of.file(Manifest.RECORD + format.extension()), bytes(format, evidence));
                }
            }
            byte[] manifest = new Manifest(
                            making.tool(),
                            making.language(),
                            key.shown().fingerprint(),
                            origin,
                            scope,
                            told,
                            spool.files())
                    .text();
            spool.write(
                    List.of(
                            new Spool.Ahead(Manifest.FILE, manifest),
                            new Spool.Ahead(Manifest.SIGNATURE, key.sign(manifest)),
                            new Spool.Ahead(Manifest.KEY, key.shown().pem())),
                    out);
        }
    }

    static byte[] bytes(RecordFormat format, Evidence evidence) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        format.write(evidence, bytes);
        return bytes.toByteArray();
    }
}
