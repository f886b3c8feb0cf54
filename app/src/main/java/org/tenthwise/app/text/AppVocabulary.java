package org.tenthwise.app.text;

import java.io.InputStream;
import org.tenthwise.model.words.Vocabulary;

/** What screens, records and commands say. */
public final class AppVocabulary implements Vocabulary {

    @Override
    public InputStream open(String file) {
        return AppVocabulary.class.getResourceAsStream(file);
    }
}
