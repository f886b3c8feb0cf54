package org.tenthwise.app.sums;

import java.io.InputStream;
import org.tenthwise.model.words.Vocabulary;

/**
 * What the sums say. A note of a sum is {@code sum.<its name>.<the note>}, a refusal of an input {@code given.<its
 * key>.<the reason>}, with hyphens for underscores; a gap with the key of an input or an output is filled with what the
 * reader calls that.
 */
public final class SumsVocabulary implements Vocabulary {

    @Override
    public InputStream open(String file) {
        return SumsVocabulary.class.getResourceAsStream(file);
    }
}
