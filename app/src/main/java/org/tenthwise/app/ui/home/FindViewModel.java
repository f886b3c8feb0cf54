package org.tenthwise.app.ui.home;

import java.util.List;
import java.util.function.Consumer;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/** Asks for words to find runs by: typed, or a person who worked on one. */
public final class FindViewModel {

    private static final int MOST = 40;

    private final Runs shop;
    private final LedgerTasks tasks;
    private final Field<String> by;
    private final FormViewModel form;

    /** @param found is handed the words, and the screen that asked is shown again */
    public FindViewModel(Runs shop, LedgerTasks tasks, Words words, Navigator navigator, Consumer<String> found) {
        this.shop = shop;
        this.tasks = tasks;
        by = Field.words("find", words.say("find.words"), words.say("find.words.question"), true, MOST);
        form = new FormViewModel(List.of(by), words, words.say("find.act"), () -> {
            found.accept(by.reads());
            navigator.back();
        });
        by.type();
    }

    public FormViewModel form() {
        return form;
    }

    public void load() {
        tasks.run(() -> shop.names().people(), by::offer);
    }
}
