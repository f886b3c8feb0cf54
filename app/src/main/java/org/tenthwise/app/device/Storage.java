package org.tenthwise.app.device;

import java.nio.file.Path;

/** Where the client may keep files. */
public interface Storage {

    /** A folder nobody else writes into; it need not be there yet. */
    Path folder();

    /** A folder the person can get at, for records to hand over; it need not be there yet. */
    Path records();
}
