package org.tenthwise.app.bundle;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.RecordCheck;
import org.tenthwise.app.export.RecordFormat;
import org.tenthwise.app.export.pdf.PdfContent;
import org.tenthwise.app.store.Seals;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.model.words.Message;

/**
 * Looks at what an opened bundle says, without a store: whether the entries of each run follow on one another and give
 * its head, whether its seals are good, and whether every file is what the entries come to. The record is made from
 * them once more and must be the one that is written; so must the printed one and the tables, byte for byte, where the
 * same release made the bundle. Of those that another release made, the hash alone is known to be right.
 */
public final class BundleCheck {

    private final Making making;

    public BundleCheck(Making making) {
        this.making = making;
    }

    /**
     * What was found.
     *
     * @param fault the first thing that is wrong; absent where all is well
     * @param seals which stations sealed which runs; of those before the fault
     * @param notMade names of files of which only the hash was looked at
     */
    public record Found(Optional<Message> fault, Seals seals, List<String> notMade) {}

    /** @throws IOException if the bundle cannot be read */
    public Found check(BundleFile bundle) throws IOException {
        List<Seals> seals = new ArrayList<>();
        List<String> notMade = new ArrayList<>();
        Optional<Message> fault = Optional.empty();
        try {
            for (Manifest.OfRun run : bundle.manifest().runs()) {
                fault = fault(bundle, run, seals, notMade);
                if (fault.isPresent()) {
                    break;
                }
            }
        } catch (NotABundle e) {
            fault = Optional.of(e.why());
        }
        return new Found(fault, together(seals), notMade);
    }

    private Optional<Message> fault(BundleFile bundle, Manifest.OfRun run, List<Seals> seals, List<String> notMade)
            throws IOException, NotABundle {
        List<StoredEntry> entries = bundle.entries(run);
        RecordCheck.Result record =
                new RecordCheck().check(new ByteArrayInputStream(bundle.bytes(run.file(Manifest.RECORD + "json"))));
        if (record.found().fault().isPresent()) {
            return Optional.of(Message.of(
                    "bundle.record", run.run(), record.found().fault().get().why()));
        }
        if (!record.compared()
                || !record.head().equals(run.head())
                || !entries.get(0).run().equals(run.run())) {
            return Optional.of(Message.of("bundle.another-head", run.run()));
        }
        Optional<Evidence> evidence = Evidence.ofStored(entries, making.version());
        if (evidence.isEmpty() || !evidence.get().head().equals(run.head())) {
            return Optional.of(Message.of("bundle.another-entries", run.run()));
        }
        byte[] plan = evidence.get().sheet().run().begun().plan().text().getBytes(UTF_8);
        if (!Arrays.equals(plan, bundle.bytes(run.file(Manifest.PLAN)))) {
            return Optional.of(Message.of("bundle.another-plan", run.file(Manifest.PLAN)));
        }
        seals.add(record.found().seals());
        return unlike(bundle, run, evidence.get(), notMade);
    }

    /** The first file that is not what the entries come to. */
    private Optional<Message> unlike(BundleFile bundle, Manifest.OfRun run, Evidence evidence, List<String> notMade)
            throws IOException, NotABundle {
        Manifest manifest = bundle.manifest();
        Map<String, RecordFormat> formats = new LinkedHashMap<>();
        if (manifest.tool().equals(making.tool())) {
            making.whole(manifest.language()).forEach(format -> formats.put(format.extension(), format));
        }
        String stem = run.file(Manifest.RECORD);
        for (Manifest.OfFile file : manifest.files()) {
            if (file.name().startsWith(stem)) {
                Optional<RecordFormat> format =
                        Optional.ofNullable(formats.get(file.name().substring(stem.length())));
                if (format.isEmpty()) {
                    notMade.add(file.name());
                } else if (!isSame(BundleMaker.bytes(format.get(), evidence), bundle.bytes(file.name()))) {
                    return Optional.of(Message.of("bundle.not-what-comes-out", file.name()));
                }
            }
        }
        return Optional.empty();
    }

    /** What is packed may be packed in another way by another Java. */
    private static boolean isSame(byte[] made, byte[] there) {
        return Arrays.equals(made, there) || PdfContent.isSame(made, there);
    }

    private static Seals together(List<Seals> all) {
        Map<String, List<String>> runs = new LinkedHashMap<>();
        List<String> unsigned = new ArrayList<>();
        Set<String> keys = new LinkedHashSet<>();
        for (Seals seals : all) {
            seals.runs().forEach((key, of) -> runs.computeIfAbsent(key, first -> new ArrayList<>())
                    .addAll(of));
            unsigned.addAll(seals.unsigned());
            keys.addAll(seals.keys());
        }
        return new Seals(runs, unsigned, keys);
    }
}
