package org.tenthwise.app.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.tenthwise.app.backup.BackupWish;

/** What needs a screen. Each returns when the person at it is done, and everything taken is on the disk then. */
public interface Client {

    /** Whether there is a display to open a window on. */
    boolean hasDisplay();

    /**
     * Opens the client.
     *
     * @param store the store named; absent for the one in the private storage of the device
     * @param plans the folder with plan files named; absent for the one in the private storage of the device
     * @param backups is kept for this and all later openings
     * @throws NoWindow if the display does not answer after all, or what draws windows is missing
     */
    void open(Optional<Path> store, Optional<Path> plans, BackupWish backups) throws Exception;

    /**
     * Opens the client on a store made for showing, with a look of its own and the demo parts alone.
     *
     * @param records folder for records that are handed out
     */
    void openDemo(Path store, Path records) throws Exception;

    /**
     * Walks a demo part through the screens without a display, and leaves in {@code folder} the store, the record and a
     * picture of every screen.
     *
     * @param folder is there
     * @param along is told how far the walk is, a line at each step as it comes to it
     * @return a line each about what was left
     */
    List<String> walkDemo(Path folder, Consumer<String> along) throws Exception;
}
