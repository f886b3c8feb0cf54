package org.tenthwise.model.words;

import java.io.InputStream;

/** What the model says: refusals of sums, of figures and of plans. */
public final class ModelVocabulary implements Vocabulary {

    /** For the loader of services. */
    public ModelVocabulary() {}

    @Override
    public InputStream open(String file) {
        return ModelVocabulary.class.getResourceAsStream(file);
    }
}
