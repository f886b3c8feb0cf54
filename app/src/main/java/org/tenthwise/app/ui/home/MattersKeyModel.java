package org.tenthwise.app.ui.home;

import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.tenthwise.app.matters.MatterBook;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/** The key that leads to what is open, with how much that is. */
public final class MattersKeyModel {

    private final MatterBook book;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final ReadOnlyStringWrapper text;

    public MattersKeyModel(MatterBook book, LedgerTasks tasks, Words words, Navigator navigator) {
        this.book = book;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
        this.text = new ReadOnlyStringWrapper(words.say("matters.title"));
    }

    /** Without a number until they were counted. */
    public ReadOnlyStringProperty textProperty() {
        return text.getReadOnlyProperty();
    }

    /** Counts anew; until that is done no number stands there that may be wrong by now. */
    public void load() {
        text.set(words.say("matters.title"));
        tasks.run(book::countOpen, open -> text.set(words.say("matters.key", open)));
    }

    public void open() {
        navigator.matters();
    }
}
