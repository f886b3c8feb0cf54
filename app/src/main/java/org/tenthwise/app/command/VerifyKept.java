package org.tenthwise.app.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tenthwise.app.export.RecordCheck;
import org.tenthwise.app.export.RecordEntries;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.HeadSearch;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.app.store.Stores;
import org.tenthwise.app.store.Verification;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says whether a store or a record is as it was written. */
@Command(
        name = "verify",
        customSynopsis = "tenthwise verify PATH [--head HASH]",
        description = "Checks whether a store, or a record in JSON, is as it was written, and names the first entry "
                + "that is not. With a hash from a printed record it also tells whether the last entries "
                + "were cut off since.")
final class VerifyKept implements Callable<Integer> {

    /** A hundred times the record of a long run. */
    private static final long MOST_OF_A_RECORD = 64L << 20;

    private final Stores stores;

    @Parameters(paramLabel = "PATH", description = "Store or JSON record.")
    private Path path = Path.of("");

    @Option(names = "--head", paramLabel = "HASH", description = "Hash as a record prints it.")
    private Optional<String> head = Optional.empty();

    @Spec
    private CommandSpec spec;

    VerifyKept(Stores stores) {
        this.stores = stores;
    }

    @Override
    public Integer call() throws CouldNotOpen, CouldNotRun {
        try (KeptEntries kept = stores.openToRead(path)) {
            return say(kept.verify(), head.isPresent() ? kept.stored() : List.of());
        } catch (CouldNotOpen e) {
            if (e.reason() == CouldNotOpen.Reason.NOT_FOUND) {
                throw new CouldNotRun("There is no %s. Name a store, or a record in JSON.".formatted(path), e);
            }
            if (e.reason() != CouldNotOpen.Reason.NOT_A_STORE) {
                throw e;
            }
            return record();
        }
    }

    private int record() throws CouldNotRun {
        if (Files.isRegularFile(path)) {
            try (InputStream in = Files.newInputStream(path);
                    InputStream again = Files.newInputStream(path)) {
                if (Files.size(path) > MOST_OF_A_RECORD) {
                    throw new CouldNotRun(
                            "%s is larger than any record, so it was not read. Name a store, or a record in JSON."
                                    .formatted(path));
                }
                RecordCheck.Result found = new RecordCheck().check(in);
                if (found.found().entries() > 0) {
                    return say(found, head.isPresent() ? RecordEntries.in(again) : List.of());
                }
            } catch (IOException e) {
                // said below: what may not be read
            }
        }
        throw new CouldNotRun(
                "%s is neither a Tenthwise store nor a record in JSON that can be read. Name one of the two."
                        .formatted(path));
    }

    private int say(RecordCheck.Result record, List<StoredEntry> entries) {
        int exit = record.compared() || !record.found().whole()
                ? say(record.found(), entries)
                : sayNotCompared(record.found(), entries);
        if (record.found().whole() && head.isEmpty()) {
            spec.commandLine()
                    .getOut()
                    .println(("Its run head is %s after %d entries. It is complete if the printed record has the "
                                    + "same; --head HASH compares them.")
                            .formatted(record.head().hash(), record.head().place()));
        }
        return exit;
    }

    /** The entries prove themselves; of what the record says they come to nothing is said, for good or ill. */
    private int sayNotCompared(Verification found, List<StoredEntry> entries) {
        PrintWriter to = spec.commandLine().getOut();
        to.println(
                ("%s has an older form: every entry in it is as it was written, and none is missing before the last: "
                                + "%d entries, the last with hash %s.")
                        .formatted(path, found.entries(), found.head().hash()));
        to.println("What it says they come to was not compared with them. Export the run again from its store to have "
                + "that compared.");
        Optional<String> place = sayPlace(entries);
        return head.isEmpty() || place.isPresent() ? Exit.COULD_NOT : Exit.NOT_WELL;
    }

    /** Where the hash was found; absent where it was not, or none was asked for. */
    private Optional<String> sayPlace(List<StoredEntry> entries) {
        Optional<String> place = head.flatMap(hash -> new HeadSearch(entries).find(hash));
        head.ifPresent(hash -> spec.commandLine()
                .getOut()
                .println(place.orElse(
                        "No entry in it has the hash %s: entries were cut off or changed since, or ".formatted(hash)
                                + "the hash is of another store.")));
        return place;
    }

    /** @param entries to look for the hash in */
    private int say(Verification found, List<StoredEntry> entries) {
        PrintWriter to = spec.commandLine().getOut();
        to.println(found.fault()
                .map(fault -> "%s is not whole. %s".formatted(path, fault.why()))
                .orElseGet(() -> (found.mayLackItsLast()
                                ? "%s: every entry in it is as it was written: %d entries, the last with hash %s."
                                : "%s is whole: %d entries, the last with hash %s.")
                        .formatted(path, found.entries(), found.head().hash())));
        if (found.mayLackItsLast()) {
            to.println(("It was kept by an earlier release, which put its last entries into a file beside it (%s-wal). "
                                    + "If it was copied ")
                            .formatted(path.getFileName())
                    + "without that file, entries are missing at its end, and the store cannot tell. "
                    + "Compare it with a printed record: --head HASH.");
        }
        found.madeByNewer()
                .ifPresent(which -> to.println("It holds %s: it was made by a newer release.".formatted(which)));
        found.remarks().forEach(to::println);
        Optional<String> place = sayPlace(entries);
        boolean cannotTell = found.mayLackItsLast() && place.isEmpty();
        return found.whole() && !cannotTell && (head.isEmpty() || place.isPresent()) ? Exit.WELL : Exit.NOT_WELL;
    }
}
