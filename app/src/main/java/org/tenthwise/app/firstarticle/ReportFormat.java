package org.tenthwise.app.firstarticle;

import java.io.IOException;
import java.io.OutputStream;

/** A kind of file a report is handed over as. */
public interface ReportFormat {

    /** Ending of the file's name without its point. */
    String extension();

    /** Writes the whole of it; leaves the stream open. The same report gives the same bytes. */
    void write(ArticleReport report, OutputStream out) throws IOException;
}
