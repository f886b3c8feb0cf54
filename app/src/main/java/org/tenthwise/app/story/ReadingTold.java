package org.tenthwise.app.story;

import java.util.Optional;
import org.tenthwise.app.text.ReadingPlace;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.words.Words;

/** A reading in words: where, its size, and beside that what was read where it reads otherwise. */
final class ReadingTold {

    private final Words words;

    ReadingTold(Words words) {
        this.words = words;
    }

    /**
     * @param check of its step
     * @param repeat from 1
     * @param size absent where there is none
     * @param typed with its unit where that is another than of the limits
     */
    String said(Check check, String place, int repeat, Optional<String> size, String typed) {
        String where = new ReadingPlace(words).of(check, place, repeat);
        return size.filter(written -> !written.equals(typed))
                .map(written -> words.say("story.size.from", where, written, typed))
                .orElseGet(() -> words.say("story.size", where, typed));
    }
}
