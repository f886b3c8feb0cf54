package org.tenthwise.app.device;

import java.nio.file.Path;

/** Where the client may keep files of its own. */
public interface Storage {

    /** A folder nobody else writes into; it need not be there yet. */
    Path folder();
}
