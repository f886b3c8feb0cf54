package org.tenthwise.app.device;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.tenthwise.model.words.Message;

/** What shows a file beside the client. Asked on the screen thread, and never in its way. */
public interface Viewer {

    /** Whether a file can be opened here at all. */
    boolean isThere();

    /**
     * Gives a file to the program that opens its kind, and returns at once.
     *
     * @param outcome told later, on the screen thread: why the file was not opened; nothing where it was
     */
    void open(Path file, Consumer<Optional<Message>> outcome);
}
