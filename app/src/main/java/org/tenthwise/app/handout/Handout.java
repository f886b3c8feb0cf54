package org.tenthwise.app.handout;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.bundle.Scope;
import org.tenthwise.app.device.Viewer;
import org.tenthwise.app.export.CouldNotExport;
import org.tenthwise.app.export.RecordFormat;
import org.tenthwise.app.export.pdf.PagePicture;
import org.tenthwise.app.key.NoKey;

/**
 * Hands the record of a run out as a file or as pages.
 *
 * @param formats what it can be handed out as, in the order of the keys
 * @param bundling writes all there is of runs into one file
 * @param pages shows it as it is printed
 * @param viewer opens a file that was written
 */
public record Handout(List<RecordFormat> formats, Writing writing, Bundling bundling, Pages pages, Viewer viewer) {

    /** Lays the record out. Used on the thread of the ledger. */
    @FunctionalInterface
    public interface Pages {

        List<PagePicture> of(String run);
    }

    /** Writes the record. Used on the thread of the ledger. */
    @FunctionalInterface
    public interface Writing {

        /** @return the file written */
        Path write(String run, RecordFormat as) throws CouldNotExport;
    }

    /** Writes a bundle, sealed by the station. Used on the thread of the ledger. */
    @FunctionalInterface
    public interface Bundling {

        /** @return the file written; absent where none of the runs made here is in the scope */
        Optional<Path> write(Scope scope) throws CouldNotExport, NoKey;
    }

    public Handout {
        formats = List.copyOf(formats);
    }
}
