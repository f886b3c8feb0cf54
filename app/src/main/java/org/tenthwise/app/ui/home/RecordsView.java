package org.tenthwise.app.ui.home;

import java.util.Optional;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.Typing;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.model.words.Words;

/** Closed runs, each with what it came to; one of them leads to its record. */
public final class RecordsView extends Screen {

    private final RunListViewModel model;

    public RecordsView(RunListViewModel model, Words words, PictureFrames pictures, Navigator navigator) {
        super(words.say("records.title"));
        this.model = model;
        RunList list =
                new RunList(words.say("records.runs"), model, new HomeRows(words, pictures), words, Optional.empty());
        setTop(RunHeading.titled(title(), words, navigator::back)
                .end(Key.onward("find", words.say("home.find"), model::ask)));
        setCenter(list);
        owns(list::letGo);
    }

    @Override
    public void onShown() {
        model.load();
    }

    @Override
    public Typing typing() {
        return model.typing();
    }

    @Override
    public void arrange(Arrangement arrangement) {
        // one list fills the screen either way
    }
}
