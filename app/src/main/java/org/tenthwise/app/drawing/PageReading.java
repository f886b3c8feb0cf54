package org.tenthwise.app.drawing;

import org.tenthwise.model.words.Message;

/** What came of looking for a page of a drawing. */
public sealed interface PageReading {

    record Readable(PageImage image) implements PageReading {}

    /** @param why a sentence: the file is not there, is no drawing, or is too large */
    record Unreadable(Message why) implements PageReading {}
}
