package org.tenthwise.app.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.tenthwise.app.export.RecordCheck;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Verification;
import org.tenthwise.app.store.sqlite.SqliteLedger;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says whether a store or a record is as it was written. */
@Command(name = "verify", customSynopsis = "tenthwise verify PATH",
        description = "Checks whether a store, or a record in JSON, is as it was written, and names the first entry "
        + "that is not.")
final class VerifyKept implements Callable<Integer> {

    @Parameters(paramLabel = "PATH", description = "Store or JSON record.")
    private Path path = Path.of("");

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws CouldNotOpen, CouldNotRun {
        try (KeptEntries kept = SqliteLedger.openToRead(path)) {
            return say(kept.verify());
        } catch (CouldNotOpen e) {
            if (e.reason() == CouldNotOpen.Reason.NOT_FOUND) {
                throw new CouldNotRun("There is no %s. Name a store, or a record in JSON.".formatted(path), e);
            }
            if (e.reason() != CouldNotOpen.Reason.NOT_A_STORE) {
                throw e;
            }
            return say(record());
        }
    }

    private Verification record() throws CouldNotRun {
        try (InputStream in = Files.newInputStream(path)) {
            Verification found = new RecordCheck().check(in);
            if (found.entries() > 0) {
                return found;
            }
        } catch (IOException e) {
            // said below: a folder, or what may not be read
        }
        throw new CouldNotRun("%s is neither a Tenthwise store nor a record in JSON that can be read. Name one of the two.".formatted(path));
    }

    private int say(Verification found) {
        PrintWriter to = spec.commandLine().getOut();
        found.fault().ifPresentOrElse(
                fault -> to.println("%s is not whole. %s".formatted(path, fault.why())),
                () -> to.println("%s is whole: %d entries, the last with hash %s.".formatted(path, found.entries(), found.head().hash())));
        return found.whole() ? Exit.WELL : Exit.NOT_WELL;
    }
}
