package org.tenthwise.app.batch;

import java.io.IOException;
import org.tenthwise.model.words.Explained;
import org.tenthwise.model.words.Message;

/** Lines could not be read or answers could not be written; why is for whoever started the batch. */
public final class StreamBroke extends IOException implements Explained {

    private static final long serialVersionUID = 1L;

    private final transient Message why;

    private StreamBroke(String key, long line, IOException cause) {
        super(cause);
        this.why = Message.of(key, line, String.valueOf(cause.getMessage()));
    }

    static StreamBroke reading(long line, IOException cause) {
        return new StreamBroke("batch.reading-broke", line, cause);
    }

    static StreamBroke writing(long line, IOException cause) {
        return new StreamBroke("batch.writing-broke", line, cause);
    }

    @Override
    public Message why() {
        return why;
    }

    @Override
    public String getMessage() {
        return why.toString();
    }
}
