package org.tenthwise.app.drawing;

import org.tenthwise.model.words.Message;

/** What came of looking for a page of a drawing. */
public sealed interface PageReading {

    /** @param sha256 of the whole file, 64 small hex digits */
    record Readable(PageImage image, String sha256) implements PageReading {}

    /** @param why a sentence: the file is not there, is no drawing, or is too large */
    record Unreadable(Message why) implements PageReading {}
}
