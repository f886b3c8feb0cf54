package org.tenthwise.app.backup;

import java.nio.file.Path;
import java.util.Properties;
import org.tenthwise.app.kept.SmallFile;
import org.tenthwise.app.store.Head;

/**
 * Up to which entry each store was found to be well, in a small file away from the stores. It saves time on opening and
 * proves nothing: everything before that entry is looked at again while the store is open, so that whoever changes this
 * file wins some minutes and no more.
 */
public final class CheckedHeads {

    /** Usual name of the file. */
    public static final String FILE = "checked.properties";

    private final SmallFile file;

    public CheckedHeads(Path file) {
        this.file = new SmallFile(file);
    }

    /** {@link Head#OF_NOTHING} where nothing is known. */
    Head of(Path store) {
        String[] kept = file.read().getProperty(key(store), "").split(" ");
        try {
            return kept.length == 2 ? new Head(Long.parseLong(kept[0]), kept[1]) : Head.OF_NOTHING;
        } catch (NumberFormatException e) {
            return Head.OF_NOTHING;
        }
    }

    void keep(Path store, Head head) {
        Properties kept = file.read();
        kept.setProperty(key(store), head.seq() + " " + head.hash());
        file.write(kept);
    }

    private static String key(Path store) {
        return store.toAbsolutePath().normalize().toString();
    }
}
