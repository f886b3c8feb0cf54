package org.tenthwise.checklists.format;

import java.util.List;
import org.tenthwise.model.words.Message;

/** What came of reading a text as TOML. */
public sealed interface TomlReading {

    record Readable(RawTable top) implements TomlReading {}

    /** @param flaws at least one */
    record Unreadable(List<Flaw> flaws) implements TomlReading {}

    /** Why the text is not TOML, and where. */
    record Flaw(Spot spot, Message what) {}
}
