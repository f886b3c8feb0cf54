package org.tenthwise.app.story;

import java.time.OffsetDateTime;
import org.tenthwise.app.text.Dates;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.words.Words;

/**
 * One thing that happened.
 *
 * @param when as a clock and a calendar have it; may be empty
 * @param person may be empty
 * @param counts whether anything rests on it still: not what was struck out, replaced or has lapsed
 */
public record StoryLine(String words, String when, String person, boolean counts) {

    /** Of no one moment. */
    static StoryLine plain(String words) {
        return new StoryLine(words, "", "", true);
    }

    static StoryLine of(Entry entry, String said, OffsetDateTime now, Words words) {
        return new StoryLine(said, new Dates(words).lately(entry.at(), now), entry.by(), true);
    }

    StoryLine by(String other) {
        return new StoryLine(words, when, other, counts);
    }

    StoryLine saying(String said) {
        return new StoryLine(said, when, person, counts);
    }

    /** The same, said otherwise, that counts no more. */
    StoryLine gone(String said) {
        return new StoryLine(said, when, person, false);
    }
}
