package org.tenthwise.app.handout;

import java.nio.file.Path;
import java.util.List;
import org.tenthwise.app.export.CouldNotExport;
import org.tenthwise.app.export.SeriesView;
import org.tenthwise.app.export.SeriesViewFormat;

/**
 * Hands views over parts out as files.
 *
 * @param formats in the order of the keys
 */
public record ViewHandout(List<SeriesViewFormat> formats, ViewWriting writing) {

    /** Writes a view. Used on the thread of the ledger. */
    @FunctionalInterface
    public interface ViewWriting {

        /** @return the file written */
        Path write(SeriesView view, SeriesViewFormat as) throws CouldNotExport;
    }

    public ViewHandout {
        formats = List.copyOf(formats);
    }
}
