package org.tenthwise.app.key;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.model.words.Words;

/** What there is to say about the key of a station, a sentence each. */
public final class KeyWords {

    private final Words words;

    public KeyWords(Words words) {
        this.words = words;
    }

    /** Of the key in a file: what it is known by and where it lies, or why there is none. */
    public List<String> say(KeyFile file) {
        try {
            PublicKeyOfStation key = file.open().shown();
            List<String> said = new ArrayList<>(List.of(
                    words.say("about.key.short", key.shortFingerprint()),
                    words.say("about.key.whole", key.fingerprint()),
                    words.say("about.key.at", file.path())));
            if (file.isOpenToOthers()) {
                said.add(words.say("about.key.open-to-others"));
            }
            return said;
        } catch (NoKey e) {
            return List.of(words.say(e.why()));
        }
    }
}
