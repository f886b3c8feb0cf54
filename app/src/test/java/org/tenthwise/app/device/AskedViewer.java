package org.tenthwise.app.device;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.tenthwise.model.words.Message;

/** A viewer that notes what it was asked to open, and answers when it is told to. */
public final class AskedViewer implements Viewer {

    public final List<Path> asked = new ArrayList<>();

    private final boolean there;
    private final List<Consumer<Optional<Message>>> waiting = new ArrayList<>();

    private AskedViewer(boolean there) {
        this.there = there;
    }

    public static AskedViewer there() {
        return new AskedViewer(true);
    }

    public static AskedViewer none() {
        return new AskedViewer(false);
    }

    @Override
    public boolean isThere() {
        return there;
    }

    @Override
    public void open(Path file, Consumer<Optional<Message>> outcome) {
        asked.add(file);
        waiting.add(outcome);
    }

    /** What came of all that was asked and not answered yet. */
    public void answer(Optional<Message> whyNot) {
        List<Consumer<Optional<Message>>> all = List.copyOf(waiting);
        waiting.clear();
        all.forEach(outcome -> outcome.accept(whyNot));
    }
}
