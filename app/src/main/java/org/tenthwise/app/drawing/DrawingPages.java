package org.tenthwise.app.drawing;

import org.tenthwise.model.plan.DrawingFile;
import org.tenthwise.model.words.Message;

/** Where the pages of drawings come from. Takes its time; away from the screen thread. */
@FunctionalInterface
public interface DrawingPages {

    /** For a client without a folder of plans. */
    DrawingPages NONE = (file, page) -> new PageReading.Unreadable(Message.of("page.missing", file.name()));

    /**
     * Never fails: what cannot be shown is said, and so is a file that is another than the balloons were placed on.
     *
     * @param page from 1
     */
    PageReading page(DrawingFile file, int page);
}
