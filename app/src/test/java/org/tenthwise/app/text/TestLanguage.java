package org.tenthwise.app.text;

import java.util.List;
import org.tenthwise.model.words.Words;

/** A language in which tests look at what is shown. */
public enum TestLanguage {
    ENGLISH("") {
        @Override
        public Words words() {
            return Words.ENGLISH;
        }

        @Override
        public List<String> english(String shown, String data) {
            return List.of();
        }

        @Override
        public List<String> broken(String shown, String data) {
            return List.of();
        }
    },
    MADE_UP("made-up-") {
        @Override
        public Words words() {
            return MadeUpLanguage.words();
        }

        @Override
        public List<String> english(String shown, String data) {
            return MadeUpLanguage.plainEnglish(shown, data);
        }

        @Override
        public List<String> broken(String shown, String data) {
            return MadeUpLanguage.broken(shown);
        }
    },
    GERMAN("german-") {
        @Override
        public Words words() {
            return German.words();
        }

        @Override
        public List<String> english(String shown, String data) {
            return German.english(shown, data);
        }

        @Override
        public List<String> broken(String shown, String data) {
            return German.broken(shown, data);
        }
    };

    private final String prefix;

    TestLanguage(String prefix) {
        this.prefix = prefix;
    }

    /** What the names of pictures in it begin with. */
    public String prefix() {
        return prefix;
    }

    public abstract Words words();

    /**
     * Words in {@code shown} that are left in English; none in English itself.
     *
     * @param data what else is shown as it was given
     */
    public abstract List<String> english(String shown, String data);

    /** Words in {@code shown} that are parts of others: they did not fit. */
    public abstract List<String> broken(String shown, String data);
}
