package org.tenthwise.app.ui.settings;

import java.util.List;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.session.ShopNames;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/** Asks what a machine or a person is called, so that the name is offered. */
public final class NameViewModel {

    private static final int MOST = 40;

    private final String title;
    private final FormViewModel form;

    public NameViewModel(ShopNames.Kind kind, Runs shop, LedgerTasks tasks, Words words, Navigator navigator) {
        String stem =
                switch (kind) {
                    case MACHINE -> "settings.name-machine";
                    case PERSON -> "settings.name-person";
                };
        title = words.say(stem);
        Field<String> name = Field.words("name", words.say("settings.name"), words.say(stem + ".question"), true, MOST);
        form = new FormViewModel(
                List.of(name),
                words,
                words.say("settings.keep"),
                () -> tasks.run(
                        () -> {
                            shop.names().add(kind, name.reads());
                            return true;
                        },
                        done -> navigator.back()));
        form.about(name);
    }

    public String title() {
        return title;
    }

    public FormViewModel form() {
        return form;
    }
}
