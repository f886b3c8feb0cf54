package org.tenthwise.app.export;

import java.io.IOException;
import java.io.OutputStream;

/** A kind of file a record can be handed over as. */
public interface RecordFormat {

    /** Ending of the file's name without its point, and the word the format is asked for by: {@code pdf}. */
    String extension();

    /** What such a file is called where files travel inside others: a type of RFC 6838. */
    default String mediaType() {
        return "application/octet-stream";
    }

    /** Whether all other formats can be made again from it alone. */
    default boolean isSource() {
        return false;
    }

    /** Whether it is a record by itself; a part of one is written only where it is asked for. */
    default boolean isWhole() {
        return true;
    }

    /** Writes the whole record; leaves the stream open. The same evidence gives the same bytes. */
    void write(Evidence evidence, OutputStream out) throws IOException;
}
