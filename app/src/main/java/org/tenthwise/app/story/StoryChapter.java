package org.tenthwise.app.story;

import java.util.List;

/** What happened of one kind, or in one pass. */
public record StoryChapter(String heading, List<StoryLine> lines) {

    public StoryChapter {
        lines = List.copyOf(lines);
    }
}
