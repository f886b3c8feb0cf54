package org.tenthwise.app.ui.history;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * One part that was touched.
 *
 * @param size as it was judged
 * @param word of its verdict
 * @param picture of its check as it stands in its run; absent until that is read, and where there is none
 */
record PartCard(
        String title,
        String size,
        VerdictKind verdict,
        String word,
        List<String> about,
        String run,
        Optional<Picture> picture) {

    PartCard with(Optional<Picture> drawn) {
        return new PartCard(title, size, verdict, word, about, run, drawn);
    }
}
