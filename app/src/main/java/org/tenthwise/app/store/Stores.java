package org.tenthwise.app.store;

import java.nio.file.Path;
import java.util.Optional;
import org.tenthwise.model.words.Message;

/** The one door to stores. Of what kind they are is known behind it alone. */
public interface Stores {

    /**
     * Opens a store to write to, if its chain is whole: nothing is added behind an entry that was changed. Makes one
     * where there is none, with the folders that lead to it.
     */
    Ledger open(Path store) throws CouldNotOpen;

    /**
     * Opens a store as {@link #open(Path)} does, and looks only at what stands behind an entry that was found to be
     * well before, or at all where there is no such entry. Whoever opens it so verifies the rest meanwhile: see
     * {@link #makeSure}.
     */
    Ledger open(Path store, Head checked) throws CouldNotOpen;

    /**
     * Verifies all entries of a store, also while it is written to, and keeps nobody waiting. The file around them is
     * looked into with each {@link #copy}.
     *
     * @return its head, up to which all is well
     * @throws CouldNotOpen if it is not whole
     */
    Head makeSure(Path store) throws CouldNotOpen;

    /**
     * Copies all a store holds to a name nothing lies under, with the folders that lead to it. It is whole and on the
     * disk there, or not there.
     *
     * @return what the copy holds
     */
    Verification copy(Path store, Path to) throws CouldNotOpen, CouldNotCopy;

    /** Takes what still chains out of a damaged store, into a new one. */
    Salvage salvage(Path damaged, Path to) throws CouldNotOpen, CouldNotCopy;

    /**
     * Why runs that are closed in a store now are not sealed by its station; absent where they are, and where nobody
     * seals any. Asked when the store was opened to be written to.
     */
    default Optional<Message> unsealed(Path store) {
        return Optional.empty();
    }

    /** Opens a store for reading alone, also while another process writes to it; makes none and changes nothing. */
    KeptEntries openToRead(Path store) throws CouldNotOpen;
}
