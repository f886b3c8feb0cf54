package org.tenthwise.app.ui.shell;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.ui.keys.Typing;

/** What is typed where nothing takes it: kept until somebody is told of it, so that no figure is lost in silence. */
final class PassedBy implements Typing {

    private final Runnable entered;
    private final List<String> figures = new ArrayList<>();
    private String typed = "";

    /** @param entered is run at the end of each figure */
    PassedBy(Runnable entered) {
        this.entered = entered;
    }

    /** Goes on with what was half typed elsewhere. */
    void begin(String half) {
        typed = half + typed;
    }

    @Override
    public void character(String character) {
        typed += character;
    }

    @Override
    public void takeBack() {
        typed = typed.isEmpty() ? "" : typed.substring(0, typed.length() - 1);
    }

    @Override
    public void enter() {
        if (!typed.isBlank()) {
            figures.add(typed.strip());
        }
        typed = "";
        if (!figures.isEmpty()) {
            entered.run();
        }
    }

    /** Hands out the figures typed since it was last asked, in order. */
    List<String> takeOut() {
        List<String> out = List.copyOf(figures);
        figures.clear();
        return out;
    }

    /** Hands out what is half typed. */
    String half() {
        String half = typed;
        typed = "";
        return half;
    }
}
