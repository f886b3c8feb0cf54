package org.tenthwise.app.batch;

import java.io.IOException;

/** Lines could not be read or answers could not be written. The message is for whoever started the batch. */
public final class StreamBroke extends IOException {

    private static final long serialVersionUID = 1L;

    StreamBroke(String what, long line, IOException cause) {
        super("%s at line %d: %s.".formatted(what, line, cause.getMessage()), cause);
    }
}
