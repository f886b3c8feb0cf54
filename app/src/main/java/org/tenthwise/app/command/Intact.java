package org.tenthwise.app.command;

import java.nio.file.Path;
import java.util.Optional;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Verification;
import org.tenthwise.model.words.Message;

/** Nothing is made or listed of a store that is not as it was written. */
final class Intact {

    private Intact() {}

    /** @throws CouldNotRun with the first thing that is wrong, where a record was to be made of it */
    static void forRecords(KeptEntries kept, Path store) throws CouldNotRun {
        check(kept, store, "command.export.not-whole");
    }

    /** @throws CouldNotRun with the first thing that is wrong, where its runs were to be listed */
    static void forLists(KeptEntries kept, Path store) throws CouldNotRun {
        check(kept, store, "command.history.not-whole");
    }

    private static void check(KeptEntries kept, Path store, String said) throws CouldNotRun {
        Optional<Verification.Fault> fault = kept.verify().fault();
        if (fault.isPresent()) {
            throw new CouldNotRun(Message.of(said, store, fault.get().why()));
        }
    }
}
