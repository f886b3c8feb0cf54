package org.tenthwise.app.ui.form;

import java.nio.file.Path;
import org.tenthwise.model.words.Words;

/** What is said of a bundle that was written. */
public final class BundleWords {

    private BundleWords() {}

    /** Where it lies, and what it is for. */
    public static String written(Words words, Path file) {
        Path whole = file.toAbsolutePath().normalize();
        return words.say("hand-bundle.written", whole.getParent(), whole.getFileName());
    }
}
