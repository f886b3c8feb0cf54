package org.tenthwise.app.certificate;

import org.tenthwise.model.words.ExplainedFailure;
import org.tenthwise.model.words.Message;

/** Nothing can be signed with what was given. The message says why. */
public final class NoCertificate extends ExplainedFailure {

    private static final long serialVersionUID = 1L;

    NoCertificate(Message why) {
        super(why);
    }

    NoCertificate(Message why, Throwable cause) {
        super(why, cause);
    }
}
