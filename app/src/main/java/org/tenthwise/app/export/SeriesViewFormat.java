package org.tenthwise.app.export;

import java.io.IOException;
import java.io.OutputStream;
import org.tenthwise.app.history.History;

/** A kind of file a view over parts can be handed out as. Used on the thread of the ledger. */
public interface SeriesViewFormat {

    /** Ending of the file's name without its point, and the word the format is asked for by: {@code pdf}. */
    String extension();

    /** Writes the whole view; leaves the stream open. The same parts give the same bytes. */
    void write(History history, SeriesView view, OutputStream out) throws IOException;
}
