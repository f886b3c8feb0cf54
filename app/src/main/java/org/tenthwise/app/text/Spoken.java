package org.tenthwise.app.text;

import java.util.Locale;
import org.tenthwise.model.words.Languages;
import org.tenthwise.model.words.Words;

/** The language the client speaks now, and the place it is spoken at. Any thread may ask. */
public final class Spoken {

    private record Now(Locale place, Words words) {}

    private final Languages languages;
    private volatile Now now;

    /** @param place of the language to begin with */
    public Spoken(Languages languages, Locale place) {
        this.languages = languages;
        this.now = new Now(place, lettered(place));
    }

    public Languages languages() {
        return languages;
    }

    public Words words() {
        return now.words();
    }

    /** By it go the paper of a record and the order of a date. */
    public Locale place() {
        return now.place();
    }

    /** From now on; what was said before stays as it was said. */
    public void speak(Locale language) {
        now = new Now(language, lettered(language));
    }

    private Words lettered(Locale language) {
        return languages.words(language).lettered();
    }
}
