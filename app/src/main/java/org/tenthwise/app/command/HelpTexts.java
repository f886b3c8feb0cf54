package org.tenthwise.app.command;

import java.util.Collections;
import java.util.Enumeration;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.stream.Stream;
import org.tenthwise.app.reference.Topic;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Words;

/** The texts of the help, as picocli asks for them: {@code tenthwise.walk.store} is option --store of the walk. */
final class HelpTexts extends ResourceBundle {

    private static final String STEM = "command.help.";
    private static final String LINE = "{\"id\":\"a\",\"calc\":\"from-master\",\"unit\":\"in\",\"master\":\"2.000\","
            + "\"reading\":\"0.007\",\"sense\":-1}";
    private static final String GENERAL = "ISO 2768-m, .X ±.1 .XX ±.01 .XXX ±.005 ANGLES ±1°";

    private final Words words;
    private final Set<String> keys;

    HelpTexts(Words words) {
        this.words = words;
        this.keys = words.keysBelow(STEM);
    }

    /** What is typed as it stands, in every language, fills the gaps. */
    @Override
    protected Object handleGetObject(String key) {
        return keys.contains(key)
                ? words.say(Message.of(STEM + key)
                        .with(
                                "topics",
                                Stream.of(Topic.values()).map(Topic::word).toList())
                        .with("folder", ShowDemo.FOLDER)
                        .with("example", LINE)
                        .with("general", GENERAL))
                : null;
    }

    @Override
    public Enumeration<String> getKeys() {
        return Collections.enumeration(keys);
    }
}
