package org.tenthwise.app.bundle;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.List;
import org.tenthwise.app.export.RecordName;
import org.tenthwise.app.store.RunHead;

/**
 * What a bundle says it holds. The station's key signs it as it is written, and it names every file by its hash.
 *
 * @param tool that made it, with its version: {@code Tenthwise 0.1.0}
 * @param language of the printed records, as a language tag
 * @param station fingerprint of the key that signs it
 * @param origin what the store is known by: the hash of the first entry of its ledger
 * @param of what was asked for
 * @param runs in the order they were begun
 * @param files all but the manifest, its signature and the key, in the order they lie in the bundle
 */
public record Manifest(
        String tool, String language, String station, String origin, Scope of, List<OfRun> runs, List<OfFile> files) {

    static final String FILE = "manifest.json";
    static final String SIGNATURE = "manifest.sig";
    static final String KEY = "station.pem";

    static final String ENTRIES = "entries.jsonl";
    static final String PLAN = "plan.toml";
    static final String RECORD = "record.";

    public Manifest {
        runs = List.copyOf(runs);
        files = List.copyOf(files);
    }

    /**
     * A run in it.
     *
     * @param head of the run: how many entries it has, the place of the last one in its ledger, the hash over all
     */
    public record OfRun(String run, RunHead head) {

        /** Where its files lie. */
        public String folder() {
            return "runs/" + RecordName.of(run, head);
        }

        String file(String name) {
            return folder() + "/" + name;
        }
    }

    /**
     * A file in it.
     *
     * @param sha256 64 hex digits
     */
    public record OfFile(String name, long bytes, String sha256) {}

    byte[] text() {
        return ManifestJson.write(this).getBytes(UTF_8);
    }
}
