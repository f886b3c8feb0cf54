package org.tenthwise.app.ui.record;

import java.nio.file.Path;
import org.tenthwise.app.export.CouldNotExport;

/** Writes the record of a run as a file. Used on the thread of the ledger. */
@FunctionalInterface
public interface Handout {

    /** What a record can be handed out as; a name in small letters is the ending of the file. */
    enum As {
        PDF,
        CSV,
        JSON
    }

    /** @return the file written */
    Path hand(String run, As as) throws CouldNotExport;
}
