package org.tenthwise.app.command;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tenthwise.app.bundle.NotABundle;
import org.tenthwise.app.export.RecordCheck;
import org.tenthwise.app.export.RecordEntries;
import org.tenthwise.app.export.pdf.InsidePdf;
import org.tenthwise.app.key.NoKey;
import org.tenthwise.app.key.PublicKeyOfStation;
import org.tenthwise.app.key.Trusted;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.HeadSearch;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Seals;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.app.store.Verification;
import org.tenthwise.model.run.ImportEvent.Provenance;
import org.tenthwise.model.words.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says whether a store, a record or a bundle is as it was written. */
@Command(name = "verify", customSynopsis = "tenthwise verify PATH [--head HASH] [--trust KEY]")
final class VerifyKept implements Callable<Integer> {

    /** A hundred times the record of a long run. */
    private static final long MOST_OF_A_RECORD = 64L << 20;

    @Parameters(paramLabel = "PATH", descriptionKey = "path")
    private Path path = Path.of("");

    @Option(names = "--head", paramLabel = "HASH")
    private Optional<String> head = Optional.empty();

    @Option(names = "--trust", paramLabel = "KEY")
    private List<String> trust = List.of();

    private Trusted trusted = Trusted.NOBODY;
    /** Fingerprints of the stations that runs in the store came in from. */
    private List<String> origins = List.of();

    private final Tools with;

    @Spec
    private CommandSpec spec;

    VerifyKept(Tools with) {
        this.with = with;
    }

    @Override
    public Integer call() throws CouldNotOpen, CouldNotRun, NoKey {
        trusted = Trusted.of(trust);
        try (KeptEntries kept = with.stores().openToRead(path)) {
            origins = kept.origins().stream().map(Provenance::key).distinct().toList();
            int exit = say(kept.verify(), head.isPresent() ? kept.stored() : List.of());
            return exit == Exit.WELL && !sayOrigins() ? Exit.NOT_WELL : exit;
        } catch (CouldNotOpen e) {
            if (e.reason() == CouldNotOpen.Reason.NOT_FOUND) {
                throw new CouldNotRun(Message.of("command.verify.not-found", path), e);
            }
            if (e.reason() != CouldNotOpen.Reason.NOT_A_STORE) {
                throw e;
            }
            Optional<Integer> bundle = bundle();
            return bundle.isPresent() ? bundle.get() : record();
        }
    }

    /** Whether the stations that runs came in from are among those trusted; so where nobody is named. */
    private boolean sayOrigins() {
        boolean all = true;
        for (String key : origins) {
            boolean known = trusted.isNobody() || trusted.holds(key);
            all &= known;
            spec.commandLine()
                    .getOut()
                    .println(with.words()
                            .say(
                                    known ? "command.verify.came-in" : "command.verify.came-in-not-trusted",
                                    PublicKeyOfStation.inGroups(key)));
        }
        return all;
    }

    /** Absent where the file is no bundle at all. */
    private Optional<Integer> bundle() {
        if (!Files.isRegularFile(path)) {
            return Optional.empty();
        }
        try {
            BundleLines said = BundleLines.of(path, with.making(), trusted, with.words());
            said.lines().forEach(spec.commandLine().getOut()::println);
            return Optional.of(said.well() ? Exit.WELL : Exit.NOT_WELL);
        } catch (NotABundle | IOException e) {
            return Optional.empty(); // what may not be read is said of it as of a record
        }
    }

    private int record() throws CouldNotRun {
        if (Files.isRegularFile(path)) {
            try (InputStream in = Files.newInputStream(path);
                    InputStream again = Files.newInputStream(path)) {
                if (Files.size(path) > MOST_OF_A_RECORD) {
                    throw new CouldNotRun(Message.of("command.verify.too-large", path));
                }
                if (InsidePdf.isPdf(Files.readAllBytes(path))) {
                    return pdf(Files.readAllBytes(path));
                }
                RecordCheck.Result found = new RecordCheck().check(in);
                if (found.found().entries() > 0) {
                    return say(found, head.isPresent() ? RecordEntries.in(again) : List.of());
                }
            } catch (IOException e) {
                // said below: what may not be read
            }
        }
        throw new CouldNotRun(Message.of("command.verify.neither", path));
    }

    /** Its signatures, and the record that lies inside it. */
    private int pdf(byte[] file) throws IOException {
        PdfLines lines = new PdfLines(
                path, with.making(), with.words(), spec.commandLine().getOut());
        boolean signatures = lines.saySignatures(file);
        byte[] inside = InsidePdf.file(file, ".json").orElse(new byte[0]);
        RecordCheck.Result found = new RecordCheck().check(new ByteArrayInputStream(inside));
        if (found.found().entries() == 0) {
            spec.commandLine().getOut().println(with.words().say("command.verify.pdf.no-record", path));
            return Exit.NOT_WELL;
        }
        List<StoredEntry> entries = RecordEntries.in(new ByteArrayInputStream(inside));
        int exit = say(found, entries);
        int pages = found.found().whole() ? lines.sayPages(file, entries) : Exit.WELL;
        return !signatures || exit == Exit.NOT_WELL || pages == Exit.NOT_WELL ? Exit.NOT_WELL : Math.max(exit, pages);
    }

    private int say(RecordCheck.Result record, List<StoredEntry> entries) {
        int exit = record.compared() || !record.found().whole()
                ? say(record.found(), entries)
                : sayNotCompared(record.found(), entries);
        if (record.found().whole() && head.isEmpty()) {
            spec.commandLine()
                    .getOut()
                    .println(with.words()
                            .say(
                                    "command.verify.run-head",
                                    record.head().hash(),
                                    record.head().place()));
        }
        return exit;
    }

    /** Whether the seals in what is intact are enough. */
    private boolean saySeals(Seals seals) {
        SealLines said = SealLines.of(seals, !origins.isEmpty(), trusted, with.words());
        said.lines().forEach(spec.commandLine().getOut()::println);
        return said.enough();
    }

    /** The entries prove themselves; of what the record says they come to nothing is said, for good or ill. */
    private int sayNotCompared(Verification found, List<StoredEntry> entries) {
        PrintWriter to = spec.commandLine().getOut();
        to.println(with.words()
                .say(
                        "command.verify.older-form",
                        path,
                        found.entries(),
                        found.head().hash()));
        to.println(with.words().say("command.verify.not-compared"));
        boolean sealed = saySeals(found.seals());
        Optional<Message> place = sayPlace(entries);
        return sealed && (head.isEmpty() || place.isPresent()) ? Exit.COULD_NOT : Exit.NOT_WELL;
    }

    /** Where the hash was found; absent where it was not, or none was asked for. */
    private Optional<Message> sayPlace(List<StoredEntry> entries) {
        Optional<Message> place = head.flatMap(hash -> new HeadSearch(entries).find(hash));
        head.ifPresent(hash -> spec.commandLine()
                .getOut()
                .println(with.words().say(place.orElse(Message.of("command.verify.no-head", hash)))));
        return place;
    }

    /** @param entries to look for the hash in */
    private int say(Verification found, List<StoredEntry> entries) {
        PrintWriter to = spec.commandLine().getOut();
        to.println(with.words()
                .say(found.fault()
                        .map(fault -> Message.of("command.verify.not-whole", path, fault.why()))
                        .orElse(Message.of(
                                found.mayLackItsLast() ? "command.verify.by-entries" : "command.verify.whole",
                                path,
                                found.entries(),
                                found.head().hash()))));
        if (found.mayLackItsLast()) {
            to.println(with.words().say("command.verify.beside", path.getFileName()));
        }
        found.madeByNewer().ifPresent(which -> to.println(with.words().say("command.verify.newer", which)));
        found.remarks().forEach(remark -> to.println(with.words().say(remark)));
        boolean sealed = found.fault().isPresent() || saySeals(found.seals());
        Optional<Message> place = sayPlace(entries);
        boolean cannotTell = found.mayLackItsLast() && place.isEmpty();
        return found.whole() && sealed && !cannotTell && (head.isEmpty() || place.isPresent())
                ? Exit.WELL
                : Exit.NOT_WELL;
    }
}
