package org.tenthwise.checklists.rules;

import java.io.InputStream;
import org.tenthwise.model.words.Vocabulary;

/** What is said of plan files and readings files: every problem found in them. */
public final class ChecklistVocabulary implements Vocabulary {

    /** For the loader of services. */
    public ChecklistVocabulary() {}

    @Override
    public InputStream open(String file) {
        return ChecklistVocabulary.class.getResourceAsStream(file);
    }
}
