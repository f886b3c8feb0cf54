package org.tenthwise.app.store;

import java.nio.file.Path;

/** The one door to stores. Of what kind they are is known behind it alone. */
public interface Stores {

    /**
     * Opens a store to write to, if its chain is whole: nothing is added behind an entry that was changed. Makes one
     * where there is none, with the folders that lead to it.
     */
    Ledger open(Path store) throws CouldNotOpen;

    /** Opens a store for reading alone, also while another process writes to it; makes none and changes nothing. */
    KeptEntries openToRead(Path store) throws CouldNotOpen;
}
